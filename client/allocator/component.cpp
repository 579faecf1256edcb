#include "client/allocator/component.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "client/allocator/value.h"
#include "client/allocator/worth.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }
int Int(std::size_t i) { return static_cast<int>(i); }

Costs CostOf(const Component& c, const Source& s, const Pattern& p, bool last_uncut) {
  Costs cost{};
  const Length worth_left = s.own ? WorthOfRest(p.left, s.keep, s.rests) : Length{};
  for (std::size_t k = 0; k < c.keys.size(); ++k) {
    switch (c.keys[k]) {
      case Key::BarsOpened: cost[k] = s.bar ? 1 : 0; break;
      case Key::NewLength: cost[k] = s.bar && s.own ? s.length.nm : 0; break;
      case Key::ConsumedLength: cost[k] = s.length.nm; break;
      case Key::LostWorth: cost[k] = (s.worth - worth_left).nm; break;
      case Key::PiecesPulled: cost[k] = 1; break;
      case Key::Money: {
        FineMoney money = Priced(s.costs.per_metre, s.worth - worth_left);
        if (s.own && !s.bar && s.length < s.keep) money.micro += Priced(s.costs.scrap_per_metre, s.length).micro;
        if (s.own && LeftKindOf(p.left, s.keep) == LeftKind::Scrap) money.micro -= Priced(s.costs.scrap_per_metre, p.left).micro;
        money.micro += s.costs.per_pull.micro;
        money.micro += s.costs.per_cut.micro * ((s.room.trim.nm > 0 ? 1 : 0) - (last_uncut ? 1 : 0));
        for (const auto& [item, count] : p.cuts) money.micro += c.views[At(s.view)].extra[At(item)] * count;
        cost[k] = money.micro;
        break;
      }
      case Key::Unmet:
      case Key::Layouts: break;
    }
  }
  return cost;
}

}  // namespace

int Component::Pieces() const {
  int n = 0;
  for (const Item& item : items) n += item.demand;
  return n;
}

bool Complete(const Component& c, Pattern& p) {
  const Source& s = c.sources[At(p.source)];
  p.taken = p.longest = {};
  p.count = 0;
  for (const auto& [item, count] : p.cuts) {
    const Length length = c.items[At(item)].length;
    p.taken += (length + s.room.kerf) * count;
    p.longest = std::max(p.longest, length);
    p.count += count;
  }
  if (p.count == 0 || !Fits(s.room, p.taken, p.longest)) return false;
  const Ending ending = EndingOf(s.room, p.taken, p.count);
  p.left = ending.left;
  p.cost = CostOf(c, s, p, ending.last_uncut);
  return true;
}

void Score(const Component& c, Solution& solution) {
  solution.unmet.assign(c.items.size(), 0);
  for (std::size_t i = 0; i < c.items.size(); ++i) solution.unmet[i] = c.items[i].demand;
  const std::size_t ranks = c.priorities.size();
  std::vector<std::int64_t> score(ranks + c.keys.size() + 1, 0);
  std::set<std::tuple<std::string, std::string, std::map<std::int64_t, int>>> setups;
  for (const auto& [p, times] : solution.patterns) {
    for (std::size_t k = 0; k < c.keys.size(); ++k) score[ranks + k] += p.cost[k] * times;
    std::map<std::int64_t, int> lengths;
    for (const auto& [item, count] : p.cuts) {
      solution.unmet[At(item)] -= static_cast<int>(count * times);
      lengths[c.items[At(item)].length.nm] += count;
    }
    const Piece& piece = c.problem->pieces[At(c.sources[At(p.source)].pieces.front().first)];
    setups.insert({piece.section, piece.grade, std::move(lengths)});
  }
  for (std::size_t i = 0; i < c.items.size(); ++i) score[At(c.items[i].rank)] += solution.unmet[i];
  score.back() = static_cast<std::int64_t>(setups.size());
  if (!c.keys.empty() && c.keys.front() == Key::Money) {
    score[ranks] += c.problem->per_setup.micro * score.back();
    if (c.heats_cost) {
      std::map<std::string, std::set<std::string>> heats;  // items of different orders are never one then
      for (const auto& [p, times] : solution.patterns)
        for (const auto& [item, count] : p.cuts)
          heats[c.problem->lines[At(c.items[At(item)].lines.front().first)].order].insert(c.sources[At(p.source)].heat);
      for (const auto& [order, set] : heats) score[ranks] += c.problem->per_extra_heat.micro * (static_cast<std::int64_t>(set.size()) - 1);
    }
    score.back() = 0;  // not a key of that aim
  }
  if (!c.keys.empty() && c.keys.front() == Key::ConsumedLength) score.back() = 0;
  solution.score = std::move(score);
}

