#include "client/allocator/heat_choice.h"

#include <algorithm>
#include <map>
#include <optional>

#include "client/allocator/least_possible.h"
#include "client/allocator/relaxation.h"
#include "client/allocator/starts.h"

namespace heatkeep::allocator {
namespace {

constexpr std::int64_t kFindCells = 4'000'000, kProveCells = 30'000'000;
constexpr int kRounds = 150;
constexpr std::int64_t kNothing = INT64_MIN / 2;  // no bound

std::vector<std::vector<char>> AllOpen(const Component& c) {
  HeatState state;
  for (const HeatUnit& unit : c.units) state.emplace_back(unit.heats.size(), 1);
  return state;
}

struct Node {
  HeatState state;
  std::vector<std::optional<std::int64_t>> bounds;  // by key, for plans whose keys before it are those of the best one
  std::optional<ComponentResult> searched;          // where nothing is left to choose
  std::vector<std::vector<double>> use;             // of each heat, by its last relaxation
  bool gone = false;                                // it holds no plan as good as the best one
  std::int64_t parent = kNothing;                   // the bound of the node it came from, of the key now in hand
};

class HeatSearch {
 public:
  HeatSearch(const Component& c, const SearchControl& control) : c_(c), control_(control) {
    const auto size = static_cast<std::int64_t>(5 * c.items.size() + c.sources.size());
    share_ = size * 3'000'000 * static_cast<std::int64_t>(std::clamp(control.iterations, 1, 1000)) / 1000;
  }

  ComponentResult Run() {
    First();
    control_.better(result_);
    result_.bounds.assign(result_.best.score.size(), std::nullopt);
    nodes_.push_back({AllOpen(c_), {}, std::nullopt, {}, false, kNothing});
    const std::size_t lead = c_.priorities.size();
    for (std::size_t k = 0; k < result_.bounds.size();) {
      Forget(k);
      const std::vector<std::int64_t> before = Prefix(k);
      const std::int64_t until = spent_ + (k <= lead ? 10 * share_ + 200'000'000 : 3 * share_);
      const std::int64_t bound = Close(k, until);
      if (Prefix(k) != before) {
        for (Node& node : nodes_) {
          node.bounds.clear();
          node.parent = kNothing;
        }
        k = 0;
        result_.proved = 0;
        result_.bounds.assign(result_.bounds.size(), std::nullopt);
        continue;
      }
      result_.bounds[k] = std::min(bound, result_.best.score[k]);
      control_.better(result_);
      if (*result_.bounds[k] != result_.best.score[k]) break;
      result_.proved = ++k;
    }
    result_.interrupted = result_.proved < result_.bounds.size() && control_.enough();
    return result_;
  }

 private:
  std::vector<std::int64_t> Prefix(std::size_t k) const {
    return {result_.best.score.begin(), result_.best.score.begin() + static_cast<std::ptrdiff_t>(k)};
  }

  // Layouts of a narrowed component are layouts of this one: items and sources are the same.
  bool Offer(const Solution& solution) {
    if (!result_.best.score.empty() && !(solution.score < result_.best.score)) return false;
    result_.best = solution;
    return true;
  }

  // A first choice, by quick plans: unit by unit the heat that serves best, until no change of one unit helps.
  void First() {
    HeatState state = AllOpen(c_);
    const auto quick = [&](const HeatState& s) {
      const Component narrowed = Narrowed(c_, s);
      StartStyle fill;
      fill.fill = true;
      const Solution a = QuickPlan(narrowed, StartStyle{}), b = QuickPlan(narrowed, fill);
      return a.score < b.score ? a : b;
    };
    const auto only = [&](std::size_t u, std::size_t h) {
      HeatState s = state;
      auto& of = s[u];
      std::fill(of.begin(), of.end(), 0);
      of[h] = 1;
      return s;
    };
    // Begin with the heats that hold most for the unit, as many as it may have.
    for (std::size_t u = 0; u < c_.units.size(); ++u) {
      std::vector<std::pair<std::int64_t, std::size_t>> room;
      for (std::size_t h = 0; h < c_.units[u].heats.size(); ++h) room.push_back({-RoomFor(u, h), h});
      std::sort(room.begin(), room.end());
      for (std::size_t n = static_cast<std::size_t>(c_.units[u].most); n < room.size(); ++n) state[u][room[n].second] = 0;
    }
    Offer(quick(state));
    for (bool better = true; better && !control_.enough();) {
      better = false;
      for (std::size_t u = 0; u < c_.units.size(); ++u) {
        if (c_.units[u].most != 1) continue;
        for (std::size_t h = 0; h < c_.units[u].heats.size() && !control_.enough(); ++h) {
          const HeatState other = only(u, h);
          if (other == state || !Offer(quick(other))) continue;
          state = other;
          better = true;
        }
      }
    }
    Settled(state);
  }

