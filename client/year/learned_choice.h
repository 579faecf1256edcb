// What one group learns from its own past, once a month: what a drop of any length is worth to it, its keep length,
// and which drops do not earn their place. And the choice among plans by that worth.
//
// Money of a plan = full bars at their price + V of the drops taken - V of what is left, scrap at its price
//                   + pulls + set-ups.
#pragma once

#include <optional>
#include <vector>

#include "client/allocator/plan.h"
#include "client/year/group_rack.h"
#include "client/year/shop.h"
#include "client/year/worth_curve.h"

namespace heatkeep::year {

class LearnedChoice {
 public:
  // Both must outlive it. `lines`: all of the group's, by day; of these only those before a review's day are looked at.
  LearnedChoice(const Group& group, const std::vector<DayLine>& lines) : group_(group), lines_(lines), keep_(group.rules.keep) {}

  // Scraps the drops that, racked as they are, will not earn their place; learns the curve and the keep length.
  void Review(int today, GroupRack& rack);

  Length keep() const { return keep_; }
  FineMoney MoneyOf(const allocator::Problem& problem, const allocator::Plan& plan) const;
  // The plan of least money among several; every one has passed the check.
  allocator::Plan Plan(const allocator::Problem& problem, int iterations) const;

 private:
  const Group& group_;
  const std::vector<DayLine>& lines_;
  Length keep_;
  bool learned_ = false;
  WorthCurve curve_;
};

}  // namespace heatkeep::year
