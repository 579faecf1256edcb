// A plain table in a flow: a head that is repeated on a new page, cells that break into lines, a thin line
// under each row.
#pragma once

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
};

// Each row has as many cells as there are columns.
void AddTable(Flow& flow, double width, const std::vector<PaperColumn>& columns,
              const std::vector<std::vector<std::string>>& rows);

}  // namespace heatkeep