  std::int64_t RoomFor(std::size_t u, std::size_t h) const {
    std::int64_t sum = 0;
    for (const Source& s : c_.sources) {
      if (s.heat != c_.units[u].heats[h]) continue;
      for (int item : c_.units[u].items)
        if (c_.views[static_cast<std::size_t>(s.view)].may[static_cast<std::size_t>(item)]) {
          sum += s.room.room.nm * std::min<std::int64_t>(s.count, 1000);
          break;
        }
    }
    return sum;
  }

  // The full search of a choice of heats, once.
  const ComponentResult& Settled(const HeatState& state) {
    const auto [at, fresh] = settled_.try_emplace(state);
    if (fresh) {
      SearchControl inner = Inner();
      inner.iterations = std::max(std::min(control_.iterations, 10), control_.iterations / 5);
      at->second = SearchComponent(Narrowed(c_, state), inner);
      Offer(at->second.best);
    }
    return at->second;
  }

  SearchControl Inner() {
    SearchControl inner = control_;
    inner.better = [](const ComponentResult&) {};  // one choice of heats says nothing of the whole
    inner.spend = [this](std::int64_t steps) {
      spent_ += steps;
      control_.spend(steps);
    };
    return inner;
  }

  // Nodes that were searched and whose keys before k are surely worse hold nothing any more.
  void Forget(std::size_t k) {
    for (Node& node : nodes_)
      for (std::size_t j = 0; j < k && node.searched && !node.gone; ++j) {
        const auto& b = node.searched->bounds[j];
        if (!b || *b < result_.best.score[j]) break;
        node.gone = *b > result_.best.score[j];
      }
    std::erase_if(nodes_, [](const Node& node) { return node.gone; });
  }

  // Splits nodes until none has a bound of key k below the best value, or `until` steps are spent. The least bound.
  std::int64_t Close(std::size_t k, std::int64_t until) {
    const std::vector<std::int64_t> before = Prefix(k);
    // What holds with every heat open holds for all nodes.
    floor_ = kNothing;
    Node root{AllOpen(c_), {}, std::nullopt, {}, false, kNothing};
    if (nodes_.size() > 1) {
      Bound(root, k, false);
      floor_ = root.bounds[k].value_or(kNothing);
    }
    while (true) {
      std::size_t least = nodes_.size();
      for (std::size_t n = 0; n < nodes_.size(); ++n) {
        if (nodes_[n].bounds.size() <= k) Bound(nodes_[n], k, spent_ >= until);
        if (Prefix(k) != before) return 0;
        if (least == nodes_.size() || BoundOf(nodes_[n], k) < BoundOf(nodes_[least], k)) least = n;
      }
      if (least == nodes_.size()) return result_.best.score[k];
      const std::int64_t bound = BoundOf(nodes_[least], k);
      if (bound >= result_.best.score[k] || control_.enough() || spent_ >= until) return bound;
      if (Narrowed(c_, nodes_[least].state).units.empty()) return bound;  // searched, and there is still a gap
      if (k + 1 == result_.best.score.size()) return bound;               // layouts are not worth splitting for
      Split(least);
    }
  }

  static std::int64_t BoundOf(const Node& node, std::size_t k) { return k < node.bounds.size() && node.bounds[k] ? *node.bounds[k] : 0; }

