#include "reports/stock_list.h"

#include <algorithm>

#include "reports/flow_parts.h"
#include "reports/piece_bar.h"
#include "reports/quantity_text.h"
#include "reports/sheet_words.h"
#include "reports/workbook.h"

namespace heatkeep {
namespace {

constexpr double kRow = 8.6;

struct Columns {
  double tag = 0, bar = 26, what = 0, length = 0, place = 0;
  double width = 0;
};

Columns ColumnsOf(double width) {
  Columns c;
  c.width = width;
  c.what = c.bar + 44;
  c.length = width - 54;
  c.place = width - 30;
  return c;
}

FlowItem Head(const Columns& c) {
  return {5.6, [=](Pen& pen, double y) {
            const TextStyle left{2.6, true};
            const TextStyle right{2.6, true, false, false, Align::Right};
            pen.text(kMargin + c.tag, y + 0.6, c.bar - 1, "tag", left);
            pen.text(kMargin + c.bar, y + 0.6, 42, "piece, to scale", left);
            pen.text(kMargin + c.what, y + 0.6, c.length - c.what - 2, "section, grade; heat, papers", left);
            pen.text(kMargin + c.length, y + 0.6, 22, "length; mass", right);
            pen.text(kMargin + c.place, y + 0.6, 30, "place; state", left);
            pen.line(kMargin, y + 4.9, kMargin + c.width, y + 4.9, 0.3);
          }};
}

FlowItem Row(const StockRow& r, const Columns& c, Length full) {
  FlowItem item{
      kRow, [=](Pen& pen, double y) {
        const double d = pen.dots();
        pen.text(kMargin, y + 1, c.bar - 1, r.tag, {3.4, true, true, false, Align::Left, true});
        pen.text(kMargin, y + 4.7, c.bar - 1,
                 r.kind + (r.owner.empty() || r.owner == "ours" ? "" : ", " + r.owner), {2.6});
        BarView view = TagView((kMargin + c.bar) * d, (y + 2.1) * d, 41 * d, full, d);
        PaintPieceBar(pen.painter(), PieceBarOf(r), view);
        const double wide = c.length - c.what - 2;
        const std::string grade = r.grade + (r.condition.empty() ? "" : " " + r.condition);
        pen.text(kMargin + c.what, y + 0.9, wide, r.section + "  \u00B7  " + grade, {3.1});
        std::string papers =
            (r.heat.empty() ? "heat unknown" : "heat " + r.heat) + (r.mill.empty() ? "" : " " + r.mill);
        if (!r.papers.empty()) papers += "  \u00B7  " + r.papers;
        pen.text(kMargin + c.what, y + 4.7, wide, papers, {2.6});
        const std::string doubt = r.doubt.nm > 0 ? "\u00B1" + MmText(r.doubt) + ", " : "";
        pen.text(kMargin + c.length, y + 0.9, 22, MmText(r.length), {3.1, true, false, false, Align::Right});
        pen.text(kMargin + c.length, y + 4.7, 22, doubt + KgText(r.mass),
                 {2.6, false, false, false, Align::Right});
        pen.text(kMargin + c.place, y + 0.9, 30, r.place, {3.1, true});
        pen.text(kMargin + c.place, y + 4.7, 30, r.state, {2.6});
        pen.line(kMargin, y + kRow - 0.1, kMargin + c.width, y + kRow - 0.1, 0.1);
      }};
  item.head = 0;
  return item;
}

}  // namespace

std::string StockCountLine(const std::vector<StockRow>& rows) {
  if (rows.empty()) return "nothing on hand";
  int drops = 0;
  Length length;
  Mass mass;
  for (const StockRow& row : rows) {
    if (row.kind == "drop") ++drops;
    length += row.length;
    mass += row.mass;
  }
  const int bars = static_cast<int>(rows.size()) - drops;
  std::string text;
  if (drops > 0) text += std::to_string(drops) + (drops == 1 ? " drop, " : " drops, ");
  if (bars > 0) text += std::to_string(bars) + (bars == 1 ? " bar, " : " bars, ");
  return text + MetreText(length) + ", " + KgText(mass);
}

void WriteStockPdf(const std::string& path, const std::string& title, const std::vector<StockRow>& rows,
                   const PrintOptions& options) {
  const double width = PageWidth(options.size) - 2 * kMargin;
  const Columns columns = ColumnsOf(width);
  Flow flow;
  SetRecordHead(flow,
                {"Stock on hand", title,
                 StockCountLine(rows) + "  \u00B7  printed " + ShortTime(options.printed_at), "", 0},
                width);
  flow.repeated.push_back(Head(columns));
  flow.items.push_back(flow.repeated[0]);
  flow.items.back().with_next = true;
  Length full;
  for (const StockRow& row : rows) full = std::max(full, row.length);
  for (const StockRow& row : rows) flow.items.push_back(Row(row, columns, full));
  flow.items.push_back(TextRow(kMargin, width, StockCountLine(rows), {3.5, true}, 1));
  WriteFlow(path, flow, options);
}

void WriteStockXlsx(const std::string& path, const std::string& title, const std::vector<StockRow>& rows,
                    const PrintOptions& options) {
  Table table{"Stock",
              {{"tag", 12},
               {"kind", 8},
               {"grade", 14},
               {"section", 16},
               {"condition", 10},
               {"mill", 14},
               {"heat", 14},
               {"papers", 20},
               {"owner", 18},
               {"place", 10},
               {"state", 12},
               {"length mm", 12, 3},
               {"doubt mm", 10, 1},
               {"mass kg", 12, 3}},
              {}};
  for (const StockRow& r : rows)
    table.rows.push_back({r.tag, r.kind, r.grade, r.section, r.condition, r.mill, r.heat, r.papers, r.owner,
                          r.place, r.state, MmCell(r.length), MmCell(r.doubt), KgCell(r.mass)});
  WriteWorkbook(path, title, {table}, options);
}

}  // namespace heatkeep
