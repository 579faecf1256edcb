// SHA-256 of a sequence of bytes. Source: FIPS 180-4, sections 4.1.2, 5.1.1, 5.3.3 and 6.2.
#pragma once

#include <string>
#include <string_view>

namespace heatkeep {

std::string Sha256Hex(std::string_view bytes);  // 64 lower-case hexadecimal digits

}  // namespace heatkeep
