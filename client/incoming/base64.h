// Bytes as base64 (RFC 4648, section 4), with padding: how a file travels inside a JSON body.
#pragma once

#include <string>

namespace heatkeep::incoming {

std::string Base64(const std::string& bytes);

}  // namespace heatkeep::incoming
