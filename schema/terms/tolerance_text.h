// A length tolerance as a cut list writes it: -0/+1, +1/-0, +-0.5 (or with the sign for plus-minus), -0.1/+0.1,
// -0/+1/16 in. Bare numbers are millimetres.
#pragma once

#include <string>
#include <string_view>

#include "schema/terms/length_text.h"

namespace heatkeep {

// Allowed lengths: nominal - minus .. nominal + plus; both >= 0.
struct Tolerance {
  Length minus, plus;
  bool operator==(const Tolerance&) const = default;
};

// Throws BadText.
Tolerance ReadTolerance(std::string_view text, LengthReading how = {});

// "-0/+1": millimetres, exact.
std::string ToleranceText(const Tolerance& tolerance);

}  // namespace heatkeep
