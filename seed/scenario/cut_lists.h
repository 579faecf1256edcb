// The planner's three cut lists, of some 20, 60 and 150 lines. All three together take at most 60 % of any
// group, and a plain rack can serve them, but for the few lines at the end of the third that no metal is
// there for.
#pragma once

#include <string>

#include "seed/scenario/stock.h"

namespace heatkeep::scenario {

struct CutLists {
  std::string a;  // commas, points
  std::string b;  // semicolons, decimal commas, Windows-1252, \r\n
  std::string c;  // commas, points, some inch lengths
};

CutLists make_cut_lists(const Stock& stock);

}  // namespace heatkeep::scenario
