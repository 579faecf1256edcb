#include "client/incoming/base64.h"

#include <cstdint>

namespace heatkeep::incoming {

std::string Base64(const std::string& bytes) {
  static constexpr const char* kDigits = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
  std::string text;
  for (std::size_t i = 0; i < bytes.size(); i += 3) {
    std::uint32_t group = 0;
    for (std::size_t j = 0; j < 3; ++j) group = group << 8 | (i + j < bytes.size() ? static_cast<unsigned char>(bytes[i + j]) : 0U);
    for (std::size_t j = 0; j < 4; ++j) text += i + j > bytes.size() ? '=' : kDigits[group >> (18 - 6 * j) & 63U];
  }
  return text;
}

}  // namespace heatkeep::incoming
