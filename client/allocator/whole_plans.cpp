#include "client/allocator/whole_plans.h"

#include <CbcEventHandler.hpp>
#include <CbcHeuristic.hpp>
#include <CbcModel.hpp>
#include <CoinPackedMatrix.hpp>
#include <CoinPackedVector.hpp>
#include <OsiClpSolverInterface.hpp>
#include <algorithm>
#include <cmath>
#include <map>

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }
using Taken = std::vector<std::pair<Pattern, std::int64_t>>;

// The whole part of every layout's use, as far as demand and stock go.
void TakeWholeParts(Relaxation& relaxation, Taken& taken) {
  const std::vector<double> use = relaxation.Use();
  for (std::size_t q = 0; q < use.size(); ++q)
    for (auto n = static_cast<std::int64_t>(std::floor(use[q] + 1e-6)); n > 0 && relaxation.Fits(q); --n) {
      std::int64_t times = std::min(n, relaxation.stock()[At(relaxation.patterns()[q].source)]);
      for (const auto& [item, count] : relaxation.patterns()[q].cuts)
        times = std::min<std::int64_t>(times, relaxation.demand()[At(item)] / count);
      taken.push_back({relaxation.patterns()[q], times});
      relaxation.Fix(q, times);
      break;
    }
}

void OfferCompleted(const Component& c, const Relaxation& relaxation, const Taken& taken, bool many, const Offer& offer) {
  for (int bits = 0; bits < (many ? 8 : 2); ++bits) {
    StartStyle style;
    style.fill = (bits & 1) != 0;
    style.bars_longest = (bits & 2) == 0;
    style.drops_longest = (bits & 4) != 0;
    Solution rest = QuickPlan(c, style, relaxation.demand(), relaxation.stock());
    Taken all = taken;
    all.insert(all.end(), rest.patterns.begin(), rest.patterns.end());
    offer(Assembled(c, all));
  }
}

}  // namespace

Solution Assembled(const Component& c, const Taken& patterns) {
  std::map<std::pair<int, std::vector<std::pair<int, int>>>, std::pair<Pattern, std::int64_t>> merged;
  std::vector<std::int64_t> left;
  for (const Item& item : c.items) left.push_back(item.demand);
  for (const auto& [p, times] : patterns) {
    // As many as are wanted whole, the rest one by one without what is too much.
    std::int64_t whole = times;
    for (const auto& [item, count] : p.cuts) whole = std::min(whole, left[At(item)] / count);
    const auto put = [&](const Pattern& q, std::int64_t n) {
      if (n <= 0) return;
      for (const auto& [item, count] : q.cuts) left[At(item)] -= count * n;
      auto key = std::make_pair(q.source, q.cuts);
      const auto [it, fresh] = merged.try_emplace(std::move(key), q, n);
      if (!fresh) it->second.second += n;
    };
    put(p, whole);
    for (std::int64_t n = whole; n < times; ++n) {
      Pattern q = p;
      for (auto& [item, count] : q.cuts) count = static_cast<int>(std::min<std::int64_t>(count, left[At(item)]));
      std::erase_if(q.cuts, [](const auto& cut) { return cut.second == 0; });
      if (Complete(c, q)) put(q, 1);
    }
  }
  Solution solution;
  for (auto& [key, entry] : merged) solution.patterns.push_back(std::move(entry));
  Score(c, solution);
  return solution;
}

namespace {

// One step of a dive: what is whole, else what is nearest to it. false: nothing more can be taken.
bool TakeSome(Relaxation& relaxation, Chance* chance, Taken& taken) {
  const std::size_t before = taken.size();
  TakeWholeParts(relaxation, taken);
  if (taken.size() > before) return true;
  // Nothing whole: the layout nearest to it, and with it all that are very near.
  const std::vector<double> use = relaxation.Use();
  std::vector<std::pair<double, std::size_t>> order;
  for (std::size_t q = 0; q < use.size(); ++q)
    if (use[q] > 1e-6) order.push_back({-use[q] * (chance != nullptr ? 0.7 + 0.3 * chance->Unit() : 1.0), q});
  std::sort(order.begin(), order.end());
  for (const auto& [x, q] : order) {
    if (taken.size() > before && -x < 0.9) break;
    if (!relaxation.Fits(q)) continue;
    taken.push_back({relaxation.patterns()[q], 1});
    relaxation.Fix(q, 1);
  }
  return taken.size() > before;
}

int Left(const Relaxation& relaxation) {
  int left = 0;
  for (int d : relaxation.demand()) left += d;
  return left;
}

}  // namespace

void Dive(const Component& c, Relaxation& relaxation, const SearchControl& control, const Offer& offer, Chance* chance) {
  Taken taken;
  for (int step = 0; step < 4000 && !control.enough(); ++step) {
    if (!TakeSome(relaxation, chance, taken)) break;
    const int left = Left(relaxation);
    if (step < 20 || left < 80) OfferCompleted(c, relaxation, taken, left < 40, offer);
    if (left == 0) break;
    relaxation.Solve(6, 0, control);
  }
  OfferCompleted(c, relaxation, taken, true, offer);
}

namespace {

// Ends the branching when the search has had enough.
class Stopper : public CbcEventHandler {
 public:
  explicit Stopper(const SearchControl& control) : control_(&control) {}
  CbcAction event(CbcEvent) override { return control_->enough() ? stop : noAction; }
  CbcEventHandler* clone() const override { return new Stopper(*this); }

