#include "client/allocator/exact_small.h"

#include <algorithm>
#include <array>
#include <map>
#include <tuple>

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }
int Int(std::size_t i) { return static_cast<int>(i); }

constexpr std::size_t kMostRanks = 6;
constexpr std::size_t kScore = kMostRanks + kMostKeys + 1;
using ScoreArray = std::array<std::int64_t, kScore>;

ScoreArray operator+(ScoreArray a, const ScoreArray& b) {
  for (std::size_t i = 0; i < kScore; ++i) a[i] += b[i];
  return a;
}

struct Choice {
  std::size_t cut_set = 0;
  int source = 0;
  int setup = 0;
  ScoreArray cost{};
  Pattern pattern;
};

class Exact {
 public:
  Exact(const Component& c, Solution& best, std::int64_t nodes, const std::function<bool()>& enough)
      : c_(c), best_(best), nodes_(nodes), enough_(enough), ranks_(c.priorities.size()) {}

  bool Run() {
    if (ranks_ > kMostRanks || c_.sources.size() > 300 || !States() || !CutSets()) return false;
    if (!Choices() || !Least()) return false;
    for (const Source& s : c_.sources) stock_.push_back(s.count);
    for (std::size_t i = 0; i < best_.score.size(); ++i) top_[i] = best_.score[i];
    rest_ = demand_;
    Search(states_ - 1, 0, ScoreArray{});
    if (found_) {
      best_.patterns = std::move(found_patterns_);
      Score(c_, best_);
    }
    return !done_;
  }