Component Narrowed(const Component& component, const HeatState& state) {
  Component c = component;
  std::vector<std::set<std::string>> allowed(c.units.size());
  std::vector<HeatUnit> units;
  for (std::size_t u = 0; u < c.units.size(); ++u) {
    const HeatUnit& unit = component.units[u];
    const auto sure = std::count(state[u].begin(), state[u].end(), 2);
    HeatUnit rest{unit.items, {}, {}, unit.most};
    for (std::size_t h = 0; h < unit.heats.size(); ++h) {
      if (state[u][h] == 0 || (state[u][h] == 1 && sure >= unit.most)) continue;
      allowed[u].insert(unit.heats[h]);
      rest.heats.push_back(unit.heats[h]);
      rest.sure.push_back(state[u][h] == 2 ? 1 : 0);
    }
    const bool open = sure < unit.most && rest.heats.size() > At(unit.most);
    for (int item : unit.items) c.items[At(item)].unit = open ? Int(units.size()) : -1;
    if (open) units.push_back(std::move(rest));
  }
  // Sources of one view share a heat wherever there are units, so views can be narrowed one by one.
  std::vector<const Source*> sample(c.views.size(), nullptr);
  for (const Source& s : c.sources) sample[At(s.view)] = &s;
  for (std::size_t v = 0; v < c.views.size(); ++v) {
    View& view = c.views[v];
    for (std::size_t u = 0; u < c.units.size(); ++u)
      if (sample[v] != nullptr && allowed[u].count(sample[v]->heat) == 0)
        for (int item : c.units[u].items) view.may[At(item)] = 0;
    std::erase_if(view.items, [&](int item) { return view.may[At(item)] == 0; });
  }
  c.units = std::move(units);
  return c;
}

std::vector<Layout> LayoutsOf(const Component& c, const Solution& solution) {
  // Hand out lines (earliest due first) and pieces (in their order), pattern by pattern.
  std::vector<std::vector<std::pair<int, int>>> lines(c.items.size());
  for (std::size_t i = 0; i < c.items.size(); ++i) lines[i] = c.items[i].lines;
  std::vector<std::vector<std::pair<int, std::int64_t>>> pieces(c.sources.size());
  for (std::size_t s = 0; s < c.sources.size(); ++s) pieces[s] = c.sources[s].pieces;
  std::vector<std::size_t> line_at(c.items.size(), 0), piece_at(c.sources.size(), 0);
  std::vector<Layout> layouts;
  std::map<std::pair<int, std::vector<std::pair<int, int>>>, std::size_t> seen;  // (piece, cuts by line) -> layout
  for (const auto& [p, times] : solution.patterns)
    for (std::int64_t t = 0; t < times; ++t) {
      auto& stock = pieces[At(p.source)];
      std::size_t& at = piece_at[At(p.source)];
      while (stock[at].second == 0) ++at;
      --stock[at].second;
      std::map<int, int> by_line;
      for (const auto& [item, count] : p.cuts)
        for (int n = 0; n < count; ++n) {
          auto& queue = lines[At(item)];
          std::size_t& q = line_at[At(item)];
          while (queue[q].second == 0) ++q;
          --queue[q].second;
          ++by_line[queue[q].first];
        }
      std::vector<std::pair<int, int>> cuts(by_line.begin(), by_line.end());
      const auto [it, fresh] = seen.try_emplace({stock[at].first, cuts}, layouts.size());
      if (fresh) layouts.push_back(MakeLayout(*c.problem, stock[at].first, 1, cuts));
      else ++layouts[it->second].repeat;
    }
  return layouts;
}

}  // namespace heatkeep::allocator
