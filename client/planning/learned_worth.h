// What drops and rests are worth in a plan of the book: V(L) of the shop's own past (year/worth_curve.h) where there is enough
// of it, in length of full bar: V(L) / price. Where there is not, or the group has no price, allocator/worth.h's own measure.
// Enough: the shop's lines go back 90 days or more, and five or more past lines are of the group (common practice, no
// source). Lines of the plan itself and of days to come are no past. A group's curve is for the papers most of its pieces
// have. A longer rest is never worth less than a shorter one: it serves what that serves.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <utility>

#include "client/gateway/plan_door.h"
#include "client/year/drop_worth.h"

namespace heatkeep::planning {

// Sets the worth of rests by group and of drops by piece. Answers in words what it was learned from; empty: nothing.
std::string LearnWorth(const PastDemand& past, allocator::Problem& problem);

// The past of a section and grade without the (order, line)s of `planned`, its rack still empty; nothing where there is too little.
std::optional<year::Past> PastOf(const PastDemand& past, const std::string& section, const std::string& grade,
                                 const std::set<std::pair<std::string, std::string>>& planned = {});

}  // namespace heatkeep::planning
