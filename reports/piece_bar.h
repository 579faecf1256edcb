// The one painter of the piece bar: table cells, the saw station, paper and tags all draw with it.
// A bar is to scale (piece_bar_layout.h); trim, kerf and grip are at least one line wide; texts that do not
// fit get leader lines or, in a table cell or on a tag, are left out. Colours come from palette.h.
// PaintSession() must have been called.
#pragma once

#include <string>
#include <vector>

#include "reports/bar_ruler.h"
#include "reports/palette.h"
#include "reports/piece_bar_layout.h"

class QPainter;
class QRectF;

namespace heatkeep {

// Letters A, B, ... Z, AA, ... for the orders of one view, in order of appearance.
class OrderLetters {
 public:
  int index(const std::string& order);
  static std::string letter(int index);
  const std::vector<std::string>& orders() const { return orders_; }

 private:
  std::vector<std::string> orders_;
};

PieceBar PieceBarOf(const SheetBlock& block, OrderLetters& letters);
// A piece nobody cuts: a full bar has square ends, a drop one saw mark.
PieceBar PieceBarOf(const StockRow& row);

// All lengths in the painter's logical units.
struct BarView {
  double x = 0, y = 0, width = 0;  // symbol, bar and labels stay inside x .. x + width
  double bar_height = 0;
  double text = 0;          // height of the text
  double line = 1;          // width of an outline
  bool symbol = true;       // section symbol with its size at the left
  double symbol_width = 0;  // room for it: SymbolWidth of the view's bars; 0: for a view of one bar
  bool ruler = false;
  int leader_rows = 6;
  Length full;  // the longest piece of the view: one scale for all its bars
  Units units = Units::Metric;
  Scheme scheme = Scheme::Light;
  std::string keep_word = "keep", scrap_word = "scrap";
};

// The four places a bar is drawn at; `unit` is one pixel (times the screen's factor) or one mm in logical
// units.
BarView TableCellView(double x, double y, double width, Length full, double pixel = 1);  // 18 px high
BarView StationView(double x, double y, double width, Length full, double pixel = 1);    // 120 px high
BarView PaperView(double x, double y, double width, Length full, double mm);             // a bar of 9 mm
BarView TagView(double x, double y, double width, Length full, double mm);               // a bar of 4 mm

// Room for the section symbols of a view, so that all its bars begin at one x.
double SymbolWidth(const std::vector<PieceBar>& bars, const BarView& view);

// Height from y to the lowest line of PaintPieceBar with the same arguments.
double PieceBarHeight(const PieceBar& bar, const BarView& view);

// Where the parts of the bar are, as painted (for hit tests and for lighting one cut).
BarLayout PieceBarLayout(const PieceBar& bar, const BarView& view);

// Paints; returns the height used. `lit_run` >= 0 marks that run as the next to cut.
double PaintPieceBar(QPainter& painter, const PieceBar& bar, const BarView& view, int lit_run = -1);

}  // namespace heatkeep
