#include "client/queue/crc32.h"

#include <array>

namespace heatkeep {
namespace {

constexpr std::array<std::uint32_t, 256> Table() {
  std::array<std::uint32_t, 256> table{};
  for (std::uint32_t i = 0; i < 256; ++i) {
    std::uint32_t c = i;
    for (int bit = 0; bit < 8; ++bit) c = (c & 1U) != 0 ? 0xEDB88320U ^ (c >> 1U) : c >> 1U;
    table[i] = c;
  }
  return table;
}

}  // namespace

std::uint32_t Crc32(std::string_view bytes) {
  static constexpr std::array<std::uint32_t, 256> table = Table();
  std::uint32_t crc = 0xFFFFFFFFU;
  for (const char byte : bytes) crc = table[(crc ^ static_cast<unsigned char>(byte)) & 0xFFU] ^ (crc >> 8U);
  return ~crc;
}

}  // namespace heatkeep
