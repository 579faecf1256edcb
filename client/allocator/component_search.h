// The search for the best plan of one component: quick plans, the exact answer where it is small, then key by key
// the linear relaxation with its bound, and whole plans made from it.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "client/allocator/component.h"

namespace heatkeep::allocator {

// bounds[k] belongs to score[k]; it is given only if every key before k is proved. `proved` counts the leading
// entries of the score that equal their bound.
struct ComponentResult {
  Solution best;
  std::vector<std::optional<std::int64_t>> bounds;
  std::size_t proved = 0;
  bool interrupted = false;  // enough() ended it before proof or budget did
};

// What a search may use and whom it tells. All of it may be called from the thread that searches.
struct SearchControl {
  std::function<bool()> enough = [] { return false; };  // the clock or the person says stop
  std::function<double()> seconds_left = [] { return 1e9; };
  int iterations = 1000;
  std::uint64_t seed = 1;
  std::function<void(const ComponentResult&)> better = [](const ComponentResult&) {};  // a plan or a bound is
};

ComponentResult SearchComponent(const Component& c, const SearchControl& control);

}  // namespace heatkeep::allocator
