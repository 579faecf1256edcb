// Density: whole kilograms per cubic metre. It belongs to a grade, never to the program.
#pragma once

#include <compare>
#include <cstdint>

namespace heatkeep {

struct Density {
  std::int64_t kg_m3 = 0;
  constexpr auto operator<=>(const Density&) const = default;
};

// What EN 10058..10061 compute their tables of steel bars with.
inline constexpr Density kSteel{7850};

}  // namespace heatkeep
