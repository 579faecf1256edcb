// Draws from a seed: the same numbers on every machine and compiler.
// Only the raw outputs of std::mt19937_64 are used (its sequence is fixed by ISO/IEC 14882); the reduction to
// a range is ours, by rejection, so that no library's distribution has a say.
#pragma once

#include <cstdint>
#include <random>
#include <string_view>
#include <vector>

namespace heatkeep::scenario {

class Draw {
 public:
  // Each subject draws from its own stream, so that a change in one leaves the others as they were.
  explicit Draw(std::string_view subject);

  std::int64_t from(std::int64_t least, std::int64_t most);  // both included; requires least <= most
  bool chance(int percent) { return from(1, 100) <= percent; }
  template <class T>
  const T& one_of(const std::vector<T>& v) {  // requires v not empty
    return v[static_cast<std::size_t>(from(0, static_cast<std::int64_t>(v.size()) - 1))];
  }

 private:
  std::mt19937_64 raw_;
};

}  // namespace heatkeep::scenario
