// The dearest fill of one bin under whole prices of the cuts: a knapsack with bounded numbers, solved exactly.
//
// Few cells: a table over the capacity. Many: the list of the fills that are not beaten by a lighter one, cuts in
// order of price per size, without those that cannot come above what is known; a table if the list grows too long; and
// where that is too big as well, only a figure that no fill is worth more than.
#pragma once

#include <cstdint>
#include <vector>

#include "client/allocator/bins.h"

namespace heatkeep::allocator {

class DearestFill {
 public:
  explicit DearestFill(const Bins& bins) : bins_(bins) {}

  // The most that one fill of at most `demand` is worth, or `above` if none is worth more. Prices are >= 0, their sum
  // over a bin below 2^52. `fills` are up to `most` fills worth more than `above`: the dearest, then others that the
  // demand allows beside it, dearest first.
  std::int64_t Find(const std::vector<std::int64_t>& price, const std::vector<int>& demand, std::int64_t above, std::size_t most,
                    std::vector<Fill>& fills);

  std::int64_t steps() const { return steps_; }

 private:
  struct Chunk {
    int item, count;
    std::int64_t size, price;
  };
  struct State {
    std::int64_t size, price;
    std::int32_t from, chunk;
  };
  std::int64_t Table(std::int64_t above);
  bool List(std::int64_t& above);
  Fill FillOf(std::size_t candidate);

  const Bins& bins_;
  std::vector<Chunk> chunks_;
  std::vector<double> ratio_;  // the best price per size from a chunk on
  std::vector<double> best_;
  std::vector<std::vector<char>> taken_;
  std::vector<State> states_;
  std::vector<std::int32_t> list_, next_;
  std::vector<std::pair<std::int64_t, std::int32_t>> candidates_;  // price, last chunk or state
  bool listed_ = false;
  std::int64_t steps_ = 0;
};

}  // namespace heatkeep::allocator
