#include "client/allocator/allocate.h"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <exception>
#include <mutex>
#include <numeric>
#include <set>
#include <stdexcept>
#include <thread>

#include "client/allocator/check_plan.h"
#include "client/allocator/component.h"
#include "client/allocator/component_search.h"
#include "client/allocator/shortage.h"
#include "client/allocator/value.h"

namespace heatkeep::allocator {
namespace {

constexpr std::int64_t kLongest = 1'000'000'000'000;  // 1 km, so that no sum ever runs over
constexpr std::int64_t kMostCuts = 1'000'000;

void Refuse(bool wrong, const std::string& what) {
  if (wrong) throw std::invalid_argument(what);
}

void RefuseNonsense(const Problem& problem) {
  const auto rules = [](const GroupRules& r) {
    for (Length l : {r.kerf, r.trim, r.grip, r.keep})
      Refuse(l.nm < 0 || l.nm > kLongest, "kerf, trim, grip and keep: one is out of range; expected 0 to 1 km");
  };
  rules(problem.rules);
  for (const GroupException& e : problem.exceptions) rules(e.rules);
  for (const Piece& p : problem.pieces) {
    const std::string who = "piece " + p.tag + ": ";
    Refuse(p.length.nm <= 0 || p.length.nm > kLongest, who + "its length is out of range; expected above 0 to 1 km");
    Refuse(p.doubt.nm < 0 || p.doubt >= p.length, who + "its doubt is out of range; expected 0 to below its length");
    Refuse(p.square_ends < 0 || p.square_ends > 2, who + "square ends are " + std::to_string(p.square_ends) + "; expected 0, 1 or 2");
    Refuse(p.count && *p.count < 0, who + "its count is below 0; expected 0 or more, or unlimited");
    for (FineMoney m : {p.costs.per_metre, p.costs.scrap_per_metre, p.costs.per_cut, p.costs.per_pull})
      Refuse(m.micro < 0, who + "a cost is below 0; expected 0 or more");
  }
  std::int64_t cuts = 0;
  for (const Line& l : problem.lines) {
    const std::string who = "line " + l.order + "/" + l.line + ": ";
    Refuse(l.CutLength().nm <= 0 || l.CutLength().nm > kLongest, who + "its cut length is out of range; expected above 0 to 1 km");
    Refuse(l.quantity < 0 || l.quantity > kMostCuts, who + "its quantity is out of range; expected 0 to 1000000");
    Refuse(l.max_heats < 0, who + "its number of heats is below 0; expected 0 (any) or more");
    cuts += l.quantity;
  }
  Refuse(cuts > kMostCuts, "the lines ask more than 1000000 cuts in all");
  Refuse(problem.per_setup.micro < 0 || problem.per_extra_heat.micro < 0, "the cost of a set-up or a heat is below 0");
}

class Run {
 public:
  Run(const Problem& problem, std::stop_token stop, const Progress& progress)
      : problem_(problem), stop_(std::move(stop)), progress_(progress), begin_(std::chrono::steady_clock::now()),
        components_(ComponentsOf(problem)), results_(components_.size()), shown_(components_.size()) {}

  Plan Make() {
    Search();
    Plan plan;
    plan.seed = problem_.limits.seed;
    bool interrupted = false;
    for (std::size_t i = 0; i < components_.size(); ++i) {
      for (Layout& layout : LayoutsOf(components_[i], results_[i].best)) plan.layouts.push_back(std::move(layout));
      interrupted = interrupted || results_[i].interrupted;
    }
    std::stable_sort(plan.layouts.begin(), plan.layouts.end(), [](const Layout& a, const Layout& b) { return a.piece < b.piece; });
    plan.value = ValueOf(problem_, plan.layouts);
    Shorts(plan);
    Prove(plan, results_);
    plan.status = plan.value.unmet_pieces > 0 ? Status::Short : plan.proved ? Status::Proved : Status::Feasible;
    if (plan.proved_keys.size() == KeysOf(problem_.aim).size()) plan.ended_by = EndedBy::Proof;
    else if (interrupted) plan.ended_by = stop_.stop_requested() ? EndedBy::Stopped : EndedBy::Clock;
    else plan.ended_by = EndedBy::Budget;
    plan.seconds = Seconds();
    if (const auto faults = CheckPlan(problem_, plan); !faults.empty())
      throw std::logic_error("the plan does not pass its own check: " + faults.front());
    return plan;
  }

 private:
  double Seconds() const { return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin_).count(); }

  void Search() {
    std::vector<std::size_t> order(components_.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return components_[a].Pieces() < components_[b].Pieces(); });
    SideBySide(order);
    // What the clock cut short may use what the others left over of it, if that is a good deal more than it had.
    std::vector<std::size_t> again;
    for (std::size_t i : order)
      if (results_[i].interrupted) again.push_back(i);
    const double left = problem_.limits.seconds - Seconds();
    if (!again.empty() && left > 0.3 * problem_.limits.seconds && !stop_.stop_requested()) SideBySide(again);
  }

  void SideBySide(const std::vector<std::size_t>& order) {
    std::atomic<std::size_t> next{0};
    std::exception_ptr failure;
    const auto work = [&] {
      for (std::size_t at = next++; at < order.size(); at = next++) try {
          // Each gets its share of the clock; what the small ones leave over goes to the large ones, which come last.
          const double left = problem_.limits.seconds - Seconds();
          const auto waiting = static_cast<double>(order.size() - at);
          SearchOne(order[at], Seconds() + left * std::min(1.0, std::max(1, problem_.limits.threads) / waiting));
        } catch (...) {
          const std::lock_guard lock(mutex_);
          failure = std::current_exception();
        }
    };
    const int threads = std::clamp(problem_.limits.threads, 1, 64);
    {
      std::vector<std::jthread> others;
      for (int t = 1; t < threads && static_cast<std::size_t>(t) < order.size(); ++t) others.emplace_back(work);
      work();
    }
    if (failure) std::rethrow_exception(failure);
  }

