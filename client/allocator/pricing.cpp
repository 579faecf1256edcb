#include "client/allocator/pricing.h"

#include <algorithm>
#include <numeric>

#include "client/allocator/value.h"
#include "client/allocator/worth.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(std::int64_t i) { return static_cast<std::size_t>(i); }
constexpr double kNothing = -1e300;
constexpr std::size_t kMostTables = 6;
constexpr std::int64_t kLook = 5'000'000;  // steps between looks at the clock
// A grid that cannot be exact need not be finer than this.
constexpr std::int64_t kTightCells = 16'000, kLooseCells = 60'000;

// What a source costs under the weights, as a constant and per nm of worth and of scrap left.
struct Taking {
  double fixed = 0, per_worth = 0, per_scrap = 0, uncut = 0;
};

Taking TakingOf(const Component& c, const Source& s, const Prices& prices) {
  Taking t;
  for (std::size_t k = 0; k < c.keys.size(); ++k) {
    const double w = prices.weight[k];
    if (w == 0) continue;
    switch (c.keys[k]) {
      case Key::BarsOpened: t.fixed += s.bar ? w : 0; break;
      case Key::NewLength: t.fixed += s.bar && s.own ? w * static_cast<double>(s.length.nm) : 0; break;
      case Key::ConsumedLength: t.fixed += w * static_cast<double>(s.length.nm); break;
      case Key::PiecesPulled: t.fixed += w; break;
      case Key::LostWorth:
        t.fixed += w * static_cast<double>(s.worth.nm);
        t.per_worth += s.own ? w : 0;
        break;
      case Key::Money: {
        // Rounded in favour of the layout: every product loses at most half a millionth, so give it two back.
        std::int64_t money = Priced(s.costs.per_metre, s.worth).micro + s.costs.per_pull.micro - 3;
        if (s.own && !s.bar && s.length < s.keep) money += Priced(s.costs.scrap_per_metre, s.length).micro;
        if (s.room.trim.nm > 0) money += s.costs.per_cut.micro;
        t.fixed += w * static_cast<double>(money);
        t.per_worth += s.own ? w * static_cast<double>(s.costs.per_metre.micro) / 1e9 : 0;
        t.per_scrap += s.own ? w * static_cast<double>(s.costs.scrap_per_metre.micro) / 1e9 : 0;
        t.uncut += w * static_cast<double>(s.costs.per_cut.micro);
        break;
      }
      case Key::Unmet:
      case Key::Layouts: break;
    }
  }
  return t;
}

struct Chunk {
  int item, count;
  std::int64_t size;
};

}  // namespace

Pricing::Pricing(const Component& c, Rounding rounding, std::int64_t most_cells)
    : c_(c), rounding_(rounding), grids_(c.views.size()), of_view_(c.views.size()), tables_(c.views.size()) {
  for (std::size_t s = 0; s < c.sources.size(); ++s) of_view_[At(c.sources[s].view)].push_back(static_cast<int>(s));
  for (std::size_t v = 0; v < c.views.size(); ++v) {
    std::int64_t gcd = 0, chunks = 1, longest = 0;
    for (int s : of_view_[v]) {
      const Room& room = c.sources[At(s)].room;
      longest = std::max({longest, room.room.nm, room.exact.value_or(Length{}).nm});
    }
    for (int i : c.views[v].items) {
      const std::int64_t size = (c.items[At(i)].length + c.views[v].kerf).nm;
      if (size > longest) continue;
      gcd = std::gcd(gcd, size);
      std::int64_t most = std::min<std::int64_t>(c.items[At(i)].demand, longest / size);
      for (; most > 0; most /= 2) ++chunks;
    }
    if (gcd == 0) gcd = std::max<std::int64_t>(1, longest);
    Grid& grid = grids_[v];
    std::int64_t cells = std::max<std::int64_t>(200, most_cells / chunks);
    grid.exact = longest / gcd <= cells;
    if (!grid.exact) cells = std::min(cells, rounding == Rounding::Tight ? kTightCells : kLooseCells);
    grid.cell = grid.exact ? gcd : (longest + cells - 1) / cells;
    grid.cells = longest / grid.cell;
    exact_ = exact_ && grid.exact;
  }
}

