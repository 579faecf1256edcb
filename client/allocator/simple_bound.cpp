// Bounds from lengths alone (least_possible.h).
#include <algorithm>
#include <functional>

#include "client/allocator/least_possible.h"
#include "client/allocator/value.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }
__extension__ using Wide = __int128;

std::int64_t UpDivided(Wide a, Wide b) { return a <= 0 ? 0 : static_cast<std::int64_t>((a + b - 1) / b); }

class Bounder {
 public:
  Bounder(const Component& c, const std::vector<std::int64_t>& score) : c_(c), score_(score), ranks_(c.priorities.size()) {
    for (const Source& s : c.sources) gives_.push_back(std::max<std::int64_t>({0, s.room.room.nm, s.room.exact.value_or(Length{}).nm}));
    served_.assign(c.items.size(), 0);
    needs_.assign(c.items.size(), 0);
    for (std::size_t i = 0; i < c.items.size(); ++i) {
      std::int64_t least = -1;
      for (std::size_t s = 0; s < c.sources.size(); ++s)
        if (Takes(s, i)) {
          const std::int64_t need = (c.items[i].length + c.sources[s].room.kerf).nm;
          if (least < 0 || need < least) least = need;
        }
      needs_[i] = least;  // -1: nothing takes it
      order_.push_back(i);
    }
    std::stable_sort(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) { return needs_[a] > needs_[b]; });
  }

  std::int64_t Unmet(std::size_t rank) const {
    std::int64_t nowhere = 0;
    for (std::size_t i = 0; i < needs_.size(); ++i)
      if (c_.items[i].rank == static_cast<int>(rank)) nowhere += c_.items[i].demand - MostOf(i);
    const auto over = [&](auto counts) {
      std::vector<std::pair<std::int64_t, int>> cuts;
      std::int64_t missing = 0;
      for (std::size_t i = 0; i < needs_.size(); ++i) {
        if (!counts(c_.items[i].rank)) continue;
        missing += c_.items[i].demand;
        if (needs_[i] >= 0) cuts.push_back({needs_[i], c_.items[i].demand});
      }
      Wide room = 0;
      for (std::size_t s = 0; s < gives_.size(); ++s) room += Wide{gives_[s]} * c_.sources[s].count;
      std::sort(cuts.begin(), cuts.end());
      for (const auto& [need, demand] : cuts) {
        const auto fit = static_cast<std::int64_t>(std::min<Wide>(demand, need > 0 ? room / need : Wide{demand}));
        room -= Wide{need} * fit;
        missing -= fit;
        if (fit < demand) break;
      }
      return missing;
    };
    const int r = static_cast<int>(rank);
    std::int64_t before = 0;
    for (std::size_t j = 0; j < rank; ++j) before += score_[j];
    return std::max({nowhere, over([r](int other) { return other == r; }), over([r](int other) { return other <= r; }) - before});
  }

  // How many cuts of each item must be served when the unmet ones are the longest of their rank.
  void Serve() {
    for (std::size_t r = 0; r < ranks_; ++r) {
      std::int64_t missing = score_[r];
      for (std::size_t i = 0; i < served_.size(); ++i) {
        if (c_.items[i].rank != static_cast<int>(r) || needs_[i] >= 0) continue;
        missing -= c_.items[i].demand;  // what nothing takes is unmet in any case
      }
      for (std::size_t i : order_) {  // longest first
        if (c_.items[i].rank != static_cast<int>(r) || needs_[i] < 0) continue;
        const std::int64_t gone = std::clamp<std::int64_t>(missing, 0, c_.items[i].demand);
        missing -= gone;
        served_[i] = c_.items[i].demand - gone;
      }
    }
  }

  // The least sum of `cost` over sources when those of cost 0 are free; cost(s) >= 0.
  std::int64_t Covering(const std::function<std::int64_t(const Source&)>& cost) {
    Serve();
    std::int64_t best = 0;
    std::vector<char> free_in(gives_.size(), 0);
    Wide need = 0, free_room = 0;
    std::vector<std::pair<std::pair<std::int64_t, std::int64_t>, std::int64_t>> paid;  // (cost, room), count
    for (std::size_t s = 0; s < gives_.size(); ++s)
      if (cost(c_.sources[s]) > 0 && gives_[s] > 0) paid.push_back({{cost(c_.sources[s]), gives_[s]}, c_.sources[s].count});
    std::stable_sort(paid.begin(), paid.end(), [](const auto& a, const auto& b) {
      return Wide{a.first.first} * b.first.second < Wide{b.first.first} * a.first.second;
    });
    const bool few = served_.size() * gives_.size() <= 4'000'000;
    for (std::size_t i : order_) {  // cuts so far: all at least as long as this one
      if (served_[i] > 0) need += Wide{needs_[i]} * served_[i];
      for (std::size_t s = 0; s < gives_.size(); ++s) {
        if (free_in[s] || cost(c_.sources[s]) > 0) continue;
        if (few ? !Takes(s, i) : gives_[s] < needs_[i]) continue;
        free_in[s] = 1;
        free_room += Wide{gives_[s]} * c_.sources[s].count;
      }
      if (served_[i] == 0) continue;
      Wide open = need - free_room;
      std::int64_t total = 0;
      for (const auto& [at, count] : paid) {
        if (open <= 0) break;
        const Wide all = Wide{at.second} * count;
        if (open < all) {
          total += UpDivided(open * at.first, at.second);
          open = 0;
        } else {
          total += at.first * count;
          open -= all;
        }
      }
      best = std::max(best, total);
    }
    return best;
  }

  // L2 for one source that is all there is.
  std::int64_t Steps() const {
    if (c_.sources.size() != 1) return 0;
    const std::int64_t room = gives_[0];
    std::int64_t best = 0, large = 0, middle = 0;
    Wide middle_need = 0;
    // For a threshold a <= room / 2: cuts above room - a stand alone; those above room / 2 leave room for those >= a.
    for (std::size_t n = 0; n < order_.size(); ++n) {
      const std::size_t a = order_[n];
      if (served_[a] == 0 || needs_[a] * 2 > room) continue;
      large = middle = 0;
      middle_need = 0;
      Wide small_need = 0;
      for (std::size_t m = 0; m <= n; ++m) {
        const std::size_t i = order_[m];
        if (needs_[i] > room - needs_[a]) large += served_[i];
        else if (needs_[i] * 2 > room) middle += served_[i], middle_need += Wide{needs_[i]} * served_[i];
        else small_need += Wide{needs_[i]} * served_[i];
      }
      best = std::max(best, large + middle + UpDivided(small_need - (Wide{room} * middle - middle_need), room));
    }
    large = 0;
    for (std::size_t i = 0; i < served_.size(); ++i)
      if (needs_[i] * 2 > room) large += served_[i];
    return std::max(best, large);
  }

  std::int64_t Money() {
    Serve();
    Wide sum = 0;
    for (std::size_t i = 0; i < served_.size(); ++i) {
      if (served_[i] == 0) continue;
      std::int64_t least = -1;
      for (const View& v : c_.views)
        if (v.may[i] && (least < 0 || v.extra[i] < least)) least = v.extra[i];
      sum += Wide{std::max<std::int64_t>(0, least)} * served_[i];
    }
    for (std::size_t s = 0; s < gives_.size(); ++s) {
      const Source& x = c_.sources[s];
      const std::int64_t gain = (x.own ? Priced(x.costs.scrap_per_metre, std::min(x.length, x.keep)).micro + 1 : 0) +
          x.costs.per_cut.micro - x.costs.per_pull.micro;
      if (gain > 0) sum -= Wide{gain} * x.count;
    }
    return static_cast<std::int64_t>(sum);
  }

 private:
  bool Takes(std::size_t s, std::size_t i) const {
    const Source& x = c_.sources[s];
    const Length l = c_.items[i].length;
    return c_.views[At(x.view)].may[i] != 0 && (l + x.room.kerf).nm <= gives_[s];
  }

  // How many of the cut there could be, were it the only one.
  std::int64_t MostOf(std::size_t i) const {
    std::int64_t most = 0;
    for (std::size_t s = 0; s < gives_.size() && most < c_.items[i].demand; ++s)
      if (Takes(s, i))
        most += c_.sources[s].count * (gives_[s] / std::max<std::int64_t>(1, (c_.items[i].length + c_.sources[s].room.kerf).nm));
    return std::min<std::int64_t>(most, c_.items[i].demand);
  }

  const Component& c_;
  const std::vector<std::int64_t>& score_;
  std::size_t ranks_;
  std::vector<std::int64_t> gives_, needs_;
  std::vector<std::size_t> order_;  // items, greatest need first
  std::vector<std::int64_t> served_;
};

}  // namespace

