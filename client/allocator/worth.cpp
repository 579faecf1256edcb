#include "client/allocator/worth.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace heatkeep::allocator {
namespace {

__extension__ using Wide = __int128;
constexpr int kPlaces = 60;
constexpr Wide kOne = Wide{1} << kPlaces;
constexpr std::int64_t kNmPerMetre = 1'000'000'000;

Wide Times(Wide a, Wide b) { return (a * b) >> kPlaces; }

constexpr int kTerms = 24;

struct Series {
  Wide inverse_factorial[kTerms] = {};
  constexpr Series() {
    Wide c = kOne;
    for (int j = 0; j < kTerms; ++j) {
      if (j > 0) c /= j;
      inverse_factorial[j] = c;
    }
  }
};
constexpr Series kSeries;

// exp(-x) for 0 <= x <= 1, by the series, x and the answer in units of 2^-60.
Wide SeriesOfExpMinus(Wide x) {
  Wide sum = kSeries.inverse_factorial[kTerms - 1];
  for (int j = kTerms - 2; j >= 0; --j) sum = kSeries.inverse_factorial[j] - Times(x, sum);
  return sum;
}

Wide ExpMinus(Length r) {
  const std::int64_t metres = r.nm / kNmPerMetre;
  if (metres >= 42) return 0;  // exp(-42) < 2^-60
  const Wide part = (Wide{r.nm % kNmPerMetre} << kPlaces) / kNmPerMetre;
  Wide e = SeriesOfExpMinus(part);
  const Wide per_metre = SeriesOfExpMinus(kOne);
  for (std::int64_t i = 0; i < metres; ++i) e = Times(e, per_metre);
  return e;
}

}  // namespace

Length WorthOfRest(Length r, Length keep, const LearnedWorth* learned) {
  if (r.nm <= 0 || r < keep) return {};
  if (learned) {
    if (learned->of.empty()) return {};
    return learned->of[std::min(static_cast<std::size_t>(r.nm / learned->step.nm), learned->of.size() - 1)];
  }
  // The quick way where rounding cannot be in doubt: its error is far below the distance kept from a tie.
  const double um = static_cast<double>(r.nm) / 1000.0 * -std::expm1(-static_cast<double>(r.nm) / 1e9);
  if (um < 1e9) {
    const double up = um + 0.5, whole = std::floor(up), part = up - whole;
    if (part > 1e-4 && part < 1 - 1e-4) return {static_cast<std::int64_t>(whole) * 1000};
  }
  const Wide exact = Wide{r.nm} * (kOne - ExpMinus(r));  // nm with 60 places
  const Wide micrometre = Wide{1000} << kPlaces;
  return {static_cast<std::int64_t>((exact + micrometre / 2) / micrometre) * 1000};
}

Length WorthOfBar(Length r) { return {(r.nm + 500) / 1000 * 1000}; }

}  // namespace heatkeep::allocator
