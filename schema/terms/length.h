// Length: whole nanometres, so that inch and millimetre both add up exactly.
// 1 in = 25.4 mm by definition (international yard and pound agreement, 1959): 1/64 in = 396 875 nm and
// 0.001 in = 25 400 nm are whole. Range: about +-9.2 million metres; sums within a book stay far below.
#pragma once

#include <compare>
#include <cstdint>

namespace heatkeep {

struct Length {
  std::int64_t nm = 0;

  constexpr auto operator<=>(const Length&) const = default;
  constexpr Length operator-() const { return {-nm}; }
  constexpr Length& operator+=(Length o) {
    nm += o.nm;
    return *this;
  }
  constexpr Length& operator-=(Length o) {
    nm -= o.nm;
    return *this;
  }
  friend constexpr Length operator+(Length a, Length b) { return {a.nm + b.nm}; }
  friend constexpr Length operator-(Length a, Length b) { return {a.nm - b.nm}; }
  friend constexpr Length operator*(Length a, std::int64_t n) { return {a.nm * n}; }
  friend constexpr Length operator*(std::int64_t n, Length a) { return a * n; }
};

inline constexpr std::int64_t kNmPerMm = 1'000'000;
inline constexpr std::int64_t kNmPerInch = 25'400'000;

namespace literals {
constexpr Length operator""_mm(unsigned long long v) { return {static_cast<std::int64_t>(v) * kNmPerMm}; }
constexpr Length operator""_um(unsigned long long v) { return {static_cast<std::int64_t>(v) * 1000}; }
constexpr Length operator""_nm(unsigned long long v) { return {static_cast<std::int64_t>(v)}; }
}  // namespace literals

}  // namespace heatkeep
