// Two plans side by side: what one takes more than the other, in metal, mass and money.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"
#include "schema/terms/mass.h"

namespace heatkeep::allocator {

// `plan` less `other`; below 0 where `plan` takes less.
struct Difference {
  int unmet_pieces = 0, bars_opened = 0, pieces_pulled = 0, layouts = 0;
  Length new_length, consumed_length, lost_worth;
  std::optional<Mass> new_mass;    // of the full bars; only if the mass a metre of every own bar taken is known
  std::optional<FineMoney> money;  // only if both plans are priced
};

// The problems may differ in their rules on heats; pieces and lines are the same.
Difference DifferenceOf(const Problem& problem, const Plan& plan, const Problem& other_problem, const Plan& other);

// Does every piece of the shop's own that the plan takes have a price for its metal?
bool HasPrices(const Problem& problem, const Plan& plan);

// "1.80 m less full bar, 71.0 kg, 1 fewer bar opened, 12.40 cheaper", or "the same metal". Metres and money to two decimals.
std::string DifferenceWords(const Difference& difference);

// 12.40 for 1 240 000 000 millionths of a cent: units of the currency, halves away from zero.
std::string MoneyText(FineMoney money);
// 1.80 m
std::string MetresText(Length length);

// The plan to take, and why.
struct Choice {
  bool plain = false;  // the plan by hand is taken
  std::string words;   // "the plan by hand is taken: it costs 0.40 more, less than 2.00; it takes the same metal"
};
// The plan by hand is taken when it serves as much, is as good in the aim's leading key (any aim but least-money), both
// plans are priced, and the searched plan costs less than `least_gain` below it. least_gain 0: never.
Choice ChooseBetween(const Problem& problem, const Plan& searched, const Plan& by_hand, FineMoney least_gain);

}  // namespace heatkeep::allocator
