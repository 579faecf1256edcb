// How far a new book is.
#pragma once

#include <cstdint>
#include <vector>

#include "client/gateway/connection.h"

namespace heatkeep {

// How many there are of: grades, saws, pieces on hand, cut list lines, persons with a role. At most 1000 of each is counted. Throws
// DbError.
std::vector<std::int64_t> ReadStart(Connection& connection);

}  // namespace heatkeep
