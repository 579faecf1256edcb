#include "reports/family_tree.h"

#include <algorithm>
#include <map>

#include "reports/quantity_text.h"

namespace heatkeep {
namespace {

bool IsPiece(const TraceLine& line) { return line.what == "bar" || line.what == "drop"; }
bool IsStroke(const TraceLine& line) {
  return line.what == "trim" || line.what == "cut piece" || line.what == "reject" || line.what == "crop" || line.what == "test slice";
}
bool WentOn(const TreePiece& piece) {
  return std::any_of(piece.parts.begin(), piece.parts.end(), [](const TraceLine& l) { return l.what == "passed on"; });
}
std::string OrderOf(const TraceLine& line) { return line.name.substr(0, line.name.rfind('/')); }

void AddRun(PieceBar& bar, const TraceLine& line, OrderLetters& letters) {
  const bool good = line.what == "cut piece";
  const int order = letters.index(good ? OrderOf(line) : "");
  bar.runs.push_back({line.length, line.count, order, good ? OrderLetters::letter(order - 1) : line.what});
}

// What left the piece and did not come back: an entry and the one that takes it back are nothing. The rest below zero is metal that
// measured more than was written of it; `more` is how much.
std::vector<TraceLine> WhatLeft(std::vector<TraceLine> parts, Length& more) {
  for (std::size_t i = 0; i < parts.size();) {
    if (parts[i].length.nm >= 0) {
      ++i;
      continue;
    }
    const TraceLine less = parts[i];
    parts.erase(parts.begin() + static_cast<std::ptrdiff_t>(i));
    const auto same =
        std::find_if(parts.begin(), parts.end(), [&](const TraceLine& l) { return l.what == less.what && l.length == -less.length; });
    if (same == parts.end()) more += -less.length;
    else {
      if (same < parts.begin() + static_cast<std::ptrdiff_t>(i)) --i;
      parts.erase(same);
    }
  }
  return parts;
}

}  // namespace

std::vector<TreePiece> TreePieces(const std::vector<TraceLine>& lines) {
  std::vector<TreePiece> pieces;
  std::map<std::string, std::size_t> by_tag;
  int least = 1 << 20;
  for (const TraceLine& line : lines) {
    if (!IsPiece(line)) continue;
    least = std::min(least, line.depth);
    by_tag[line.name] = pieces.size();
    pieces.push_back({line, {}, {}});
  }
  for (const TraceLine& line : lines) {
    const auto parent = by_tag.find(line.parent);
    if (parent == by_tag.end()) continue;
    (IsPiece(line) ? pieces[parent->second].children : pieces[parent->second].parts).push_back(line);
  }
  for (TreePiece& piece : pieces) {
    piece.piece.depth -= least;
    // cuts as the saw made them, then what left otherwise: mostly the end
    std::stable_partition(piece.parts.begin(), piece.parts.end(), IsStroke);
  }
  return pieces;
}

PieceBar TreeBar(const TreePiece& piece, OrderLetters& letters) {
  letters.index("");  // the first tone is for what is no order's
  PieceBar bar;
  bar.length = piece.piece.length;
  bar.section = piece.piece.section;
  bar.sawn_first = piece.piece.what == "drop";
  bar.left = piece.piece.now;
  Length sum = bar.left, more;
  int cuts = 0;
  for (const TraceLine& part : WhatLeft(piece.parts, more)) {
    bar.kerf_all += part.kerf;
    if (part.what == "trim")
      for (int i = 0; i < part.count; ++i) bar.trim += part.length;
    else if (part.length.nm > 0) AddRun(bar, part, letters);
  }
  if (!WentOn(piece))
    for (const TraceLine& child : piece.children) {
      AddRun(bar, child, letters);
      bar.runs.back().letter = child.what == piece.piece.what && child.length == piece.piece.length ? "new tag" : "drop";
    }
  bar.length += more;
  sum += bar.trim + bar.kerf_all;
  for (const BarRun& run : bar.runs) {
    for (int i = 0; i < run.count; ++i) sum += run.length;
    cuts += run.count;
  }
  if (bar.trim.nm > 0) ++cuts;
  if (sum.nm > bar.length.nm || (bar.kerf_all.nm > 0 && cuts == 0)) {
    PieceBar plain;
    plain.length = plain.left = piece.piece.length;
    plain.section = bar.section;
    plain.sawn_first = bar.sawn_first;
    return plain;
  }
  if (cuts > 0) bar.kerf_each = {(bar.kerf_all.nm + cuts - 1) / cuts};
  if (sum < bar.length) bar.runs.push_back({bar.length - sum, 1, 0, "other"});
  return bar;
}

std::vector<std::string> TreeWords(const TreePiece& piece, OrderLetters& letters) {
  std::vector<std::string> words;
  letters.index("");
  for (const TraceLine& l : piece.parts) {
    if (l.what == "trim" || l.length.nm == 0) continue;
    const std::string amount = (l.count == 1 ? "" : std::to_string(l.count) + " \u00D7 ") + MmText(l.length);
    if (l.what == "cut piece")
      words.push_back(OrderLetters::letter(letters.index(l.name.substr(0, l.name.rfind('/'))) - 1) + "  order " + l.name + ": " + amount +
                      ", " + (l.held ? "HELD, " : "") + l.where_now);
    else
      words.push_back(l.what + ": " + amount + (l.name == l.what || l.name.empty() ? "" : ", " + l.name) +
                      (l.where_now == l.what || l.where_now.empty() ? "" : ", " + l.where_now));
  }
  return words;
}

}  // namespace heatkeep
