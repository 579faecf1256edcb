#include "client/allocator/relaxation.h"

#include <ClpEventHandler.hpp>
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
constexpr std::size_t kFewSources = 3;
constexpr int kFollowing = 20;
constexpr double kImpossible = -1e299;  // the profit of a source that takes nothing
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

struct Relaxation::Programme {
  ClpSimplex clp;
  std::map<int, int> row_of_source;
  std::map<std::pair<int, std::vector<std::pair<int, int>>>, std::size_t> known;
  int first_pattern = 0;  // columns before it are the u
};

Relaxation::Relaxation(const Component& c, std::size_t key, std::vector<std::int64_t> limits,
                       std::vector<Pattern> known, Pricing& find, Pricing& prove, bool lack, Pricing* quick)
    : c_(c), key_(key), ranks_(c.priorities.size()), limits_(std::move(limits)), first_limits_(limits_),
      quick_(quick), find_(find), prove_(prove), lp_(std::make_unique<Programme>()) {
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
  HeatRows();
  if (lack) Lacks();
  lp_->first_pattern = clp.numberColumns();
  for (const Pattern& p : known)
    if (usable_[At(p.source)]) AddPriced(p);
}

Relaxation::~Relaxation() = default;

void Relaxation::HeatRows() {
  std::map<std::string, int> heats;
  heat_of_source_.assign(c_.sources.size(), 0);
  if (c_.units.empty()) return;
  for (std::size_t s = 0; s < c_.sources.size(); ++s)
    heat_of_source_[s] = heats.try_emplace(c_.sources[s].heat, static_cast<int>(heats.size())).first->second;
  heat_row_of_.assign(c_.items.size(), std::vector<int>(heats.size(), -1));
  ClpSimplex& clp = lp_->clp;
  for (std::size_t u = 0; u < c_.units.size(); ++u) {
    const HeatUnit& unit = c_.units[u];
    heat_column_.emplace_back(unit.heats.size(), -1);
    const int of_unit = clp.numberRows();
    const auto sure = std::count(unit.sure.begin(), unit.sure.end(), 1);
    clp.addRow(0, nullptr, nullptr, -COIN_DBL_MAX, static_cast<double>(unit.most - sure));
    for (std::size_t h = 0; h < unit.heats.size(); ++h) {
      const auto heat = heats.find(unit.heats[h]);
      if (unit.sure[h] || heat == heats.end()) continue;
      CoinPackedVector column;
      column.insert(of_unit, 1.0);
      for (int item : unit.items) {
        const Length l = c_.items[At(item)].length;
        std::int64_t most = 0;
        for (std::size_t s = 0; s < c_.sources.size() && most < demand_[At(item)]; ++s) {
          const Source& source = c_.sources[s];
          if (heat_of_source_[s] != heat->second || !c_.views[At(source.view)].may[At(item)]) continue;
          const std::int64_t gives = std::max<std::int64_t>({0, source.room.room.nm, source.room.exact.value_or(Length{}).nm});
          most += source.count * (gives / (l + source.room.kerf).nm);
        }
        const HeatRow row{u, h, At(item), std::min<std::int64_t>(most, demand_[At(item)]), clp.numberRows()};
        clp.addRow(0, nullptr, nullptr, -COIN_DBL_MAX, 0.0);
        column.insert(row.row, -static_cast<double>(row.most));
        heat_row_of_[At(item)][At(heat->second)] = static_cast<int>(heat_rows_.size());
        heat_rows_.push_back(row);
      }
      heat_column_[u][h] = clp.numberColumns();
      clp.addColumn(column.getNumElements(), column.getIndices(), column.getElements(), 0.0, 1.0, 0.0);
    }
  }
}

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
  for (int column = first_lack_; column < last_lack_; ++column)
    clp.setObjectiveCoefficient(column, 30 * clp.objective()[column]);
  return true;
}

