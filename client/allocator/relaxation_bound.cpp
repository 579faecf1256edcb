// The bound that a relaxation's multipliers give (allocate.h, "Bound").
#include <algorithm>
#include <cmath>

#include "client/allocator/least_possible.h"
#include "client/allocator/relaxation_programme.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }
__extension__ using Wide = __int128;
constexpr double kImpossible = -1e299;  // the profit of a source that takes nothing

}  // namespace

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

}  // namespace heatkeep::allocator
