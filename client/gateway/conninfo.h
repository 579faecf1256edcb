// Connection strings for libpq, put together so that no value can break out of its place.
#pragma once

#include <string>
#include <string_view>

namespace heatkeep {

// keyword='value', with quotes and backslashes in the value escaped.
std::string ConninfoPair(std::string_view keyword, std::string_view value);

// `conninfo` (keywords or a postgresql:// address) as keywords, its user replaced by `person` unless that is
// empty. Throws std::invalid_argument when libpq cannot read it.
std::string ConninfoFor(const std::string& conninfo, const std::string& person);

}  // namespace heatkeep
