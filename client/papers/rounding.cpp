#include "client/papers/rounding.h"

#include "schema/terms/wide.h"

namespace heatkeep::papers {

bool Fraction::operator==(const Fraction& o) const { return Wide{numerator} * o.denominator == Wide{o.numerator} * denominator; }

std::int64_t RoundTo(Fraction value, std::int64_t range, Tie tie) {
  const bool negative = value.numerator < 0;
  const Wide size = Wide{negative ? -value.numerator : value.numerator};
  const Wide step = Wide{value.denominator} * range;
  Wide count = size / step;
  const Wide twice = (size % step) * 2;
  if (twice > step || (twice == step && (tie == Tie::HalfAway || count % 2 == 1))) count += 1;
  const auto rounded = static_cast<std::int64_t>(count) * range;
  return negative ? -rounded : rounded;
}

std::int64_t RoundToPlaces(Fraction millionths, int places, Tie tie) {
  std::int64_t range = 1;
  for (int i = places; i < 6; ++i) range *= 10;
  return RoundTo(millionths, range, tie);
}

int Compare(Fraction value, std::int64_t whole) {
  const Wide right = Wide{whole} * value.denominator;
  return value.numerator < right ? -1 : value.numerator > right ? 1 : 0;
}

}  // namespace heatkeep::papers
