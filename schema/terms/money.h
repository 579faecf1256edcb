// Money: whole hundredths of the book's currency (a setting; the program converts nothing).
#pragma once

#include <compare>
#include <cstdint>

namespace heatkeep {

struct Money {
  std::int64_t cents = 0;

  constexpr auto operator<=>(const Money&) const = default;
  friend constexpr Money operator+(Money a, Money b) { return {a.cents + b.cents}; }
  friend constexpr Money operator-(Money a, Money b) { return {a.cents - b.cents}; }
};

}  // namespace heatkeep
