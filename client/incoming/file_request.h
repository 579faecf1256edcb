// The request number of a file given to a deed: the same file again, by the same login, is the same deed and adds nothing.
#pragma once

#include <string>

#include "client/gateway/connection.h"
#include "client/gateway/request_number.h"

namespace heatkeep::incoming {

RequestNumber RequestOfFile(Connection& connection, const std::string& deed, const std::string& part, const std::string& bytes);

}  // namespace heatkeep::incoming
