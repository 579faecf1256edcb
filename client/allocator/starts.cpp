#include "client/allocator/starts.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <optional>

#include "client/allocator/best_fill.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }
int Int(std::size_t i) { return static_cast<int>(i); }

struct Bin {
  int source = 0;
  std::map<int, int> cuts;
  Length taken, longest;
};

class Quick {
 public:
  Quick(const Component& c, const StartStyle& style, std::vector<int> demand, std::vector<std::int64_t> stock)
      : c_(c), style_(style), demand_(std::move(demand)), stock_(std::move(stock)), open_(c.views.size()), open_exact_(c.views.size()),
        first_(c.items.size(), 0) {
    Order();
    if (style_.fill && style_.fullest) best_fill_.emplace(c);
  }

  Solution Run() {
    std::vector<int> first = order_;
    if (best_fill_ && c_.priorities.size() == 1) std::iota(first.begin(), first.end(), 0);  // longest first, whatever fills up
    for (int item : first)
      while (demand_[At(item)] > 0)
        if (!(style_.fill ? FillOne(item) : PlaceOne(item))) break;
    for (const Bin& bin : bins_) AddPattern(bin, 1);
    Solution solution;
    for (auto& [key, entry] : patterns_) solution.patterns.push_back(std::move(entry));
    Score(c_, solution);
    return solution;
  }

 private:
  void Order() {
    order_.resize(c_.items.size());
    std::iota(order_.begin(), order_.end(), 0);
    std::vector<double> key(c_.items.size());
    Chance chance(style_.shuffle);
    for (std::size_t i = 0; i < key.size(); ++i)
      key[i] = static_cast<double>(c_.items[i].length.nm) * (style_.shuffle != 0 ? 1.0 - 0.3 * chance.Unit() : 1.0);
    std::stable_sort(order_.begin(), order_.end(), [&](int a, int b) {
      if (style_.priority_first && c_.items[At(a)].rank != c_.items[At(b)].rank) return c_.items[At(a)].rank < c_.items[At(b)].rank;
      return key[At(a)] > key[At(b)];
    });
    for (std::size_t s = 0; s < c_.sources.size(); ++s) preference_.push_back(Int(s));
    std::stable_sort(preference_.begin(), preference_.end(), [&](int a, int b) {
      const Source &x = c_.sources[At(a)], &y = c_.sources[At(b)];
      if (style_.drops_before_bars && x.bar != y.bar) return y.bar;
      const bool longest = x.bar ? style_.bars_longest : style_.drops_longest;
      return longest ? x.length > y.length : x.length < y.length;
    });
  }

  bool MayTake(int source, int item, Length taken, Length longest) const {
    const Source& s = c_.sources[At(source)];
    const Length l = c_.items[At(item)].length;
    return c_.views[At(s.view)].may[At(item)] != 0 && Fits(s.room, taken + l + s.room.kerf, std::max(longest, l));
  }

  // The first source in order of preference that still exists and takes the item; it never comes back once gone.
  std::optional<int> Fresh(int item) {
    for (std::size_t& at = first_[At(item)]; at < preference_.size(); ++at) {
      const int s = preference_[at];
      if (stock_[At(s)] > 0 && MayTake(s, item, {}, {})) return s;
    }
    return std::nullopt;
  }

  bool PlaceOne(int item) {
    const Length l = c_.items[At(item)].length;
    std::optional<std::size_t> best;
    Length least;
    for (std::size_t v = 0; v < c_.views.size(); ++v) {
      if (!c_.views[v].may[At(item)]) continue;
      const Length need = l + c_.views[v].kerf;
      if (const auto it = open_exact_[v].find(need); it != open_exact_[v].end())
        for (auto e = it; e != open_exact_[v].end() && e->first == need; ++e)
          if (MayTake(bins_[e->second].source, item, bins_[e->second].taken, bins_[e->second].longest)) {
            Put(e->second, item);
            return true;
          }
      if (const auto it = open_[v].lower_bound(need); it != open_[v].end() && (!best || it->first < least)) {
        best = it->second;
        least = it->first;
      }
    }
    if (!best) {
      const std::optional<int> source = Fresh(item);
      if (!source) return false;
      --stock_[At(*source)];
      bins_.push_back({*source, {}, {}, {}});
      Enter(bins_.size() - 1);
      best = bins_.size() - 1;
    }
    Put(*best, item);
    return true;
  }

  void Enter(std::size_t b) {
    const Source& s = c_.sources[At(bins_[b].source)];
    open_[At(s.view)].emplace(s.room.room - bins_[b].taken, b);
    if (s.room.exact) open_exact_[At(s.view)].emplace(*s.room.exact - bins_[b].taken, b);
  }
  static void Drop(std::multimap<Length, std::size_t>& from, Length key, std::size_t b) {
    for (auto it = from.find(key); it != from.end() && it->first == key; ++it)
      if (it->second == b) {
        from.erase(it);
        return;
      }
  }
  void Put(std::size_t b, int item) {
    Bin& bin = bins_[b];
    const Source& s = c_.sources[At(bin.source)];
    Drop(open_[At(s.view)], s.room.room - bin.taken, b);
    if (s.room.exact) Drop(open_exact_[At(s.view)], *s.room.exact - bin.taken, b);
    ++bin.cuts[item];
    --demand_[At(item)];
    bin.taken += c_.items[At(item)].length + s.room.kerf;
    bin.longest = std::max(bin.longest, c_.items[At(item)].length);
    Enter(b);
  }

