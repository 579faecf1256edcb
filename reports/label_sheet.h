// Labels on the paper they are printed on: one a page of the label's exact size, or a sheet of several. Bytes repeat for the same
// labels, time and author.
#pragma once

#include <string>
#include <vector>

#include "reports/label_painter.h"

namespace heatkeep {

// Where the labels of a page lie: columns x rows boxes, left to right, then down.
struct LabelPaper {
  double width = 100, height = 50;  // of the page, mm
  int columns = 1, rows = 1;
  double left = 0, top = 0;        // of the first box
  double across = 100, down = 50;  // size of a box
  double gap_x = 0, gap_y = 0;     // between boxes
  bool outline = false;            // a hairline around each box, for plain paper that is cut apart

  int Boxes() const { return columns * rows; }
};

// "100x50", "62x29": a page a label. "a4", "letter": two columns of five, 100 x 50 and 101.6 x 50.8 mm. Throws BadText.
LabelPaper PaperCalled(const std::string& name);

// A sheet divided otherwise: "3x9" and the margins at the left and top, "5x10" mm (the same at the right and bottom), and the gaps
// between boxes, "2.5x0". Throws BadText; boxes below 59 x 28 mm are refused.
LabelPaper Divided(LabelPaper sheet, const std::string& grid, const std::string& margins, const std::string& gaps);

// Pages that `count` labels take from box `start` (1 is the first) of the first page.
int PagesFor(const LabelPaper& paper, std::size_t count, int start);

// Throws std::invalid_argument for a start that the paper has not and for labels that do not fit (label_painter.h), before anything is
// written; std::runtime_error with the path where the file cannot be written, and an older file stays as it was.
void WriteLabels(const std::string& path, const std::vector<LabelFace>& faces, const LabelPaper& paper, const LabelLook& look, int start,
                 const PrintOptions& options);

}  // namespace heatkeep
