// Bars that one stroke of the saw can cut together, and plans with fewer different ways of cutting.
#pragma once

#include <vector>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator {

struct Bundle {
  std::vector<int> layouts;  // indices into Plan::layouts
  int bars = 0;              // pieces in all, repeats counted
};

// Layouts that are cut alike: the same cut lengths in the same numbers from pieces of the same section, grade, condition,
// owner, length and square ends under the same rules; of the same heat as well where a line cut from them limits its heats. Every
// layout is in exactly one bundle, which may be of one; in the order of their first layouts. At most `at_a_time` bars are in one
// (0: as many as there are) unless a layout that is repeated has more.
std::vector<Bundle> BundlesOf(const Problem& problem, const Plan& plan, int at_a_time = 0);

}  // namespace heatkeep::allocator
