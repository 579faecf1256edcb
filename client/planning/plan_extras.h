// What is worked out beside a plan: the plan by hand, why each piece and not another, what the ends offer, bundles, what stands in, what
// to buy, the price of one heat.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "client/allocator/bundles.h"
#include "client/allocator/compare.h"
#include "client/allocator/explain.h"
#include "client/allocator/offers.h"
#include "client/allocator/one_heat_price.h"
#include "client/allocator/purchase.h"

namespace heatkeep::planning {

// Metal that stands in for what a line asks: of one layout and line.
struct StandIn {
  std::size_t layout = 0;
  int line = 0, count = 0;                   // pieces, repeats included
  std::optional<allocator::FineMoney> cost;  // more than the metal asked for: what the rules say, and the difference in price
                                             // of metal; not known where prices are not
  std::string words;                         // "42CrMo4 for C45E, order A1 line 1: 3 x 240 mm, 2.16 dearer"
  std::string tag, what, of;                 // the piece; the words before and behind the count
};

struct PlanExtras {
  allocator::Value by_hand;
  allocator::Difference less_by_search;  // the searched plan less the plan by hand
  allocator::Choice choice;
  std::vector<std::vector<allocator::Alternative>> why;  // by layout
  std::vector<allocator::EndOffers> ends;                // by layout
  std::vector<std::string> bar_words;                    // least-money: a full bar although a drop would do, and why
  std::vector<std::vector<allocator::WayOut>> ways_out;  // by short line
  std::vector<allocator::Bundle> bundles;
  std::vector<StandIn> stand_ins;
  std::optional<allocator::Purchase> buy;
  std::optional<allocator::OneHeatPrice> one_heat;
};

struct ExtraWishes {
  allocator::FineMoney plain_below;  // take the plan by hand when the search gains less; 0: never
  std::vector<allocator::Offer> offers = allocator::MillLengths();
  bool price_of_one_heat = false;
  int bars_at_a_time = 0;  // in a bundle at most; 0: not known
};

// Takes the better of what there is into `plan`: fewer set-ups, or the plan by hand when that is to be taken, or is better than what a
// search found that the clock ended. Says which.
PlanExtras TakeBetter(const allocator::Problem& problem, allocator::Plan& plan, const ExtraWishes& wishes);

// Works out the rest of `extras` about the plan as it is.
void AddWhy(const allocator::Problem& problem, const allocator::Plan& plan, const ExtraWishes& wishes, PlanExtras& extras);

// Both.
PlanExtras ExtrasOf(const allocator::Problem& problem, allocator::Plan& plan, const ExtraWishes& wishes);

// One line for all pieces of a line that the same metal stands in for.
std::vector<std::string> StandInWords(const std::vector<StandIn>& all);

}  // namespace heatkeep::planning
