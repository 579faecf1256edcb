// How the list of a day is cut from what is there: the ways that are compared.
//   new-bar      always a new bar; what is left goes on the rack and stays there
//   plain        by hand: the shortest drop that fits, longest cuts first
//   drops-first  the allocator, for the least new metal
//   least-money  the allocator, for the least money, with each group's keep length learned from its own past and the
//                drops that do not earn their place taken off the rack once a month
#pragma once

#include <string>
#include <vector>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::year {

enum class Policy { NewBar, Plain, DropsFirst, LeastMoney };

const std::vector<Policy>& AllPolicies();
std::string NameOf(Policy policy);
// Throws std::invalid_argument, naming those there are.
Policy PolicyNamed(const std::string& name);

// The plan of one group's list of one day. It has passed allocator::CheckPlan; throws std::logic_error if not.
allocator::Plan PlanOf(Policy policy, allocator::Problem problem, int iterations);

}  // namespace heatkeep::year
