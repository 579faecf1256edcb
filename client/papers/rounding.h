// Rounding a value to the figures of the limit it is judged by, in one step.
//
//   HalfEven  nearest; a tie goes to the even figure: ISO 80000-1:2009 Annex B rule A; ASTM E29 section 6
//   HalfAway  nearest; a tie goes to the larger magnitude: ISO 80000-1:2009 Annex B rule B
//
// ISO 404:2013 8.5 judges by a value rounded to as many figures as the specified one has, and leaves the choice between
// A and B to the manufacturer unless it was agreed.
#pragma once

#include <cstdint>

namespace heatkeep::papers {

enum class Tie { HalfEven, HalfAway };

// numerator / denominator exactly; denominator over 0. Both under 10^15.
struct Fraction {
  std::int64_t numerator = 0, denominator = 1;
  bool operator==(const Fraction& o) const;
};

// The multiple of `range` (over 0) that is nearest to the value.
std::int64_t RoundTo(Fraction value, std::int64_t range, Tie tie);

// Millionths to `places` figures behind the decimal mark, 0..6; the answer in millionths.
std::int64_t RoundToPlaces(Fraction millionths, int places, Tie tie);

// -1, 0, 1 as the fraction is below, at or above the whole number.
int Compare(Fraction value, std::int64_t whole);

}  // namespace heatkeep::papers
