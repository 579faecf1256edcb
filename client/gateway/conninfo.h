// Connection strings for libpq, put together so that no value can break out of its place.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

struct pg_conn;

namespace heatkeep {

// keyword='value', with quotes and backslashes in the value escaped.
std::string ConninfoPair(std::string_view keyword, std::string_view value);

// `conninfo` (keywords or a postgresql:// address) as keywords, its user replaced by `person` unless that is
// empty. Throws std::invalid_argument when libpq cannot read it, or a password is in it: whoever types one lets every
// account of the machine read it (ps).
std::string ConninfoFor(const std::string& conninfo, const std::string& person);

// The variables by which another program with libpq reaches the same database as the same login: its environment is its own,
// what is said on its command line is not.
std::vector<std::pair<std::string, std::string>> EnvironmentOf(pg_conn* connection);

}  // namespace heatkeep