double Relaxation::ItemDual(std::size_t item, std::size_t source) const {
  if (heat_rows_.empty()) return item_dual_[item];
  const int row = heat_row_of_[item][At(heat_of_source_[source])];
  return row < 0 ? item_dual_[item] : item_dual_[item] - heat_dual_[At(row)];
}

std::vector<std::vector<double>> Relaxation::HeatUse() const {
  std::vector<std::vector<double>> use;
  const double* x = lp_->clp.primalColumnSolution();
  for (std::size_t u = 0; u < heat_column_.size(); ++u) {
    use.emplace_back(heat_column_[u].size(), 0.0);
    for (std::size_t h = 0; h < use[u].size(); ++h)
      if (heat_column_[u][h] >= 0) use[u][h] = x[heat_column_[u][h]];
  }
  return use;
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
  else
    clp.primal();
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
  for (std::size_t j = ranks_; j < key_; ++j)
    prices.weight[j - ranks_] = std::floor(last_limit_[j] * scale / UnitOf(c_, j));
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
  // Bars that cost something in this key are taken a whole number of times: they serve what the rest cannot.
  std::vector<Serving> bars;
  Wide paid = 0;
  for (std::size_t s = 0; s < profits.size(); ++s) {
    if (!usable_[s] || profits[s] <= kImpossible) continue;
    const std::int64_t length = LengthIn(s);
    const auto profit = static_cast<std::int64_t>(std::ceil(profits[s]));
    if (length > 0) {
      const std::int64_t serves = profit + length * static_cast<std::int64_t>(scale);
      if (serves > 0) bars.push_back({length, serves, c_.sources[s].count});
      if (profit > 0) paid += Wide{profit} * MostUses(s);
    } else if (profit > 0) {
      sum -= Wide{profit} * MostUses(s);
    }
  }
  for (std::size_t u = 0; u < c_.units.size(); ++u) {
    std::vector<Wide> drawn(c_.units[u].heats.size(), 0);
    for (std::size_t r = 0; r < heat_rows_.size(); ++r)
      if (heat_rows_[r].unit == u) drawn[heat_rows_[r].heat] += Wide{static_cast<std::int64_t>(whole_heat_[r])} * heat_rows_[r].most;
    std::sort(drawn.rbegin(), drawn.rend());
    const auto sure = std::count(c_.units[u].sure.begin(), c_.units[u].sure.end(), 1);
    for (std::size_t n = 0; n < drawn.size() && static_cast<int>(n) < c_.units[u].most - sure; ++n) sum -= drawn[n];
  }
  const Wide demand = sum;  // of the bars
  sum -= paid;
  const auto whole = static_cast<std::int64_t>(scale);
  std::int64_t bound = static_cast<std::int64_t>(sum / whole);
  if (sum > 0 && sum % whole != 0) ++bound;
  const bool may_be_below_nothing = key_ >= ranks_ && c_.keys[key_ - ranks_] == Key::Money;
  if (!may_be_below_nothing) bound = LeastPossible(c_, key_, std::max<std::int64_t>(0, bound));
  if (!bars.empty() && bound < target_ && demand < Wide{INT64_MAX})
    bound = std::max(bound, LeastServing(bars, static_cast<std::int64_t>(demand), bound, target_));
  const double raw = static_cast<double>(sum);
  if (!bound_ || raw > best_raw_) {
    best_raw_ = raw;
    centre_item_ = last_item_;
    centre_limit_ = last_limit_;
    centre_source_ = last_source_;
    centre_heat_ = last_heat_;
  }
  bound = std::min(bound, target_);
  bound_ = bound_ ? std::max(*bound_, bound) : bound;
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
    for (std::size_t j = ranks_; j < key_; ++j)
      reduced += limit_dual_[j] * static_cast<double>(CostOf(p, j)) / UnitOf(c_, j);
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
      if (find.exact())
        Bound(answer.profit);
      else if (round % 8 == 7)
        BoundLoosely(control);
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
