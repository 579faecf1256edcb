#include "client/allocator/relaxation.h"

#include <ClpSimplex.hpp>
#include <CoinPackedVector.hpp>
#include <algorithm>
#include <cmath>
#include <map>

#include "client/allocator/least_possible.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }
__extension__ using Wide = __int128;

// A key's figures divided by this stand in the linear programme.
double UnitOf(const Component& c, std::size_t key) {
  if (key < c.priorities.size()) return 1;
  switch (c.keys[key - c.priorities.size()]) {
    case Key::NewLength:
    case Key::ConsumedLength:
    case Key::LostWorth:
    case Key::Money: return 1e6;
    default: return 1;
  }
}
// A figure times this is what bounds are worked out in, so that rounding multipliers to whole numbers costs little.
double ScaleOf(const Component& c, std::size_t key) {
  return UnitOf(c, key) == 1 ? 1099511627776.0 : 1024.0;  // 2^40, 2^10
}

constexpr double kSmoothing = 0.8;

}  // namespace

struct Relaxation::Programme {
  ClpSimplex clp;
  std::map<int, int> row_of_source;
  std::map<std::pair<int, std::vector<std::pair<int, int>>>, std::size_t> known;
  int first_pattern = 0;  // columns before it are the u
};

Relaxation::Relaxation(const Component& c, std::size_t key, std::vector<std::int64_t> limits,
                       std::vector<Pattern> known, Pricing& find, Pricing& prove)
    : c_(c), key_(key), ranks_(c.priorities.size()), limits_(std::move(limits)), first_limits_(limits_),
      find_(find), prove_(prove), lp_(std::make_unique<Programme>()) {
  for (const Item& item : c.items) demand_.push_back(item.demand);
  for (const Source& s : c.sources) stock_.push_back(s.count);
  // A key already proved to be nothing rules out every source that would cost something in it.
  usable_.assign(c.sources.size(), 1);
  for (std::size_t s = 0; s < c.sources.size(); ++s)
    for (std::size_t j = ranks_; j < key_; ++j) {
      const Key what = c.keys[j - ranks_];
      const Source& source = c.sources[s];
      if (limits_[j] == 0 && ((what == Key::BarsOpened && source.bar) || (what == Key::NewLength && source.bar && source.own)))
        usable_[s] = 0;
    }
  ClpSimplex& clp = lp_->clp;
  clp.setLogLevel(0);
  clp.resize(0, 0);
  for (int d : demand_) clp.addRow(0, nullptr, nullptr, d, COIN_DBL_MAX);
  for (std::size_t j = 0; j < key_; ++j)
    clp.addRow(0, nullptr, nullptr, -COIN_DBL_MAX, static_cast<double>(limits_[j]) / UnitOf(c, j));
  for (std::size_t i = 0; i < c.items.size(); ++i) {
    const std::size_t rank = At(c.items[i].rank);
    const bool closed = rank < key_ && limits_[rank] == 0;
    CoinPackedVector column;
    column.insert(static_cast<int>(i), 1.0);
    if (rank < key_) column.insert(static_cast<int>(c.items.size() + rank), 1.0);
    clp.addColumn(column.getNumElements(), column.getIndices(), column.getElements(), 0.0,
                  closed ? 0.0 : static_cast<double>(c.items[i].demand), rank == key_ ? 1.0 : 0.0);
  }
  lp_->first_pattern = static_cast<int>(c.items.size());
  for (const Pattern& p : known)
    if (usable_[At(p.source)]) AddPriced(p);
}

Relaxation::~Relaxation() = default;

std::int64_t Relaxation::CostOf(const Pattern& p, std::size_t key) const { return key < ranks_ ? 0 : p.cost[key - ranks_]; }

bool Relaxation::AddPriced(const Pattern& p) {
  if (!lp_->known.try_emplace({p.source, p.cuts}, patterns_.size()).second) return false;
  Add(p);
  return true;
}

void Relaxation::Add(const Pattern& p) {
  ClpSimplex& clp = lp_->clp;
  const auto [row, fresh] = lp_->row_of_source.try_emplace(p.source, clp.numberRows());
  if (fresh) clp.addRow(0, nullptr, nullptr, -COIN_DBL_MAX, static_cast<double>(stock_[At(p.source)]));
  CoinPackedVector column;
  for (const auto& [item, count] : p.cuts) column.insert(item, static_cast<double>(count));
  for (std::size_t j = ranks_; j < key_; ++j)
    if (const std::int64_t cost = CostOf(p, j); cost != 0)
      column.insert(static_cast<int>(c_.items.size() + j), static_cast<double>(cost) / UnitOf(c_, j));
  column.insert(row->second, 1.0);
  clp.addColumn(column.getNumElements(), column.getIndices(), column.getElements(), 0.0, COIN_DBL_MAX,
                static_cast<double>(CostOf(p, key_)) / UnitOf(c_, key_));
  patterns_.push_back(p);
}

