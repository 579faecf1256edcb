#include "reports/piece_bar_layout.h"

#include <algorithm>
#include <stdexcept>

#include "reports/leader_rows.h"
#include "reports/quantity_text.h"

namespace heatkeep {
namespace {

constexpr double kEndRoom = 0.26;    // what a slanted or notched end takes, in bar heights
constexpr double kLeaderDrop = 0.8;  // height of the leader zone and gap between labels, in text heights

void CheckSums(const PieceBar& bar) {
  Length sum = bar.trim + bar.kerf_all + bar.left;
  bool negative =
      bar.length.nm <= 0 || bar.trim.nm < 0 || bar.kerf_all.nm < 0 || bar.kerf_each.nm < 0 || bar.left.nm < 0 || bar.grip.nm < 0;
  for (const BarRun& run : bar.runs) {
    negative = negative || run.count < 0 || run.length.nm <= 0;
    sum += run.length * run.count;
  }
  if (negative) throw std::invalid_argument("piece bar: a length or count is negative or zero");
  if (sum != bar.length)
    throw std::invalid_argument("piece bar: trim + kerf + cuts + left = " + MmText(sum) + ", expected the piece's length " +
                                MmText(bar.length));
}

class Layouter {
 public:
  Layouter(const PieceBar& bar, const BarBox& box, const TextWidth& width_of, const LengthText& text_of, const LengthText& rest_of)
      : width_of_(width_of), text_of_(text_of), rest_of_(rest_of) {
    out_.bar = bar;
    out_.box = box;
  }

  BarLayout run() {
    const BarBox& box = out_.box;
    if (box.full < out_.bar.length || box.width <= 0)
      throw std::invalid_argument("piece bar: the view's longest piece is shorter than this piece");
    out_.outline = stretch({0}, out_.bar.length);
    if (out_.bar.left.nm > 0 && out_.bar.grip.nm > 0)
      out_.grip = stretch(out_.bar.length - std::min(out_.bar.grip, out_.bar.left), out_.bar.length);
    for (const BarPart& part : BarParts(out_.bar)) {
      const BarRect rect = stretch(part.from, part.to);
      out_.parts.push_back({part, rect, text_room(rect), "", ""});
    }
    for (std::size_t run = 0; run < out_.bar.runs.size(); ++run) label_run(static_cast<int>(run));
    label_left();
    place_leaders();
    return std::move(out_);
  }

 private:
  double x_of(Length at) const {
    return out_.box.x + out_.box.width * (static_cast<double>(at.nm) / static_cast<double>(out_.box.full.nm));
  }
  BarRect stretch(Length from, Length to) const { return {x_of(from), out_.box.y, x_of(to) - x_of(from), out_.box.height}; }
  // The part without what the ends and the grip take from it.
  BarRect text_room(BarRect r) const {
    const PieceBar& bar = out_.bar;
    const double end = out_.outline.x + out_.outline.width;
    const double first = out_.outline.x + ((bar.sawn_first || bar.marked_first) ? kEndRoom * out_.box.height : 0);
    const double last =
        std::min(end - ((bar.sawn_last || bar.marked_last) ? kEndRoom * out_.box.height : 0), out_.grip.width > 0 ? out_.grip.x : end);
    const double from = std::max(r.x, first);
    const double to = std::min(r.x + r.width, last);
    return {from, r.y, std::max(0.0, to - from), r.height};
  }
  bool fits(const std::string& text, double width) const {
    return out_.box.text <= out_.box.height && width_of_(text) + 0.5 * out_.box.text <= width;
  }
  bool two_lines() const { return out_.box.height >= 2.2 * out_.box.text; }

  // Letter and length inside every cut of the run, or one leader for the run.
  void label_run(int index) {
    const BarRun& run = out_.bar.runs[static_cast<std::size_t>(index)];
    const std::string length = text_of_(run.length);
    const std::string line = run.letter.empty() ? length : run.letter + " " + length;
    double from = 0;
    double to = 0;
    bool first = true;
    bool spoken = true;
    for (PlacedPart& placed : out_.parts) {
      if (placed.part.kind != PartKind::Cut || placed.part.run != index) continue;
      if (first) from = placed.rect.x;
      first = false;
      to = placed.rect.x + placed.rect.width;
      if (two_lines() && !run.letter.empty() && fits(length, placed.text.width) && fits(run.letter, placed.text.width)) {
        placed.upper = run.letter;
        placed.lower = length;
      } else if (fits(line, placed.text.width)) {
        placed.upper = line;
      } else {
        spoken = false;
        if (fits(run.letter, placed.text.width)) placed.upper = run.letter;
      }
    }
    if (first || spoken) return;
    const std::string times = run.count > 1 ? std::to_string(run.count) + " \u00D7 " : "";
    const std::string letter = run.letter.empty() ? "" : run.letter + " ";
    add_leader({index, from, to, 0, {}, letter + times + length});
  }