 private:
  const SearchControl* control_;
};

}  // namespace

void SolveLastHandful(const Component& c, std::size_t key, Relaxation& relaxation, bool whole_first, int nodes, double seconds,
                      std::optional<std::int64_t> below, const SearchControl& control, const Offer& offer) {
  Taken taken;
  if (whole_first) TakeWholeParts(relaxation, taken);
  std::vector<std::size_t> columns;
  for (std::size_t q = 0; q < relaxation.patterns().size(); ++q)
    if (relaxation.Fits(q)) columns.push_back(q);
  if (columns.empty() || columns.size() > 3000) return;
  const std::size_t items = c.items.size(), ranks = c.priorities.size();
  double dearest = 1;
  const auto part = [&](const Pattern& p, std::size_t j) {
    const bool counts = c.keys[j] == Key::BarsOpened || c.keys[j] == Key::PiecesPulled;
    return static_cast<double>(p.cost[j]) / (counts ? 1 : 1e6);
  };
  const auto cost = [&](const Pattern& p) { return key < ranks ? 0.0 : part(p, key - ranks); };
  for (std::size_t q : columns) dearest = std::max(dearest, cost(relaxation.patterns()[q]));
  OsiClpSolverInterface solver;
  solver.messageHandler()->setLogLevel(0);
  CoinPackedMatrix matrix(true, 0, 0);
  std::map<int, int> row_of_source;
  for (std::size_t q : columns) row_of_source.try_emplace(relaxation.patterns()[q].source, static_cast<int>(items + row_of_source.size()));
  const std::size_t rows = items + row_of_source.size();
  matrix.setDimensions(static_cast<int>(rows), 0);
  std::vector<double> objective, lower, upper;
  for (std::size_t i = 0; i < items; ++i) {
    CoinPackedVector column;
    column.insert(static_cast<int>(i), 1.0);
    matrix.appendCol(column);
    objective.push_back(20 * dearest);
    upper.push_back(relaxation.demand()[i]);
  }
  for (std::size_t q : columns) {
    const Pattern& p = relaxation.patterns()[q];
    CoinPackedVector column;
    double most = static_cast<double>(relaxation.stock()[At(p.source)]);
    for (const auto& [item, count] : p.cuts) {
      column.insert(item, count);
      most = std::min(most, std::floor(static_cast<double>(relaxation.demand()[At(item)]) / count));
    }
    column.insert(row_of_source.at(p.source), 1.0);
    matrix.appendCol(column);
    double later = 0;  // the keys after this one, as a whisper
    for (std::size_t j = key < ranks ? 0 : key - ranks + 1; j < c.keys.size(); ++j) later += part(p, j);
    objective.push_back(cost(p) + (below ? 0 : 1e-5 * later));
    upper.push_back(most);
  }
  lower.assign(objective.size(), 0);
  std::vector<double> row_lower(rows, -COIN_DBL_MAX), row_upper(rows, COIN_DBL_MAX);
  for (std::size_t i = 0; i < items; ++i) row_lower[i] = relaxation.demand()[i];
  for (const auto& [source, row] : row_of_source) row_upper[At(row)] = static_cast<double>(relaxation.stock()[At(source)]);
  solver.loadProblem(matrix, lower.data(), upper.data(), objective.data(), row_lower.data(), row_upper.data());
  for (std::size_t j = items; j < objective.size(); ++j) solver.setInteger(static_cast<int>(j));
  CbcModel model(solver);
  model.setLogLevel(0);
  model.messageHandler()->setLogLevel(0);
  model.solver()->messageHandler()->setLogLevel(0);
  CbcRounding rounding(model);
  model.addHeuristic(&rounding);
  model.setMaximumNodes(nodes);
  model.setMaximumSeconds(seconds);
  model.setNumberStrong(0);
  const Stopper stopper(control);
  model.passInEventHandler(&stopper);
  if (below && key >= ranks) {
    const bool counts = c.keys[key - ranks] == Key::BarsOpened || c.keys[key - ranks] == Key::PiecesPulled;
    model.setCutoff(counts ? static_cast<double>(*below) - 0.5 : static_cast<double>(*below) / 1e6 - 1e-4);
  }
  model.initialSolve();
  model.branchAndBound();
  control.spend((model.getIterationCount() + 50LL) * (400LL * model.getNumRows() + 100LL * model.getNumCols()) + 2'000'000);
  const double* best = model.bestSolution();
  if (best == nullptr) return;
  std::vector<int> demand = relaxation.demand();
  std::vector<std::int64_t> stock = relaxation.stock();
  for (std::size_t n = 0; n < columns.size(); ++n) {
    const auto times = static_cast<std::int64_t>(std::llround(best[items + n]));
    if (times <= 0) continue;
    const Pattern& p = relaxation.patterns()[columns[n]];
    taken.push_back({p, times});
    stock[At(p.source)] -= times;
    for (const auto& [item, count] : p.cuts) demand[At(item)] -= static_cast<int>(count * times);
  }
  for (int& d : demand) d = std::max(d, 0);
  for (std::int64_t& n : stock) n = std::max<std::int64_t>(n, 0);
  for (const bool fill : {false, true}) {
    StartStyle style;
    style.fill = fill;
    const Solution rest = QuickPlan(c, style, demand, stock);
    Taken all = taken;
    all.insert(all.end(), rest.patterns.begin(), rest.patterns.end());
    offer(Assembled(c, all));
  }
}

}  // namespace heatkeep::allocator
