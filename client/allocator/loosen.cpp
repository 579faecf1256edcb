#include "client/allocator/loosen.h"

#include <algorithm>
#include <numeric>

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }
constexpr std::int64_t kCells = 1'500'000;
constexpr std::size_t kMostUnused = 60;

// Which patterns are taken back, how often each.
std::vector<std::int64_t> Chosen(const Component& c, std::size_t key, const Solution& best, int pieces, Chance& chance) {
  const std::size_t ranks = c.priorities.size();
  std::vector<std::int64_t> taken(best.patterns.size(), 0);
  std::vector<std::size_t> costly, all(best.patterns.size());
  std::iota(all.begin(), all.end(), std::size_t{0});
  for (std::size_t i : all)
    if (key >= ranks && best.patterns[i].first.cost[key - ranks] > 0) costly.push_back(i);
  const auto slack = [&](std::size_t i) {
    const Pattern& p = best.patterns[i].first;
    return (c.sources[At(p.source)].room.room - p.taken).nm;
  };
  const auto pick = [&](const std::vector<std::size_t>& from, int n) {
    for (int tries = 0; n > 0 && tries < 20 * pieces && !from.empty(); ++tries) {
      // Of three the one that leaves most: there is something to win.
      std::size_t i = from[chance.Next() % from.size()];
      for (int other = 0; other < 2; ++other) {
        const std::size_t o = from[chance.Next() % from.size()];
        if (slack(o) > slack(i) && taken[o] < best.patterns[o].second) i = o;
      }
      if (taken[i] >= best.patterns[i].second) continue;
      ++taken[i];
      --n;
    }
  };
  const int dear = std::max(1, pieces / (2 + static_cast<int>(chance.Next() % 4)));
  pick(costly, dear);
  pick(all, pieces - dear);
  return taken;
}

}  // namespace

void Loosen(const Component& c, std::size_t key, const Solution& best, const std::vector<Pattern>& pool, int pieces, Chance& chance,
            const SearchControl& control, const Offer& offer) {
  const std::size_t ranks = c.priorities.size();
  const std::vector<std::int64_t> taken = Chosen(c, key, best, pieces, chance);
  Component sub = c;
  sub.sources.clear();
  std::vector<std::int64_t> stock, limits(best.score.begin(), best.score.begin() + static_cast<std::ptrdiff_t>(key));
  for (const Source& s : c.sources) stock.push_back(s.count);
  for (std::size_t i = 0; i < sub.items.size(); ++i) sub.items[i].demand = best.unmet[i];
  std::vector<std::pair<Pattern, std::int64_t>> kept;
  std::vector<char> wanted(c.sources.size(), 0);
  std::int64_t target = key < ranks ? best.score[key] : 0;
  for (std::size_t i = 0; i < taken.size(); ++i) {
    const auto& [p, times] = best.patterns[i];
    const std::int64_t stays = times - taken[i];
    stock[At(p.source)] -= stays;
    if (stays > 0) kept.push_back({p, stays});
    for (std::size_t j = ranks; j < key; ++j) limits[j] -= p.cost[j - ranks] * stays;
    if (taken[i] == 0) continue;
    wanted[At(p.source)] = 1;
    if (key >= ranks) target += p.cost[key - ranks] * taken[i];
    for (const auto& [item, count] : p.cuts) sub.items[At(item)].demand += static_cast<int>(count * taken[i]);
  }
  std::vector<std::size_t> unused;
  for (std::size_t s = 0; s < stock.size(); ++s)
    if (stock[s] > 0 && !wanted[s]) unused.push_back(s);
  for (std::size_t n = 0; n < unused.size(); ++n)  // bars stay, of the drops some
    if (unused.size() <= kMostUnused || c.sources[unused[n]].bar || chance.Next() % unused.size() < kMostUnused) wanted[unused[n]] = 1;
  std::vector<int> to_sub(c.sources.size(), -1), to_all;
  for (std::size_t s = 0; s < stock.size(); ++s)
    if (wanted[s] && stock[s] > 0) {
      to_sub[s] = static_cast<int>(sub.sources.size());
      to_all.push_back(static_cast<int>(s));
      sub.sources.push_back(c.sources[s]);
      sub.sources.back().count = stock[s];
    }
  std::vector<Pattern> known;
  const auto know = [&](Pattern p) {
    if (to_sub[At(p.source)] < 0) return;
    for (const auto& [item, count] : p.cuts)
      if (sub.items[At(item)].demand < count) return;
    p.source = to_sub[At(p.source)];
    known.push_back(std::move(p));
  };
  for (std::size_t i = 0; i < taken.size(); ++i)
    if (taken[i] > 0) know(best.patterns[i].first);
  for (const Pattern& p : pool) know(p);
  Pricing find(sub, Rounding::Tight, kCells), unneeded(sub, Rounding::Loose, 1);
  Relaxation relaxation(sub, key, limits, known, find, unneeded);
  relaxation.SolveOnly(25, control);
  const Offer whole = [&](const Solution& part) {
    auto patterns = kept;
    for (const auto& [p, times] : part.patterns) {
      patterns.push_back({p, times});
      patterns.back().first.source = to_all[At(p.source)];
    }
    offer(Assembled(c, std::move(patterns)));
  };
  if (chance.Next() % 2 == 0)
    SolveLastHandful(sub, key, relaxation, false, 60, std::min(1.0, control.seconds_left()),
                     key < ranks ? std::nullopt : std::optional(target), control, whole);
  else Dive(sub, relaxation, control, whole);
}

}  // namespace heatkeep::allocator
