// A plain table in a flow: a head that is repeated on a new page, cells that break into lines, a thin line
// under each row. The words of a row are asked for when it is laid out and again when it is painted, and not kept.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "reports/paper.h"

namespace heatkeep {

struct PaperColumn {
  std::string head;
  double width = 0;  // mm; 0: what the others leave, shared evenly
  Align align = Align::Left;
  bool mono = false;  // numbers that are read off: every 0 slashed
  double height = 3.0;
  bool whole = false;                                                                      // one line, whatever it takes
  bool shrinks = false;                                                                    // one line where shrinking is enough for it
  std::function<void(Pen&, double x, double y, double width, std::size_t row)> draw = {};  // instead of the row's words
};

struct PaperTable {
  std::vector<PaperColumn> columns;
  double gap = 3;        // between columns
  double least_row = 0;  // height of a row where it is written in by hand; 0: as high as its words
};

// As many texts as there are columns.
using RowTexts = std::function<std::vector<std::string>(std::size_t row)>;

// `laid_out` is told of every row.
void AddTable(Flow& flow, double width, const PaperTable& table, std::size_t rows, const RowTexts& texts,
              const std::function<void(std::size_t row)>& laid_out = {});
void AddTable(Flow& flow, double width, const std::vector<PaperColumn>& columns, const std::vector<std::vector<std::string>>& rows);

}  // namespace heatkeep
