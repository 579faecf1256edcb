// Lengths as the shop writes them, exactly: reading and writing use whole numbers only.
//
// Read: 6000 (a bare number is in `bare`, millimetres unless the caller says inches) 6000mm "6 m" "6 000" 20ft
// 19' 11-3/8"   1'1 7/8   13 7/8 in   13-7/8"   13.875"   5/8 in. Units: um mm cm m in ft (and inch, inches, foot,
// feet, ' and "). A fraction without a unit is inches: nobody measures millimetres in fractions. Typographic
// primes, quotes, no-break blanks and fraction signs are taken for the plain ones. A comma counts as decimal mark
// only when the caller says so; "1,100" is refused with both readings. Refused as well: what is not a whole
// number of nanometres (1/3 in), negative, over 1 000 m, unknown units, anything left over.
#pragma once

#include <string>
#include <string_view>

#include "schema/terms/bad_text.h"
#include "schema/terms/length.h"

namespace heatkeep {

enum class LengthUnit { Mm, Inch };

struct LengthReading {
  LengthUnit bare = LengthUnit::Mm;  // what a number without a unit is
  char decimal_mark = '.';           // '.' or ','
};

// A length and the system it was written in, for showing it again as it was written.
struct WrittenLength {
  Length length;
  LengthUnit unit = LengthUnit::Mm;
  bool named = false;  // the text itself said the unit
};

// 1 000 m: a million of them still add up inside Length.
inline constexpr Length kLongestLength{1'000'000'000'000};

// Both throw BadText; zero is allowed.
Length ReadLength(std::string_view text, LengthReading how = {});
WrittenLength ReadWrittenLength(std::string_view text, LengthReading how = {});

enum class Rounding { Nearest, Down };  // Nearest: halves away from zero. Down: for rests, never more than there is

// "6000", "352.425": millimetres without the unit, at most 3 decimals; grouped: "6 000".
std::string WriteMm(Length length, Rounding rounding = Rounding::Nearest, bool grouped = false);
// Millimetres with every decimal there is (at most 6): reads back as the same length.
std::string WriteMmExact(Length length);
// "74 3/4", "8 1/16", "5/8", "0": inches without the unit. denominator: 2, 4, 8, 16, 32 or 64.
std::string WriteInchFraction(Length length, int denominator = 16, Rounding rounding = Rounding::Nearest);
// "17.995": inches with at most `decimals` (0..6) decimals.
std::string WriteInchDecimal(Length length, int decimals = 3, Rounding rounding = Rounding::Nearest);

}  // namespace heatkeep
