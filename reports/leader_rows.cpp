#include "reports/leader_rows.h"

#include <algorithm>
#include <cstddef>

namespace heatkeep {
namespace {

int RowOf(std::size_t i, int rows) { return rows - 1 - static_cast<int>(i % static_cast<std::size_t>(rows)); }

std::optional<LeaderRows> WithRows(const std::vector<double>& wanted, const std::vector<double>& widths, double left, double right,
                                   double gap, int rows) {
  const std::size_t n = wanted.size();
  LeaderRows out;
  out.rows = rows;
  out.start.assign(n, 0.0);
  for (std::size_t i = 0; i < n; ++i) out.row.push_back(RowOf(i, rows));
  const auto apart = [&](std::size_t i, std::size_t j) { return out.row[j] >= out.row[i] ? widths[i] + gap : gap; };
  // The leftmost packing says whether it can fit at all; the wished places are pushed right, then back left.
  std::vector<double> packed(n, left);
  for (std::size_t j = 0; j < n; ++j) {
    out.start[j] = std::max(left, wanted[j]);
    for (std::size_t i = 0; i < j; ++i) {
      packed[j] = std::max(packed[j], packed[i] + apart(i, j));
      out.start[j] = std::max(out.start[j], out.start[i] + apart(i, j));
    }
    if (packed[j] + widths[j] > right) return std::nullopt;
  }
  for (std::size_t back = n; back-- > 0;) {
    out.start[back] = std::min(out.start[back], right - widths[back]);
    for (std::size_t j = back + 1; j < n; ++j) out.start[back] = std::min(out.start[back], out.start[j] - apart(back, j));
    if (out.start[back] < left - 1e-6) return std::nullopt;
  }
  return out;
}

}  // namespace

std::optional<LeaderRows> FindLeaderRows(const std::vector<double>& wanted, const std::vector<double>& widths, double left, double right,
                                         double gap, int most_rows) {
  for (int rows = 1; rows <= most_rows; ++rows)
    if (auto fit = WithRows(wanted, widths, left, right, gap, rows)) return fit;
  return std::nullopt;
}

}  // namespace heatkeep
