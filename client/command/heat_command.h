// heatkeep heat check: a heat's values against the published limits of a grade, without a book.
#pragma once

#include <iosfwd>
#include <string>
#include <vector>

namespace heatkeep::command {

struct HeatCheckOptions {
  std::string grade;                  // designation, number or UNS number
  std::vector<std::string> analyses;  // "C=0.41 Mn=0.86"; several only of a product, one unit
  bool product = false;
  std::string method = "absolute";
  std::string rm, re, a;        // MPa, MPa, %; empty: not given
  std::string size, condition;  // "50mm", "+QT"; empty: not given
  bool json = false;
};

// 0 conforms, 1 violates or is incomplete, 2 with what is wrong on `err` and nothing on `out`.
int RunHeatCheck(const HeatCheckOptions& options, std::ostream& out, std::ostream& err);

}  // namespace heatkeep::command
