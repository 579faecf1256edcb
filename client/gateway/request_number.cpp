#include "client/gateway/request_number.h"

#include <random>
#include <stdexcept>

namespace heatkeep {
namespace {

RequestNumber Shaped(std::string hex, char version) {
  static constexpr char kVariant[] = "89ab";
  hex.resize(32, '0');
  hex[12] = version;
  const char old = hex[16];
  hex[16] = kVariant[static_cast<unsigned>(old <= '9' ? old - '0' : old - 'a' + 10) % 4];
  for (const std::size_t at : {20U, 16U, 12U, 8U}) hex.insert(at, 1, '-');
  return {hex};
}

}  // namespace

RequestNumber NewRequest() {
  static constexpr char kHex[] = "0123456789abcdef";
  std::random_device device;
  std::string hex;
  while (hex.size() < 32) {
    for (auto [bits, n] = std::pair(device(), 0); n < 8; ++n, bits >>= 4) hex.push_back(kHex[bits & 15U]);
  }
  return Shaped(hex, '4');
}

RequestNumber RequestFromDigest(const std::string& hex_digest) {
  if (hex_digest.size() < 32 || hex_digest.find_first_not_of("0123456789abcdef") != std::string::npos) {
    throw std::invalid_argument("a digest of at least 32 lower-case hex digits is expected");
  }
  return Shaped(hex_digest.substr(0, 32), '8');
}

}  // namespace heatkeep
