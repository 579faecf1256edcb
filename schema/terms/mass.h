// Mass: whole grams.
#pragma once

#include <compare>
#include <cstdint>

namespace heatkeep {

struct Mass {
  std::int64_t g = 0;

  constexpr auto operator<=>(const Mass&) const = default;
  constexpr Mass& operator+=(Mass o) {
    g += o.g;
    return *this;
  }
  friend constexpr Mass operator+(Mass a, Mass b) { return {a.g + b.g}; }
  friend constexpr Mass operator-(Mass a, Mass b) { return {a.g - b.g}; }
};

}  // namespace heatkeep
