// The rows of a view of schema api as JSON objects, its columns as keys: what the lists of the command line show.
#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "client/gateway/connection.h"

namespace heatkeep {

// Those whose `column` is `value` (all where column is empty), in the order of `order` (columns, a blank between).
// Throws DbError; names that the view does not have are a Bug.
nlohmann::json ReadRows(Connection& connection, const std::string& view, const std::string& order, const std::string& column = {},
                        const std::string& value = {});

}  // namespace heatkeep