const std::vector<double>& Pricing::WorthTable(std::size_t v, std::int64_t offset, std::int64_t keep, const LearnedWorth* rests) {
  for (const Table& t : tables_[v])
    if (t.offset == offset && t.keep == keep && t.rests == rests) return t.worth;
  Table t{offset, keep, rests, {}};
  const Grid& grid = grids_[v];
  std::int64_t longest = 0;
  for (int s : of_view_[v]) longest = std::max(longest, c_.sources[At(s)].room.after_trim.nm);
  for (std::int64_t r = offset; r <= longest + grid.cell; r += grid.cell)
    t.worth.push_back(static_cast<double>(WorthOfRest({r}, {keep}, rests).nm));
  tables_[v].push_back(std::move(t));
  return tables_[v].back().worth;
}

Pricing::Answer Pricing::Best(const Prices& prices, const std::vector<int>& demand, const std::vector<char>& usable, std::size_t most,
                              const std::function<bool()>& enough) {
  Answer answer;
  answer.profit.assign(c_.sources.size(), kNothing);
  for (std::size_t v = 0; v < c_.views.size() && answer.whole; ++v) OneView(v, prices, demand, usable, most, enough, answer);
  if (!answer.whole) answer.patterns.clear();
  return answer;
}

void Pricing::OneView(std::size_t v, const Prices& prices, const std::vector<int>& demand, const std::vector<char>& usable,
                      std::size_t most, const std::function<bool()>& enough, Answer& answer) {
  const View& view = c_.views[v];
  const Grid& grid = grids_[v];
  double money = 0;
  for (std::size_t k = 0; k < c_.keys.size(); ++k)
    if (c_.keys[k] == Key::Money) money = prices.weight[k];
  std::int64_t longest = -1;
  for (int s : of_view_[v])
    if (usable[At(s)]) {
      const Room& room = c_.sources[At(s)].room;
      longest = std::max({longest, room.room.nm / grid.cell, room.exact ? room.exact->nm / grid.cell : -1});
    }
  if (longest < 0) return;
  std::vector<Chunk> chunks;
  std::vector<double> gain(c_.items.size(), 0);
  for (int i : view.items) {
    const double value =
        prices.item[At(i)] - money * static_cast<double>(view.extra[At(i)]) - (prices.less.empty() ? 0 : prices.less[v][At(i)]);
    if (value <= 0 || demand[At(i)] <= 0) continue;
    gain[At(i)] = value;
    const std::int64_t nm = (c_.items[At(i)].length + view.kerf).nm;
    const std::int64_t size = rounding_ == Rounding::Tight ? (nm + grid.cell - 1) / grid.cell : nm / grid.cell;
    if (size > longest) continue;
    std::int64_t left = size == 0 ? demand[At(i)] : std::min<std::int64_t>(demand[At(i)], longest / size);
    for (std::int64_t n = 1; left > 0; n *= 2) {
      const std::int64_t take = std::min(n, left);
      left -= take;
      chunks.push_back({i, static_cast<int>(take), size * take});
    }
  }
  // V over exactly filled cells; with `most` > 0 remember who was taken.
  const std::size_t width = At(longest) + 1;
  std::vector<double>& best = best_;
  best.assign(width, kNothing);
  best[0] = 0;
  const bool remember = most > 0;
  std::vector<std::vector<char>>& taken = taken_;
  if (remember && taken.size() < chunks.size()) taken.resize(chunks.size());
  std::int64_t reach = 0;
  for (std::size_t q = 0; q < chunks.size(); ++q) {
    const Chunk& chunk = chunks[q];
    const double value = gain[At(chunk.item)] * chunk.count;
    reach = std::min(longest, reach + chunk.size);
    if (work_ / kLook != (work_ + reach) / kLook && enough()) {
      answer.whole = false;
      return;
    }
    work_ += reach;
    double* const to = best.data();
    if (remember) {
      taken[q].assign(At(reach) + 1, 0);
      char* const mark = taken[q].data();
      for (std::int64_t c = reach; c >= chunk.size; --c) {
        const double now = to[c - chunk.size] + value;
        const bool better = now > to[c];
        to[c] = better ? now : to[c];
        mark[c] = better;
      }
    } else {
      for (std::int64_t c = reach; c >= chunk.size; --c) to[c] = std::max(to[c], to[c - chunk.size] + value);
    }
  }
  // The best cell up to c, for sources that do not care what is left.
  std::vector<std::int64_t> best_upto(width, 0);
  for (std::size_t c = 1; c < width; ++c)
    best_upto[c] = best[c] > best[At(best_upto[c - 1])] ? static_cast<std::int64_t>(c) : best_upto[c - 1];

  std::vector<std::pair<double, std::pair<int, std::int64_t>>> found;  // (-profit, (source, cell))
  for (int index : of_view_[v]) {
    if (!usable[At(index)]) continue;
    const Source& s = c_.sources[At(index)];
    const Taking taking = TakingOf(c_, s, prices);
    double top = kNothing;
    std::int64_t at = 0;
    const auto left_value = [&](std::int64_t c, const std::vector<double>* worth, std::int64_t shift) {
      const std::int64_t r = s.room.after_trim.nm - c * grid.cell;
      double value = 0;
      if (worth != nullptr && r > 0) value += taking.per_worth * (*worth)[At((r - shift + grid.cell - 1) / grid.cell)];
      if (taking.per_scrap > 0 && r > 0) {
        if (grid.exact) value += r < s.keep.nm ? taking.per_scrap * static_cast<double>(r) : 0;
        else value = std::max(value, taking.per_scrap * static_cast<double>(std::min(r, s.keep.nm)));
      }
      if (taking.uncut > 0 && (!grid.exact || r == -s.room.kerf.nm)) value += taking.uncut;
      return value;
    };
    const bool plain = taking.per_worth == 0 && taking.per_scrap == 0 && taking.uncut == 0;
    const std::vector<double>* worth = nullptr;
    std::int64_t shift = 0;
    if (taking.per_worth > 0) {
      const std::int64_t offset = ((s.room.after_trim.nm % grid.cell) + grid.cell) % grid.cell;
      const auto known = std::find_if(tables_[v].begin(), tables_[v].end(),
                                      [&](const Table& t) { return t.offset == offset && t.keep == s.keep.nm && t.rests == s.rests; });
      // Too many different offsets: look one cell up, which never makes a rest worth less.
      shift = known != tables_[v].end() || tables_[v].size() < kMostTables ? offset : 0;
      worth = &WorthTable(v, shift, s.keep.nm, s.rests);
    }
    const std::int64_t room = s.room.room.nm < 0 ? -1 : std::min(longest, s.room.room.nm / grid.cell);
    if (room >= 0) {
      if (plain) {
        at = best_upto[At(room)];
        top = best[At(at)];
      } else {
        work_ += 2 * std::min(room, reach);
        for (std::int64_t c = 1; c <= std::min(room, reach); ++c) {
          if (best[At(c)] == kNothing) continue;
          const double now = best[At(c)] + left_value(c, worth, shift);
          if (now > top) top = now, at = c;
        }
      }
    }
    if (s.room.exact) {
      const std::int64_t last = s.room.exact->nm / grid.cell;
      std::int64_t first = last;
      if (grid.exact) {
        if (s.room.exact->nm % grid.cell != 0) first = last + 1;
      } else {
        std::int64_t shortest = s.room.exact->nm;
        for (int i : view.items) shortest = std::min(shortest, (c_.items[At(i)].length + view.kerf).nm);
        const std::int64_t cuts = s.room.exact->nm / std::max<std::int64_t>(1, shortest) + 1;
        first = rounding_ == Rounding::Loose ? std::max<std::int64_t>(0, last - cuts) : last + 1;
      }
      for (std::int64_t c = first; c <= std::min(last, reach); ++c) {
        const double now = best[At(c)] + taking.uncut;
        if (best[At(c)] != kNothing && now > top) top = now, at = c;
      }
    }
    if (top == kNothing) continue;
    answer.profit[At(index)] = top - taking.fixed;
    const double gain_of_it = top - taking.fixed - prices.source[At(index)];
    if (remember && gain_of_it > 0 && at > 0) found.push_back({-gain_of_it, {index, at}});
  }
  std::sort(found.begin(), found.end());
  if (found.size() > most) found.resize(most);
  for (const auto& [profit, place] : found) {
    Pattern p;
    p.source = place.first;
    std::vector<int> counts(c_.items.size(), 0);
    std::int64_t c = place.second;
    for (std::size_t q = chunks.size(); q-- > 0;)
      if (c < static_cast<std::int64_t>(taken[q].size()) && taken[q][At(c)]) {
        counts[At(chunks[q].item)] += chunks[q].count;
        c -= chunks[q].size;
      }
    for (std::size_t i = 0; i < counts.size(); ++i)
      if (counts[i] > 0) p.cuts.push_back({static_cast<int>(i), counts[i]});
    if (Complete(c_, p)) answer.patterns.push_back(std::move(p));
  }
}

}  // namespace heatkeep::allocator