  // Opens a piece for the item, fills it with the first cuts that fit, and repeats that while it can.
  bool FillOne(int first) {
    const std::optional<int> source = Fresh(first);
    if (!source) return false;
    Bin bin{*source, {}, {}, {}};
    const Source& s = c_.sources[At(*source)];
    const auto take = [&](int item) {
      const Length l = c_.items[At(item)].length;
      while (demand_[At(item)] - bin.cuts[item] > 0 && MayTake(*source, item, bin.taken, bin.longest)) {
        ++bin.cuts[item];
        bin.taken += l + s.room.kerf;
        bin.longest = std::max(bin.longest, l);
      }
    };
    if (best_fill_) {
      for (const auto& [item, count] : best_fill_->Fill(*source, first, demand_, order_)) bin.cuts[item] = count;
    } else {
      take(first);
      for (int item : order_) take(item);
    }
    std::erase_if(bin.cuts, [](const auto& cut) { return cut.second == 0; });
    std::int64_t times = stock_[At(*source)];
    for (const auto& [item, count] : bin.cuts) times = std::min<std::int64_t>(times, demand_[At(item)] / count);
    for (const auto& [item, count] : bin.cuts) demand_[At(item)] -= static_cast<int>(count * times);
    stock_[At(*source)] -= times;
    AddPattern(bin, times);
    return true;
  }

  void AddPattern(const Bin& bin, std::int64_t times) {
    Pattern p;
    p.source = bin.source;
    p.cuts.assign(bin.cuts.begin(), bin.cuts.end());
    const auto key = std::make_pair(p.source, p.cuts);
    if (const auto it = patterns_.find(key); it != patterns_.end()) {
      it->second.second += times;
      return;
    }
    if (Complete(c_, p)) patterns_.emplace(key, std::make_pair(p, times));
  }

  const Component& c_;
  StartStyle style_;
  std::optional<BestFill> best_fill_;
  std::vector<int> demand_;
  std::vector<std::int64_t> stock_;
  std::vector<int> order_, preference_;
  std::vector<Bin> bins_;
  std::vector<std::multimap<Length, std::size_t>> open_, open_exact_;
  std::vector<std::size_t> first_;
  std::map<std::pair<int, std::vector<std::pair<int, int>>>, std::pair<Pattern, std::int64_t>> patterns_;
};

}  // namespace

std::uint64_t Chance::Next() {
  state_ += 0x9E3779B97F4A7C15ULL;  // splitmix64
  std::uint64_t z = state_;
  z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
  z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
  return z ^ (z >> 31);
}

StartStyle PlainChoice() {
  StartStyle style;
  style.priority_first = false;
  style.bars_longest = false;
  return style;
}

Solution QuickPlan(const Component& c, const StartStyle& style, const std::vector<int>& demand, const std::vector<std::int64_t>& stock) {
  return Quick(c, style, demand, stock).Run();
}

Solution QuickPlan(const Component& c, const StartStyle& style) {
  std::vector<int> demand;
  for (const Item& item : c.items) demand.push_back(item.demand);
  std::vector<std::int64_t> stock;
  for (const Source& s : c.sources) stock.push_back(s.count);
  return QuickPlan(c, style, demand, stock);
}

void MoveToCheaper(const Component& c, Solution& solution, const std::function<bool()>& stop) {
  std::vector<std::int64_t> stock;
  for (const Source& s : c.sources) stock.push_back(s.count);
  for (const auto& [p, times] : solution.patterns) stock[At(p.source)] -= times;
  bool moved = false;
  std::vector<std::pair<Pattern, std::int64_t>> result;
  std::vector<std::pair<Pattern, std::int64_t>> work(solution.patterns.rbegin(), solution.patterns.rend());
  int looked = 0, tried = 0;
  while (!work.empty()) {
    auto [p, times] = work.back();
    work.pop_back();
    std::optional<Pattern> best;
    const auto enough = std::lower_bound(c.sources.begin(), c.sources.end(), p.taken - c.sources[At(p.source)].room.kerf,
                                         [](const Source& s, Length l) { return s.length < l; });
    for (std::size_t s = static_cast<std::size_t>(enough - c.sources.begin()); s < c.sources.size(); ++s) {
      if ((++tried & 0x3ff) == 0 && stop()) return;
      if (stock[s] <= 0 || Int(s) == p.source) continue;
      const View& view = c.views[At(c.sources[s].view)];
      bool may = true;
      for (const auto& [item, count] : p.cuts) may = may && view.may[At(item)] != 0;
      if (!may) continue;
      Pattern q = p;
      q.source = Int(s);
      if (!Complete(c, q)) continue;
      if (q.cost < (best ? best->cost : p.cost)) best = q;
      if (++looked > 2'000'000) break;
    }
    if (!best) {
      result.push_back({p, times});
      continue;
    }
    const std::int64_t n = std::min(times, stock[At(best->source)]);
    stock[At(best->source)] -= n;
    stock[At(p.source)] += n;
    if (n < times) work.push_back({p, times - n});
    work.push_back({*best, n});
    moved = true;
  }
  if (!moved) return;
  Solution better;
  std::map<std::pair<int, std::vector<std::pair<int, int>>>, std::size_t> at;
  for (auto& [p, times] : result) {
    const auto [it, fresh] = at.try_emplace({p.source, p.cuts}, better.patterns.size());
    if (fresh) better.patterns.push_back({p, times});
    else better.patterns[it->second].second += times;
  }
  Score(c, better);
  if (better.score < solution.score) solution = std::move(better);
}

}  // namespace heatkeep::allocator
