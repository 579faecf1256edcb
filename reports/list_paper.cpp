#include <QPainter>
#include <algorithm>

#include "reports/bar_chart.h"
#include "reports/curves.h"
#include "reports/flow_parts.h"
#include "reports/list_report.h"
#include "reports/paper_table.h"
#include "reports/piece_bar.h"
#include "reports/sheet_words.h"

namespace heatkeep {
namespace {

double ValueOf(const Cell& cell, ListKind kind) {
  const auto* value = std::get_if<std::int64_t>(&cell);
  return value ? InUnit(*value, kind) : 0;
}

PaperColumn ColumnOf(const ListColumn& c, const std::string& currency) {
  PaperColumn column{HeadOf(c, currency)};
  column.height = 2.9;
  column.mono = c.kind == ListKind::Mono;
  column.whole = c.kind != ListKind::Text;
  column.shrinks = true;
  if (c.kind != ListKind::Text && c.kind != ListKind::Mono && c.kind != ListKind::Bar) column.align = Align::Right;
  return column;
}

// Drawn as a piece that nobody cuts, all of the list to one scale; a drop (column "kind") has its saw mark.
auto BarIn(const ListReport& list, std::size_t at) {
  const auto kind = static_cast<std::size_t>(
      std::find_if(list.columns.begin(), list.columns.end(), [](const ListColumn& c) { return c.key == "kind"; }) - list.columns.begin());
  Length full;
  for (const ListRow& row : list.rows)
    if (const auto* nm = std::get_if<std::int64_t>(&row[at])) full = std::max(full, Length{*nm});
  return [&list, at, kind, full](Pen& pen, double x, double y, double width, std::size_t row) {
    if (row >= list.rows.size()) return;
    const auto* nm = std::get_if<std::int64_t>(&list.rows[row][at]);
    if (!nm || *nm <= 0) return;
    StockRow piece;
    piece.length = {*nm};
    if (kind < list.columns.size()) piece.kind = ShownCell(list.rows[row][kind], ListKind::Text);
    const double d = pen.dots();
    BarView view = TagView(x * d, (y + 0.9) * d, width * d, full, d);
    view.bar_height = 2.6 * d;
    view.symbol = false;
    view.text = view.bar_height * 1.1;  // too high for it: the length stands in its own column
    PaintPieceBar(pen.painter(), PieceBarOf(piece), view);
  };
}

PaperTable TableOf(const ListReport& list, double width) {
  PaperTable table;
  table.gap = 2.2;
  table.least_row = list.least_row;
  double shares = 0;
  for (const ListColumn& c : list.columns) shares += c.share;
  const double room = width - table.gap * static_cast<double>(list.columns.size() - 1);
  for (std::size_t i = 0; i < list.columns.size(); ++i) {
    table.columns.push_back(ColumnOf(list.columns[i], list.currency));
    table.columns.back().width = room * list.columns[i].share / shares;
    if (list.columns[i].kind == ListKind::Bar) table.columns.back().draw = BarIn(list, i);
  }
  return table;
}

std::vector<std::string> TextsOf(const ListReport& list, std::size_t row) {
  std::vector<std::string> texts;
  for (std::size_t i = 0; i < list.columns.size(); ++i) {
    const ListColumn& c = list.columns[i];
    if (c.kind == ListKind::Bar || row >= list.rows.size()) {
      texts.push_back(c.blank);
      continue;
    }
    const auto* text = std::get_if<std::string>(&list.rows[row][i]);
    texts.push_back(text && text->empty() && !c.blank.empty() ? c.blank : ShownCell(list.rows[row][i], c.kind));
  }
  return texts;
}

ChartDrawing Lines(const ListReport& list, const ListChart& drawn, double& height) {
  Chart chart{drawn.title, "", "", drawn.columns[0].head, 1, {}, false};
  for (const ListRow& row : drawn.rows) chart.labels.push_back(ShownCell(row[0], drawn.columns[0].kind));
  for (const std::size_t i : drawn.drawn) {
    const ListColumn& column = drawn.columns[i];
    Curve curve{column.head, {}, chart.curves.empty(), -1};
    for (const ListRow& row : drawn.rows) curve.values.push_back(ValueOf(row[i], column.kind));
    const std::string unit = HeadOf(column, list.currency).substr(column.head.size());
    chart.unit = unit.substr(unit.starts_with(' ') ? 1 : 0);
    chart.curves.push_back(std::move(curve));
  }
  height = kChartHeight;
  return DrawChart(chart);
}

ChartDrawing Bars(const ListReport& list, const ListChart& drawn, double& height) {
  BarChart chart{drawn.title, {}};
  for (const ListRow& row : drawn.rows) {
    BarGroup group{ShownCell(row[0], drawn.columns[0].kind), {}, {}};
    for (const std::size_t i : drawn.drawn) {
      const ListColumn& column = drawn.columns[i];
      group.values.push_back(ValueOf(row[i], column.kind));
      const std::string unit = HeadOf(column, list.currency).substr(column.head.size());
      group.words.push_back((drawn.drawn.size() > 1 ? column.head + " " : "") + ShownCell(row[i], column.kind) + unit);
    }
    chart.groups.push_back(std::move(group));
  }
  height = BarChartHeight(chart);
  return DrawBars(chart);
}

FlowItem ChartItem(const ListReport& list, double width) {
  double height = 0;
  const ChartDrawing drawing = list.chart->bars ? Bars(list, *list.chart, height) : Lines(list, *list.chart, height);
  return {height * width / kChartWidth + 4, [=](Pen& pen, double y) {
            PaintDrawing(pen.painter(), drawing, kMargin * pen.dots(), (y + 2) * pen.dots(), width * pen.dots());
          }};
}

}  // namespace

void WriteListPdf(const std::string& path, const ListReport& list, const PrintOptions& options) {
  const double width = PageWidth(options.size) - 2 * kMargin;
  Flow flow;
  SetRecordHead(
      flow,
      {list.what, list.subject == "all" ? "" : list.subject, RowCount(list) + "  \u00B7  printed " + ShortTime(options.printed_at), "", 0},
      width);
  if (HasChart(list)) flow.items.push_back(ChartItem(list, width));
  const std::size_t rows = list.rows.size() + list.blank_rows;
  if (rows == 0) flow.items.push_back(TextRow(kMargin, width, "Nothing to list.", {3.3}));
  else
    AddTable(
        flow, width, TableOf(list, width), rows, [&list](std::size_t row) { return TextsOf(list, row); },
        [&](std::size_t row) {
          if (options.progress) options.progress("rows laid out", row + 1, rows);
        });
  flow.items.push_back({2, [](Pen&, double) {}});
  flow.items.push_back(TextRow(kMargin, width, CountLine(list), {3.4, true}, 1.5));
  if (!list.note.empty()) flow.items.push_back(TextRow(kMargin, width, list.note, {3.0}));
  WriteFlow(path, flow, options);
}

}  // namespace heatkeep
