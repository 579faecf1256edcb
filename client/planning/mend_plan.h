// A plan that went wrong at the saw, mended in one transaction: what happened is booked, each as the deed it is, and the rest of the
// plan is made anew.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "client/gateway/replan_door.h"

namespace heatkeep::planning {

// What went wrong; tags as kept. Nothing: the plan is brought up to what the book says now.
struct Mishaps {
  std::vector<std::pair<std::string, Length>> measured = {};  // it is so long
  std::string measured_with = {};                             // the tape or readout; empty: not said
  std::vector<std::string> missing = {};                      // not in their place
  std::vector<std::string> bad = {};                          // not to be cut; quarantined, needs a reason
  std::vector<std::string> unreadable = {};                   // their marks cannot be read; quarantined
  std::string reason = {};
};

struct MendedPlan {
  PlanUnderWay before;
  allocator::Replanned mended;
  MendAnswer done;  // nothing let go or promised where it was only tried
  std::string proof;
  std::vector<std::string> put_back;  // tags at the saw of which nothing is cut any more
};

// `dry`: books nothing. Tries again while others take its pieces: `told` hears in words of each. Throws std::invalid_argument for a
// piece that the plan has not or that is cut already, std::domain_error for a bad piece without a reason; DbError, Stale when others
// keep taking the pieces. Nothing has changed then.
MendedPlan MendPlan(Connection& connection, std::int64_t plan, const Mishaps& mishaps, double seconds, bool dry = false,
                    const std::function<void(const std::string& words)>& told = {});

}  // namespace heatkeep::planning
