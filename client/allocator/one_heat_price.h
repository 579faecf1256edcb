// What the wish for one heat, or for at most so many, costs: the same problem planned with the wish and freed of it.
#pragma once

#include <optional>
#include <string>

#include "client/allocator/compare.h"
#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator {

struct OneHeatPrice {
  Plan free;              // the plan without the wish; of FreedOfHeats(problem)
  Difference difference;  // the plan with the wish less the free one
  int heats = 0;          // the most heats one of the wishes has in the free plan
  std::string words;      // "one heat costs more than 2 heats: 1.80 m more full bar, 71.0 kg, 12.40 dearer"
};

// The problem with no line asking for its heats to be few.
Problem FreedOfHeats(const Problem& problem);

// Nothing where no line limits its heats. `plan` is the plan of `problem` with the wish. The free plan takes as long as
// problem.limits says. `words` say so when the free plan could not be shown to be the best.
std::optional<OneHeatPrice> PriceOfOneHeat(const Problem& problem, const Plan& plan);

}  // namespace heatkeep::allocator
