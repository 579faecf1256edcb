// The search for the best plan of one component: quick plans, the exact answer where it is small, then key by key
// a bound from lengths alone, the linear relaxation with its bound, and whole plans made from it.
//
// Effort is counted in steps of work, not in seconds, so that it ends at the same point on every machine. The aim's
// leading key has most of it; the keys after it as much as a component of that size is worth, and where the aim is
// the number of bars of one length, no more than the leading key took.
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
  std::function<void(std::int64_t)> spend = [](std::int64_t) {};                       // told how much was worked, in steps of about 1 ns
  std::function<void(const ComponentResult&)> better = [](const ComponentResult&) {};  // a plan or a bound is
};

ComponentResult SearchComponent(const Component& c, const SearchControl& control);

}  // namespace heatkeep::allocator