bool Relaxation::Resolve(const SearchControl& control) {
  ClpSimplex& clp = lp_->clp;
  clp.primal();
  control.spend((clp.numberIterations() + 3) * (50LL * clp.numberRows() + 12LL * clp.numberColumns()));
  if (clp.status() != 0) return false;
  const double* duals = clp.dualRowSolution();
  const std::size_t n = c_.items.size();
  item_dual_.assign(n, 0);
  limit_dual_.assign(key_, 0);
  source_dual_.assign(c_.sources.size(), 0);
  for (std::size_t i = 0; i < n; ++i) item_dual_[i] = std::max(0.0, duals[i]);
  for (std::size_t j = 0; j < key_; ++j) limit_dual_[j] = std::max(0.0, -duals[n + j]);
  for (const auto& [source, row] : lp_->row_of_source) source_dual_[At(source)] = std::max(0.0, -duals[row]);
  return true;
}

// Multipliers of the linear programme in the units bounds are worked out in, whole.
Prices Relaxation::Whole() const {
  const double scale = ScaleOf(c_, key_) * UnitOf(c_, key_);
  Prices prices;
  for (double x : last_item_) prices.item.push_back(std::floor(x * scale));
  for (double x : last_source_) prices.source.push_back(x * scale);
  prices.weight.assign(c_.keys.size(), 0);
  for (std::size_t j = ranks_; j < key_; ++j)
    prices.weight[j - ranks_] = std::floor(last_limit_[j] * scale / UnitOf(c_, j));
  if (key_ >= ranks_) prices.weight[key_ - ranks_] = ScaleOf(c_, key_);
  return prices;
}

// The bound that these multipliers give (allocate.h), in whole numbers, from profits that are not underestimated.
void Relaxation::Bound(const std::vector<double>& profits) {
  const Prices& prices = last_;
  const double scale = ScaleOf(c_, key_);
  Wide sum = 0;
  std::vector<double> limit(key_, 0);
  for (std::size_t j = 0; j < ranks_ && j < key_; ++j) limit[j] = std::floor(last_limit_[j] * scale * UnitOf(c_, key_));
  for (std::size_t i = 0; i < c_.items.size(); ++i) {
    const std::size_t rank = At(c_.items[i].rank);
    sum += Wide{static_cast<std::int64_t>(prices.item[i])} * c_.items[i].demand;
    if (rank < key_ && first_limits_[rank] == 0) continue;  // then its u is nothing
    const double cost = rank < key_ ? limit[rank] : rank == key_ ? scale : 0;
    if (const double over = prices.item[i] - cost; over > 0) sum -= Wide{static_cast<std::int64_t>(over)} * c_.items[i].demand;
  }
  for (std::size_t j = 0; j < key_; ++j) {
    const double weight = j < ranks_ ? limit[j] : prices.weight[j - ranks_];
    sum -= Wide{static_cast<std::int64_t>(weight)} * first_limits_[j];
  }
  for (std::size_t s = 0; s < profits.size(); ++s)
    if (usable_[s] && profits[s] > 0) sum -= Wide{static_cast<std::int64_t>(std::ceil(profits[s]))} * MostUses(s);
  const auto whole = static_cast<std::int64_t>(scale);
  std::int64_t bound = static_cast<std::int64_t>(sum / whole);
  if (sum > 0 && sum % whole != 0) ++bound;
  bound = LeastPossible(c_, key_, std::max<std::int64_t>(0, bound));
  const double raw = static_cast<double>(sum);
  if (!bound_ || raw > best_raw_) {
    best_raw_ = raw;
    centre_item_ = last_item_;
    centre_limit_ = last_limit_;
    centre_source_ = last_source_;
  }
  bound_ = std::max(bound_.value_or(0), std::min(bound, target_));
}

// How often a plan that is better than the best one known can use a source at most.
std::int64_t Relaxation::MostUses(std::size_t s) const {
  const Source& source = c_.sources[s];
  std::int64_t cost = 0;
  if (key_ >= ranks_) switch (c_.keys[key_ - ranks_]) {
      case Key::BarsOpened: cost = source.bar ? 1 : 0; break;
      case Key::NewLength: cost = source.bar && source.own ? source.length.nm : 0; break;
      case Key::ConsumedLength: cost = source.length.nm; break;
      case Key::PiecesPulled: cost = 1; break;
      default: break;
    }
  return cost > 0 ? std::min(source.count, target_ / cost) : source.count;
}

