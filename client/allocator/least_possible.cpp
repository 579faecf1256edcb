// Rounding a bound up to a figure that its key can take.
#include "client/allocator/least_possible.h"

#include <algorithm>
#include <map>
#include <numeric>

namespace heatkeep::allocator {
namespace {

// The least sum >= bound of the given lengths, each used at most count times.
std::int64_t LeastSum(const std::map<std::int64_t, std::int64_t>& lengths, std::int64_t gcd, std::int64_t bound) {
  constexpr std::int64_t kMostCells = 2'000'000;
  const std::int64_t up = (bound + gcd - 1) / gcd * gcd;
  const std::int64_t longest = lengths.rbegin()->first;
  const std::int64_t cells = (bound + longest) / gcd + 1;
  if (cells > kMostCells || cells * static_cast<std::int64_t>(lengths.size()) > 20 * kMostCells) return up;
  // least[c]: how many of the present length are needed to reach c cells, -1 if it cannot be reached.
  std::vector<std::int32_t> used(static_cast<std::size_t>(cells), -1);
  used[0] = 0;
  for (const auto& [length, count] : lengths) {
    const auto step = static_cast<std::size_t>(length / gcd);
    for (std::size_t c = 0; c < used.size(); ++c) {
      if (used[c] >= 0) used[c] = 0;
      else if (c >= step && used[c - step] >= 0 && used[c - step] < count) used[c] = used[c - step] + 1;
    }
  }
  for (auto c = static_cast<std::size_t>(up / gcd); c < used.size(); ++c)
    if (used[c] >= 0) return static_cast<std::int64_t>(c) * gcd;
  return up;
}

}  // namespace

std::int64_t LeastPossible(const Component& c, std::size_t key, std::int64_t bound) {
  if (key < c.priorities.size() || bound <= 0) return bound;
  const Key what = c.keys[key - c.priorities.size()];
  if (what == Key::LostWorth) return (bound + 999) / 1000 * 1000;
  if (what != Key::NewLength && what != Key::ConsumedLength) return bound;
  std::map<std::int64_t, std::int64_t> lengths;
  std::int64_t gcd = 0;
  for (const Source& s : c.sources) {
    if (what == Key::NewLength && !(s.bar && s.own)) continue;
    lengths[s.length.nm] += s.count;
    gcd = std::gcd(gcd, s.length.nm);
  }
  return gcd == 0 ? bound : LeastSum(lengths, gcd, bound);
}

std::int64_t LeastServing(const std::vector<Serving>& bars, std::int64_t demand, std::int64_t bound, std::int64_t most) {
  if (demand <= 0 || bars.empty() || most <= bound) return bound;
  std::int64_t gcd = 0;
  for (const Serving& b : bars) gcd = std::gcd(gcd, b.length);
  if (gcd == 0) return bound;
  const std::int64_t cells = most / gcd + 1;
  if (cells > 20'000 || bars.size() > 16) return bound;
  std::vector<std::int64_t> serves(static_cast<std::size_t>(cells), -1);  // with exactly so much length
  serves[0] = 0;
  for (const Serving& b : bars) {
    std::int64_t left = std::min(b.count, most / b.length);
    for (std::int64_t n = 1; left > 0; n *= 2) {
      const std::int64_t times = std::min(n, left);
      left -= times;
      const auto step = static_cast<std::size_t>(b.length / gcd * times);
      for (std::size_t c = serves.size(); c-- > step;)
        if (serves[c - step] >= 0) serves[c] = std::max(serves[c], serves[c - step] + b.serves * times);
    }
  }
  for (std::int64_t c = (bound + gcd - 1) / gcd; c < cells; ++c)
    if (serves[static_cast<std::size_t>(c)] >= demand) return c * gcd;
  return most;
}

}  // namespace heatkeep::allocator
