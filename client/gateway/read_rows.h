// The rows of a view of schema api as JSON objects, its columns as keys: what the lists of the command line show.
#pragma once

#include <functional>
#include <nlohmann/json.hpp>
#include <string>

#include "client/gateway/connection.h"

namespace heatkeep {

// One row after the other, as Connection::EachRow shows them, in the order of `order` (columns, a blank between); with
// `columns` (empty: all) the server works out no others. Throws DbError; names that the view does not have are a Bug.
void EachRowOf(Connection& connection, const std::string& view, const std::string& order, const std::string& columns,
               const std::function<void(nlohmann::json&&)>& visit, const std::function<void()>& pause = {});

// How many rows the server expects of it: a guess, made without reading them.
std::int64_t AboutHowMany(Connection& connection, const std::string& view);

// All of them at once, those whose `column` is `value` (all where column is empty).
nlohmann::json ReadRows(Connection& connection, const std::string& view, const std::string& order, const std::string& column = {},
                        const std::string& value = {});

}  // namespace heatkeep
