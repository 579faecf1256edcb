// The plan a careful person at the rack makes without a computer, to lay beside the searched one.
//
// Longest cuts first; each into the fullest opened piece that still holds it, else the shortest drop that holds it,
// else the shortest bar. Lines of one heat are placed together: every heat is tried in this way, and the one that
// serves most of them, then opens the least full bar, then pulls the fewest pieces is taken. Where that leaves
// something short, higher priorities go first.
// Cost: lines x (pieces + opened pieces).
#pragma once

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator {

// Nothing is bounded or proved; it passes CheckPlan. Requires a problem that Allocate takes.
Plan PlanByHand(const Problem& problem);

}  // namespace heatkeep::allocator
