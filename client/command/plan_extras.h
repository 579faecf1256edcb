// What is told beside a plan: the plan by hand, why each piece and not another, bundles, what to buy, the price of one heat.
// In the plan file these are keys of their own; nothing else of the file depends on them:
//   "by_hand": { "value": {...}, "less_by_search": DIFFERENCE, "taken": false, "words": "..." }
//   in a layout "why": [ { "tag", "place", "left_nm", "left", "lost_worth_nm", "dearer", "words" } ], at most three, best
//     first: pieces that would hold exactly its cuts; figures are the other piece's less the chosen one's
//   in a layout "bundle": equal numbers are cut alike; only where there is more than one bar of it
//   in a layout "stands_in": [ { "order", "line", "count", "money", "words" } ], where its metal is not what the line asks
//   "buy": { "bars": [ { "section", "grade", "condition", "papers", "heat", "length_nm", "count", "price" } ], "length_nm",
//     "price", "left": [ { "length_nm", "count", "left" } ], "not_served": [ { "order", "line", "missing", "why" } ],
//     "proved", "words" }, where something is short
//   "one_heat_costs": { "difference": DIFFERENCE, "heats", "words" }, where asked for and a line limits its heats
//   DIFFERENCE: { "unmet_pieces", "bars_opened", "new_length_nm", "consumed_length_nm", "lost_worth_nm", "pieces_pulled",
//     "layouts", "mass_g", "money" }
// Money in units of the currency with two decimals, only where prices are known; mass_g likewise.
#pragma once

#include <iosfwd>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <vector>

#include "client/allocator/bundles.h"
#include "client/allocator/compare.h"
#include "client/allocator/explain.h"
#include "client/allocator/one_heat_price.h"
#include "client/allocator/purchase.h"

namespace heatkeep::command {

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
  std::vector<allocator::Bundle> bundles;
  std::vector<StandIn> stand_ins;
  std::optional<allocator::Purchase> buy;
  std::optional<allocator::OneHeatPrice> one_heat;
};

struct ExtraWishes {
  allocator::FineMoney plain_below;    // take the plan by hand when the search gains less; 0: never
  std::vector<allocator::Offer> offers = allocator::MillLengths();
  bool price_of_one_heat = false;
  int bars_at_a_time = 0;  // in a bundle at most; 0: not known
};

// Mends `plan` (fewer set-ups, or the plan by hand when that is to be taken, or is better than what a search found that the
// clock ended) and tells the rest about it.
PlanExtras ExtrasOf(const allocator::Problem& problem, allocator::Plan& plan, const ExtraWishes& wishes);

// Adds the keys above, but for "value" of "by_hand", to a plan file that has its layouts.
void AddExtras(nlohmann::ordered_json& file, const allocator::Problem& problem, const PlanExtras& extras);

// The same in one object of a plan of the book: "by_hand", "buy", "one_heat_costs" and "layouts" with "tag", "why", "bundle".
nlohmann::ordered_json ExtrasJson(const allocator::Problem& problem, const allocator::Plan& plan, const PlanExtras& extras);

// A line each for people.
void SayExtras(const PlanExtras& extras, std::ostream& out);

// How the search ended, where that is worth a line: by the clock, or stopped by a person.
void SayEnd(const allocator::Plan& plan, std::ostream& out);

// "6000mm,12000mm" or, with the price of a bar, "6000mm=378.80,12000mm=750". Throws BadText.
std::vector<allocator::Offer> ReadOffers(const std::string& text);
// "2.00". Throws BadText.
allocator::FineMoney ReadAmount(const std::string& option, const std::string& text);

}  // namespace heatkeep::command
