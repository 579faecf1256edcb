// Quick plans for one component (without heat units): what a person at the rack would do, and variations of it.
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "client/allocator/component.h"

namespace heatkeep::allocator {

// How a quick plan goes about it.
struct StartStyle {
  bool priority_first = true;     // cuts of a higher priority first; else longest first throughout
  bool drops_longest = false;     // of the drops that fit take the longest, not the shortest
  bool bars_longest = true;       // likewise of the bars
  bool drops_before_bars = true;  // else whatever comes first by length
  bool fill = false;              // fill one piece after another; else each cut into the fullest opened piece it fits
  bool fullest = false;           // with fill: each piece as full as can be (best_fill.h)
  std::uint64_t shuffle = 0;      // 0: strict order by length; else the seed of a small disorder
};

// Requires c.units empty. `demand` and `stock` say what is still to do and to use (by item, by source).
Solution QuickPlan(const Component& c, const StartStyle& style, const std::vector<int>& demand, const std::vector<std::int64_t>& stock);
Solution QuickPlan(const Component& c, const StartStyle& style);

// The plain choice by hand: longest cuts first, into an opened piece if one has room, else the shortest drop that
// fits, else the shortest bar that fits.
StartStyle PlainChoice();

// Moves each pattern to a source in which it costs less, while that helps; keeps the score lexicographically
// no worse. Leaves the solution as it is when stop() says so.
void MoveToCheaper(const Component& c, Solution& solution, const std::function<bool()>& stop);

// A small repeatable source of chance, the same on every machine.
class Chance {
 public:
  explicit Chance(std::uint64_t seed) : state_(seed * 0x9E3779B97F4A7C15ULL + 1) {}
  std::uint64_t Next();
  double Unit() { return static_cast<double>(Next() >> 11) / 9007199254740992.0; }  // 0 <= x < 1

 private:
  std::uint64_t state_;
};

}  // namespace heatkeep::allocator
