// SHA-256 of a sequence of bytes. Source: FIPS 180-4, sections 4.1.2, 5.1.1, 5.3.3 and 6.2.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace heatkeep {

std::string Sha256Hex(std::string_view bytes);  // 64 lower-case hexadecimal digits

// The same of bytes that come one after the other, none of them kept.
class Sha256 {
 public:
  void Take(std::string_view bytes);
  std::string Hex() const;  // of all taken so far; more may be taken after

 private:
  using State = std::array<std::uint32_t, 8>;
  static void TakeBlock(State& state, const char* bytes);

  State state_{0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a, 0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19};
  std::string rest_;  // less than a block
  std::uint64_t taken_ = 0;
};

}  // namespace heatkeep
