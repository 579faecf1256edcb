#include "client/allocator/one_heat_price.h"

#include <algorithm>
#include <map>
#include <set>

#include "client/allocator/allocate.h"
#include "client/allocator/plan_of_layouts.h"

namespace heatkeep::allocator {
namespace {

// The most heats that lines of one wish come from.
int MostHeats(const Problem& problem, const Plan& plan) {
  std::map<std::string, std::set<std::string>> heats;
  for (const Layout& layout : plan.layouts)
    for (const Cut& cut : layout.cuts) {
      const Line& line = problem.lines.at(static_cast<std::size_t>(cut.line));
      if (line.one_heat.empty() && line.max_heats == 0) continue;
      const std::string wish = line.one_heat.empty() ? "line " + std::to_string(cut.line) : "heat " + line.one_heat;
      heats[wish].insert(problem.pieces.at(static_cast<std::size_t>(layout.piece)).heat);
    }
  std::size_t most = 0;
  for (const auto& [wish, all] : heats) most = std::max(most, all.size());
  return static_cast<int>(most);
}

}  // namespace

Problem FreedOfHeats(const Problem& problem) {
  Problem free = problem;
  for (Line& line : free.lines) {
    line.one_heat.clear();
    line.max_heats = 0;
  }
  return free;
}

std::optional<OneHeatPrice> PriceOfOneHeat(const Problem& problem, const Plan& plan) {
  if (std::all_of(problem.lines.begin(), problem.lines.end(),
                  [](const Line& line) { return line.one_heat.empty() && line.max_heats == 0; }))
    return std::nullopt;
  const Problem free = FreedOfHeats(problem);
  OneHeatPrice price;
  price.free = Allocate(free);
  // A plan that keeps the wish is a plan without it too, so the free one is never worse.
  if (FiguresOf(problem, plan.value) < FiguresOf(free, price.free.value)) {
    Plan same = PlanOfLayouts(free, plan.layouts);
    TakeBounds(free, price.free, same);
    price.free = std::move(same);
  }
  price.difference = DifferenceOf(problem, plan, free, price.free);
  price.heats = MostHeats(problem, price.free);
  const bool one = std::all_of(problem.lines.begin(), problem.lines.end(), [](const Line& line) { return line.max_heats <= 1; });
  const std::string wish = one ? "one heat" : "the limit of heats";
  const std::string than = price.heats == 1 ? "a free choice" : std::to_string(price.heats) + " heats";
  const std::string words = DifferenceWords(price.difference);
  price.words = words == "the same metal" ? wish + " costs nothing more" : wish + " costs more than " + than + ": " + words;
  if (!price.free.proved && plan.value != price.free.value) price.words += "; without it there may be a better plan still";
  return price;
}

}  // namespace heatkeep::allocator
