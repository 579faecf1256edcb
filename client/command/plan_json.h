// The plan file: one JSON object that says what is cut from what, what that is worth and how near the best it is.
// Keys as in the plan's own names; lengths in whole nanometres (..._nm), money in units of the currency with two
// decimals, only for the aim least-money. `bound` holds only what was really bounded.
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"
#include "client/command/extras_words.h"

namespace heatkeep::command {

// "drops-first", "least-money", "fewest-bars", "least-metres".
std::string AimName(allocator::Aim aim);

// "proof", "budget", "clock", "stopped".
std::string NameOf(allocator::EndedBy end);

// The "value" and the "bound" of the file.
nlohmann::ordered_json FiguresJson(const allocator::Value& value, allocator::Aim aim);
nlohmann::ordered_json FiguresJson(const allocator::Bound& bound);

// The object as text, two blanks an indent, a line end at its end; with what is told beside the plan if there is any.
std::string PlanJson(const allocator::Problem& problem, const allocator::Plan& plan, const PlanExtras* extras = nullptr);

}  // namespace heatkeep::command
