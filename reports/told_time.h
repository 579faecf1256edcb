// The digits of a time that is told, "2026-11-25T07:40:12": what a file's own date is made of.
#pragma once

#include <cctype>
#include <string>

namespace heatkeep {

// "20261125074012": year to second, 0 for what the ISO 8601 text does not say.
inline std::string DigitsOfTime(const std::string& iso) {
  std::string digits;
  for (const char c : iso)
    if (std::isdigit(static_cast<unsigned char>(c)) != 0 && digits.size() < 14) digits += c;
  digits.resize(14, '0');
  return digits;
}

}  // namespace heatkeep
