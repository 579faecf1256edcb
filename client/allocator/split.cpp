// Splitting a problem into components (component.h): who may serve whom, what is equal to what.
#include <algorithm>
#include <cstdint>
#include <map>
#include <numeric>
#include <set>
#include <tuple>

#include "client/allocator/component.h"
#include "client/allocator/eligible.h"
#include "client/allocator/value.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }
int Int(std::size_t i) { return static_cast<int>(i); }

struct Union {
  std::vector<int> parent;
  explicit Union(std::size_t n) : parent(n) { std::iota(parent.begin(), parent.end(), 0); }
  int Find(int x) {
    while (parent[At(x)] != x) x = parent[At(x)] = parent[At(parent[At(x)])];
    return x;
  }
  void Join(int a, int b) { parent[At(Find(a))] = Find(b); }
};

// Pieces and lines whose texts are equal behave alike, whatever their lengths.
using PieceSign = std::tuple<std::string, std::string, std::string, std::string, std::string, PaperType, bool, std::string>;
using LineSign = std::tuple<std::string, std::string, std::string, std::string, PaperType, bool, std::string, std::vector<std::string>>;

std::string UnitName(const Line& line, std::size_t index) {
  if (!line.one_heat.empty()) return "group " + line.one_heat;
  if (line.max_heats > 0) return "line " + std::to_string(index);
  return {};
}

struct Split {
  const Problem& problem;
  std::vector<int> piece_class, line_class;
  std::vector<std::vector<char>> may;  // [piece class][line class]
  std::size_t piece_classes = 0, line_classes = 0;
  bool orders_matter = false, heats_cost = false, setups_cost = false;

  explicit Split(const Problem& p) : problem(p) {
    const bool money = p.aim == Aim::LeastMoney;
    heats_cost = money && p.per_extra_heat.micro > 0;
    setups_cost = money && p.per_setup.micro > 0;
    for (const auto& row : p.grades) orders_matter = orders_matter || !row.order.empty();
    for (const auto& row : p.sections) orders_matter = orders_matter || !row.order.empty();
    bool heats_refused = false;
    for (const Line& line : p.lines) heats_refused = heats_refused || !line.refused_heats.empty();
    std::map<PieceSign, int> pieces;
    std::map<LineSign, int> lines;
    std::vector<int> piece_sample, line_sample;
    for (std::size_t i = 0; i < p.pieces.size(); ++i) {
      const Piece& x = p.pieces[i];
      const auto [it, fresh] = pieces.try_emplace(
          PieceSign{x.section, x.grade, x.condition, x.owner, x.held, x.papers, x.heat.empty(), heats_refused ? x.heat : std::string()},
          Int(pieces.size()));
      if (fresh) piece_sample.push_back(Int(i));
      piece_class.push_back(it->second);
    }
    for (std::size_t i = 0; i < p.lines.size(); ++i) {
      const Line& x = p.lines[i];
      const auto [it, fresh] =
          lines.try_emplace(LineSign{x.section, x.grade, x.condition, x.owner, x.papers, !x.one_heat.empty() || x.max_heats > 0,
                                     orders_matter ? x.order : std::string(), x.refused_heats},
                            Int(lines.size()));
      if (fresh) line_sample.push_back(Int(i));
      line_class.push_back(it->second);
    }
    piece_classes = piece_sample.size();
    line_classes = line_sample.size();
    may.assign(piece_classes, std::vector<char>(line_classes, 0));
    for (std::size_t a = 0; a < piece_classes; ++a)
      for (std::size_t b = 0; b < line_classes; ++b)
        may[a][b] = WhyNot(p, p.pieces[At(piece_sample[a])], p.lines[At(line_sample[b])]) ? 0 : 1;
  }

