// Names that a person typed, looked up before anything is asked with them: a wrong one is said, with what was perhaps meant, where an
// empty list would only look like an answer.
#pragma once

#include <string>

#include "client/gateway/connection.h"

namespace heatkeep::command {

// Each throws BadText where the book has no such name; an empty name is none.
void RequirePlace(Connection& connection, const std::string& place);
void RequireGrade(Connection& connection, const std::string& grade);  // designation, number or UNS number
void RequireSaw(Connection& connection, const std::string& saw);

}  // namespace heatkeep::command
