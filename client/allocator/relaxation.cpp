#include "client/allocator/relaxation.h"

#include <ClpEventHandler.hpp>
#include <CoinPackedVector.hpp>
#include <algorithm>
#include <cmath>

#include "client/allocator/relaxation_programme.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }

constexpr double kSmoothing = 0.8;
constexpr std::size_t kFewSources = 3;
constexpr int kFollowing = 20;
constexpr double kDearest = 1e14;  // no cut is priced above it, so that sums of prices stay exact

// Ends a linear programme when the search has had enough.
class LpStopper : public ClpEventHandler {
 public:
  explicit LpStopper(const std::function<bool()>& enough) : enough_(&enough) {}
  int event(Event what) override {
    constexpr int kGoOn = -1, kStop = 5;
    return what == endOfIteration && (++asked_ & 15) == 0 && (*enough_)() ? kStop : kGoOn;
  }
  ClpEventHandler* clone() const override { return new LpStopper(*this); }

 private:
  const std::function<bool()>* enough_;
  unsigned asked_ = 0;
};

}  // namespace

Relaxation::Relaxation(const Component& c, std::size_t key, std::vector<std::int64_t> limits, const std::vector<Pattern>& known,
                       Pricing& find, Pricing& prove, bool lack, Pricing* quick)
    : c_(c), key_(key), ranks_(c.priorities.size()), limits_(std::move(limits)), first_limits_(limits_), quick_(quick), find_(find),
      prove_(prove), lp_(std::make_unique<Programme>()) {
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
  for (std::size_t j = 0; j < key_; ++j) clp.addRow(0, nullptr, nullptr, -COIN_DBL_MAX, static_cast<double>(limits_[j]) / UnitOf(c, j));
  for (std::size_t i = 0; i < c.items.size(); ++i) {
    const std::size_t rank = At(c.items[i].rank);
    const bool closed = rank < key_ && limits_[rank] == 0;
    CoinPackedVector column;
    column.insert(static_cast<int>(i), 1.0);
    if (rank < key_) column.insert(static_cast<int>(c.items.size() + rank), 1.0);
    clp.addColumn(column.getNumElements(), column.getIndices(), column.getElements(), 0.0,
                  closed ? 0.0 : static_cast<double>(c.items[i].demand), rank == key_ ? 1.0 : 0.0);
  }
  HeatRows();
  if (lack) Lacks();
  lp_->first_pattern = clp.numberColumns();
  for (const Pattern& p : known)
    if (usable_[At(p.source)]) AddPriced(p);
}

Relaxation::~Relaxation() = default;

void Relaxation::Lacks() {
  ClpSimplex& clp = lp_->clp;
  first_lack_ = clp.numberColumns();
  const double one = 1.0, minus = -1.0;
  double dearest = 1;
  if (key_ >= ranks_) {
    for (const Source& s : c_.sources) dearest = std::max(dearest, static_cast<double>(s.length.nm) / 1e6);
    if (c_.keys[key_ - ranks_] == Key::Money) dearest *= 1000;
  }
  for (std::size_t i = 0; i < c_.items.size(); ++i) {
    const int row = static_cast<int>(i);
    clp.addColumn(1, &row, &one, 0.0, COIN_DBL_MAX, 10 * dearest);
  }
  for (std::size_t j = 0; j < key_; ++j) {
    const int row = static_cast<int>(c_.items.size() + j);
    clp.addColumn(1, &row, &minus, 0.0, COIN_DBL_MAX, 10 * (j < ranks_ ? dearest : 1.0));
  }
  last_lack_ = clp.numberColumns();
}

bool Relaxation::Dearer() {
  if (first_lack_ < 0 || dearness_ > 20) return false;
  ClpSimplex& clp = lp_->clp;
  const double* x = clp.primalColumnSolution();
  double lack = 0;
  for (int column = first_lack_; column < last_lack_; ++column) lack += x[column];
  if (lack < 1e-6) return false;
  dearness_ *= 30;
  for (int column = first_lack_; column < last_lack_; ++column) clp.setObjectiveCoefficient(column, 30 * clp.objective()[column]);
  return true;
}

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
  for (const auto& [item, count] : p.cuts) {
    column.insert(item, static_cast<double>(count));
    if (heat_rows_.empty()) continue;
    if (const int at = heat_row_of_[At(item)][At(heat_of_source_[At(p.source)])]; at >= 0)
      column.insert(heat_rows_[At(at)].row, static_cast<double>(count));
  }
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
  const LpStopper stopper(control.enough);
  clp.passInEventHandler(&stopper);
  if (!resolved_ && key_ >= ranks_ && c_.keys[key_ - ranks_] != Key::Money)
    clp.dual();  // no cost is below nothing, so that the programme may begin from the dual side
  else clp.primal();
  resolved_ = true;
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
  heat_dual_.assign(heat_rows_.size(), 0);
  for (std::size_t r = 0; r < heat_rows_.size(); ++r) heat_dual_[r] = std::max(0.0, -duals[heat_rows_[r].row]);
  return true;
}