  std::vector<Component> Components() {
    Union groups(piece_classes + line_classes);
    std::map<std::string, int> by_unit, by_order, by_metal;
    const int base = Int(piece_classes);
    for (std::size_t a = 0; a < piece_classes; ++a)
      for (std::size_t b = 0; b < line_classes; ++b)
        if (may[a][b]) groups.Join(Int(a), base + Int(b));
    for (std::size_t i = 0; i < problem.lines.size(); ++i) {
      const int node = base + line_class[i];
      if (const std::string name = UnitName(problem.lines[i], i); !name.empty())
        groups.Join(by_unit.try_emplace(name, node).first->second, node);
      if (heats_cost) groups.Join(by_order.try_emplace(problem.lines[i].order, node).first->second, node);
    }
    if (setups_cost)
      for (std::size_t i = 0; i < problem.pieces.size(); ++i)
        groups.Join(by_metal.try_emplace(problem.pieces[i].section + "\n" + problem.pieces[i].grade, piece_class[i]).first->second,
                    piece_class[i]);
    std::map<int, std::pair<std::vector<int>, std::vector<int>>> parts;  // root -> lines, pieces
    for (std::size_t i = 0; i < problem.lines.size(); ++i) parts[groups.Find(base + line_class[i])].first.push_back(Int(i));
    for (std::size_t i = 0; i < problem.pieces.size(); ++i)
      if (const auto it = parts.find(groups.Find(piece_class[i])); it != parts.end()) it->second.second.push_back(Int(i));
    std::vector<Component> components;
    for (auto& [root, part] : parts)
      if (!part.first.empty() && !part.second.empty()) components.push_back(Build(part.first, part.second));
    std::erase_if(components, [](const Component& c) { return c.items.empty() || c.sources.empty(); });
    return components;
  }

  Component Build(std::vector<int> lines, const std::vector<int>& pieces) {
    Component c;
    c.problem = &problem;
    c.setups_cost = setups_cost;
    c.heats_cost = heats_cost;
    for (Key key : KeysOf(problem.aim))
      if (key != Key::Unmet && key != Key::Layouts) c.keys.push_back(key);
    Items(c, lines);
    Sources(c, pieces);
    Units(c);
    return c;
  }

  const Line& LineAt(int i) const { return problem.lines[At(i)]; }

  void Items(Component& c, std::vector<int>& lines) {
    std::erase_if(lines, [&](int i) { return LineAt(i).quantity <= 0; });
    std::stable_sort(lines.begin(), lines.end(), [&](int a, int b) {
      const std::string &x = LineAt(a).due, &y = LineAt(b).due;
      return x.empty() != y.empty() ? y.empty() : x < y;
    });
    std::set<int> priorities;
    for (int i : lines) priorities.insert(LineAt(i).priority);
    c.priorities.assign(priorities.begin(), priorities.end());
    // (-length, priority, line class, unit, order) -> item
    std::map<std::tuple<std::int64_t, int, int, std::string, std::string>, Item> items;
    for (int i : lines) {
      const Line& x = LineAt(i);
      Item& item = items[{-x.CutLength().nm, x.priority, line_class[At(i)], UnitName(x, At(i)), heats_cost ? x.order : std::string()}];
      item.length = x.CutLength();
      item.rank =
          Int(static_cast<std::size_t>(std::lower_bound(c.priorities.begin(), c.priorities.end(), x.priority) - c.priorities.begin()));
      item.demand += x.quantity;
      item.lines.push_back({i, x.quantity});
    }
    std::map<std::string, int> units;
    for (auto& [key, item] : items) {
      if (const std::string& unit = std::get<3>(key); !unit.empty()) {
        item.unit = units.try_emplace(unit, Int(units.size())).first->second;
        if (At(item.unit) == c.units.size()) {
          c.units.emplace_back();
          const Line& line = LineAt(item.lines.front().first);
          c.units.back().most = line.one_heat.empty() ? line.max_heats : 1;
        }
        c.units[At(item.unit)].items.push_back(Int(c.items.size()));
      }
      c.items.push_back(std::move(item));
    }
  }

