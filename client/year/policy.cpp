#include "client/year/policy.h"

#include <stdexcept>

#include "client/allocator/allocate.h"
#include "client/allocator/check_plan.h"
#include "client/year/plain_plan.h"

namespace heatkeep::year {
namespace {

// The budget ends the search, not the clock, so that a year repeats.
constexpr double kSeconds = 600;

allocator::Plan Checked(const allocator::Problem& problem, allocator::Plan plan) {
  if (const auto faults = allocator::CheckPlan(problem, plan); !faults.empty())
    throw std::logic_error("a plan by hand does not pass the check: " + faults.front());
  return plan;
}

}  // namespace

const std::vector<Policy>& AllPolicies() {
  static const std::vector<Policy> all{Policy::NewBar, Policy::FromMemory, Policy::Plain, Policy::DropsFirst, Policy::LeastMoney};
  return all;
}

std::string NameOf(Policy policy) {
  switch (policy) {
    case Policy::NewBar: return "new-bar";
    case Policy::FromMemory: return "from-memory";
    case Policy::Plain: return "plain";
    case Policy::DropsFirst: return "drops-first";
    case Policy::LeastMoney: return "least-money";
  }
  return "";
}

Policy PolicyNamed(const std::string& name) {
  for (const Policy policy : AllPolicies())
    if (NameOf(policy) == name) return policy;
  throw std::invalid_argument("\"" + name + "\" is no policy; expected new-bar, from-memory, plain, drops-first or least-money");
}

allocator::Plan PlanOf(Policy policy, allocator::Problem problem, int iterations) {
  if (policy == Policy::NewBar) return Checked(problem, NewBarPlan(problem));
  if (policy == Policy::Plain || policy == Policy::FromMemory) return Checked(problem, PlainPlan(problem));
  problem.aim = policy == Policy::DropsFirst ? allocator::Aim::DropsFirst : allocator::Aim::LeastMoney;
  problem.limits = {kSeconds, iterations, 1, 1};
  return allocator::Allocate(problem);
}

}  // namespace heatkeep::year
