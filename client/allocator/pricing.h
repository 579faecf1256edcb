// The best layouts under given prices of the cuts: one dynamic programme for all sources that see the same items.
//
// Prices pi_i >= 0 of one cut of item i and weights w_k >= 0 of the keys are whole numbers (held in doubles, exact
// below 2^53). The profit of a layout q is pi a_q - sum_k w_k c_kq. V(c) = the most that cuts filling c grid cells
// can earn; a source's best profit = max over its c of V(c) + worth of what is left - what taking it costs.
// Grid: the greatest common divisor of the sizes l + k where that is affordable: then profits are exact. Else
//   Tight:  sizes rounded up, so that every layout found fits (used to find layouts);
//   Loose:  sizes rounded down, so that no profit is underestimated (used for bounds).
// Cost: sum of ceil(log2(demand + 1)) over the items x cells, a call.
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "client/allocator/component.h"

namespace heatkeep::allocator {

struct Prices {
  std::vector<double> item;               // by item, whole, >= 0
  std::vector<std::vector<double>> less;  // by view, item: so much less is one cut worth there; empty: nothing
  std::vector<double> weight;             // by key of the component, whole, >= 0
  std::vector<double> source;             // by source, >= 0: what its scarcity costs; only ranks the patterns given back
};

enum class Rounding { Tight, Loose };

class Pricing {
 public:
  // `most_cells` bounds cells x chunks of the programme of one view; beyond it the grid is coarser than exact.
  Pricing(const Component& c, Rounding rounding, std::int64_t most_cells);

  struct Answer {
    std::vector<double> profit;     // by source, not below the true best when Loose or exact; -1e300: nothing fits
    std::vector<Pattern> patterns;  // Tight only, for the `most` sources whose profit is highest above their scarcity
    bool whole = true;              // false: enough() broke it off, and nothing of it counts
  };
  // `demand` bounds the cuts of a layout, `usable` (by source) leaves sources out. Patterns are asked for with most > 0.
  Answer Best(const Prices& prices, const std::vector<int>& demand, const std::vector<char>& usable, std::size_t most,
              const std::function<bool()>& enough);

  bool exact() const { return exact_; }
  std::int64_t work() const { return work_; }  // steps of all calls so far

 private:
  struct Grid {
    std::int64_t cell = 1;
    bool exact = false;
    std::int64_t cells = 0;
  };
  struct Table {  // worth of a rest r = offset + j * cell, in nm
    std::int64_t offset, keep;
    const LearnedWorth* rests;
    std::vector<double> worth;
  };
  void OneView(std::size_t v, const Prices& prices, const std::vector<int>& demand, const std::vector<char>& usable, std::size_t most,
               const std::function<bool()>& enough, Answer& answer);
  const std::vector<double>& WorthTable(std::size_t v, std::int64_t offset, std::int64_t keep, const LearnedWorth* rests);

  const Component& c_;
  std::vector<double> best_;  // room to work in, kept between calls
  std::vector<std::vector<char>> taken_;
  Rounding rounding_;
  bool exact_ = true;
  std::int64_t work_ = 0;
  std::vector<Grid> grids_;                 // by view
  std::vector<std::vector<int>> of_view_;   // sources
  std::vector<std::vector<Table>> tables_;  // by view
};

}  // namespace heatkeep::allocator
