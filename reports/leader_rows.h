// Rows and places of leader labels (the mathematics is in piece_bar_layout.h): labels keep their order, no
// two overlap, and no label lies on another's stem. A single row centres a label under its run as far as its
// neighbours allow; with more rows a label starts at its stem.
#pragma once

#include <optional>
#include <vector>

namespace heatkeep {

struct LeaderRows {
  int rows = 0;
  std::vector<int> row;       // 0 is nearest to the bar
  std::vector<double> start;  // left edge of each label; its stem is there when rows > 1
};

// Requires widths.size() = wanted.size(), wanted in rising order of their runs. Returns the smallest number
// of rows <= most_rows that fits between left and right, or nothing.
std::optional<LeaderRows> FindLeaderRows(const std::vector<double>& wanted, const std::vector<double>& widths, double left, double right,
                                         double gap, int most_rows);

}  // namespace heatkeep