std::int64_t SimpleBound(const Component& c, std::size_t key, const std::vector<std::int64_t>& score) {
  Bounder bounder(c, score);
  const std::size_t ranks = c.priorities.size();
  if (key < ranks) return bounder.Unmet(key);
  if (key - ranks >= c.keys.size()) return 0;
  std::int64_t bound = 0;
  switch (c.keys[key - ranks]) {
    case Key::BarsOpened:
      bound = bounder.Covering([](const Source& s) { return std::int64_t{s.bar ? 1 : 0}; });
      if (c.sources.size() == 1 && c.sources[0].bar) bound = std::max(bound, bounder.Steps());
      break;
    case Key::NewLength: {
      bound = bounder.Covering([](const Source& s) { return s.bar && s.own ? s.length.nm : 0; });
      if (key > ranks && c.keys[key - ranks - 1] == Key::BarsOpened) {  // so many bars, each at least the shortest
        std::int64_t shortest = -1;
        for (const Source& s : c.sources)
          if (s.bar && (shortest < 0 || !s.own || s.length.nm < shortest)) shortest = s.own ? s.length.nm : 0;
        bound = std::max(bound, std::max<std::int64_t>(0, shortest) * score[key - 1]);
      }
      break;
    }
    case Key::ConsumedLength: bound = bounder.Covering([](const Source& s) { return s.length.nm; }); break;
    case Key::PiecesPulled: bound = bounder.Covering([](const Source&) { return std::int64_t{1}; }); break;
    case Key::Money: return bounder.Money();
    default: break;
  }
  return LeastPossible(c, key, bound);
}

}  // namespace heatkeep::allocator
