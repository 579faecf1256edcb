#include "client/allocator/bins_relaxation.h"

#include <ClpSimplex.hpp>
#include <algorithm>
#include <set>

namespace heatkeep::allocator {
namespace {

__extension__ using Wide = __int128;
std::size_t At(int i) { return static_cast<std::size_t>(i); }
constexpr double kScale = 1073741824.0;  // 2^30
constexpr double kSmoothing = 0.6;
constexpr int kFollowing = 30;
constexpr std::size_t kColumns = 20;

}  // namespace

struct BinsRelaxation::Programme {
  ClpSimplex clp;
  std::set<Fill> known;
};

BinsRelaxation::BinsRelaxation(const Bins& bins, const Packing& start, const BinsControl& control)
    : bins_(bins), control_(control), dearest_(bins), lp_(std::make_unique<Programme>()) {
  ClpSimplex& clp = lp_->clp;
  clp.setLogLevel(0);
  clp.scaling(0);
  clp.resize(0, 0);
  for (int d : bins.demand) clp.addRow(0, nullptr, nullptr, d, COIN_DBL_MAX);
  for (std::size_t i = 0; i < bins.size.size(); ++i) Add({{static_cast<int>(i), 1}});
  for (const auto& [fill, times] : start) Add(fill);
}

BinsRelaxation::~BinsRelaxation() = default;

void BinsRelaxation::Add(const Fill& fill) {
  if (!lp_->known.insert(fill).second) return;
  std::vector<int> rows;
  std::vector<double> counts;
  for (const auto& [item, count] : fill) {
    rows.push_back(item);
    counts.push_back(count);
  }
  lp_->clp.addColumn(static_cast<int>(rows.size()), rows.data(), counts.data(), 0.0, COIN_DBL_MAX, 1.0);
  fills_.push_back(fill);
}

bool BinsRelaxation::Resolve(bool dual) {
  ClpSimplex& clp = lp_->clp;
  if (dual) clp.dual();
  else clp.primal();
  control_.spend((clp.numberIterations() + 3) * (50LL * clp.numberRows() + 12LL * clp.numberColumns()));
  if (clp.status() != 0) return false;
  dual_.assign(clp.dualRowSolution(), clp.dualRowSolution() + clp.numberRows());
  for (double& x : dual_) x = std::clamp(x, 0.0, 1.0);
  return true;
}

// The dearest fills for what the first ones leave of the demand are worth having too.
void BinsRelaxation::Follow(const std::vector<std::int64_t>& price, std::vector<int> rest, std::vector<Fill>& fills) {
  std::vector<Fill> some = fills;
  for (int n = 0; n < kFollowing && !some.empty() && !control_.enough(); ++n) {
    for (const Fill& fill : some) {
      int times = 1'000'000;
      for (const auto& [item, count] : fill) times = std::min(times, rest[At(item)] / count);
      for (const auto& [item, count] : fill) rest[At(item)] -= times * count;
    }
    dearest_.Find(price, rest, static_cast<std::int64_t>(kScale), kColumns, some);
    fills.insert(fills.end(), some.begin(), some.end());
  }
}

std::int64_t BinsRelaxation::Solve(const std::vector<int>& demand, std::int64_t target, int rounds, std::int64_t known) {
  ClpSimplex& clp = lp_->clp;
  bool changed = false;
  for (std::size_t i = 0; i < demand.size(); ++i) {
    changed = changed || clp.rowLower()[i] != demand[i];
    clp.setRowLower(static_cast<int>(i), demand[i]);
  }
  for (std::size_t q = 0; changed && q < fills_.size(); ++q) {
    const bool fits = std::all_of(fills_[q].begin(), fills_[q].end(), [&](const auto& cut) { return demand[At(cut.first)] >= cut.second; });
    clp.setColumnUpper(static_cast<int>(q), fits || q < demand.size() ? COIN_DBL_MAX : 0.0);
  }
  std::vector<double> centre(demand.size());
  for (std::size_t i = 0; i < centre.size(); ++i) centre[i] = static_cast<double>(bins_.size[i]) / static_cast<double>(bins_.capacity);
  // To begin with: the sizes themselves as prices.
  price_ = bins_.size;
  top_ = bins_.capacity;
  double best = -1;
  std::int64_t bound = 0;
  bool missed = changed;
  for (int round = 0; round < rounds; ++round) {
    if (control_.enough() || !Resolve(round == 0 && changed)) return bound;
    if (clp.objectiveValue() <= static_cast<double>(known) - 1e-6) return bound;
    std::vector<double> at = dual_;
    const bool smooth = !missed;
    if (smooth)
      for (std::size_t i = 0; i < at.size(); ++i) at[i] = kSmoothing * centre[i] + (1 - kSmoothing) * at[i];
    std::vector<std::int64_t> price;
    for (double x : at) price.push_back(static_cast<std::int64_t>(x * kScale));
    std::vector<Fill> fills;
    const std::int64_t before = dearest_.steps();
    const std::int64_t top = dearest_.Find(price, demand, static_cast<std::int64_t>(kScale), kColumns, fills);
    Wide sum = 0;
    for (std::size_t i = 0; i < price.size(); ++i) sum += Wide{price[i]} * demand[i];
    bound = std::max(bound, static_cast<std::int64_t>((sum + top - 1) / top));
    if (const double raw = static_cast<double>(sum) / static_cast<double>(top); raw > best) {
      best = raw;
      price_ = price;
      top_ = top;
      centre = at;
    }
    if (bound >= target) return bound;
    Follow(price, demand, fills);
    control_.spend(dearest_.steps() - before);
    bool added = false;
    for (const Fill& fill : fills) {
      double worth = 0;
      for (const auto& [item, count] : fill) worth += dual_[At(item)] * count;
      if (worth <= 1 + 1e-8) continue;
      const std::size_t before_it = fills_.size();
      Add(fill);
      added = added || fills_.size() > before_it;
    }
    if (added) missed = changed;
    else if (smooth) missed = true;
    else return bound;
  }
  if (!control_.enough()) Resolve(false);
  return bound;
}

std::vector<std::pair<Fill, double>> BinsRelaxation::Used() const {
  std::vector<std::pair<Fill, double>> used;
  const double* x = lp_->clp.primalColumnSolution();
  for (std::size_t q = 0; q < fills_.size(); ++q)
    if (x[q] > 1e-7) used.push_back({fills_[q], x[q]});
  return used;
}

}  // namespace heatkeep::allocator
