// A plan from layouts that were made or mended outside the search.
#pragma once

#include <vector>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator {

// The plan of these layouts: equal ones put together, in the order of their pieces, with its value and what is short.
// Nothing is bounded or proved. Throws std::logic_error, naming the fault, if it does not pass CheckPlan.
Plan PlanOfLayouts(const Problem& problem, const std::vector<Layout>& layouts);

// Gives `plan` the bounds of `other`, a plan of the same problem, as far as they hold for it in the aim's order, and
// proves what equals its bound. Requires that `plan` is not better than the bounds.
void TakeBounds(const Problem& problem, const Plan& other, Plan& plan);

// Every figure of the aim, most important first: unmet by priority, then the keys of the aim; then distinct layouts
// and pieces pulled where the aim has them not. Of two plans of one problem the smaller is the better.
std::vector<std::int64_t> FiguresOf(const Problem& problem, const Value& value);

}  // namespace heatkeep::allocator
