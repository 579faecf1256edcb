#include "reports/paper_table.h"

#include <algorithm>
#include <map>
#include <memory>
#include <sstream>

namespace heatkeep {
namespace {

constexpr double kLeastShrunk = 0.76;  // of its size, a little above what a Pen shrinks to

struct Spot {
  double x = 0, width = 0;
  TextStyle head, cell;
};

// One table as laid out; its rows hold it together.
class Laid {
 public:
  Laid(double width, const PaperTable& table, const RowTexts& texts)
      : width_(width), table_(table), texts_(texts), heights_(table.columns.size()) {
    double left = width - table.gap * static_cast<double>(table.columns.size() - 1);
    int open = 0;
    for (const PaperColumn& c : table.columns) {
      left -= c.width;
      open += c.width == 0;
    }
    double x = kMargin;
    for (const PaperColumn& c : table.columns) {
      const double wide = c.width > 0 ? c.width : left / open;
      spots_.push_back({x, wide, HeadStyle(c, wide), {c.height, false, c.mono, false, c.align, c.mono}});
      x += wide + table.gap;
    }
  }

  double HeadHeight() const {
    double height = 0;
    for (std::size_t i = 0; i < spots_.size(); ++i)
      height = std::max(height, ParagraphHeight(table_.columns[i].head, spots_[i].width, spots_[i].head));
    return height + 1.8;
  }

  void PaintHead(Pen& pen, double y, double height) const {
    for (std::size_t i = 0; i < spots_.size(); ++i)
      pen.paragraph(spots_[i].x, y + 0.7, spots_[i].width, table_.columns[i].head, spots_[i].head);
    pen.line(kMargin, y + height - 0.2, kMargin + width_, y + height - 0.2, 0.3);
  }

  double RowHeight(std::size_t row) const {
    double height = table_.least_row - 1.8;
    const std::vector<std::string> texts = texts_(row);
    for (std::size_t i = 0; i < spots_.size(); ++i)
      height = std::max(height, Broken(i) ? HeightOf(i, texts.at(i)) : LineHeight(spots_[i].cell));
    return height + 1.8;
  }

  void PaintRow(Pen& pen, double y, double height, std::size_t row) const {
    const std::vector<std::string> texts = texts_(row);
    for (std::size_t i = 0; i < spots_.size(); ++i) {
      const Spot& s = spots_[i];
      if (table_.columns[i].draw) table_.columns[i].draw(pen, s.x, y, s.width, row);
      else if (Broken(i) && HeightOf(i, texts[i]) > LineHeight(s.cell)) pen.paragraph(s.x, y + 0.7, s.width, texts[i], s.cell);
      else pen.text(s.x, y + 0.7, s.width, texts[i], s.cell);
    }
    pen.line(kMargin, y + height - 0.2, kMargin + width_, y + height - 0.2, 0.1);
  }

 private:
  // Small enough for the longest word of the head to stand whole, if that is enough.
  static TextStyle HeadStyle(const PaperColumn& column, double width) {
    TextStyle style{2.6, true, false, false, column.align};
    std::istringstream words(column.head);
    double widest = 0;
    for (std::string word; words >> word;) widest = std::max(widest, TextWidthMm(word, style));
    if (widest > width) style.height *= std::max(kLeastShrunk, width / widest * 0.99);
    return style;
  }

  bool Broken(std::size_t column) const { return !table_.columns[column].whole && !table_.columns[column].draw; }

  // The same few words stand in a column again and again.
  double HeightOf(std::size_t column, const std::string& text) const {
    std::map<std::string, double>& known = heights_[column];
    const auto found = known.find(text);
    if (found != known.end()) return found->second;
    if (known.size() > 1000) known.clear();
    const Spot& s = spots_[column];
    const bool one_line = table_.columns[column].shrinks && TextWidthMm(text, s.cell) <= s.width / kLeastShrunk;
    return known[text] = one_line ? LineHeight(s.cell) : ParagraphHeight(text, s.width, s.cell);
  }

  double width_;
  PaperTable table_;
  RowTexts texts_;
  std::vector<Spot> spots_;
  mutable std::vector<std::map<std::string, double>> heights_;
};

}  // namespace

void AddTable(Flow& flow, double width, const PaperTable& table, std::size_t rows, const RowTexts& texts,
              const std::function<void(std::size_t)>& laid_out) {
  const auto laid = std::make_shared<Laid>(width, table, texts);
  const int head = static_cast<int>(flow.repeated.size());
  const double head_height = laid->HeadHeight();
  flow.repeated.push_back({head_height, [=](Pen& pen, double y) { laid->PaintHead(pen, y, head_height); }});
  flow.items.push_back(flow.repeated.back());
  flow.items.back().with_next = true;
  for (std::size_t row = 0; row < rows; ++row) {
    const double height = laid->RowHeight(row);
    flow.items.push_back({height, [=](Pen& pen, double y) { laid->PaintRow(pen, y, height, row); }, false, head});
    if (laid_out) laid_out(row);
  }
}

void AddTable(Flow& flow, double width, const std::vector<PaperColumn>& columns, const std::vector<std::vector<std::string>>& rows) {
  AddTable(flow, width, PaperTable{columns}, rows.size(), [rows](std::size_t row) { return rows[row]; });
}

}  // namespace heatkeep
