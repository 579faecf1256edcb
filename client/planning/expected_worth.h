// What drops are worth by their expected use, from the shop's own past (year/worth_curve.h).
#pragma once

#include <nlohmann/json.hpp>
#include <vector>

#include "client/gateway/connection.h"

namespace heatkeep::planning {

// Rows of api.own_pieces get "expected_cents": hundredths, or null where their section and grade has no price or too little past.
// Answers how many were worked out.
std::size_t AddExpectedWorth(Connection& connection, std::vector<nlohmann::json>& drops);

}  // namespace heatkeep::planning
