// The textbook problem by itself: cuts of `size`, `demand` of each, into as few bins of `capacity` as can be.
#pragma once

#include <cstdint>
#include <functional>
#include <utility>
#include <vector>

namespace heatkeep::allocator {

// Sizes include the kerf, are divided by what they all share, and stand descending; 0 < size <= capacity.
struct Bins {
  std::int64_t capacity = 0;
  std::vector<std::int64_t> size;
  std::vector<int> demand;

  std::int64_t Need() const {
    std::int64_t need = 0;
    for (std::size_t i = 0; i < size.size(); ++i) need += size[i] * demand[i];
    return need;
  }
};

using Fill = std::vector<std::pair<int, int>>;      // (item, count > 0), ascending by item
using Packing = std::vector<std::pair<Fill, int>>;  // with how often
inline std::int64_t BinsIn(const Packing& packing) {
  std::int64_t n = 0;
  for (const auto& [fill, times] : packing) n += times;
  return n;
}

// What bounds the effort: steps of about 1 ns are told to `spend`; `enough` says stop.
struct BinsControl {
  std::function<bool()> enough = [] { return false; };
  std::function<void(std::int64_t)> spend = [](std::int64_t) {};
};

}  // namespace heatkeep::allocator
