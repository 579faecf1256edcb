#include "client/allocator/shortage.h"

#include <algorithm>
#include <map>

#include "client/allocator/cut_arithmetic.h"
#include "client/allocator/eligible.h"

namespace heatkeep::allocator {

std::string InMillimetres(Length length) {
  const std::int64_t nm = length.nm < 0 ? -length.nm : length.nm;
  std::string text = std::to_string(nm / kNmPerMm);
  std::string part = std::to_string(nm % kNmPerMm);
  part.insert(0, 6 - part.size(), '0');
  part.erase(part.find_last_not_of('0') + 1);
  if (!part.empty()) text += "." + part;
  return (length.nm < 0 ? "-" : "") + text + " mm";
}

namespace {

// Bars are bought up to about this length: common practice, no source.
constexpr Length kLongestBought{12'000 * kNmPerMm};

// The shortest bar for all that is missing, or as many equal bars as it takes when one would be too long to buy.
std::string WhatToBuy(const GroupRules& rules, Length length, int missing, Length doubt) {
  int bars = 1;
  while (bars < missing && ShortestBar(rules, length, (missing + bars - 1) / bars, doubt) > kLongestBought) ++bars;
  const std::string each = InMillimetres(ShortestBar(rules, length, (missing + bars - 1) / bars, doubt));
  if (bars == 1) return "the shortest bar to buy for " + std::to_string(missing) + " is " + each;
  return "to buy for " + std::to_string(missing) + ": " + std::to_string(bars) + " bars of at least " + each;
}

}  // namespace

std::string WhyShort(const Problem& problem, int index, int missing) {
  const Line& line = problem.lines[static_cast<std::size_t>(index)];
  const Length length = line.CutLength();
  int usable = 0, too_short = 0;
  std::map<std::string, int> refused;  // reason -> pieces of the line's own metal
  Length longest, doubt;
  for (const Piece& piece : problem.pieces) {
    if (piece.owner != line.owner) continue;
    const bool same_metal = piece.section == line.section && piece.grade == line.grade;
    if (same_metal && piece.kind == PieceKind::Bar) doubt = std::max(doubt, piece.doubt);
    if (const auto why = WhyNot(problem, piece, line)) {
      if (same_metal) ++refused[*why];
      continue;
    }
    const GroupRules& rules = RulesFor(problem, piece);
    if (Fits(RoomOf(piece, rules), length + rules.kerf, length)) {
      ++usable;
    } else {
      ++too_short;
      longest = std::max(longest, piece.length);
    }
  }
  std::string why;
  if (usable > 0 && !line.one_heat.empty()) why = "the metal that may serve it is used up within one heat";
  else if (usable > 0 && line.max_heats > 0)
    why = "the metal that may serve it is used up within " + std::to_string(line.max_heats) + (line.max_heats == 1 ? " heat" : " heats");
  else if (usable > 0) why = "the metal that may serve it is used up";
  else if (too_short > 0) why = "no piece that may serve it is long enough; the longest is " + InMillimetres(longest);
  else if (refused.empty())
    why = (line.waits.empty() ? "there is no metal of " : "nothing is free of ") + line.section + " " + line.grade +
        (line.owner.empty() ? "" : " of " + line.owner);
  else why = "no piece may serve it";
  for (const auto& [reason, count] : refused)
    why += "; " + std::to_string(count) + (count == 1 ? " piece not: " : " pieces not: ") + reason;
  for (const auto& [reason, count] : line.waits)
    why += "; " + std::to_string(count) + (count == 1 ? " piece of it is here: " : " pieces of it are here: ") + reason;
  Piece bar;
  bar.section = line.section;
  bar.grade = line.grade;
  why += "; " + WhatToBuy(RulesFor(problem, bar), length, missing, doubt);
  return why;
}

}  // namespace heatkeep::allocator
