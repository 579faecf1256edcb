// A deed is a function of schema api that answers JSON: called here and nowhere else.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "client/gateway/connection.h"

namespace heatkeep {

// `call`: "put_away($1, $2, $3)", without the schema. Those who listen are told once it is done (Connection::TellOfDeed). Throws DbError.
nlohmann::json CallDeed(Connection& connection, const std::string& call, const std::vector<Param>& params);

}  // namespace heatkeep
