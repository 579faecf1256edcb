// Watches that a deed writes only under what it has locked (schema/guard/lock_order.sql): of a lot, a piece or a plan that is not its own
// making it must hold that row, of a line of a cut list the line. One that does not stops with HK014. For the book of one test: the server
// of the tests already watches the order of the locks themselves.
#pragma once

#include "client/gateway/connection.h"

namespace heatkeep {

void WatchWrites(Connection& admin);

// Deadlocks that the server has broken in this database, whether or not the gateway tried again after them.
std::int64_t DeadlocksIn(Connection& admin);

}  // namespace heatkeep
