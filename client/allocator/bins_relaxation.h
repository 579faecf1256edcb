// The linear relaxation of packing bins, by column generation, and its bound in whole numbers.
//
// min sum x_f over all fills f <= d, sum_f f_i x_f >= d_i. For whole prices p_i >= 0 with p f <= T for every fill,
// any packing has at least p d / T bins: the bound is that, worked out exactly and rounded up (Farley 1990, from
// memory). Prices come from the linear programme (smoothed towards those of the best bound), times 2^30.
#pragma once

#include <cstdint>
#include <memory>
#include <vector>

#include "client/allocator/bins.h"
#include "client/allocator/bins_layout.h"

namespace heatkeep::allocator {

class BinsRelaxation {
 public:
  BinsRelaxation(const Bins& bins, const Packing& start, const BinsControl& control);
  ~BinsRelaxation();
  BinsRelaxation(const BinsRelaxation&) = delete;
  BinsRelaxation& operator=(const BinsRelaxation&) = delete;

  // A bound for packing `demand` (at most that of the bins); less than the best one if `rounds` or `enough` or a bound
  // of `target` ended it, or it can be seen that the bound will not come above `known`. Fills found stay for the next
  // call.
  std::int64_t Solve(const std::vector<int>& demand, std::int64_t target, int rounds, std::int64_t known = 0);

  // Of the last call: the prices of its best bound, and what no fill of at most that demand is worth more than.
  const std::vector<std::int64_t>& price() const { return price_; }
  std::int64_t top() const { return top_; }
  // Fills with their use in the last linear programme, only those that are used.
  std::vector<std::pair<Fill, double>> Used() const;

 private:
  struct Programme;
  void Add(const Fill& fill);
  bool Resolve(bool dual);
  void Follow(const std::vector<std::int64_t>& price, std::vector<int> rest, std::vector<Fill>& fills);

  const Bins& bins_;
  const BinsControl& control_;
  DearestFill dearest_;
  std::unique_ptr<Programme> lp_;
  std::vector<Fill> fills_;
  std::vector<double> dual_;
  std::vector<std::int64_t> price_;
  std::int64_t top_ = 0;
};

}  // namespace heatkeep::allocator