  // `cheap`: by lengths alone.
  void Bound(Node& node, std::size_t k, bool cheap) {
    node.bounds.resize(k + 1);
    const Component narrowed = Narrowed(c_, node.state);
    if (narrowed.units.empty() && !control_.enough()) {
      if (!node.searched && !cheap) node.searched = Settled(node.state);
      bool same = node.searched.has_value();
      for (std::size_t j = 0; j < k && same; ++j) same = node.searched->best.score[j] == result_.best.score[j];
      if (same) node.bounds[k] = node.searched->bounds[k];
    }
    std::int64_t bound = std::max({floor_, node.parent, node.bounds[k].value_or(kNothing), SimpleBound(narrowed, k, result_.best.score)});
    node.parent = kNothing;
    const std::size_t keys = c_.priorities.size() + c_.keys.size();
    if (bound < result_.best.score[k] && k < keys && !cheap && !control_.enough() && !(node.searched && node.bounds[k])) {
      Pricing find(narrowed, Rounding::Tight, kFindCells), prove(narrowed, Rounding::Loose, kProveCells);
      std::vector<Pattern> known;
      for (const Pattern& p : known_)
        if (Allowed(narrowed, p)) known.push_back(p);
      for (const auto& [p, times] : result_.best.patterns)
        if (Allowed(narrowed, p)) known.push_back(p);
      Relaxation relaxation(narrowed, k, Prefix(k), known, find, prove, true);
      const SearchControl inner = Inner();
      relaxation.Solve(kRounds, result_.best.score[k], inner);
      if (relaxation.bound()) bound = std::max(bound, *relaxation.bound());
      if (!narrowed.units.empty()) node.use = Spread(node.state, relaxation);
      if (known_.size() < 800) {
        const std::vector<double> use = relaxation.Use();
        for (std::size_t q = 0; q < use.size(); ++q)
          if (use[q] > 1e-7) known_.push_back(relaxation.patterns()[q]);
      }
    }
    node.bounds[k] = std::min(bound, result_.best.score[k]);
  }

  static bool Allowed(const Component& narrowed, const Pattern& p) {
    const View& view = narrowed.views[static_cast<std::size_t>(narrowed.sources[static_cast<std::size_t>(p.source)].view)];
    for (const auto& [item, count] : p.cuts)
      if (!view.may[static_cast<std::size_t>(item)]) return false;
    return true;
  }

  // The relaxation's use of heats, in the numbering of this component (its units and heats are fewer).
  std::vector<std::vector<double>> Spread(const HeatState& state, const Relaxation& relaxation) const {
    const std::vector<std::vector<double>> of_open = relaxation.HeatUse();
    std::vector<std::vector<double>> use;
    std::size_t open = 0;
    for (std::size_t u = 0; u < c_.units.size(); ++u) {
      use.emplace_back(c_.units[u].heats.size(), 0.0);
      const auto sure = std::count(state[u].begin(), state[u].end(), 2);
      const auto allowed = sure + std::count(state[u].begin(), state[u].end(), 1);
      if (sure >= c_.units[u].most || allowed <= c_.units[u].most) continue;
      std::size_t h = 0;
      for (std::size_t all = 0; all < state[u].size(); ++all)
        if (state[u][all] != 0) use[u][all] = of_open[open][h++];
      ++open;
    }
    return use;
  }

  void Split(std::size_t n) {
    const Node node = std::move(nodes_[n]);
    nodes_.erase(nodes_.begin() + static_cast<std::ptrdiff_t>(n));
    // The open heat drawn on most but not whole; if all are whole, the one with the most room.
    std::size_t unit = 0, heat = 0;
    double best = -1;
    for (std::size_t u = 0; u < node.state.size(); ++u) {
      const auto sure = std::count(node.state[u].begin(), node.state[u].end(), 2);
      const auto allowed = sure + std::count(node.state[u].begin(), node.state[u].end(), 1);
      if (sure >= c_.units[u].most || allowed <= c_.units[u].most) continue;
      for (std::size_t h = 0; h < node.state[u].size(); ++h) {
        if (node.state[u][h] != 1) continue;
        double x = node.use.empty() ? 0.5 : node.use[u][h];
        if (x > 0.999) x = 0.001;
        x += 1e-9 * static_cast<double>(RoomFor(u, h)) / 1e12;
        if (x > best) best = x, unit = u, heat = h;
      }
    }
    for (const char mark : {char{2}, char{0}}) {
      Node child{node.state, {}, std::nullopt, {}, false, BoundOf(node, node.bounds.size() - 1)};
      child.state[unit][heat] = mark;
      nodes_.push_back(std::move(child));
    }
  }

  const Component& c_;
  const SearchControl& control_;
  std::int64_t share_ = 0, spent_ = 0, floor_ = kNothing;
  ComponentResult result_;
  std::vector<Node> nodes_;
  std::map<HeatState, ComponentResult> settled_;
  std::vector<Pattern> known_;
};

}  // namespace

ComponentResult SearchHeats(const Component& c, const SearchControl& control) { return HeatSearch(c, control).Run(); }

}  // namespace heatkeep::allocator