  void label_left() {
    if (out_.bar.left.nm <= 0) return;
    PlacedPart& placed = out_.parts.back();
    const std::string length = rest_of_(out_.bar.left);
    const std::string word = out_.bar.fate == LeftFate::Drop ? out_.box.keep_word
        : out_.bar.fate == LeftFate::Scrap                   ? out_.box.scrap_word
                                                             : "";
    const std::string line = word.empty() ? length : length + " " + word;
    const double room = placed.text.width;
    if (fits(line, room)) {
      placed.upper = line;
    } else if (two_lines() && fits(length, room) && fits(word, room)) {
      placed.upper = length;
      placed.lower = word;
    } else {
      add_leader({-1, placed.rect.x, placed.rect.x + placed.rect.width, 0, {}, line});
    }
  }

  void add_leader(Leader leader) {
    if (out_.box.leader_rows <= 0) {
      out_.all_labelled = false;
      return;
    }
    leader.label.width = width_of_(leader.text);
    out_.leaders.push_back(std::move(leader));
  }

  void place_leaders() {
    const BarBox& box = out_.box;
    out_.bottom = box.y + box.height;
    if (out_.leaders.empty()) return;
    std::vector<double> wanted;
    std::vector<double> widths;
    for (const Leader& leader : out_.leaders) {
      wanted.push_back((leader.from + leader.to) / 2 - leader.label.width / 2);
      widths.push_back(leader.label.width);
    }
    const double limit = box.label_limit > 0 ? box.label_limit : box.x + box.width;
    const auto rows = FindLeaderRows(wanted, widths, box.x, limit, 0.5 * box.text, box.leader_rows);
    if (!rows) {
      out_.leaders.clear();
      out_.all_labelled = false;
      return;
    }
    out_.rows = rows->rows;
    const double top = box.y + box.height + kLeaderDrop * box.text;
    for (std::size_t i = 0; i < out_.leaders.size(); ++i) {
      Leader& leader = out_.leaders[i];
      leader.row = rows->row[i];
      leader.label = {rows->start[i], top + leader.row * box.text * 1.1, widths[i], box.text};
      out_.bottom = std::max(out_.bottom, leader.label.y + leader.label.height);
    }
  }

  const TextWidth& width_of_;
  const LengthText& text_of_;
  const LengthText& rest_of_;
  BarLayout out_;
};

}  // namespace

std::vector<BarPart> BarParts(const PieceBar& bar) {
  CheckSums(bar);
  std::vector<BarPart> parts;
  Length at;
  Length kerf = bar.kerf_all;
  const auto add = [&](PartKind kind, Length length, int run) {
    if (length.nm <= 0) return;
    parts.push_back({kind, at, at + length, run});
    at += length;
  };
  const auto saw = [&] {
    const Length stroke = std::min(kerf, bar.kerf_each);
    add(PartKind::Kerf, stroke, -1);
    kerf -= stroke;
  };
  add(PartKind::Trim, bar.trim, -1);
  if (bar.trim.nm > 0) saw();
  for (std::size_t run = 0; run < bar.runs.size(); ++run)
    for (int i = 0; i < bar.runs[run].count; ++i) {
      add(PartKind::Cut, bar.runs[run].length, static_cast<int>(run));
      saw();
    }
  add(PartKind::Kerf, kerf, -1);  // more kerf than strokes: shown, not hidden
  add(PartKind::Left, bar.left, -1);
  return parts;
}

BarLayout LayOutBar(const PieceBar& bar, const BarBox& box, const TextWidth& width_of, const LengthText& text_of,
                    const LengthText& rest_of) {
  return Layouter(bar, box, width_of, text_of, rest_of ? rest_of : text_of).run();
}

}  // namespace heatkeep
