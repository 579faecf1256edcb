#include "client/allocator/plan_of_layouts.h"

#include <algorithm>
#include <map>
#include <set>
#include <stdexcept>

#include "client/allocator/check_plan.h"
#include "client/allocator/shortage.h"
#include "client/allocator/value.h"

namespace heatkeep::allocator {
namespace {

std::vector<Layout> Merged(const std::vector<Layout>& layouts) {
  std::vector<Layout> merged;
  std::map<std::vector<std::int64_t>, std::size_t> at;
  for (const Layout& layout : layouts) {
    std::vector<std::int64_t> sign{layout.piece};
    for (const Cut& cut : layout.cuts) sign.insert(sign.end(), {cut.line, cut.count, cut.length.nm});
    const auto [it, fresh] = at.try_emplace(std::move(sign), merged.size());
    if (fresh) merged.push_back(layout);
    else merged[it->second].repeat += layout.repeat;
  }
  std::stable_sort(merged.begin(), merged.end(), [](const Layout& a, const Layout& b) { return a.piece < b.piece; });
  return merged;
}

}  // namespace

Plan PlanOfLayouts(const Problem& problem, const std::vector<Layout>& layouts) {
  Plan plan;
  plan.layouts = Merged(layouts);
  plan.value = ValueOf(problem, plan.layouts);
  plan.seed = problem.limits.seed;
  std::vector<int> missing;
  for (const Line& line : problem.lines) missing.push_back(line.quantity);
  for (const Layout& layout : plan.layouts)
    for (const Cut& cut : layout.cuts) missing.at(static_cast<std::size_t>(cut.line)) -= cut.count * layout.repeat;
  for (std::size_t i = 0; i < missing.size(); ++i) {
    const int line = static_cast<int>(i);
    if (missing[i] > 0) plan.shorts.push_back({line, missing[i], WhyShort(problem, line, missing[i])});
  }
  plan.status = plan.shorts.empty() ? Status::Feasible : Status::Short;
  if (const auto faults = CheckPlan(problem, plan); !faults.empty())
    throw std::logic_error("the layouts make no good plan: " + faults.front());
  return plan;
}

void TakeBounds(const Problem& problem, const Plan& other, Plan& plan) {
  plan.bound = {};
  plan.proved_keys.clear();
  plan.proved = false;
  plan.bound.unmet_by_priority = other.bound.unmet_by_priority;
  bool all = other.bound.unmet_by_priority == plan.value.unmet_by_priority;
  if (all) plan.proved_keys.push_back(Key::Unmet);
  for (const Key key : KeysOf(problem.aim)) {
    const auto it = other.bound.figures.find(key);
    if (key == Key::Unmet) continue;
    if (!all || it == other.bound.figures.end()) break;
    plan.bound.figures.insert(*it);
    all = it->second == FigureOf(plan.value, key);
    if (!all) break;
    plan.proved_keys.push_back(key);
    plan.proved = true;
  }
  plan.status = plan.value.unmet_pieces > 0 ? Status::Short : plan.proved ? Status::Proved : Status::Feasible;
  plan.ended_by = other.ended_by;
  if (plan.proved_keys.size() == KeysOf(problem.aim).size()) plan.ended_by = EndedBy::Proof;
  else if (plan.ended_by == EndedBy::Proof) plan.ended_by = EndedBy::Budget;
}

std::vector<std::int64_t> FiguresOf(const Problem& problem, const Value& value) {
  std::vector<std::int64_t> figures;
  std::set<int> priorities;
  for (const Line& line : problem.lines) priorities.insert(line.priority);
  for (const int priority : priorities) {
    const auto it = value.unmet_by_priority.find(priority);
    figures.push_back(it == value.unmet_by_priority.end() ? 0 : it->second);
  }
  for (const Key key : KeysOf(problem.aim))
    if (key != Key::Unmet) figures.push_back(FigureOf(value, key));
  figures.push_back(value.layouts);
  figures.push_back(value.pieces_pulled);
  return figures;
}

}  // namespace heatkeep::allocator
