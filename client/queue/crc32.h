// CRC-32 as of ISO/IEC 3309 and ITU-T V.42 (polynomial 04C11DB7 reflected, all ones before and after).
#pragma once

#include <cstdint>
#include <string_view>

namespace heatkeep {

std::uint32_t Crc32(std::string_view bytes);

}  // namespace heatkeep
