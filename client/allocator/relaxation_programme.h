// What the files of the relaxation share: its linear programme and the units it is written in.
#pragma once

#include <ClpSimplex.hpp>
#include <map>
#include <utility>
#include <vector>

#include "client/allocator/relaxation.h"

namespace heatkeep::allocator {

// A key's figures divided by this stand in the linear programme.
inline double UnitOf(const Component& c, std::size_t key) {
  if (key < c.priorities.size()) return 1;
  switch (c.keys[key - c.priorities.size()]) {
    case Key::NewLength:
    case Key::ConsumedLength:
    case Key::LostWorth:
    case Key::Money: return 1e6;
    default: return 1;
  }
}
// A figure times this is what bounds are worked out in, so that rounding multipliers to whole numbers costs little.
inline double ScaleOf(const Component& c, std::size_t key) {
  return UnitOf(c, key) == 1 ? 1099511627776.0 : 1024.0;  // 2^40, 2^10
}

struct Relaxation::Programme {
  ClpSimplex clp;
  std::map<int, int> row_of_source;
  std::map<std::pair<int, std::vector<std::pair<int, int>>>, std::size_t> known;
  int first_pattern = 0;  // columns before it are the u
};

}  // namespace heatkeep::allocator