 private:
  bool States() {
    states_ = 1;
    for (const Item& item : c_.items) {
      demand_.push_back(item.demand);
      radix_.push_back(states_);
      states_ *= static_cast<std::size_t>(item.demand) + 1;
      if (states_ > 30'000) return false;
    }
    return true;
  }

  // Every set of cuts that some source takes.
  bool CutSets() {
    std::vector<int> counts(c_.items.size(), 0);
    longest_room_ = Length{0};
    for (const Source& s : c_.sources) longest_room_ = std::max({longest_room_, s.room.room, s.room.exact.value_or(Length{})});
    least_kerf_ = c_.views.front().kerf;
    for (const View& v : c_.views) least_kerf_ = std::min(least_kerf_, v.kerf);
    return Extend(counts, 0, Length{0}, 0);
  }
  bool Extend(std::vector<int>& counts, std::size_t item, Length taken, int n) {
    if (item == counts.size()) {
      if (n > 0) cut_sets_.push_back(counts);
      return cut_sets_.size() <= 4000;
    }
    for (int k = 0; k <= demand_[item]; ++k) {
      const Length now = taken + (c_.items[item].length + least_kerf_) * k;
      if (now > longest_room_) break;
      counts[item] = k;
      if (!Extend(counts, item + 1, now, n + k)) return false;
    }
    counts[item] = 0;
    return true;
  }

  bool Choices() {
    std::map<std::tuple<std::string, std::string, std::map<std::int64_t, int>>, int> setups;
    by_first_.resize(c_.items.size());
    for (std::size_t k = 0; k < cut_sets_.size(); ++k) {
      std::map<std::int64_t, int> lengths;
      Pattern p;
      for (std::size_t i = 0; i < c_.items.size(); ++i)
        if (cut_sets_[k][i] > 0) {
          p.cuts.push_back({Int(i), cut_sets_[k][i]});
          lengths[c_.items[i].length.nm] += cut_sets_[k][i];
        }
      for (std::size_t s = 0; s < c_.sources.size(); ++s) {
        const View& view = c_.views[At(c_.sources[s].view)];
        bool may = true;
        for (const auto& [item, count] : p.cuts) may = may && view.may[At(item)] != 0;
        p.source = Int(s);
        if (!may || !Complete(c_, p)) continue;
        Choice choice;
        choice.cut_set = k;
        choice.source = p.source;
        const Piece& piece = c_.problem->pieces[At(c_.sources[s].pieces.front().first)];
        choice.setup = setups.try_emplace({piece.section, piece.grade, lengths}, Int(setups.size())).first->second;
        for (std::size_t j = 0; j < c_.keys.size(); ++j) choice.cost[ranks_ + j] = p.cost[j];
        choice.pattern = p;
        by_first_[At(p.cuts.front().first)].push_back(std::move(choice));
        if (++choices_ > 20'000) return false;
      }
    }
    setup_uses_.assign(setups.size(), 0);
    std::map<std::string, int> orders, heats;
    for (const Item& item : c_.items)
      order_.push_back(orders.try_emplace(c_.problem->lines[At(item.lines.front().first)].order, Int(orders.size())).first->second);
    for (const Source& s : c_.sources) heat_.push_back(heats.try_emplace(s.heat, Int(heats.size())).first->second);
    heat_uses_.assign(orders.size(), std::vector<int>(heats.size(), 0));
    heats_of_order_.assign(orders.size(), 0);
    return true;
  }

  std::size_t Offset(const std::vector<int>& counts) const {
    std::size_t offset = 0;
    for (std::size_t i = 0; i < counts.size(); ++i) offset += radix_[i] * At(counts[i]);
    return offset;
  }

  // least_[state]: the least additive cost of serving what is left, pieces never running out.
  bool Least() {
    offsets_.clear();
    for (const auto& set : cut_sets_) offsets_.push_back(Offset(set));
    // Per first item: the cheapest choice of every cut set.
    std::vector<std::vector<std::pair<std::size_t, ScoreArray>>> cheapest(c_.items.size());
    for (std::size_t i = 0; i < c_.items.size(); ++i) {
      std::map<std::size_t, ScoreArray> best;
      for (const Choice& choice : by_first_[i]) {
        const auto [it, fresh] = best.try_emplace(choice.cut_set, choice.cost);
        if (!fresh) it->second = std::min(it->second, choice.cost);
      }
      cheapest[i].assign(best.begin(), best.end());
    }
    if (states_ * choices_ > 40'000'000) return false;
    least_.assign(states_, ScoreArray{});
    std::vector<int> rest(c_.items.size(), 0);
    for (std::size_t state = 1; state < states_; ++state) {
      if (state % 64 == 0 && enough_()) return false;
      for (std::size_t i = 0;; ++i) {  // the next state: count up
        if (++rest[i] <= demand_[i]) break;
        rest[i] = 0;
      }
      std::size_t first = 0;
      while (rest[first] == 0) ++first;
      ScoreArray best = least_[state - radix_[first] * At(rest[first])];
      best[At(c_.items[first].rank)] += rest[first];
      for (const auto& [set, cost] : cheapest[first]) {
        if (!Within(cut_sets_[set], rest, first)) continue;
        const ScoreArray now = least_[state - offsets_[set]] + cost;
        if (now < best) best = now;
      }
      least_[state] = best;
    }
    return true;
  }

  static bool Within(const std::vector<int>& counts, const std::vector<int>& rest, std::size_t from) {
    for (std::size_t i = from; i < counts.size(); ++i)
      if (counts[i] > rest[i]) return false;
    return true;
  }

  ScoreArray Extra() const {
    ScoreArray extra{};
    const std::int64_t setups = setups_;
    const Key first = c_.keys.front();
    if (first == Key::Money) {
      std::int64_t more = c_.problem->per_setup.micro * setups;
      if (c_.heats_cost)
        for (int heats : heats_of_order_) more += c_.problem->per_extra_heat.micro * std::max(0, heats - 1);
      extra[ranks_] = more;
    } else if (first != Key::ConsumedLength) {
      extra[ranks_ + c_.keys.size()] = setups;
    }
    return extra;
  }

  void Search(std::size_t state, std::size_t from_choice, const ScoreArray& sofar) {
    if (done_) return;
    if (nodes_ < 0 || (++visited_ % 256 == 0 && enough_())) {
      done_ = true;
      return;
    }
    const ScoreArray bound = sofar + Extra() + least_[state];
    if (!(bound < top_)) return;
    if (state == 0) {
      top_ = bound;
      found_ = true;
      found_patterns_.clear();
      for (const Choice* choice : chosen_) found_patterns_.push_back({choice->pattern, 1});
      return;
    }
    std::size_t first = 0;
    while (rest_[first] == 0) ++first;
    // Choices for one first item are taken in ascending order: equal sets of layouts are met once.
    std::vector<std::pair<ScoreArray, std::size_t>> open;
    nodes_ -= static_cast<std::int64_t>(by_first_[first].size() - from_choice) + 10;
    for (std::size_t k = from_choice; k < by_first_[first].size(); ++k) {
      const Choice& choice = by_first_[first][k];
      if (stock_[At(choice.source)] == 0 || !Within(cut_sets_[choice.cut_set], rest_, first)) continue;
      const ScoreArray now = sofar + choice.cost + least_[state - offsets_[choice.cut_set]];
      if (now < top_) open.push_back({now, k});
    }
    std::sort(open.begin(), open.end());
    for (const auto& [now, k] : open) Take(by_first_[first][k], state, first, k, sofar);
    const int missing = rest_[first];
    ScoreArray cost = sofar;
    cost[At(c_.items[first].rank)] += missing;
    rest_[first] = 0;
    Search(state - radix_[first] * At(missing), 0, cost);
    rest_[first] = missing;
  }

  void Take(const Choice& choice, std::size_t state, std::size_t first, std::size_t k, const ScoreArray& sofar) {
    const auto& set = cut_sets_[choice.cut_set];
    --stock_[At(choice.source)];
    if (setup_uses_[At(choice.setup)]++ == 0) ++setups_;
    chosen_.push_back(&choice);
    for (std::size_t i = first; i < set.size(); ++i) {
      rest_[i] -= set[i];
      if (set[i] > 0) Heat(i, choice.source, 1);
    }
    Search(state - offsets_[choice.cut_set], rest_[first] > 0 ? k : 0, sofar + choice.cost);
    for (std::size_t i = first; i < set.size(); ++i) {
      rest_[i] += set[i];
      if (set[i] > 0) Heat(i, choice.source, -1);
    }
    chosen_.pop_back();
    if (--setup_uses_[At(choice.setup)] == 0) --setups_;
    ++stock_[At(choice.source)];
  }

  void Heat(std::size_t item, int source, int by) {
    const std::size_t order = At(order_[item]);
    int& uses = heat_uses_[order][At(heat_[At(source)])];
    if (by > 0 ? uses++ == 0 : --uses == 0) heats_of_order_[order] += by;
  }

  const Component& c_;
  Solution& best_;
  std::int64_t nodes_;  // what may still be looked at
  std::int64_t visited_ = 0;
  const std::function<bool()>& enough_;
  std::size_t ranks_;
  std::size_t states_ = 1, choices_ = 0;
  std::int64_t setups_ = 0;  // different ones in use
  std::vector<int> demand_, rest_, order_, heat_, setup_uses_, heats_of_order_;
  std::vector<std::size_t> radix_, offsets_;
  std::vector<std::vector<int>> cut_sets_, heat_uses_;
  std::vector<std::vector<Choice>> by_first_;
  std::vector<ScoreArray> least_;
  std::vector<std::int64_t> stock_;
  std::vector<const Choice*> chosen_;
  std::vector<std::pair<Pattern, std::int64_t>> found_patterns_;
  Length longest_room_, least_kerf_;
  ScoreArray top_{};
  bool done_ = false, found_ = false;
};

}  // namespace

bool SolveExactly(const Component& c, Solution& best, std::int64_t looks, const std::function<bool()>& enough) {
  return Exact(c, best, looks, enough).Run();
}

}  // namespace heatkeep::allocator