// Multipliers of the linear programme in the units bounds are worked out in, whole.
Prices Relaxation::Whole() {
  const double scale = ScaleOf(c_, key_) * UnitOf(c_, key_);
  Prices prices;
  for (double x : last_item_) prices.item.push_back(std::floor(std::min(x * scale, kDearest)));
  for (double x : last_source_) prices.source.push_back(x * scale);
  prices.weight.assign(c_.keys.size(), 0);
  for (std::size_t j = ranks_; j < key_; ++j) prices.weight[j - ranks_] = std::floor(last_limit_[j] * scale / UnitOf(c_, j));
  if (key_ >= ranks_) prices.weight[key_ - ranks_] = ScaleOf(c_, key_);
  whole_heat_.clear();
  for (double x : last_heat_) whole_heat_.push_back(std::floor(std::min(x * scale, kDearest)));
  if (!heat_rows_.empty()) {
    prices.less.assign(c_.views.size(), std::vector<double>(c_.items.size(), 0));
    for (std::size_t s = 0; s < c_.sources.size(); ++s)  // the sources of a view share a heat
      for (const HeatUnit& unit : c_.units)
        for (int item : unit.items)
          if (const int at = heat_row_of_[At(item)][At(heat_of_source_[s])]; at >= 0)
            prices.less[At(c_.sources[s].view)][At(item)] = whole_heat_[At(at)];
  }
  return prices;
}

// What a source costs in a key that is a sum of lengths; 0: nothing, or the key is none.
std::int64_t Relaxation::LengthIn(std::size_t s) const {
  if (key_ < ranks_) return 0;
  const Source& source = c_.sources[s];
  switch (c_.keys[key_ - ranks_]) {
    case Key::NewLength: return source.bar && source.own ? source.length.nm : 0;
    case Key::ConsumedLength: return source.length.nm;
    case Key::BarsOpened: return source.bar ? 1 : 0;
    default: return 0;
  }
}

// How often a plan that is better than the best one known can use a source at most.
std::int64_t Relaxation::MostUses(std::size_t s) const {
  const Source& source = c_.sources[s];
  const bool pulled = key_ >= ranks_ && c_.keys[key_ - ranks_] == Key::PiecesPulled;
  const std::int64_t cost = pulled ? 1 : LengthIn(s);
  return cost > 0 ? std::min(source.count, target_ / cost) : source.count;
}

// Those that lower the programme's cost at its own prices.
bool Relaxation::AddHelpful(const std::vector<Pattern>& patterns) {
  bool added = false;
  const double unit = UnitOf(c_, key_);
  for (const Pattern& p : patterns) {
    double reduced = static_cast<double>(CostOf(p, key_)) / unit + source_dual_[At(p.source)];
    for (const auto& [item, count] : p.cuts) reduced -= ItemDual(At(item), At(p.source)) * count;
    for (std::size_t j = ranks_; j < key_; ++j) reduced += limit_dual_[j] * static_cast<double>(CostOf(p, j)) / UnitOf(c_, j);
    if (reduced < -1e-9 && stock_[At(p.source)] > 0 && AddPriced(p)) added = true;
  }
  return added;
}

// Few sources give few layouts a round: the best ones for what the first leave of the demand are worth having too.
bool Relaxation::AddFollowing(std::vector<Pattern> patterns, const SearchControl& control) {
  std::vector<int> rest = demand_;
  for (int n = 0; n < kFollowing && !patterns.empty() && !control.enough(); ++n) {
    const Pattern& p = patterns.front();
    int times = 1'000'000;
    for (const auto& [item, count] : p.cuts) times = std::min(times, rest[At(item)] / count);
    for (const auto& [item, count] : p.cuts) rest[At(item)] -= std::max(1, times) * count;
    const std::int64_t before = find_.work();
    patterns = find_.Best(last_, rest, usable_, 1, control.enough).patterns;
    control.spend(find_.work() - before);
    if (!AddHelpful(patterns)) break;
  }
  return true;
}

void Relaxation::BoundLoosely(const SearchControl& control) {
  const Pricing::Answer answer = prove_.Best(last_, demand_, usable_, 0, control.enough);
  if (answer.whole) Bound(answer.profit);
}

bool Relaxation::Solve(int rounds, std::int64_t target, const SearchControl& control) {
  const std::size_t columns = std::clamp<std::size_t>(c_.sources.size() / 10, c_.sources.size() > 50 ? 60 : 12, 1000);
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
    last_heat_ = heat_dual_;
    const bool smooth = !fixed_ && !only_plans_ && bound_ && misses == 0;
    if (smooth) {
      towards(last_item_, centre_item_);
      towards(last_limit_, centre_limit_);
      towards(last_source_, centre_source_);
      towards(last_heat_, centre_heat_);
    }
    last_ = Whole();
    const bool quickly = quick_ != nullptr && (!fine_ || fixed_);
    Pricing& find = quickly ? *quick_ : find_;
    const std::int64_t before = find.work() + prove_.work();
    const Pricing::Answer answer = find.Best(last_, demand_, usable_, columns, control.enough);
    if (!answer.whole) return false;
    if (!fixed_ && !only_plans_) {
      if (find.exact()) Bound(answer.profit);
      else if (round % 8 == 7) BoundLoosely(control);
      if (bound_ && *bound_ >= target) return true;
    }
    control.spend(find.work() + prove_.work() - before);
    bool added = AddHelpful(answer.patterns);
    if (added && c_.sources.size() <= kFewSources) added = AddFollowing(answer.patterns, control);
    if (added) {
      misses = 0;
      continue;
    }
    if (smooth) {
      misses = 1;  // once more at the programme's own prices
      continue;
    }
    if (quickly && !fixed_) {
      fine_ = true;
      continue;
    }
    if (!fixed_ && !only_plans_ && !find.exact()) BoundLoosely(control);
    if (!(bound_ && *bound_ >= target) && Dearer()) continue;
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
