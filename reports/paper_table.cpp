#include "reports/paper_table.h"

#include <algorithm>

namespace heatkeep {
namespace {

constexpr double kGap = 3;

struct Cell {
  double x, width;
  std::string text;
  TextStyle style;
};

std::vector<double> Widths(double width, const std::vector<PaperColumn>& columns) {
  double left = width - kGap * static_cast<double>(columns.size() - 1);
  int open = 0;
  for (const PaperColumn& c : columns) {
    left -= c.width;
    open += c.width == 0;
  }
  std::vector<double> widths;
  for (const PaperColumn& c : columns) widths.push_back(c.width > 0 ? c.width : left / open);
  return widths;
}

std::vector<Cell> Cells(double width, const std::vector<PaperColumn>& columns,
                        const std::vector<std::string>& texts, bool head) {
  const std::vector<double> widths = Widths(width, columns);
  std::vector<Cell> cells;
  double x = kMargin;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    TextStyle style{head ? 2.6 : columns[i].height, head, columns[i].mono && !head, false, columns[i].align,
                    columns[i].mono && !head};
    cells.push_back({x, widths[i], texts.at(i), style});
    x += widths[i] + kGap;
  }
  return cells;
}

FlowItem Row(const std::vector<Cell>& cells, double width, bool head) {
  double height = 0;
  for (const Cell& c : cells) height = std::max(height, ParagraphHeight(c.text, c.width, c.style));
  height += 1.8;
  return {height, [=](Pen& pen, double y) {
            for (const Cell& c : cells) pen.paragraph(c.x, y + 0.7, c.width, c.text, c.style);
            pen.line(kMargin, y + height - 0.2, kMargin + width, y + height - 0.2, head ? 0.3 : 0.1);
          }};
}

}  // namespace

void AddTable(Flow& flow, double width, const std::vector<PaperColumn>& columns,
              const std::vector<std::vector<std::string>>& rows) {
  std::vector<std::string> heads;
  for (const PaperColumn& c : columns) heads.push_back(c.head);
  const int head = static_cast<int>(flow.repeated.size());
  flow.repeated.push_back(Row(Cells(width, columns, heads, true), width, true));
  flow.items.push_back(flow.repeated.back());
  flow.items.back().with_next = true;
  for (const auto& row : rows) {
    flow.items.push_back(Row(Cells(width, columns, row, false), width, false));
    flow.items.back().head = head;
  }
}

}  // namespace heatkeep
