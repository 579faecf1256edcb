// When is a drop worth keeping? Worked out from the shop's own past cut lines.
//
// For a drop of length L, kerf k, grip g, at a moment `today`:
//   n_i   = min(q_i, floor((L - g) / (l_i + k))) for every past line i that its papers and owner would have allowed;
//           a one-heat line counts only with n_i = q_i. Lines with n_i >= 1 are the drop's demand.
//   w_i   = 2^(-age_i / half-life), age in days; lines older than the window are left out.
//   lambda= days_a_year * sum of w_i over the demand / sum of 2^(-a / half-life) over the days a seen, a line a year.
//   C_i   = drops on the rack, not longer than L, that could have served line i as well (they go first);
//   lambda_e = lambda_i / (1 + C_i) summed over the demand;  C = lambda / lambda_e - 1. When every drop ahead fits
//           every line this is the plain lambda / (1 + C).
//   P = 1 - exp(-lambda_e H), T = P / lambda_e, u = mean of n_i (l_i + k) / L, each line weighted as in lambda_e.
//   gain  = L P u (r - s);   cost = return + shelf x T, without the return for a drop that is racked already.
//   keep  when gain > cost;  V(L) = L s + max(0, gain - cost).
// Only the first use is counted, and 1 / (1 + C) is rough: a screen, not a judge.
//
// exp is summed here from its series with + * / alone, which IEEE 754 rounds alike on every machine; its error is
// below 1e-14. Amounts are rounded to a millionth of a cent, halves away from zero; Cents() rounds those.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "client/allocator/problem.h"
#include "schema/terms/length.h"
#include "schema/terms/money.h"

namespace heatkeep::year {

using allocator::FineMoney;
using allocator::PaperType;

// One line of a past cut list of one section and grade. Days are whole numbers on any scale of the caller's.
struct PastLine {
  int day = 0;
  Length cut;  // face and aim included; > 0
  int quantity = 1;
  PaperType papers = PaperType::None;
  std::string owner;  // empty: the shop's own
  bool one_heat = false;
};

struct RackDrop {
  Length length;
  PaperType papers = PaperType::None;
  std::string owner;
};

struct WorthRules {
  FineMoney replace_per_metre, scrap_per_metre;  // r, s
  Money return_cost, shelf_per_year;
  int horizon_days = 548;    // H
  int days_a_year = 365;     // 250 where only working days are counted
  int window_days = 730;     // 24 months
  int half_life_days = 365;  // a line a year old counts half
  Length kerf, grip;
};

// What is known when a drop is judged. Lines of `today` and later are not looked at.
struct Past {
  std::vector<PastLine> lines;
  int first_day = 0;  // since when lines were written down
  int today = 0;      // > first_day
  std::vector<RackDrop> rack;
};

// How often a drop would be wanted.
struct Demand {
  double lines_a_year = 0;  // lambda
  double ahead = 0;         // C
  double share_used = 0;    // u, 0..1
};

struct DropWorth {
  Demand demand;
  double effective_a_year = 0;  // lambda_e
  double chance = 0;            // P
  double stay_years = 0;        // T
  FineMoney gain, cost, net;    // net = gain - cost
  FineMoney value;              // V(L)
  bool keep = false;
};

double ExpMinus(double x);  // exp(-x), x >= 0

Money Cents(FineMoney fine);  // nearest cent, halves away from zero

// Throws std::invalid_argument when a rule is negative, a span of days is not above 0, or L <= 0.
DropWorth WorthOf(Length drop, const Demand& demand, const WorthRules& rules, bool racked = false);
// `each`, if given, is told every line of the demand: n_i (l_i + k) and its weight (lambda_e's).
Demand DemandFor(const RackDrop& drop, const Past& past, const WorthRules& rules,
                 const std::function<void(Length used, double weight)>& each = {});
DropWorth WorthOf(const RackDrop& drop, const Past& past, const WorthRules& rules, bool racked = false);

}  // namespace heatkeep::year
