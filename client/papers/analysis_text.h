// An analysis as it is typed: "C=0.41 Mn=0.86 P=0.011", parted by blanks or semicolons, mass % with a point.
#pragma once

#include <string_view>

#include "client/papers/quantity.h"

namespace heatkeep::papers {

// In the order it is typed. Throws BadText that names the part: an unknown element, one twice, no number, a comma for a
// point, a sign, over 100 % or all together over 101 %, more than six decimals, nothing at all.
Analysis ReadAnalysis(std::string_view text);

}  // namespace heatkeep::papers
