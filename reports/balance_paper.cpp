#include <array>

#include "reports/balance_record.h"
#include "reports/flow_parts.h"
#include "reports/quantity_text.h"
#include "reports/record_words.h"
#include "reports/sheet_words.h"

namespace heatkeep {
namespace {

constexpr double kRow = 5;

using Cells = std::array<std::string, 5>;  // letter, class, length, mass, share

std::string Share(Length part, Length whole) {
  if (whole.nm <= 0) return "";
  const double share = 100.0 * static_cast<double>(part.nm) / static_cast<double>(whole.nm);
  const long long hundredths = static_cast<long long>(share * 100 + (share < 0 ? -0.5 : 0.5));
  const long long size = hundredths < 0 ? -hundredths : hundredths;
  const std::string rest = std::to_string(size % 100);
  return (hundredths < 0 ? "-" : "") + std::to_string(size / 100) + (rest.size() < 2 ? ".0" : ".") + rest + " %";
}

void DrawRow(Pen& pen, double y, double width, const Cells& cells, bool bold) {
  const TextStyle left{3.3, bold};
  const TextStyle figure{3.3, bold, true, false, Align::Right};
  pen.text(kMargin, y + 0.5, 8, cells[0], {3.3, true});
  pen.text(kMargin + 10, y + 0.5, 52, cells[1], left);
  pen.text(kMargin + 64, y + 0.5, 56, cells[2], figure);
  pen.text(kMargin + 124, y + 0.5, 28, cells[3], figure);
  pen.text(kMargin + width - 30, y + 0.5, 30, cells[4], figure);
  pen.line(kMargin, y + kRow, kMargin + width, y + kRow, bold ? 0.3 : 0.1);
}

FlowItem Row(double width, const Cells& cells, bool bold, int head) {
  FlowItem item{kRow, [=](Pen& pen, double y) { DrawRow(pen, y, width, cells, bold); }};
  item.head = head;
  return item;
}

}  // namespace

void AddBalance(Flow& flow, const HeatBalance& balance, double width) {
  const BalanceSums sums = SumsOf(balance);
  flow.items.push_back(SectionHead(kMargin, width, "Metal balance of heat " + HeatInGroups(balance.heat)));
  std::string about = balance.mill + "  \u00B7  " + balance.section + "  \u00B7  " + balance.grade;
  if (!balance.condition.empty()) about += " " + balance.condition;
  if (!balance.papers.empty()) about += "  \u00B7  " + balance.papers;
  flow.items.push_back(TextRow(kMargin, width, about, {3.3}, 1.5));
  flow.items.back().with_next = true;
  const double bar = DrawBalanceBar(nullptr, kMargin, 0, width, balance);
  flow.items.push_back({bar + 1, [=](Pen& pen, double y) { DrawBalanceBar(&pen, kMargin, y, width, balance); }, true});
  const int head = static_cast<int>(flow.repeated.size());
  flow.repeated.push_back(Row(width, {"", "class", "length mm", "mass kg", "of what came in"}, true, -1));
  FlowItem first = flow.repeated.back();
  first.with_next = true;
  flow.items.push_back(first);
  for (const bool in : {true, false}) {
    for (std::size_t i = 0; i < balance.classes.size(); ++i) {
      const BalanceClass& c = balance.classes[i];
      if (c.in != in) continue;
      flow.items.push_back(
          Row(width, {ClassLetter(balance, i), c.name, MmFull(c.length), KgNumber(c.mass), Share(c.length, sums.in)}, false, head));
    }
    flow.items.push_back(Row(width,
                             {"", in ? "sum in" : "sum out", MmFull(in ? sums.in : sums.out), KgNumber(in ? sums.in_mass : sums.out_mass),
                              Share(in ? sums.in : sums.out, sums.in)},
                             true, head));
    flow.items.back().with_next = !in;
  }
  flow.items.push_back({9, [=](Pen& pen, double y) {
                          pen.box(kMargin, y + 1.5, width, 6.4, 0.6);
                          pen.text(kMargin + 2, y + 2.5, width - 4, BalanceCheckWords(balance), {3.6, true});
                        }});
  flow.items.push_back(TextRow(kMargin, width,
                               "Kerf and trim are calculated from the cuts, mass from length and section, "
                               "rounded to the gram; unexplained metal is shown, never spread.",
                               {2.6}, 1));
}

void WriteBalancePdf(const std::string& path, const HeatBalance& balance, const PrintOptions& options, const RecordProof& proof) {
  const double width = PageWidth(options.size) - 2 * kMargin;
  Flow flow;
  const std::string asked = "printed " + ShortTime(options.printed_at) + (options.author.empty() ? "" : " by " + options.author);
  SetRecordHead(flow, {"Metal balance of a heat", balance.heat, asked, "", 0, proof}, width);
  AddBalance(flow, balance, width);
  flow.items.push_back(TextRow(kMargin, width, OwnWorkStatement(), {3.3}));
  WriteFlow(path, flow, options);
}

}  // namespace heatkeep
