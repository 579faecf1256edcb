#include "reports/piece_bar.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>

#include "reports/bar_strokes.h"
#include "reports/paint_session.h"
#include "reports/section_symbol.h"
#include "schema/terms/length_text.h"

namespace heatkeep {
namespace {

constexpr double kEm = 0.86;  // font pixel size of a text line of height 1
double RulerHeight(const BarView& view) { return view.ruler ? view.text * 1.5 : 0; }

double TextWidthOf(const std::string& text, double height) {
  return QFontMetricsF(PaintFont(Face::Sans, height * kEm)).horizontalAdvance(QString::fromStdString(text));
}

double SymbolRoom(const PieceBar& bar, const BarView& view) {
  if (!view.symbol) return 0;
  if (view.symbol_width > 0) return view.symbol_width;
  return view.bar_height + view.text * 0.3 + TextWidthOf(SectionSize(bar.section), view.text) + view.text * 0.8;
}

std::string LengthWords(Length length, Units units) {
  if (units == Units::Metric) return WriteMm(length);
  return units == Units::Inch && length.nm % (kNmPerInch / 64) == 0 ? WriteInchFraction(length, 64) : WriteInchDecimal(length);
}

std::string RestWords(Length length, Units units) {
  if (units == Units::Metric) return WriteMm({length.nm - length.nm % kNmPerMm});
  return units == Units::Inch ? WriteInchFraction(length, 16, Rounding::Down) : WriteInchDecimal(length, 3, Rounding::Down);
}

}  // namespace

int OrderLetters::index(const std::string& order) {
  const auto found = std::find(orders_.begin(), orders_.end(), order);
  if (found != orders_.end()) return static_cast<int>(found - orders_.begin());
  orders_.push_back(order);
  return static_cast<int>(orders_.size()) - 1;
}

std::string OrderLetters::letter(int index) {
  std::string text;
  for (int i = index; i >= 0; i = i / 26 - 1) text.insert(text.begin(), static_cast<char>('A' + i % 26));
  return text;
}

PieceBar PieceBarOf(const SheetBlock& block, OrderLetters& letters) {
  PieceBar bar;
  bar.length = block.length;
  bar.trim = block.trim;
  bar.kerf_each = block.kerf_each;
  bar.kerf_all = block.kerf_all;
  bar.grip = block.grip;
  bar.left = block.left;
  bar.fate = block.fate;
  bar.section = block.section;
  bar.marked_first = block.mark_end == "first" || block.mark_end == "both";
  bar.marked_last = block.mark_end == "last" || block.mark_end == "both";
  bar.sawn_first = block.kind == "drop";
  bar.sawn_last = block.kind == "drop" && block.mark_end == "none";
  for (const SheetCut& cut : block.cuts) {
    const int order = letters.index(cut.order);
    bar.runs.push_back({cut.set, cut.count, order, OrderLetters::letter(order)});
  }
  return bar;
}

PieceBar PieceBarOf(const StockRow& row) {
  PieceBar bar;
  bar.length = bar.left = row.length;
  bar.section = row.section;
  bar.sawn_first = row.kind == "drop";
  return bar;
}

BarView TableCellView(double x, double y, double width, Length full, double pixel) {
  BarView view{x, y + 2 * pixel, width, 14 * pixel, 11 * pixel, pixel, false, 0, false, 0, full};
  return view;
}

BarView StationView(double x, double y, double width, Length full, double pixel) {
  BarView view{x, y, width, 54 * pixel, 17 * pixel, pixel, true, 0, true, 1, full};
  return view;
}

BarView PaperView(double x, double y, double width, Length full, double mm) {
  BarView view{x, y, width, 9 * mm, 2.9 * mm, 0.2 * mm, true, 0, true, 6, full};
  view.scheme = Scheme::Paper;
  view.keep_word = "KEEP";
  view.scrap_word = "SCRAP";
  return view;
}

BarView TagView(double x, double y, double width, Length full, double mm) {
  BarView view{x, y, width, 4 * mm, 2.5 * mm, 0.15 * mm, false, 0, false, 0, full};
  view.scheme = Scheme::Paper;
  return view;
}

BarLayout PieceBarLayout(const PieceBar& bar, const BarView& view) {
  const double room = SymbolRoom(bar, view);
  BarBox box;
  box.x = view.x + room;
  box.y = view.y + RulerHeight(view);
  box.width = view.width - room - view.line;
  box.height = view.bar_height;
  box.text = view.text;
  box.leader_rows = view.leader_rows;
  box.full = view.full;
  box.keep_word = view.keep_word;
  box.scrap_word = view.scrap_word;
  return LayOutBar(
      bar, box, [&](const std::string& text) { return TextWidthOf(text, view.text); },
      [&](Length length) { return LengthWords(length, view.units); }, [&](Length length) { return RestWords(length, view.units); });
}

double SymbolWidth(const std::vector<PieceBar>& bars, const BarView& view) {
  double width = 0;
  for (const PieceBar& bar : bars) width = std::max(width, SymbolRoom(bar, view));
  return width;
}

double PieceBarHeight(const PieceBar& bar, const BarView& view) { return PieceBarLayout(bar, view).bottom - view.y + view.line; }

double PaintPieceBar(QPainter& painter, const PieceBar& bar, const BarView& view, int lit_run) {
  const BarLayout layout = PieceBarLayout(bar, view);
  painter.save();
  painter.setFont(PaintFont(Face::Sans, view.text * kEm));
  if (view.symbol) {
    const QRectF box(view.x, layout.box.y, view.bar_height, view.bar_height);
    PaintSectionSymbol(painter, box, ShapeOfWords(bar.section), view.line, view.scheme);
    const double left = view.x + view.bar_height + view.text * 0.3;
    PaintBarText(painter, {left, layout.box.y, layout.box.x - left - view.text * 0.5, view.bar_height}, SectionSize(bar.section), Use::Text,
                 view.scheme);
  }
  if (view.ruler) PaintRuler(painter, layout, view);
  PaintBar(painter, layout, view, lit_run);
  PaintLeaders(painter, layout, view);
  painter.restore();
  return layout.bottom - view.y + view.line;
}

}  // namespace heatkeep
