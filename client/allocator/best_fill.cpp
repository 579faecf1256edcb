#include "client/allocator/best_fill.h"

#include <algorithm>
#include <numeric>

namespace heatkeep::allocator {
namespace {

std::size_t At(std::int64_t i) { return static_cast<std::size_t>(i); }

// to |= from << by, over `words` words.
void OrShifted(std::vector<std::uint64_t>& to, const std::vector<std::uint64_t>& from, std::size_t by, std::size_t words) {
  const std::size_t skip = by / 64, bits = by % 64;
  if (bits == 0) {
    for (std::size_t w = skip; w < words; ++w) to[w] |= from[w - skip];
    return;
  }
  if (skip >= words) return;
  to[skip] |= from[0] << bits;
  for (std::size_t w = skip + 1; w < words; ++w) to[w] |= (from[w - skip] << bits) | (from[w - skip - 1] >> (64 - bits));
}

bool Has(const std::vector<std::uint64_t>& set, std::int64_t cell) { return (set[At(cell / 64)] >> (cell % 64) & 1) != 0; }

struct Chunk {
  int item, count;
  std::int64_t size;
};

}  // namespace

BestFill::BestFill(const Component& c) : c_(c), cell_(c.views.size(), 1), exact_(c.views.size(), 0) {
  std::vector<std::int64_t> longest(c.views.size(), 1);
  for (const Source& s : c.sources)
    longest[At(s.view)] = std::max({longest[At(s.view)], s.room.room.nm, s.room.exact.value_or(Length{}).nm});
  for (std::size_t v = 0; v < c.views.size(); ++v) {
    std::int64_t gcd = 0;
    for (int i : c.views[v].items) gcd = std::gcd(gcd, (c.items[At(i)].length + c.views[v].kerf).nm);
    exact_[v] = gcd > 0 && longest[v] / gcd <= kCells ? 1 : 0;
    cell_[v] = exact_[v] ? gcd : longest[v] / (kCells / 4) + 1;
  }
}

std::vector<std::pair<int, int>> BestFill::Fill(int source, int first, const std::vector<int>& demand, const std::vector<int>& order) {
  const Source& s = c_.sources[At(source)];
  const View& view = c_.views[At(s.view)];
  const std::int64_t cell = cell_[At(s.view)];
  const auto nm = [&](int i) { return (c_.items[At(i)].length + view.kerf).nm; };
  const auto size = [&](int i) { return (nm(i) + cell - 1) / cell; };
  std::vector<std::pair<int, int>> cuts;
  const std::int64_t room = s.room.room.nm < nm(first) ? -1 : (s.room.room.nm - nm(first)) / cell;
  std::int64_t exact = -1;
  if (exact_[At(s.view)] && s.room.exact && c_.items[At(first)].length >= s.room.grip && (s.room.exact->nm - nm(first)) % cell == 0)
    exact = (s.room.exact->nm - nm(first)) / cell;
  const std::int64_t cells = std::max(room, exact);
  if (cells < 0) return cuts;
  const std::size_t words = At(cells / 64) + 1;
  std::vector<Chunk> chunks;
  for (int i : order) {
    if (!view.may[At(i)] || size(i) > cells) continue;
    std::int64_t left = std::min<std::int64_t>(demand[At(i)] - (i == first ? 1 : 0), cells / size(i));
    for (std::int64_t n = 1; left > 0; n *= 2) {
      const std::int64_t take = std::min(n, left);
      left -= take;
      chunks.push_back({i, static_cast<int>(take), size(i) * take});
    }
  }
  if (reach_.size() < chunks.size() + 1) reach_.resize(chunks.size() + 1);
  for (std::size_t q = 0; q <= chunks.size(); ++q) reach_[q].resize(words);
  std::fill(reach_[0].begin(), reach_[0].end(), 0);
  reach_[0][0] = 1;
  const auto top_of = [&](const std::vector<std::uint64_t>& set) {
    if (exact > room && Has(set, exact)) return exact;
    std::int64_t c = room;
    while (c >= 0) {
      const std::uint64_t word = set[At(c / 64)] << (63 - c % 64);
      if (word != 0) return c - __builtin_clzll(word);
      c = c / 64 * 64 - 1;
    }
    return std::int64_t{-1};
  };
  std::size_t used = 0;
  for (; used < chunks.size(); ++used) {
    if (top_of(reach_[used]) == cells) break;  // full already
    std::copy(reach_[used].begin(), reach_[used].end(), reach_[used + 1].begin());
    OrShifted(reach_[used + 1], reach_[used], At(chunks[used].size), words);
  }
  std::int64_t at = top_of(reach_[used]);
  if (at < 0) return cuts;
  std::vector<int> count(c_.items.size(), 0);
  count[At(first)] = 1;
  for (std::size_t q = used; q-- > 0;)
    if (!Has(reach_[q], at)) {
      count[At(chunks[q].item)] += chunks[q].count;
      at -= chunks[q].size;
    }
  for (std::size_t i = 0; i < count.size(); ++i)
    if (count[i] > 0) cuts.push_back({static_cast<int>(i), count[i]});
  return cuts;
}

}  // namespace heatkeep::allocator
