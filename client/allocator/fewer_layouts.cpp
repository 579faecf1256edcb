#include "client/allocator/fewer_layouts.h"

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <tuple>

#include "client/allocator/cut_arithmetic.h"
#include "client/allocator/plan_of_layouts.h"
#include "client/allocator/value.h"

namespace heatkeep::allocator {
namespace {

using Stops = std::map<Length, int>;                        // cut length -> count
using SetUp = std::tuple<std::string, std::string, Stops>;  // what ValueOf counts as one layout
using PieceSign = std::tuple<std::string, std::string, std::string, std::string, std::string, PaperType, bool, std::vector<std::int64_t>>;

PieceSign SignOf(const Piece& p) {
  return {p.section,
          p.grade,
          p.condition,
          p.heat,
          p.owner,
          p.papers,
          p.kind == PieceKind::Bar,
          {p.length.nm, p.doubt.nm, p.square_ends, p.costs.per_metre.micro, p.costs.scrap_per_metre.micro, p.costs.per_cut.micro,
           p.costs.per_pull.micro}};
}

Stops StopsOf(const Layout& layout) {
  Stops stops;
  for (const Cut& cut : layout.cuts) stops[cut.length] += cut.count;
  return stops;
}

// What `a` has more than `b`.
Stops Surplus(const Stops& a, const Stops& b) {
  Stops more;
  for (const auto& [length, count] : a) {
    const auto it = b.find(length);
    const int surplus = count - (it == b.end() ? 0 : it->second);
    if (surplus > 0) more[length] = surplus;
  }
  return more;
}

bool Has(const Stops& all, const Stops& part) {
  return std::all_of(part.begin(), part.end(), [&](const auto& p) {
    const auto it = all.find(p.first);
    return it != all.end() && it->second >= p.second;
  });
}

class Exchange {
 public:
  Exchange(const Problem& problem, Plan plan, std::int64_t tries) : problem_(problem), plan_(std::move(plan)), tries_(tries) {}

  Plan Run() {
    while (std::optional<Plan> better = Better()) plan_ = std::move(*better);
    return std::move(plan_);
  }

 private:
  const Piece& PieceOf(const Layout& layout) const { return problem_.pieces[static_cast<std::size_t>(layout.piece)]; }
  SetUp SetUpOf(const Layout& layout, Stops stops) const { return {PieceOf(layout).section, PieceOf(layout).grade, std::move(stops)}; }

  std::optional<Plan> Better() {
    std::map<PieceSign, std::vector<std::size_t>> equal;
    std::map<SetUp, int> setups;
    for (std::size_t i = 0; i < plan_.layouts.size(); ++i) {
      equal[SignOf(PieceOf(plan_.layouts[i]))].push_back(i);
      ++setups[SetUpOf(plan_.layouts[i], StopsOf(plan_.layouts[i]))];
    }
    for (const auto& [sign, members] : equal) {
      for (const std::size_t a : members)
        for (const auto& [target, uses] : setups)
          for (const std::size_t b : members) {
            if (a == b) continue;
            if (--tries_ < 0) return std::nullopt;
            if (std::optional<Plan> better = Try(a, b, target, setups)) return better;
          }
    }
    return std::nullopt;
  }

  // Makes layout a the set-up `target` by exchanging cuts with layout b.
  std::optional<Plan> Try(std::size_t a, std::size_t b, const SetUp& target, std::map<SetUp, int> setups) const {
    const Layout &x = plan_.layouts[a], &y = plan_.layouts[b];
    const Stops x_stops = StopsOf(x), y_stops = StopsOf(y);
    const Stops& wanted = std::get<2>(target);
    if (SetUpOf(x, wanted) != target || wanted == x_stops || wanted == y_stops) return std::nullopt;
    const Stops gets = Surplus(wanted, x_stops), gives = Surplus(x_stops, wanted);
    if (gets.empty() || !Has(y_stops, gets)) return std::nullopt;
    std::map<int, int> x_cuts, y_cuts;
    for (const Cut& cut : x.cuts) x_cuts[cut.line] += cut.count;
    for (const Cut& cut : y.cuts) y_cuts[cut.line] += cut.count;
    Move(gives, x_cuts, y_cuts);
    Move(gets, y_cuts, x_cuts);
    if (x_cuts.empty() || y_cuts.empty() || !Holds(x, x_cuts) || !Holds(y, y_cuts)) return std::nullopt;
    const int times = std::min(x.repeat, y.repeat);
    const Layout x_new = MakeLayout(problem_, x.piece, times, {x_cuts.begin(), x_cuts.end()});
    const Layout y_new = MakeLayout(problem_, y.piece, times, {y_cuts.begin(), y_cuts.end()});
    const std::size_t before = setups.size();
    const auto leaves = [&](const Layout& layout, const Stops& stops) {
      if (layout.repeat > times) return;
      const auto it = setups.find(SetUpOf(layout, stops));
      if (--it->second == 0) setups.erase(it);
    };
    leaves(x, x_stops);
    leaves(y, y_stops);
    ++setups[target];
    ++setups[SetUpOf(y, StopsOf(y_new))];
    if (setups.size() >= before) return std::nullopt;

    std::vector<Layout> layouts = plan_.layouts;
    layouts[a].repeat -= times;
    layouts[b].repeat -= times;
    std::erase_if(layouts, [](const Layout& layout) { return layout.repeat == 0; });
    layouts.insert(layouts.end(), {x_new, y_new});
    if (FiguresOf(problem_, ValueOf(problem_, layouts)) >= FiguresOf(problem_, plan_.value)) return std::nullopt;
    Plan better = PlanOfLayouts(problem_, layouts);
    better.seed = plan_.seed;
    better.seconds = plan_.seconds;
    TakeBounds(problem_, plan_, better);
    return better;
  }

  void Move(Stops what, std::map<int, int>& from, std::map<int, int>& to) const {
    for (auto it = from.begin(); it != from.end();) {
      const auto stop = what.find(problem_.lines[static_cast<std::size_t>(it->first)].CutLength());
      const int moved = stop == what.end() ? 0 : std::min(stop->second, it->second);
      if (moved > 0) {
        stop->second -= moved;
        to[it->first] += moved;
        it->second -= moved;
      }
      it = it->second == 0 ? from.erase(it) : std::next(it);
    }
  }

  bool Holds(const Layout& layout, const std::map<int, int>& cuts) const {
    const GroupRules& rules = RulesFor(problem_, PieceOf(layout));
    Length taken, longest;
    for (const auto& [line, count] : cuts) {
      const Length length = problem_.lines[static_cast<std::size_t>(line)].CutLength();
      taken += (length + rules.kerf) * count;
      longest = std::max(longest, length);
    }
    return Fits(RoomOf(PieceOf(layout), rules), taken, longest);
  }

  const Problem& problem_;
  Plan plan_;
  std::int64_t tries_;
};

}  // namespace

Plan WithFewerLayouts(const Problem& problem, const Plan& plan, std::int64_t tries) { return Exchange(problem, plan, tries).Run(); }

}  // namespace heatkeep::allocator
