// A plan as the deeds commit_plan and replan take it. Part of plan_door.h and replan_door.h.
#pragma once

#include "client/gateway/plan_door.h"

namespace heatkeep {

// What both deeds take: lengths of the saw, status, proof, value, bound, these layouts, shorts.
Json PlanBody(const BookProblem& asked, const allocator::Plan& plan, const std::string& proof, const std::vector<std::size_t>& layouts);

// The "taken" of an answer; empty where nothing was.
std::vector<TakenPiece> TakenOf(const Json& answer);

}  // namespace heatkeep
