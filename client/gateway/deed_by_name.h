// A deed called by the name of its function of schema api: for deeds that are kept as data, and asked again as they were.
#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "client/gateway/connection.h"
#include "client/gateway/request_number.h"

namespace heatkeep {

// Promised as in client/gateway/deeds.h. Throws DbError; std::out_of_range for a name that is not among those of deed_by_name.cpp.
nlohmann::json DeedByName(Connection& book, const std::string& deed, const RequestNumber& request, const nlohmann::json& body);

}  // namespace heatkeep
