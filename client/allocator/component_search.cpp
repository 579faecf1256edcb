#include "client/allocator/component_search.h"

#include <algorithm>

#include "client/allocator/exact_small.h"
#include "client/allocator/heat_choice.h"
#include "client/allocator/least_possible.h"
#include "client/allocator/loosen.h"
#include "client/allocator/one_length.h"
#include "client/allocator/recut.h"
#include "client/allocator/relaxation.h"
#include "client/allocator/starts.h"
#include "client/allocator/whole_plans.h"

namespace heatkeep::allocator {
namespace {

// Cells x chunks of one round of pricing; a nanosecond or two each.
constexpr std::int64_t kQuickCells = 8'000'000, kFindCells = 80'000'000, kProveCells = 100'000'000;

class Searcher {
 public:
  Searcher(const Component& c, const SearchControl& control)
      : c_(c), control_(control), quick_(c, Rounding::Tight, kQuickCells), find_(c, Rounding::Tight, kFindCells),
        prove_(c, Rounding::Loose, kProveCells) {}

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
    MoveToCheaper(c_, solution, control_.enough);
    if (result_.best.score.empty() || solution.score < result_.best.score) {
      result_.best = std::move(solution);
      control_.better(result_);
    }
  }

  void Quick() {
    result_.best = QuickPlan(c_, PlainChoice());
    control_.better(result_);
    if (control_.enough()) return;
    Take(result_.best);
    if (OneLength(c_)) return;  // what comes then is quicker
    for (int bits = 0; bits < 32; ++bits) {
      if (control_.enough()) return;
      StartStyle style;
      style.fill = (bits & 1) != 0;
      style.bars_longest = (bits & 2) == 0;
      style.drops_longest = (bits & 4) != 0;
      style.priority_first = (bits & 8) == 0;
      style.drops_before_bars = (bits & 16) == 0;
      Take(QuickPlan(c_, style));
    }
    if (c_.items.size() * c_.sources.size() < 200'000) {
      for (int bits = 0; bits < 4 && !control_.enough(); ++bits) {
        StartStyle fullest;
        fullest.fill = fullest.fullest = true;
        fullest.bars_longest = (bits & 1) == 0;
        fullest.drops_longest = (bits & 2) != 0;
        Take(QuickPlan(c_, fullest));
      }
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

  // Steps of work that the key may still take.
  std::int64_t Allowance(std::size_t k) const {
    const std::size_t lead = c_.priorities.size();
    const auto size = static_cast<std::int64_t>(5 * c_.items.size() + c_.sources.size());
    const auto share = static_cast<double>(size * 3'000'000) * std::min(1.0, control_.iterations / 1000.0);
    if (k <= lead || (k == lead + 1 && result_.best.score[lead] == 0)) return static_cast<std::int64_t>(20 * share) + 500'000'000;
    if (OneLength(c_)) return std::max<std::int64_t>(8'000'000, spent_ / 2);
    const bool late = c_.keys[k - lead] == Key::PiecesPulled;
    return static_cast<std::int64_t>(share * (late ? 0.2 : 1.0));
  }

  // So many rounds may pass without a gain: few where little is left to be won.
  static int Patience(std::int64_t value, std::int64_t bound) {
    const double gap = static_cast<double>(value - bound) / static_cast<double>(std::max<std::int64_t>(1, value));
    return gap > 0.001 ? 100 : gap > 0.0002 ? 40 : 15;
  }

  // Key by key: the relaxation's bound, whole plans made from it, until both meet or the budget is spent.
  void Prove() {
    const std::size_t ranks = c_.priorities.size(), last = ranks + c_.keys.size();
    bool chain = true;  // all keys before are proved
    int again = 0;
    for (std::size_t k = 0; k < last;) {
      const std::vector<std::int64_t> before(result_.best.score.begin(), result_.best.score.begin() + static_cast<std::ptrdiff_t>(k));
      std::int64_t bound = SimpleBound(c_, k, result_.best.score);
      if (chain && bound < result_.best.score[k]) {  // told before the work on it begins
        result_.bounds[k] = bound;
        control_.better(result_);
      }
      if (result_.best.score[k] > bound && !control_.enough() && Worthwhile(k)) bound = std::max(bound, Improve(k, bound));
      const bool moved = !std::equal(before.begin(), before.end(), result_.best.score.begin());
      if (moved && ++again <= 3) {  // a key before got better on the way: its proof and this bound are out of date
        k = 0;
        chain = true;
        result_.proved = 0;
        result_.bounds.assign(result_.bounds.size(), std::nullopt);
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
    const std::int64_t until = spent_ + Allowance(k);
    const auto done = [&] { return key_value() <= bound || spent_ >= until || control_.enough() || limits() != first; };
    SearchControl inner = control_;
    inner.enough = done;
    inner.spend = [this](std::int64_t steps) {
      spent_ += steps;
      control_.spend(steps);
    };
    std::vector<Pattern> known = known_;
    for (const auto& [p, times] : result_.best.patterns) known.push_back(p);
    const Offer offer = [this](Solution s) { Take(std::move(s)); };
    Chance chance(control_.seed + k);
    if (OneLength(c_) && k == c_.priorities.size() && std::all_of(first.begin(), first.end(), [](std::int64_t n) { return n == 0; })) {
      bound = std::max(bound, FewestOfOneLength(c_, inner, offer));
      if (done()) return bound;
    }
    const std::int64_t looks =
        OneLength(c_) ? 1'000'000 : 1'000'000 + 20'000 * static_cast<std::int64_t>(c_.sources.size() + 5 * c_.items.size());
    if (k >= c_.priorities.size()) {
      Recut(c_, k, result_.best, bound, looks, chance, inner, offer);
      if (done() || (OneLength(c_) && k > c_.priorities.size())) return bound;  // the number of bars is what was asked
      for (const auto& [p, times] : result_.best.patterns) known.push_back(p);
    }
    {
      Relaxation relaxation(c_, k, limits(), known, find_, prove_, false, quick_.exact() ? nullptr : &quick_);
      relaxation.Solve(control_.iterations, key_value(), inner);
      if (relaxation.bound()) bound = std::max(bound, *relaxation.bound());
      if (done()) return bound;
      Dive(c_, relaxation, inner, offer);
      known_ = relaxation.patterns();
    }
    // Then pieces of the plan are planned anew, two at a time and a few at a time, the more the longer it does not help.
    const int rounds = control_.iterations / 4;
    for (int round = 0, idle = 0; round < rounds && idle < Patience(key_value(), bound) && !done(); ++round, ++idle) {
      if (control_.seconds_left() < 0.2 * seconds_) {  // leave some of the clock to the keys after this one
        hurried_ = true;
        break;
      }
      const std::int64_t before = key_value();
      if (k >= c_.priorities.size()) Recut(c_, k, result_.best, bound, looks, chance, inner, offer);
      if (done()) break;
      Loosen(c_, k, result_.best, known_, 8 + idle / 8, chance, inner, offer);
      if (idle % 6 == 1 && k >= c_.priorities.size() && c_.sources.size() <= 500 && !done()) {
        // Another start altogether: a dive that takes other turnings, its best plan cut anew by pairs.
        Relaxation relaxation(c_, k, limits(), known_, find_, prove_, false, quick_.exact() ? nullptr : &quick_);
        relaxation.SolveOnly(20, inner);
        Solution other;
        const Offer both = [&](Solution s) {
          if (other.score.empty() || s.score < other.score) other = s;
          Take(std::move(s));
        };
        Dive(c_, relaxation, inner, both, &chance);
        if (!other.score.empty() && !done()) Recut(c_, k, other, bound, looks, chance, inner, offer);
      }
      if (key_value() < before) idle = 0;
    }
    return bound;
  }

  const Component& c_;
  const SearchControl& control_;
  Pricing quick_, find_, prove_;
  double seconds_ = control_.seconds_left();
  bool hurried_ = false;        // the clock cut a key's search short
  std::int64_t spent_ = 0;      // steps of work so far
  std::vector<Pattern> known_;  // layouts met in relaxations so far
  ComponentResult result_;
};

}  // namespace

ComponentResult SearchComponent(const Component& c, const SearchControl& control) {
  if (!c.units.empty()) return SearchHeats(c, control);
  return Searcher(c, control).Run();
}

}  // namespace heatkeep::allocator
