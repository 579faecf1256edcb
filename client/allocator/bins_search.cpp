#include "client/allocator/bins_search.h"

#include <algorithm>
#include <cmath>

#include "client/allocator/bins_bound.h"
#include "client/allocator/bins_branch.h"
#include "client/allocator/bins_quick.h"
#include "client/allocator/bins_relaxation.h"
#include "client/allocator/starts.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }

class Search {
 public:
  Search(const Bins& bins, std::uint64_t seed, int effort, const BinsControl& control)
      : bins_(bins), control_(control), chance_(seed), effort_(effort) {}

  BinsAnswer Run() {
    bound_ = LeastBins(bins_);
    Quick();
    if (Closed() || control_.enough()) return {best_, bound_};
    Relax();
    return {best_, bound_};
  }

 private:
  bool Closed() const { return BinsIn(best_) <= bound_; }
  void Take(Packing packing) {
    if (met_.size() < 20 * bins_.size.size()) met_.insert(met_.end(), packing.begin(), packing.end());
    if (best_.empty() || BinsIn(packing) < BinsIn(best_)) best_ = std::move(packing);
  }

  void Quick() {
    Take(BestFit(bins_, bins_.demand));
    for (const int looks : {200, 4000}) {
      if (Closed() || control_.enough()) return;
      Take(OneByOne(bins_, bins_.demand, bound_, looks, 0, control_));
    }
    for (int n = 0; n < 6 && !Closed() && !control_.enough(); ++n)
      Take(OneByOne(bins_, bins_.demand, bound_, 1000, chance_.Next() | 1, control_));
  }

  void Relax() {
    BinsRelaxation relaxation(bins_, met_, control_);
    bound_ = std::max(bound_, relaxation.Solve(bins_.demand, BinsIn(best_), effort_, bound_));
    for (int dive = 0; dive < 12 && !Closed() && !control_.enough(); ++dive) {
      if (dive > 0) relaxation.Solve(bins_.demand, BinsIn(best_), 60);
      Dive(relaxation, dive > 0);
    }
    while (!Closed() && !control_.enough()) {
      BinsBranch branch(bins_, relaxation, control_, 40LL * effort_);
      Packing found;
      switch (branch.Within(bound_, found)) {
        case BinsBranch::Answer::Yes: Take(std::move(found)); break;
        case BinsBranch::Answer::No: ++bound_; break;
        case BinsBranch::Answer::Unknown: return;
      }
    }
  }

  // Takes fills of the relaxation for good, what is whole first, and packs the last handful exactly.
  void Dive(BinsRelaxation& relaxation, bool vary) {
    constexpr std::int64_t kHandful = 16, kLooks = 60'000;
    std::vector<int> rest = bins_.demand;
    Packing taken;
    std::int64_t more = bound_, tried = -1;
    const auto take = [&](const Fill& fill, int times) {
      for (const auto& [item, count] : fill) times = std::min(times, rest[At(item)] / count);
      if (times <= 0) return;
      for (const auto& [item, count] : fill) rest[At(item)] -= times * count;
      taken.push_back({fill, times});
      more -= times;
    };
    const auto end = [&](Packing packed) {
      taken.insert(taken.end(), packed.begin(), packed.end());
      Take(taken);
    };
    while (!control_.enough()) {
      std::vector<std::pair<Fill, double>> used = relaxation.Used();
      const std::size_t before = taken.size();
      for (const auto& [fill, x] : used) take(fill, static_cast<int>(std::floor(x + 1e-6)));
      if (taken.size() == before) {
        for (auto& [fill, x] : used) x *= vary ? 0.7 + 0.3 * chance_.Unit() : 1.0;
        std::stable_sort(used.begin(), used.end(), [](const auto& a, const auto& b) { return a.second > b.second; });
        const std::int64_t at_once = std::max<std::int64_t>(0, (more - kHandful) / 8);  // far from the end a few are as good as one
        for (const auto& [fill, x] : used) {
          const auto n = static_cast<std::int64_t>(taken.size() - before);
          if (n > 0 && x < 0.9 && (x < 0.5 || n >= at_once)) break;
          take(fill, 1);
        }
      }
      if (taken.size() == before || more <= 0) break;
      if (more <= kHandful && more != tried) {
        tried = more;
        if (auto packed = PackRest(bins_, rest, more, kLooks, control_)) return end(std::move(*packed));
      }
      if (relaxation.Solve(rest, more + 1, 6) > more) break;
    }
    end(BestFit(bins_, rest));
  }

  const Bins& bins_;
  const BinsControl& control_;
  Chance chance_;
  int effort_;
  Packing best_;
  Packing met_;  // fills of the quick packings
  std::int64_t bound_ = 0;
};

}  // namespace

BinsAnswer FewestBins(const Bins& bins, std::uint64_t seed, int effort, const BinsControl& control) {
  Bins core = bins;
  BinsAnswer answer;
  answer.packing = TakeSure(core);
  const std::int64_t sure = BinsIn(answer.packing);
  std::vector<int> item;  // of the whole, by item of the core
  Bins rest{core.capacity, {}, {}};
  for (std::size_t i = 0; i < core.size.size(); ++i) {
    if (core.demand[i] == 0) continue;
    item.push_back(static_cast<int>(i));
    rest.size.push_back(core.size[i]);
    rest.demand.push_back(core.demand[i]);
  }
  if (rest.size.empty()) {
    answer.bound = sure;
    return answer;
  }
  BinsAnswer core_answer = Search(rest, seed, effort, control).Run();
  for (auto& [fill, times] : core_answer.packing) {
    for (auto& [i, count] : fill) i = item[At(i)];
    answer.packing.push_back({std::move(fill), times});
  }
  answer.bound = sure + core_answer.bound;
  return answer;
}

}  // namespace heatkeep::allocator
