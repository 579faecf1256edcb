#include "client/allocator/component_search.h"

#include <algorithm>

#include "client/allocator/exact_small.h"
#include "client/allocator/heat_choice.h"
#include "client/allocator/loosen.h"
#include "client/allocator/relaxation.h"
#include "client/allocator/starts.h"
#include "client/allocator/whole_plans.h"

namespace heatkeep::allocator {
namespace {

// Cells x chunks of one round of pricing; a nanosecond or two each.
constexpr std::int64_t kFindCells = 8'000'000;
constexpr std::int64_t kProveCells = 60'000'000;

class Searcher {
 public:
  Searcher(const Component& c, const SearchControl& control)
      : c_(c), control_(control), find_(c, Rounding::Tight, kFindCells), prove_(c, Rounding::Loose, kProveCells) {}

  ComponentResult Run() {
    Quick();
    result_.bounds.assign(result_.best.score.size(), std::nullopt);
    // The smallest budgets leave trying everything out.
    const std::int64_t looks = control_.iterations < 10 ? 0 : std::min<std::int64_t>(20'000'000, 50'000LL * control_.iterations);
    if (looks > 0 && SolveExactly(c_, result_.best, looks, control_.enough)) {
      for (std::size_t k = 0; k < result_.bounds.size(); ++k) result_.bounds[k] = result_.best.score[k];
      result_.proved = result_.bounds.size();
      control_.better(result_);
      return result_;
    }
    Prove();
    result_.interrupted = result_.proved < result_.bounds.size() && (hurried_ || control_.enough());
    return result_;
  }

 private:
  void Take(Solution solution) {
    MoveToCheaper(c_, solution);
    if (result_.best.score.empty() || solution.score < result_.best.score) {
      result_.best = std::move(solution);
      control_.better(result_);
    }
  }

  void Quick() {
    Take(QuickPlan(c_, PlainChoice()));
    for (int bits = 0; bits < 32; ++bits) {
      if (bits > 0 && control_.enough()) break;
      StartStyle style;
      style.fill = (bits & 1) != 0;
      style.bars_longest = (bits & 2) != 0;
      style.drops_longest = (bits & 4) != 0;
      style.priority_first = (bits & 8) == 0;
      style.drops_before_bars = (bits & 16) == 0;
      Take(QuickPlan(c_, style));
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
      Take(QuickPlan(c_, style));
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

  // Key by key: the relaxation's bound, whole plans made from it, until both meet or the budget is spent.
  void Prove() {
    const std::size_t ranks = c_.priorities.size(), last = ranks + c_.keys.size();
    bool chain = true;  // all keys before are proved
    int again = 0;
    for (std::size_t k = 0; k < last;) {
      const std::vector<std::int64_t> before(result_.best.score.begin(),
                                             result_.best.score.begin() + static_cast<std::ptrdiff_t>(k));
      std::int64_t bound = k < ranks ? CannotBePlaced(k) : 0;
      if (result_.best.score[k] > bound && !control_.enough() && Worthwhile(k)) bound = std::max(bound, Improve(k, bound));
      const bool moved = !std::equal(before.begin(), before.end(), result_.best.score.begin());
      if (moved && ++again <= 3) {  // a key before got better on the way: its proof and this bound are out of date
        k = 0;
        chain = true;
        result_.proved = 0;
        continue;
      }
      if (moved) return;
      if (chain) {
        result_.bounds[k] = std::min(bound, result_.best.score[k]);
        chain = *result_.bounds[k] == result_.best.score[k];
        if (chain) result_.proved = k + 1;
        control_.better(result_);
      }
      ++k;
    }
  }

  // Pieces pulled comes late in every aim; a relaxation of its own pays only where it is quick.
  bool Worthwhile(std::size_t k) const {
    const std::size_t ranks = c_.priorities.size();
    if (k < ranks || c_.keys[k - ranks] != Key::PiecesPulled) return true;
    return c_.sources.size() <= 60 && c_.items.size() <= 40;
  }

  // Tries to lower score[k], those before it staying as they are; returns a bound for it.
  std::int64_t Improve(std::size_t k, std::int64_t bound) {
    const auto limits = [&] {
      return std::vector<std::int64_t>(result_.best.score.begin(), result_.best.score.begin() + static_cast<std::ptrdiff_t>(k));
    };
    const auto key_value = [&] { return result_.best.score[k]; };
    const std::vector<std::int64_t> first = limits();
    std::vector<Pattern> known = known_;
    for (const auto& [p, times] : result_.best.patterns) known.push_back(p);
    const Offer offer = [this](Solution s) { Take(std::move(s)); };
    for (int pass = 0; pass < 2; ++pass) {
      Relaxation relaxation(c_, k, limits(), known, find_, prove_);
      relaxation.Solve(control_.iterations, key_value(), control_);
      if (pass == 0 && relaxation.bound()) bound = std::max(bound, *relaxation.bound());
      if (key_value() <= bound || control_.enough() || limits() != first) return bound;
      if (pass == 0)
        Dive(c_, relaxation, control_, offer);
      else
        SolveLastHandful(c_, k, relaxation, true, 500, std::min(3.0, control_.seconds_left()), std::nullopt, offer);
      known = relaxation.patterns();
      known_ = known;
      if (key_value() <= bound || control_.enough() || limits() != first) return bound;
    }
    // Then pieces of the plan are planned anew, a few at a time, the more the longer it does not help.
    Chance chance(control_.seed + k);
    const int rounds = control_.iterations / 4;
    for (int round = 0, idle = 0; round < rounds && idle < 100; ++round, ++idle) {
      if (key_value() <= bound || control_.enough() || limits() != first) break;
      if (control_.seconds_left() < 0.2 * seconds_) {  // leave some of the clock to the keys after this one
        hurried_ = true;
        break;
      }
      const std::int64_t before = key_value();
      Loosen(c_, k, result_.best, known_, 8 + idle / 8, chance, control_, offer);
      if (key_value() < before) idle = 0;
    }
    return bound;
  }

  const Component& c_;
  const SearchControl& control_;
  Pricing find_, prove_;
  double seconds_ = control_.seconds_left();
  bool hurried_ = false;  // the clock cut a key's search short
  std::vector<Pattern> known_;  // layouts met in relaxations so far
  ComponentResult result_;
};

}  // namespace

ComponentResult SearchComponent(const Component& c, const SearchControl& control) {
  if (!c.units.empty()) return SearchHeats(c, control);
  return Searcher(c, control).Run();
}

}  // namespace heatkeep::allocator
