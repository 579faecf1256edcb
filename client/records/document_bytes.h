// The file of an inspection document, as it was filed.
#pragma once

#include <string>

#include "client/gateway/connection.h"

namespace heatkeep {

// Throws std::runtime_error when the bytes in the book are not those of this SHA-256.
std::string CheckedFile(Connection& connection, const std::string& document, const std::string& sha256);

}  // namespace heatkeep
