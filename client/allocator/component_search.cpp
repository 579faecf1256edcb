#include "client/allocator/component_search.h"

#include <algorithm>

#include "client/allocator/exact_small.h"
#include "client/allocator/heat_choice.h"
#include "client/allocator/starts.h"

namespace heatkeep::allocator {
namespace {

class Searcher {
 public:
  Searcher(const Component& c, const SearchControl& control) : c_(c), control_(control) {}

  ComponentResult Run() {
    Quick();
    result_.bounds.assign(result_.best.score.size(), std::nullopt);
    if (SolveExactly(c_, result_.best, 400'000, control_.enough)) {
      control_.better(result_.best);
      for (std::size_t k = 0; k < result_.bounds.size(); ++k) result_.bounds[k] = result_.best.score[k];
      result_.proved = result_.bounds.size();
      return result_;
    }
    Prove();
    result_.interrupted = result_.proved < result_.bounds.size() && control_.enough();
    return result_;
  }

 private:
  void Offer(Solution solution) {
    MoveToCheaper(c_, solution);
    if (result_.best.score.empty() || solution.score < result_.best.score) {
      result_.best = std::move(solution);
      control_.better(result_.best);
    }
  }

  void Quick() {
    Offer(QuickPlan(c_, PlainChoice()));
    for (int bits = 0; bits < 32; ++bits) {
      if (bits > 0 && control_.enough()) break;
      StartStyle style;
      style.fill = (bits & 1) != 0;
      style.bars_longest = (bits & 2) != 0;
      style.drops_longest = (bits & 4) != 0;
      style.priority_first = (bits & 8) == 0;
      style.drops_before_bars = (bits & 16) == 0;
      Offer(QuickPlan(c_, style));
    }
    const int restarts = c_.Pieces() > 3000 ? 10 : 60;
    Chance chance(control_.seed);
    for (int n = 0; n < std::min(restarts, control_.iterations); ++n) {
      if (control_.enough()) break;
      StartStyle style;
      const std::uint64_t bits = chance.Next();
      style.fill = (bits & 1) != 0;
      style.bars_longest = (bits & 2) != 0;
      style.drops_longest = (bits & 4) != 0;
      style.shuffle = bits | 1;
      Offer(QuickPlan(c_, style));
    }
  }

  // What of each rank cannot be placed whatever is done: items that no source takes.
  std::int64_t CannotBePlaced(std::size_t rank) const {
    std::int64_t n = 0;
    for (std::size_t i = 0; i < c_.items.size(); ++i) {
      if (c_.items[i].rank != static_cast<int>(rank)) continue;
      bool any = false;
      for (const Source& s : c_.sources)
        any = any || (c_.views[static_cast<std::size_t>(s.view)].may[i] != 0 &&
                      (s.room.exact || c_.items[i].length + s.room.kerf <= s.room.room));
      if (!any) n += c_.items[i].demand;
    }
    return n;
  }

  void Prove() {
    const std::size_t ranks = c_.priorities.size();
    for (std::size_t k = 0; k < ranks + c_.keys.size(); ++k) {
      const std::int64_t bound = k < ranks ? CannotBePlaced(k) : 0;
      result_.bounds[k] = bound;
      if (result_.best.score[k] != bound) return;
      result_.proved = k + 1;
    }
  }

  const Component& c_;
  const SearchControl& control_;
  ComponentResult result_;
};

}  // namespace

ComponentResult SearchComponent(const Component& c, const SearchControl& control) {
  if (!c.units.empty()) return SearchHeats(c, control);
  return Searcher(c, control).Run();
}

}  // namespace heatkeep::allocator
