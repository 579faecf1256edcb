// The linear relaxation of one key of a component, by column generation, with a safe bound (allocate.h, "Bound").
//
// Columns are layouts; rows are: every item's demand (at least), every source in use (at most its count), and every
// key before this one (at most its value). The same object serves a dive: Fix takes layouts out for good and lowers
// demand, stock and the earlier keys' values; bounds are only worked out while nothing is fixed.
//
// Rules on heats: y_uh in [0, 1] says that unit u draws on heat h; sum_h y_uh <= most of u, and item i of the unit
// gets from heat h at most M_ih y_uh, M_ih the lesser of its demand and what the heat's pieces could give of it alone.
// With multipliers s_ih >= 0 of these rows a cut of i from heat h is priced pi_i - s_ih, and the bound (allocate.h)
// has one more term: - sum_u the greatest `most` of sum_i s_ih M_ih over h.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "client/allocator/component.h"
#include "client/allocator/component_search.h"
#include "client/allocator/pricing.h"

namespace heatkeep::allocator {

class Relaxation {
 public:
  // `key` indexes the score (ranks of unmet first, then the component's keys). `limits[j]`, j < key, are the values the
  // earlier keys may not go above. `known` are layouts to begin with; a solution within the limits must be among them,
  // unless `lack`: then demand and limits may be missed at a high price, and there may be no such solution at all.
  // `quick`, if given, prices on a coarser grid than `find`: it does the rounds until it finds nothing more, and those
  // after layouts were fixed.
  Relaxation(const Component& c, std::size_t key, std::vector<std::int64_t> limits, const std::vector<Pattern>& known, Pricing& find,
             Pricing& prove, bool lack = false, Pricing* quick = nullptr);
  ~Relaxation();
  Relaxation(const Relaxation&) = delete;
  Relaxation& operator=(const Relaxation&) = delete;

  // Rounds of pricing until no layout helps, `rounds` are used up, `enough` says so, or the bound reaches `target`.
  // `target` is the value of the best plan known; no bound above it is ever given.
  // true: the relaxation is solved as far as pricing can tell.
  bool Solve(int rounds, std::int64_t target, const SearchControl& control);

  // The same without any bound, for plans only.
  void SolveOnly(int rounds, const SearchControl& control);

  std::optional<std::int64_t> bound() const { return bound_; }
  const std::vector<Pattern>& patterns() const { return patterns_; }
  std::vector<double> Use() const;  // by pattern, of the last linear programme; empty if it has no solution

  // How much each unit draws on each of its heats, in the last linear programme.
  std::vector<std::vector<double>> HeatUse() const;

  void Fix(std::size_t pattern, std::int64_t times);
  bool Fits(std::size_t pattern) const;  // could it still be taken once more?
  const std::vector<int>& demand() const { return demand_; }
  const std::vector<std::int64_t>& stock() const { return stock_; }

 private:
  struct Programme;
  bool Resolve(const SearchControl& control);
  void Add(const Pattern& pattern);
  bool AddPriced(const Pattern& pattern);
  bool AddHelpful(const std::vector<Pattern>& patterns);
  bool AddFollowing(std::vector<Pattern> patterns, const SearchControl& control);
  void Bound(const std::vector<double>& profits);  // at the prices last_
  void BoundLoosely(const SearchControl& control);
  Prices Whole();
  void HeatRows();
  void Lacks();
  bool Dearer();  // lack gets dearer, if there is any
  double ItemDual(std::size_t item, std::size_t source) const;
  void OpenUnmet();
  std::int64_t LengthIn(std::size_t source) const;
  std::int64_t MostUses(std::size_t source) const;
  std::int64_t CostOf(const Pattern& pattern, std::size_t key) const;

  const Component& c_;
  std::size_t key_, ranks_;
  std::vector<std::int64_t> limits_, first_limits_;
  std::vector<Pattern> patterns_;
  std::vector<int> demand_;
  std::vector<std::int64_t> stock_;
  std::vector<char> usable_;
  std::vector<double> item_dual_, source_dual_, limit_dual_, centre_item_, centre_limit_, centre_source_, heat_dual_, centre_heat_;
  std::vector<double> last_item_, last_limit_, last_source_, last_heat_, whole_heat_;
  double best_raw_ = 0;  // of the bound, before rounding; where prices are smoothed towards
  std::int64_t target_ = 0;
  Prices last_;
  std::optional<std::int64_t> bound_;
  struct HeatRow {
    std::size_t unit, heat, item;
    std::int64_t most;  // M
    int row;
  };
  std::vector<HeatRow> heat_rows_;
  std::vector<std::vector<int>> heat_row_of_;  // by item, source's heat: index into heat_rows_, or -1
  std::vector<int> heat_of_source_;
  std::vector<std::vector<int>> heat_column_;  // by unit, heat; -1 where it is sure
  int first_lack_ = -1, last_lack_ = -1;
  double dearness_ = 1;
  bool fixed_ = false;  // layouts are fixed: no bounds any more, and cuts may be left over
  bool only_plans_ = false;
  bool resolved_ = false;
  Pricing* quick_;
  bool fine_ = false;       // quick_ found nothing more
  Pricing &find_, &prove_;  // Tight and Loose, of the same component; kept by the caller
  std::unique_ptr<Programme> lp_;
};

}  // namespace heatkeep::allocator