bool Relaxation::Solve(int rounds, std::int64_t target, const SearchControl& control) {
  const std::size_t columns = c_.sources.size() > 50 ? 60 : 12;
  target_ = target;
  int misses = 0;
  const auto towards = [](std::vector<double>& prices, const std::vector<double>& centre) {
    for (std::size_t i = 0; i < prices.size(); ++i) prices[i] = kSmoothing * centre[i] + (1 - kSmoothing) * prices[i];
  };
  for (int round = 0; round < rounds; ++round) {
    if (control.enough() || !Resolve(control)) return false;
    last_item_ = item_dual_;
    last_limit_ = limit_dual_;
    last_source_ = source_dual_;
    const bool smooth = !fixed_ && !only_plans_ && bound_ && misses == 0;
    if (smooth) {
      towards(last_item_, centre_item_);
      towards(last_limit_, centre_limit_);
      towards(last_source_, centre_source_);
    }
    last_ = Whole();
    const std::int64_t before = find_.work() + prove_.work();
    const Pricing::Answer answer = find_.Best(last_, demand_, usable_, columns);
    if (!fixed_ && !only_plans_) {
      if (find_.exact())
        Bound(answer.profit);
      else if (round % 8 == 7)
        Bound(prove_.Best(last_, demand_, usable_, 0).profit);
      if (bound_ && *bound_ >= target) return true;
    }
    control.spend(find_.work() + prove_.work() - before);
    bool added = false;
    const double unit = UnitOf(c_, key_);
    for (const Pattern& p : answer.patterns) {
      double reduced = static_cast<double>(CostOf(p, key_)) / unit + source_dual_[At(p.source)];
      for (const auto& [item, count] : p.cuts) reduced -= item_dual_[At(item)] * count;
      for (std::size_t j = ranks_; j < key_; ++j)
        reduced += limit_dual_[j] * static_cast<double>(CostOf(p, j)) / UnitOf(c_, j);
      if (reduced < -1e-9 && stock_[At(p.source)] > 0 && AddPriced(p)) added = true;
    }
    if (added) {
      misses = 0;
      continue;
    }
    if (smooth) {
      misses = 1;  // once more at the programme's own prices
      continue;
    }
    if (!fixed_ && !only_plans_ && !find_.exact()) Bound(prove_.Best(last_, demand_, usable_, 0).profit);
    return true;
  }
  return Resolve(control) && false;
}

void Relaxation::SolveOnly(int rounds, const SearchControl& control) {
  only_plans_ = true;
  Solve(rounds, 0, control);
}

std::vector<double> Relaxation::Use() const {
  const ClpSimplex& clp = lp_->clp;
  if (clp.status() != 0) return {};
  const double* x = clp.primalColumnSolution();
  return std::vector<double>(x + lp_->first_pattern, x + clp.numberColumns());
}

bool Relaxation::Fits(std::size_t pattern) const {
  const Pattern& p = patterns_[pattern];
  if (stock_[At(p.source)] < 1) return false;
  for (const auto& [item, count] : p.cuts)
    if (demand_[At(item)] < count) return false;
  return true;
}

// In a dive cuts may be left over for others to place, at a price above any layout's.
void Relaxation::OpenUnmet() {
  double dearest = 1;
  for (const Pattern& p : patterns_) dearest = std::max(dearest, static_cast<double>(CostOf(p, key_)) / UnitOf(c_, key_));
  ClpSimplex& clp = lp_->clp;
  for (std::size_t i = 0; i < c_.items.size(); ++i) {
    clp.setColumnUpper(static_cast<int>(i), COIN_DBL_MAX);
    clp.setObjectiveCoefficient(static_cast<int>(i), 20 * dearest);
  }
  for (std::size_t j = 0; j < ranks_ && j < key_; ++j) clp.setRowUpper(static_cast<int>(c_.items.size() + j), COIN_DBL_MAX);
}

void Relaxation::Fix(std::size_t pattern, std::int64_t times) {
  const Pattern p = patterns_[pattern];
  if (!fixed_) OpenUnmet();
  fixed_ = true;
  ClpSimplex& clp = lp_->clp;
  for (const auto& [item, count] : p.cuts) {
    demand_[At(item)] -= static_cast<int>(count * times);
    clp.setRowLower(item, demand_[At(item)]);
  }
  stock_[At(p.source)] -= times;
  clp.setRowUpper(lp_->row_of_source.at(p.source), static_cast<double>(stock_[At(p.source)]));
  for (std::size_t j = ranks_; j < key_; ++j) {
    limits_[j] -= CostOf(p, j) * times;
    clp.setRowUpper(static_cast<int>(c_.items.size() + j), std::max(0.0, static_cast<double>(limits_[j])) / UnitOf(c_, j));
  }
  for (std::size_t q = 0; q < patterns_.size(); ++q)
    if (!Fits(q)) clp.setColumnUpper(lp_->first_pattern + static_cast<int>(q), 0.0);
}

}  // namespace heatkeep::allocator
