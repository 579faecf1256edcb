#include "client/allocator/heat_choice.h"

#include <algorithm>
#include <numeric>

#include "client/allocator/starts.h"

namespace heatkeep::allocator {
namespace {

using Choice = std::vector<std::vector<int>>;  // by unit: indices into its heats
constexpr std::size_t kSearchAll = 12;         // so many whole choices are all searched
constexpr std::size_t kMostOptions = 200;      // of one unit

// Every way to pick `most` of n heats (all of them if there are no more), at most kMostOptions.
std::vector<std::vector<int>> Options(int n, int most) {
  std::vector<std::vector<int>> options;
  std::vector<int> pick(static_cast<std::size_t>(std::min(n, most)));
  std::iota(pick.begin(), pick.end(), 0);
  const int m = static_cast<int>(pick.size());
  while (options.size() < kMostOptions) {
    options.push_back(pick);
    int i = m - 1;
    while (i >= 0 && pick[static_cast<std::size_t>(i)] == n - m + i) --i;
    if (i < 0) break;
    ++pick[static_cast<std::size_t>(i)];
    for (int j = i + 1; j < m; ++j) pick[static_cast<std::size_t>(j)] = pick[static_cast<std::size_t>(j - 1)] + 1;
  }
  return options;
}

std::vector<std::int64_t> QuickScore(const Component& c, const Choice& choice) {
  const Component free = Restricted(c, choice);
  StartStyle fill;
  fill.fill = true;
  return std::min(QuickPlan(free, StartStyle{}).score, QuickPlan(free, fill).score);
}

// The bounds of several searches that together cover every plan: key by key the least, among those that can still
// hold the best plan.
ComponentResult Least(std::vector<ComponentResult> results) {
  ComponentResult least;
  std::size_t best = 0;
  for (std::size_t i = 1; i < results.size(); ++i)
    if (results[i].best.score < results[best].best.score) best = i;
  least.best = results[best].best;
  least.bounds.assign(least.best.score.size(), std::nullopt);
  std::vector<char> open(results.size(), 1);
  for (std::size_t k = 0; k < least.bounds.size(); ++k) {
    std::optional<std::int64_t> bound;
    bool all = true;
    for (std::size_t i = 0; i < results.size(); ++i) {
      if (!open[i]) continue;
      const auto& b = results[i].bounds[k];
      all = all && b.has_value();
      if (b) bound = bound ? std::min(*bound, *b) : *b;
    }
    if (!all || !bound) break;
    least.bounds[k] = bound;
    if (*bound != least.best.score[k]) break;
    least.proved = k + 1;
    for (std::size_t i = 0; i < results.size(); ++i)
      if (open[i] && *results[i].bounds[k] > *bound) open[i] = 0;
    // One whose own value of this key is above its bound has no bounds after it and ends the proof there.
  }
  for (const ComponentResult& r : results) least.interrupted = least.interrupted || r.interrupted;
  return least;
}

}  // namespace

ComponentResult SearchHeats(const Component& c, const SearchControl& control) {
  std::vector<std::vector<std::vector<int>>> options;
  std::size_t all = 1;
  bool complete = true;
  for (const HeatUnit& unit : c.units) {
    options.push_back(Options(static_cast<int>(unit.heats.size()), unit.most));
    complete = complete && options.back().size() < kMostOptions;
    all = std::min<std::size_t>(1'000'000, all * options.back().size());
  }
  Choice choice;
  for (const auto& o : options) choice.push_back(o.front());
  SearchControl quiet = control;  // a plan or bound for one choice of heats says nothing of the whole
  quiet.better = [](const ComponentResult&) {};
  if (complete && all <= kSearchAll) {
    std::vector<ComponentResult> results;
    std::vector<std::size_t> at(options.size(), 0);
    for (std::size_t n = 0; n < all; ++n) {
      for (std::size_t u = 0; u < at.size(); ++u) choice[u] = options[u][at[u]];
      results.push_back(SearchComponent(Restricted(c, choice), quiet));
      for (std::size_t u = 0; u < at.size(); ++u) {
        if (++at[u] < options[u].size()) break;
        at[u] = 0;
      }
    }
    return Least(std::move(results));
  }
  std::vector<std::int64_t> score = QuickScore(c, choice);
  for (bool better = true; better;) {
    better = false;
    for (std::size_t u = 0; u < options.size(); ++u)
      for (const auto& option : options[u]) {
        if (control.enough()) break;
        Choice other = choice;
        other[u] = option;
        auto now = QuickScore(c, other);
        if (now < score) {
          score = std::move(now);
          choice = std::move(other);
          better = true;
        }
      }
  }
  ComponentResult result = SearchComponent(Restricted(c, choice), quiet);
  Choice anything;
  for (const HeatUnit& unit : c.units) {
    anything.emplace_back(unit.heats.size());
    std::iota(anything.back().begin(), anything.back().end(), 0);
  }
  const ComponentResult relaxed = SearchComponent(Restricted(c, anything), quiet);
  result.interrupted = result.interrupted || relaxed.interrupted;
  result.proved = 0;
  result.bounds.assign(result.best.score.size(), std::nullopt);
  for (std::size_t k = 0; k < result.bounds.size() && relaxed.bounds[k]; ++k) {
    result.bounds[k] = relaxed.bounds[k];
    if (*relaxed.bounds[k] != result.best.score[k]) break;
    result.proved = k + 1;
  }
  return result;
}

}  // namespace heatkeep::allocator
