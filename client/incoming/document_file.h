// The file of a document on its way into the book.
#pragma once

#include <string>

#include "client/gateway/connection.h"

namespace heatkeep::incoming {

// The file in base64, as a deed's body takes it. Throws std::runtime_error: not there, empty, or larger than the setting document_mb
// lets the book take (said before it is read).
std::string DocumentFileBase64(Connection& connection, const std::string& path);

}  // namespace heatkeep::incoming
