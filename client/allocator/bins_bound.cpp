#include "client/allocator/bins_bound.h"

#include <algorithm>

namespace heatkeep::allocator {
namespace {

__extension__ using Wide = __int128;

std::int64_t UpDivided(Wide a, Wide b) { return a <= 0 ? 0 : static_cast<std::int64_t>((a + b - 1) / b); }

// Sum over the cuts of u(k), where cuts below `least` count nothing and cuts above capacity - least a whole bin.
std::int64_t Rounded(const Bins& bins, std::int64_t k, std::int64_t least) {
  const std::int64_t c = bins.capacity;
  Wide sum = 0;  // in 1 / (k c)
  for (std::size_t i = 0; i < bins.size.size(); ++i) {
    const std::int64_t size = bins.size[i];
    if (bins.demand[i] == 0 || size < least) continue;
    Wide value = 0;
    if (least > 0 && size > c - least) value = Wide{k} * c;
    else if (const Wide scaled = Wide{size} * (k + 1); scaled % c == 0) value = Wide{k} * size;
    else value = scaled / c * c;
    sum += value * bins.demand[i];
  }
  return UpDivided(sum, Wide{k} * c);
}

std::int64_t Steps(const Bins& bins) {
  const std::int64_t c = bins.capacity;
  const std::size_t n = bins.size.size();
  std::int64_t best = 0;
  std::size_t large = 0;  // size > c - least: before `large`; 2 size > c: before `half`
  std::size_t half = 0;
  while (half < n && 2 * bins.size[half] > c) ++half;
  std::int64_t larges = 0, middles = 0;
  for (std::size_t i = 0; i < half; ++i) middles += bins.demand[i];
  Wide middle_need = 0, small_need = 0;
  for (std::size_t i = 0; i < half; ++i) middle_need += Wide{bins.size[i]} * bins.demand[i];
  best = middles;
  for (std::size_t a = half; a < n; ++a) {  // least = size of a, ever smaller: fewer are large
    small_need += Wide{bins.size[a]} * bins.demand[a];
    if (a == half) {
      while (large < half && bins.size[large] > c - bins.size[a]) {
        larges += bins.demand[large];
        middles -= bins.demand[large];
        middle_need -= Wide{bins.size[large]} * bins.demand[large];
        ++large;
      }
    } else {
      while (large > 0 && bins.size[large - 1] <= c - bins.size[a]) {
        --large;
        larges -= bins.demand[large];
        middles += bins.demand[large];
        middle_need += Wide{bins.size[large]} * bins.demand[large];
      }
    }
    best = std::max(best, larges + middles + UpDivided(small_need - (Wide{c} * middles - middle_need), c));
  }
  return best;
}

// Room / 64 words of which sums of cuts can be reached.
class Sums {
 public:
  explicit Sums(std::int64_t room) : words_(static_cast<std::size_t>(room / 64 + 1), 0), room_(room) { words_[0] = 1; }
  void Add(std::int64_t size, int count) {
    for (std::int64_t n = 1; count > 0; n *= 2) {
      const std::int64_t take = std::min<std::int64_t>(n, count);
      count -= static_cast<int>(take);
      if (size * take > room_) return;
      const auto by = static_cast<std::size_t>(size * take);
      const std::size_t skip = by / 64, bits = by % 64;
      for (std::size_t w = words_.size(); w-- > skip;) {
        std::uint64_t from = words_[w - skip] << bits;
        if (bits != 0 && w > skip) from |= words_[w - skip - 1] >> (64 - bits);
        words_[w] |= from;
      }
    }
  }
  std::int64_t Largest(std::int64_t upto) const {
    while (upto > 0 && (words_[static_cast<std::size_t>(upto / 64)] >> (upto % 64) & 1) == 0) --upto;
    return upto;
  }

 private:
  std::vector<std::uint64_t> words_;
  std::int64_t room_;
};

constexpr std::int64_t kMostRoom = 20'000;

}  // namespace

std::int64_t LeastBins(const Bins& bins) {
  std::int64_t best = std::max(UpDivided(bins.Need(), bins.capacity), Steps(bins));
  for (std::int64_t k = 1; k <= 40; ++k) {
    best = std::max(best, Rounded(bins, k, 0));
    if (k > 6 || bins.size.size() > 600) continue;
    for (std::size_t a = 0; a < bins.size.size(); ++a)
      if (2 * bins.size[a] <= bins.capacity) best = std::max(best, Rounded(bins, k, bins.size[a]));
  }
  return best;
}

Packing TakeSure(Bins& bins) {
  Packing sure;
  const auto together = [&](std::size_t i, std::size_t j) {
    const int times = i == j ? bins.demand[i] / 2 : std::min(bins.demand[i], bins.demand[j]);
    if (times == 0) return false;
    bins.demand[i] -= times;
    bins.demand[j] -= times;
    sure.push_back({i == j ? Fill{{static_cast<int>(i), 2}} : Fill{{static_cast<int>(i), 1}, {static_cast<int>(j), 1}}, times});
    return true;
  };
  for (std::size_t i = 0, j = bins.size.size(); i < j; ++i) {
    while (j > i && bins.size[i] + bins.size[j - 1] < bins.capacity) --j;
    if (j > i && bins.size[i] + bins.size[j - 1] == bins.capacity) together(i, j - 1);
  }
  const auto next = [&](std::size_t from) {  // the first cut still wanted
    while (from < bins.size.size() && bins.demand[from] == 0) ++from;
    return from;
  };
  for (bool again = true; again;) {
    again = false;
    Sums sums(std::min(bins.capacity / 2, kMostRoom));
    std::size_t added = bins.size.size();  // cuts from here on are in the sums
    for (std::size_t i = 0; i < bins.size.size() && 2 * bins.size[i] > bins.capacity; ++i) {
      if (bins.demand[i] == 0) continue;
      const std::int64_t rest = bins.capacity - bins.size[i];  // grows
      if (rest > kMostRoom) break;
      while (added > 0 && bins.size[added - 1] <= rest) {
        --added;
        if (bins.demand[added] > 0) sums.Add(bins.size[added], bins.demand[added]);
      }
      const std::size_t j = next(added);
      if (j == bins.size.size()) {  // nothing fits with it
        sure.push_back({Fill{{static_cast<int>(i), 1}}, bins.demand[i]});
        bins.demand[i] = 0;
      } else if (j != i && sums.Largest(rest) == bins.size[j] && together(i, j)) {
        again = true;  // the sums have a cut too many
        break;
      }
    }
  }
  return sure;
}

}  // namespace heatkeep::allocator
