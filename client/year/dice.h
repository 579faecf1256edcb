// Chance that repeats: the same seed gives the same throws on every machine (no standard distributions, which differ).
#pragma once

#include <cstdint>
#include <random>

namespace heatkeep::year {

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : engine_(seed) {}
  // a..b, both possible. Requires a <= b.
  int Between(int a, int b) { return a + static_cast<int>(engine_() % static_cast<std::uint64_t>(b - a + 1)); }
  bool Percent(int chance) { return Between(1, 100) <= chance; }
  // 0..n-1, the i-th with weight 1 / (i + 1): few come often, many seldom. Whole weights, so exact.
  int Skewed(int n) {
    std::uint64_t sum = 0;
    for (int i = 0; i < n; ++i) sum += Weight(i);
    std::uint64_t throw_ = engine_() % sum;
    int i = 0;
    for (; throw_ >= Weight(i); ++i) throw_ -= Weight(i);
    return i;
  }
  // a..b spread evenly over the ratios: as often between 20 and 40 as between 1000 and 2000. By halving, without logs.
  int Ratio(int a, int b) {
    int octaves = 1;
    while ((a << octaves) < b) ++octaves;
    for (;;) {
      const int low = a << Between(0, octaves - 1);
      const int x = Between(low, 2 * low - 1);
      if (x <= b) return x;
    }
  }

 private:
  static std::uint64_t Weight(int i) { return 1'000'000U / static_cast<std::uint64_t>(i + 1); }
  std::mt19937_64 engine_;
};

}  // namespace heatkeep::year
