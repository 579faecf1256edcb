// What a person does at the rack without a program, as a plan that can be checked and counted like any other.
//
// A new bar every time: longest cuts first. When one of the bar lengths holds all that is left of the list, the
//   shortest such; else the longest bar there. It is filled with the longest cuts that fit. Drops are never taken.
// The plain choice: for the longest cut left the shortest drop that gives it, filled with the longest cuts that
//   still fit; only when no drop gives it, a new bar as above.
// Requires own pieces only, free, of one group; no heats, papers, doubt or priorities are looked at.
#pragma once

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::year {

allocator::Plan NewBarPlan(const allocator::Problem& problem);
allocator::Plan PlainPlan(const allocator::Problem& problem);

}  // namespace heatkeep::year
