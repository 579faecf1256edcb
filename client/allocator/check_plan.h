// An independent, slow and obvious check of a plan against its problem. It shares no arithmetic, no table of
// eligibility and no valuation with the search: everything is worked out again here from the rules of the metal.
#pragma once

#include <string>
#include <vector>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator {

// What is wrong with the plan, in words; empty means it can be cut as it stands and is worth what it says:
// lengths add up to the nanometre, grip and far ends are respected, every cut may come from its piece, no piece is
// used more often than it exists, no line gets too many, heats are as asked, shorts name exactly what is missing,
// every figure of the value is right, no bound is above its value, and nothing is called proved that is not.
std::vector<std::string> CheckPlan(const Problem& problem, const Plan& plan);

}  // namespace heatkeep::allocator
