// What a plan opens and how near the best possible it is, in one sentence for people.
#pragma once

#include <string>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator {

// "takes 12 drops, opens 3 full bars, 18.3 m; no plan opens less (proved)", "...; at most 0.4 m from the best possible",
// with what cannot be served in front. Says nothing of the bound where none was computed.
std::string ProofWords(const Problem& problem, const Plan& plan);

}  // namespace heatkeep::allocator
