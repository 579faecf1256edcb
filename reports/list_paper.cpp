#include <QPainter>
#include <algorithm>

#include "reports/curves.h"
#include "reports/flow_parts.h"
#include "reports/list_report.h"
#include "reports/sheet_words.h"

namespace heatkeep {
namespace {

constexpr double kGap = 2;  // between columns

struct Spot {
  double x, width;
};

std::vector<Spot> SpotsOf(const ListReport& list, double width) {
  double shares = 0;
  for (const ListColumn& c : list.columns) shares += c.share;
  std::vector<Spot> spots;
  double x = kMargin;
  for (const ListColumn& c : list.columns) {
    const double wide = width * c.share / shares;
    spots.push_back({x, wide - kGap});
    x += wide;
  }
  return spots;
}

TextStyle StyleOf(ListKind kind) {
  TextStyle style{2.9};
  if (kind == ListKind::Mono) style = {2.9, false, true, false, Align::Left, true};
  else if (kind != ListKind::Text) style.align = Align::Right;
  return style;
}

FlowItem Head(const ListReport& list, const std::vector<Spot>& spots, double width) {
  double height = 0;
  const auto style = [](const ListColumn& c) { return TextStyle{2.6, true, false, false, StyleOf(c.kind).align}; };
  for (std::size_t i = 0; i < list.columns.size(); ++i)
    height = std::max(height, ParagraphHeight(HeadOf(list.columns[i], list.currency), spots[i].width, style(list.columns[i])));
  return {height + 2, [=, &list](Pen& pen, double y) {
            for (std::size_t i = 0; i < list.columns.size(); ++i)
              pen.paragraph(spots[i].x, y + 0.6, spots[i].width, HeadOf(list.columns[i], list.currency), style(list.columns[i]));
            pen.line(kMargin, y + height + 1.2, kMargin + width, y + height + 1.2, 0.3);
          }};
}

// Texts break into lines, numbers stand on the first.
FlowItem Row(const ListReport& list, const ListRow& row, const std::vector<Spot>& spots, double width) {
  double height = std::max(LineHeight({2.9}), list.least_row - 1.9);
  for (std::size_t i = 0; i < row.size(); ++i)
    if (list.columns[i].kind == ListKind::Text) height = std::max(height, ParagraphHeight(ShownCell(row[i], ListKind::Text), spots[i].width, StyleOf(ListKind::Text)));
  FlowItem item{height + 1.9, [=, &list, &row](Pen& pen, double y) {
                  for (std::size_t i = 0; i < row.size(); ++i) {
                    const ListKind kind = list.columns[i].kind;
                    const std::string shown = ShownCell(row[i], kind);
                    if (kind == ListKind::Text) pen.paragraph(spots[i].x, y + 0.8, spots[i].width, shown, StyleOf(kind));
                    else pen.text(spots[i].x, y + 0.8, spots[i].width, shown, StyleOf(kind));
                  }
                  pen.line(kMargin, y + height + 1.7, kMargin + width, y + height + 1.7, 0.1);
                }};
  item.head = 0;
  return item;
}

double ChartValue(const Cell& cell, ListKind kind) {
  const auto* value = std::get_if<std::int64_t>(&cell);
  if (!value) return 0;
  const double v = static_cast<double>(*value);
  return kind == ListKind::Percent ? v / 10 : kind == ListKind::Mass ? v / 1000 : kind == ListKind::Money ? v / 100 : kind == ListKind::Count ? v : v / 1e9;
}

FlowItem ChartItem(const ListReport& list, double width) {
  Chart chart{list.what, list.subject, "", list.columns[list.chart_labels].head, 1, {}, true};
  for (const std::size_t i : list.charted) {
    Curve curve{list.columns[i].head, {}, chart.curves.empty(), -1};
    for (const ListRow& row : list.rows) curve.values.push_back(ChartValue(row[i], list.columns[i].kind));
    chart.unit = HeadOf(list.columns[i], list.currency).substr(list.columns[i].head.size());
    if (chart.unit.starts_with(' ')) chart.unit.erase(0, 1);
    chart.curves.push_back(std::move(curve));
  }
  const double height = width * kChartShape;
  return {height + 4, [=](Pen& pen, double y) { PaintChart(pen.painter(), chart, kMargin * pen.dots(), (y + 2) * pen.dots(), width * pen.dots()); }};
}

}  // namespace

void WriteListPdf(const std::string& path, const ListReport& list, const PrintOptions& options) {
  const double width = PageWidth(options.size) - 2 * kMargin;
  const std::vector<Spot> spots = SpotsOf(list, width);
  Flow flow;
  SetRecordHead(flow, {list.what, list.subject, RowCount(list) + "  \u00B7  printed " + ShortTime(options.printed_at), "", 0}, width);
  flow.repeated.push_back(Head(list, spots, width));
  if (!list.charted.empty() && list.rows.size() > 1) flow.items.push_back(ChartItem(list, width));
  if (list.rows.empty()) {
    flow.items.push_back(TextRow(kMargin, width, "Nothing to list.", {3.3}));
  } else {
    flow.items.push_back(flow.repeated[0]);
    flow.items.back().with_next = true;
  }
  for (const ListRow& row : list.rows) flow.items.push_back(Row(list, row, spots, width));
  flow.items.push_back({2, [](Pen&, double) {}});
  flow.items.push_back(TextRow(kMargin, width, CountLine(list), {3.4, true}, 1.5));
  if (!list.note.empty()) flow.items.push_back(TextRow(kMargin, width, list.note, {3.0}));
  WriteFlow(path, flow, options);
}

}  // namespace heatkeep
