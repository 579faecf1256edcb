#include "client/gateway/request_number.h"

#include <chrono>
#include <random>
#include <stdexcept>

namespace heatkeep {
namespace {

constexpr char kHex[] = "0123456789abcdef";
constexpr std::size_t kRandomDigits = 20;

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

RequestNumber RequestAt(std::uint64_t unix_ms, const std::string& random_hex) {
  if (random_hex.size() != kRandomDigits || random_hex.find_first_not_of(kHex) != std::string::npos) {
    throw std::invalid_argument("20 lower-case hex digits are expected");
  }
  std::string hex;
  for (int bit = 44; bit >= 0; bit -= 4) hex.push_back(kHex[unix_ms >> static_cast<unsigned>(bit) & 15U]);
  return Shaped(hex + random_hex, '7');
}

RequestNumber NewRequest() {
  std::random_device device;
  std::string random;
  while (random.size() < kRandomDigits) {
    for (auto [bits, n] = std::pair(device(), 0); n < 4; ++n, bits >>= 4) random.push_back(kHex[bits & 15U]);
  }
  const auto now = std::chrono::system_clock::now().time_since_epoch();
  return RequestAt(static_cast<std::uint64_t>(std::chrono::duration_cast<std::chrono::milliseconds>(now).count()), random);
}

RequestNumber RequestFromDigest(const std::string& hex_digest) {
  if (hex_digest.size() < 32 || hex_digest.find_first_not_of(kHex) != std::string::npos) {
    throw std::invalid_argument("a digest of at least 32 lower-case hex digits is expected");
  }
  return Shaped(hex_digest.substr(0, 32), '8');
}

}  // namespace heatkeep
