// How the list of a day is cut from what is there: the ways that are compared.
//   new-bar      always a new bar; what is left goes on the rack and stays there
//   plain        by hand: the shortest drop that fits, longest cuts first
//   from-memory  as plain, but of the drops on the rack each comes to mind only with a chance of 6 in 10 that day
//   drops-first  the allocator, for the least new metal
//   least-money  the plan of least money among several of the allocator's and those by hand, by what drops are worth in
//                the group's own past so far (learned_choice.h); once a month that is worked out anew and the drops
//                that do not earn their place are scrapped
#pragma once

#include <string>
#include <vector>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::year {

enum class Policy { NewBar, FromMemory, Plain, DropsFirst, LeastMoney };

const std::vector<Policy>& AllPolicies();
std::string NameOf(Policy policy);
// Throws std::invalid_argument, naming those there are.
Policy PolicyNamed(const std::string& name);

// The plan of one group's list of one day. It has passed allocator::CheckPlan; throws std::logic_error if not.
allocator::Plan PlanOf(Policy policy, allocator::Problem problem, int iterations);

}  // namespace heatkeep::year
