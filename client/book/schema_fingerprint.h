// What the tables of a book keep to, as text that can be compared: so that nothing is lost unseen when the
// schemas guard and api are dropped and made anew.
#pragma once

#include <string>
#include <vector>

#include "client/gateway/connection.h"

namespace heatkeep {

// Sorted: every column with its type, default or generating expression, constraint (triggers of constraint
// kind left out: they belong to guard) and index of schema book.
std::vector<std::string> SchemaFingerprint(Connection& connection);

// Lines that are in only one of the two, "- gone" and "+ new".
std::vector<std::string> Differences(const std::vector<std::string>& before, const std::vector<std::string>& after);

}  // namespace heatkeep
