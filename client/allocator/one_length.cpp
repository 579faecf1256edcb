#include "client/allocator/one_length.h"

#include <numeric>

#include "client/allocator/bins_search.h"

namespace heatkeep::allocator {

bool OneLength(const Component& c) { return c.sources.size() == 1 && c.sources[0].bar && c.keys.front() == Key::BarsOpened; }

std::int64_t FewestOfOneLength(const Component& c, const SearchControl& control, const Offer& offer) {
  const Source& bar = c.sources.front();
  Bins bins;
  std::int64_t shared = 0;
  for (const Item& item : c.items) {
    bins.size.push_back((item.length + bar.room.kerf).nm);
    bins.demand.push_back(item.demand);
    shared = std::gcd(shared, bins.size.back());
  }
  if (shared == 0 || bar.room.room.nm < bins.size.front()) return 0;
  for (std::int64_t& size : bins.size) size /= shared;
  bins.capacity = bar.room.room.nm / shared;
  BinsControl inner;
  inner.enough = control.enough;
  inner.spend = control.spend;
  const BinsAnswer answer = FewestBins(bins, control.seed, control.iterations, inner);
  if (BinsIn(answer.packing) > bar.count) return 0;
  std::vector<std::pair<Pattern, std::int64_t>> patterns;
  for (const auto& [fill, times] : answer.packing) {
    Pattern p;
    p.cuts = fill;
    if (Complete(c, p)) patterns.push_back({std::move(p), times});
  }
  offer(Assembled(c, std::move(patterns)));
  return bar.room.exact && *bar.room.exact > bar.room.room ? 0 : answer.bound;
}

}  // namespace heatkeep::allocator
