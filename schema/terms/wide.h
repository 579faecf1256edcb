// Products of two or three 64-bit quantities, exactly.
#pragma once

#include <cstdint>

namespace heatkeep {

__extension__ typedef __int128 Wide;

// n / d to the nearest whole number, halves away from zero. d > 0.
constexpr Wide DivideHalfAway(Wide n, Wide d) { return n >= 0 ? (2 * n + d) / (2 * d) : -((-2 * n + d) / (2 * d)); }

// n / d towards minus infinity. d > 0.
constexpr Wide DivideDown(Wide n, Wide d) { return n >= 0 ? n / d : -((-n + d - 1) / d); }

}  // namespace heatkeep