  void SearchOne(std::size_t i, double until) {
    SearchControl control;
    control.enough = [this, until] { return stop_.stop_requested() || Seconds() >= until; };
    control.seconds_left = [this, until] { return std::max(0.0, until - Seconds()); };
    control.iterations = problem_.limits.iterations;
    control.seed = problem_.limits.seed;
    if (progress_) control.better = [this, i](const ComponentResult& result) { Tell(i, result); };
    ComponentResult found = SearchComponent(components_[i], control);
    ComponentResult& known = results_[i];
    const bool better = known.best.score.empty() || found.best.score < known.best.score ||
        (found.best.score == known.best.score && found.proved >= known.proved);
    if (better) known = std::move(found);
    if (progress_) Tell(i, results_[i]);
  }

  void Tell(std::size_t i, const ComponentResult& result) {
    const std::lock_guard lock(mutex_);
    if (!shown_[i].best.score.empty() && shown_[i].best.score < result.best.score) return;
    shown_[i] = result;
    Plan so_far;
    bool all = true;
    for (std::size_t n = 0; n < components_.size(); ++n) {
      all = all && !shown_[n].best.score.empty();
      for (Layout& layout : LayoutsOf(components_[n], shown_[n].best)) so_far.layouts.push_back(std::move(layout));
    }
    so_far.value = ValueOf(problem_, so_far.layouts);
    if (all) Prove(so_far, shown_);
    progress_(so_far.value, so_far.bound);
  }

  void Shorts(Plan& plan) const {
    std::vector<int> missing;
    for (const Line& line : problem_.lines) missing.push_back(line.quantity);
    for (const Layout& layout : plan.layouts)
      for (const Cut& cut : layout.cuts) missing[static_cast<std::size_t>(cut.line)] -= cut.count * layout.repeat;
    for (std::size_t i = 0; i < missing.size(); ++i)
      if (missing[i] > 0) plan.shorts.push_back({static_cast<int>(i), missing[i], WhyShort(problem_, static_cast<int>(i), missing[i])});
  }

  // Adds up the components' bounds, priority by priority and key by key.
  void Prove(Plan& plan, const std::vector<ComponentResult>& results) const {
    std::set<int> priorities;
    for (const Line& line : problem_.lines) priorities.insert(line.priority);
    std::map<int, int> bound = plan.value.unmet_by_priority;  // lines in no component cannot be served
    bool all = true;
    for (int priority : priorities) {
      std::int64_t slack = 0;  // value - bound of this priority
      for (std::size_t i = 0; i < components_.size() && all; ++i) {
        const auto& ranks = components_[i].priorities;
        const auto at = std::find(ranks.begin(), ranks.end(), priority);
        if (at == ranks.end()) continue;
        const auto k = static_cast<std::size_t>(at - ranks.begin());
        const auto b = At(results[i].bounds, k);
        slack += results[i].best.score[k] - b.value_or(0);
      }
      if (!all) {
        bound.erase(priority);  // nothing is said of priorities after one that is not proved
      } else if (slack != 0) {
        all = false;
        bound[priority] -= static_cast<int>(slack);
        if (bound[priority] == 0) bound.erase(priority);
      }
    }
    plan.bound.unmet_by_priority = bound;
    if (!all) return;
    plan.proved_keys.push_back(Key::Unmet);
    const std::vector<Key> keys = KeysOf(problem_.aim);
    for (std::size_t k = 1; k < keys.size(); ++k) {
      if (keys[k] == Key::Layouts && !MetalsApart()) return;
      std::int64_t sum = 0;
      for (std::size_t i = 0; i < components_.size(); ++i) {
        const auto b = At(results[i].bounds, components_[i].priorities.size() + k - 1);
        if (!b) return;
        sum += *b;
      }
      plan.bound.figures[keys[k]] = sum;
      if (sum != FigureOf(plan.value, keys[k])) return;
      plan.proved_keys.push_back(keys[k]);
      plan.proved = true;
    }
  }

  static std::optional<std::int64_t> At(const std::vector<std::optional<std::int64_t>>& bounds, std::size_t k) {
    return k < bounds.size() ? bounds[k] : std::nullopt;
  }

  // Do no two components cut the same section and grade? Then their layouts cannot be the same.
  bool MetalsApart() const {
    std::set<std::pair<std::string, std::string>> all;
    for (const Component& c : components_) {
      std::set<std::pair<std::string, std::string>> own;
      for (const Source& s : c.sources)
        for (const auto& [piece, count] : s.pieces) {
          const Piece& p = problem_.pieces[static_cast<std::size_t>(piece)];
          own.insert({p.section, p.grade});
        }
      for (const auto& metal : own)
        if (!all.insert(metal).second) return false;
    }
    return true;
  }

  const Problem& problem_;
  std::stop_token stop_;
  const Progress& progress_;
  std::chrono::steady_clock::time_point begin_;
  std::vector<Component> components_;
  std::vector<ComponentResult> results_;
  std::mutex mutex_;
  std::vector<ComponentResult> shown_;  // what was told so far
};

}  // namespace

Plan Allocate(const Problem& problem, std::stop_token stop, const Progress& progress) {
  RefuseNonsense(problem);
  return Run(problem, std::move(stop), progress).Make();
}

}  // namespace heatkeep::allocator