  void Sources(Component& c, const std::vector<int>& pieces) {
    const bool by_heat = c.heats_cost || !c.units.empty();
    const std::int64_t most = c.Pieces();
    std::map<std::tuple<int, std::int64_t, std::int64_t, std::string>, int> views;
    std::map<std::vector<std::string>, int> sources;
    for (int i : pieces) {
      const Piece& x = problem.pieces[At(i)];
      if (!x.held.empty() || (x.count && *x.count <= 0)) continue;
      const GroupRules& rules = RulesFor(problem, x);
      const auto [v, fresh_view] = views.try_emplace(
          {piece_class[At(i)], rules.kerf.nm, x.costs.per_cut.micro, by_heat ? x.heat : std::string()}, Int(c.views.size()));
      if (fresh_view) c.views.push_back(MakeView(c, x, piece_class[At(i)], rules));
      Source s;
      s.view = v->second;
      s.room = RoomOf(x, rules);
      bool any = false;
      for (int item : c.views[At(s.view)].items) {
        const Length l = c.items[At(item)].length;
        any = any || Fits(s.room, l + s.room.kerf, l);
      }
      if (!any && !s.room.exact) continue;
      if (!any && c.views[At(s.view)].items.empty()) continue;
      s.length = x.length;
      s.keep = rules.keep;
      s.bar = x.kind == PieceKind::Bar;
      s.own = x.owner.empty();
      s.heat = x.heat;
      s.worth = WorthOf(x, rules);
      s.rests = rules.rests.get();
      s.costs = x.costs;
      const std::int64_t count = x.count ? std::min<std::int64_t>(*x.count, most) : most;
      const auto text = [](auto n) { return std::to_string(n); };
      const auto [at, fresh] = sources.try_emplace(
          {text(s.view), text(x.length.nm), text(x.square_ends), text(x.doubt.nm), text(s.bar ? 1 : 0), text(rules.trim.nm),
           text(rules.grip.nm), text(rules.keep.nm), text(x.costs.per_metre.micro), text(x.costs.scrap_per_metre.micro),
           text(x.costs.per_pull.micro), text(s.worth.nm), text(reinterpret_cast<std::uintptr_t>(s.rests))},
          Int(c.sources.size()));
      if (fresh) c.sources.push_back(std::move(s));
      Source& into = c.sources[At(at->second)];
      into.count = std::min(most, into.count + count);
      into.pieces.push_back({i, count});
    }
    std::stable_sort(c.sources.begin(), c.sources.end(), [](const Source& a, const Source& b) { return a.length < b.length; });
  }

  View MakeView(const Component& c, const Piece& x, int piece_type, const GroupRules& rules) {
    View view;
    view.kerf = rules.kerf;
    view.may.assign(c.items.size(), 0);
    view.extra.assign(c.items.size(), 0);
    for (std::size_t item = 0; item < c.items.size(); ++item) {
      const int line = c.items[item].lines.front().first;
      if (!may[At(piece_type)][At(line_class[At(line)])]) continue;
      view.may[item] = 1;
      view.items.push_back(Int(item));
      view.extra[item] = x.costs.per_cut.micro + Priced(SubstituteExtra(problem, x, LineAt(line)), c.items[item].length).micro;
    }
    return view;
  }

  void Units(Component& c) {
    for (HeatUnit& unit : c.units) {
      std::set<std::string> heats;
      for (const Source& s : c.sources)
        for (int item : unit.items)
          if (c.views[At(s.view)].may[At(item)] && (s.room.exact || c.items[At(item)].length + s.room.kerf <= s.room.room))
            heats.insert(s.heat);
      unit.heats.assign(heats.begin(), heats.end());
      unit.sure.assign(heats.size(), 0);
    }
  }
};

}  // namespace

std::vector<Component> ComponentsOf(const Problem& problem) { return Split(problem).Components(); }

}  // namespace heatkeep::allocator
