// The same plan with fewer set-ups: cuts change places between equal pieces.
#pragma once

#include <cstdint>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator {

// Exchanges cuts between two layouts of equal pieces (section, grade, length, ends, doubt, heat, papers, condition,
// owner, costs) so that one of them becomes a layout there is already, whenever the plan's figures in the aim's order,
// and distinct layouts after them, get smaller. Never worse, passes CheckPlan, keeps the bounds. At most `tries`
// exchanges are looked at, so that equal plans give equal answers.
Plan WithFewerLayouts(const Problem& problem, const Plan& plan, std::int64_t tries = 200'000);

}  // namespace heatkeep::allocator
