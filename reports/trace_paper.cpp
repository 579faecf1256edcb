#include <algorithm>

#include "reports/balance_record.h"
#include "reports/family_tree.h"
#include "reports/flow_parts.h"
#include "reports/quantity_text.h"
#include "reports/record_words.h"
#include "reports/sheet_words.h"
#include "reports/trace_report.h"

namespace heatkeep {
namespace {

constexpr double kStep = 3.4;   // indentation of one depth
constexpr int kDeepest = 8;     // deeper lines are not indented further; their "from" says the parent
constexpr double kFirst = 5.6;  // height of the first and second text line of a row
constexpr double kSecond = 4.2;

struct Widths {
  double what, length, mass, where;
};

Widths WidthsOf(double width) {
  Widths w{0, 44, 22, 0};
  w.where = width * 0.3;
  w.what = width - w.length - w.mass - w.where - 6;
  return w;
}

std::string HeatWords(const TraceLine& l) {
  return l.heat.empty() ? "" : "heat " + HeatInGroups(l.heat) + (l.mill.empty() ? "" : " " + l.mill);
}
std::string GradeWords(const TraceLine& l) { return l.grade + (l.condition.empty() ? "" : " " + l.condition); }

// What is the same as on the line it hangs from is not said again.
std::string Detail(const TraceLine& l, const TraceLine& above) {
  std::string text;
  const auto add = [&](const std::string& word, const std::string& said = {}) {
    if (!word.empty() && word != said) text += (text.empty() ? "" : "  \u00B7  ") + word;
  };
  add(HeatWords(l), HeatWords(above));
  add(l.section, above.section);
  add(GradeWords(l), GradeWords(above));
  add(l.document, above.document);
  add(l.receipt, above.receipt);
  if (!l.at.empty()) add(ShortTime(l.at) + (l.by.empty() ? "" : " " + l.by));
  return text;
}

// The line that line `i` hangs from: the last one before it that is one shallower; an empty one for a root.
TraceLine Above(const std::vector<TraceLine>& lines, std::size_t i) {
  for (std::size_t j = i; j-- > 0;)
    if (lines[j].depth < lines[i].depth) return lines[j];
  return {};
}

// From the tree's foot of the row: vertical strokes of open parents, an elbow to the row itself.
void Strokes(Pen& pen, double y, double height, int depth, const std::vector<bool>& follows) {
  for (int d = 1; d <= std::min(depth, kDeepest); ++d) {
    const double x = kMargin + (d - 1) * kStep + 1.2;
    const bool more = follows[static_cast<std::size_t>(d - 1)];
    const bool own = d == depth;
    if (own || more) pen.line(x, y, x, more ? y + height : y + kFirst / 2, 0.2);
    if (own) pen.line(x, y + kFirst / 2, x + kStep - 1.6, y + kFirst / 2, 0.2);
  }
}

FlowItem LineItem(const TraceLine& l, const TraceLine& above, const std::vector<bool>& follows, double width) {
  const Widths w = WidthsOf(width);
  const double indent = std::min(l.depth, kDeepest) * kStep;
  const std::string detail = Detail(l, above);
  const TextStyle small{2.7};
  const double detail_width = width - indent;
  const double detail_height = ParagraphHeight(detail, detail_width, small);
  const TextStyle where{3.2, l.held};
  const std::string where_now = (l.held ? "HELD, " : "") + l.where_now;
  const double first = std::max(kFirst, ParagraphHeight(where_now, w.where, where) + 1.2);
  const double height = first + std::max(kSecond - 0.6, detail_height + 0.6);
  return {height, [=](Pen& pen, double y) {
            Strokes(pen, y, height, l.depth, follows);
            double x = kMargin + indent;
            const std::string what = l.what + " ";
            const double what_width = std::min(TextWidthMm(what, {3.2}) + 1, (w.what - indent) * 0.6);
            pen.text(x, y + 0.9, what_width, what, {3.2});
            pen.text(x + what_width, y + 0.8, w.what - indent - what_width, l.name, {3.4, true, true, false, Align::Left, true});
            x = kMargin + w.what + 2;
            const std::string count = l.count != 1 ? std::to_string(l.count) + " \u00D7 " : "";
            pen.text(x, y + 0.9, w.length, count + MmText(l.length), {3.2, false, false, false, Align::Right});
            pen.text(x + w.length + 1, y + 0.9, w.mass, KgText(l.mass), {3.2, false, false, false, Align::Right});
            pen.paragraph(x + w.length + w.mass + 5, y + 0.9, w.where - 1, where_now, where);
            pen.paragraph(kMargin + indent, y + first - 0.4, detail_width, detail, small);
          }};
}

FlowItem TableHead(double width) {
  const Widths w = WidthsOf(width);
  return {5.4, [=](Pen& pen, double y) {
            const TextStyle left{2.6, true};
            const TextStyle right{2.6, true, false, false, Align::Right};
            pen.text(kMargin, y + 0.6, w.what, "what, tag or order", left);
            pen.text(kMargin + w.what + 2, y + 0.6, w.length, "length", right);
            pen.text(kMargin + w.what + w.length + 3, y + 0.6, w.mass, "mass", right);
            pen.text(kMargin + w.what + w.length + w.mass + 7, y + 0.6, w.where, "where now", left);
            pen.line(kMargin, y + 4.8, kMargin + width, y + 4.8, 0.3);
          }};
}

// The statement about the heats of an order, and what was looked at for it.
void AddHeats(Flow& flow, const OrderHeats& heats, double width) {
  flow.items.push_back(SectionHead(kMargin, width, "Which heats went into it"));
  flow.items.push_back(TextRow(kMargin, width, heats.statement, {3.6, true}, 1));
  flow.items.push_back(TextRow(kMargin, width, heats.looked_at, {3.0}, 1));
  if (!heats.one_heat)
    for (const OrderHeats::Heat& h : heats.heats) {
      std::string line = h.heat.empty() ? "no heat (" + h.identity + ")" : "heat " + HeatInGroups(h.heat) + ", " + h.mill;
      line += ": " + std::to_string(h.cut_pieces) + " cut pieces from";
      for (const std::string& tag : h.pieces) line += " " + tag;
      flow.items.push_back(TextRow(kMargin + 4, width - 4, line, {3.2}));
    }
  for (const std::string& before : heats.before) flow.items.push_back(TextRow(kMargin + 4, width - 4, "before: " + before, {3.0}));
  for (const std::string& wrong : heats.wrong) flow.items.push_back(TextRow(kMargin + 4, width - 4, "WRONG: " + wrong, {3.0, true}));
}

}  // namespace

std::vector<std::vector<bool>> TreeStrokes(const std::vector<TraceLine>& lines) {
  std::vector<std::vector<bool>> strokes(lines.size());
  std::vector<bool> later;  // later[d]: a line of depth d follows before one that is shallower
  for (std::size_t i = lines.size(); i-- > 0;) {
    const auto depth = static_cast<std::size_t>(std::max(0, lines[i].depth));
    later.resize(depth + 1, false);
    strokes[i].assign(later.begin() + 1, later.end());
    later[depth] = true;
  }
  return strokes;
}

void WriteTracePdf(const std::string& path, const TraceRecord& record, const PrintOptions& options) {
  const double width = PageWidth(options.size) - 2 * kMargin;
  Flow flow;
  const std::string asked = "asked " + ShortTime(record.asked_at) + (record.asked_by.empty() ? "" : " by " + record.asked_by) +
      "  \u00B7  " + TraceCounts(record.lines);
  SetRecordHead(flow, {"Trace record of " + record.kind, record.subject, asked, record.digest, record.happenings, record.proof}, width);
  flow.items.push_back(TextRow(kMargin, width, OwnWorkStatement(), {3.0}, 2));
  if (record.heats) AddHeats(flow, *record.heats, width);
  AddFamilyTree(flow, record.lines, width);
  flow.items.push_back(SectionHead(kMargin, width, "Every line of it"));
  flow.repeated.push_back(TableHead(width));
  flow.items.push_back(flow.repeated[0]);
  flow.items.back().with_next = true;
  const auto strokes = TreeStrokes(record.lines);
  for (std::size_t i = 0; i < record.lines.size(); ++i) {
    flow.items.push_back(LineItem(record.lines[i], Above(record.lines, i), strokes[i], width));
    flow.items.back().head = 0;
  }
  if (record.lines.empty()) flow.items.push_back(TextRow(kMargin, width, "The book holds nothing of this name.", {3.3}));
  for (const HeatBalance& balance : record.balances) AddBalance(flow, balance, width);
  WriteFlow(path, flow, options);
}

}  // namespace heatkeep
