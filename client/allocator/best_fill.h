// The fullest layout of one piece that holds a given cut: the subset sums of the cuts still to do, 64 cells a word.
//
// Grid: the greatest common divisor of the sizes l + k where the longest room has at most kCells of it, else a coarser
// one with sizes rounded up (the layout fits, but a fuller one may be missed).
// Cost: sum of log2(demand) over the items x cells / 64.
#pragma once

#include <cstdint>
#include <utility>
#include <vector>

#include "client/allocator/component.h"

namespace heatkeep::allocator {

class BestFill {
 public:
  static constexpr std::int64_t kCells = 120'000;
  explicit BestFill(const Component& c);

  // Cuts (item, count) of a layout of `source` with at least one of `first`, as full as can be; among equally full
  // ones it takes what comes early in `order`. Empty if not even `first` fits. `demand` is by item.
  std::vector<std::pair<int, int>> Fill(int source, int first, const std::vector<int>& demand, const std::vector<int>& order);

 private:
  const Component& c_;
  std::vector<std::int64_t> cell_;  // by view
  std::vector<char> exact_;         // is the grid of that view exact?
  std::vector<std::vector<std::uint64_t>> reach_;
};

}  // namespace heatkeep::allocator
