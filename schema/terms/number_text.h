// Decimal numbers as people and files write them, read exactly: never through floating point.
// Thousands may be set apart by blanks (6 000); a comma or point that could be a decimal mark or a thousands mark
// is refused, never guessed. No sign, no exponent.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "schema/terms/bad_text.h"

namespace heatkeep {

// digits / 10^places; up to 18 digits and 18 places, trailing zeros of the fraction dropped.
struct Decimal {
  std::int64_t digits = 0;
  int places = 0;
};

// "1,100" where the decimal mark is '.' (or "1.100" where it is ','): 1.1 or 1 100?
class TwoReadings : public BadText {
 public:
  TwoReadings(std::string_view text, std::string as_decimal, std::string as_thousands, std::string_view unit = "");
  const std::string& AsDecimal() const { return as_decimal_; }
  const std::string& AsThousands() const { return as_thousands_; }

 private:
  std::string as_decimal_, as_thousands_;
};

// Takes a number off the front of `rest` (no blanks before it). `mark` is '.' or ','. Throws BadText.
Decimal TakeDecimal(std::string_view& rest, char mark = '.');

// The whole text (PlainText is applied) must be a number. Throws BadText.
Decimal ReadDecimal(std::string_view text, char mark = '.');

// As a whole number of 10^-places. Throws BadText when the text has more decimals than that or is too large.
std::int64_t ReadScaled(std::string_view text, int places, char mark = '.');

// A whole number in least..most. Throws BadText.
std::int64_t ReadWhole(std::string_view text, std::int64_t least, std::int64_t most);

// n as "12 345" (blank every three digits), or plain.
std::string WriteWhole(std::int64_t n, bool grouped = false);

// n / 10^places without trailing zeros: WriteScaled(1500, 3) = "1.5".
std::string WriteScaled(std::int64_t n, int places, bool grouped = false);

}  // namespace heatkeep
