// What is told beside a plan (client/planning/plan_extras.h), in the plan file and in lines for people.
// In the plan file these are keys of their own; nothing else of the file depends on them:
//   "by_hand": { "value": {...}, "less_by_search": DIFFERENCE, "taken": false, "words": "..." }
//   in a layout "why": [ { "tag", "place", "left_nm", "left", "lost_worth_nm", "dearer", "words" } ], at most three, best
//     first: pieces that would hold exactly its cuts; figures are the other piece's less the chosen one's
//   in a layout "bundle": equal numbers are cut alike; only where there is more than one bar of it
//   in a layout "stands_in": [ { "order", "line", "count", "money", "words" } ], where its metal is not what the line asks
//   in a layout "ends": [ words ] of what its end offers and warns of; "further": [ { "order", "line", "count", "length_nm",
//     "left_nm" } ]; "last_uncut_nm" with "chips_saved_nm"; "thin_slice", "whole", "last_is_rest": true - each only where it is so
//   "bars_although_drops": [ words ], under least-money, where a full bar is opened although a drop would hold the same cuts
//   "ways_out": [ { "order", "line", "way": "part ship"|"wait"|"weaker papers", "count", "words" } ], where something is short
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
#include <string>
#include <vector>

#include "client/planning/plan_extras.h"

namespace heatkeep::command {

using planning::ExtraWishes;
using planning::PlanExtras;

// Adds the keys above, but for "value" of "by_hand", to a plan file that has its layouts.
void AddExtras(nlohmann::ordered_json& file, const allocator::Problem& problem, const allocator::Plan& plan, const PlanExtras& extras);

// The same in one object of a plan of the book: "by_hand", "buy", "one_heat_costs", "ways_out" and "layouts" with "tag", "why",
// "bundle", "ends" and what belongs to it.
nlohmann::ordered_json ExtrasJson(const allocator::Problem& problem, const allocator::Plan& plan, const PlanExtras& extras);

// A line each for people.
void SayExtras(const allocator::Problem& problem, const allocator::Plan& plan, const PlanExtras& extras, std::ostream& out);

// How the search ended, where that is worth a line: by the clock, or stopped by a person.
void SayEnd(const allocator::Plan& plan, std::ostream& out);

// "6000mm,12000mm" or, with the price of a bar, "6000mm=378.80,12000mm=750". Throws BadText.
std::vector<allocator::Offer> ReadOffers(const std::string& text);
// "2.00". Throws BadText.
allocator::FineMoney ReadAmount(const std::string& option, const std::string& text);

}  // namespace heatkeep::command
