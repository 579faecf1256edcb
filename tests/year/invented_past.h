// Prices and pasts the tests of this room share. Prices: 42CrMo4 and X2CrNiMo17-12-2, round 80; invented.
#pragma once

#include "client/year/drop_worth.h"

namespace heatkeep::year {

inline FineMoney CentsFine(std::int64_t cents) { return {cents * 1'000'000}; }

// 63.13 and 9.86 a metre; 2.67 to put back, 3 a year on the shelf, horizon a year and a half.
inline WorthRules CrMo80() {
  WorthRules rules;
  rules.replace_per_metre = CentsFine(6313);
  rules.scrap_per_metre = CentsFine(986);
  rules.return_cost = {267};
  rules.shelf_per_year = {300};
  rules.horizon_days = 540;  // a year and a half of 360 days, so that the hand's figures are met exactly
  rules.days_a_year = 360;
  rules.window_days = 720;
  rules.half_life_days = 360;
  rules.kerf = {2 * kNmPerMm};
  rules.grip = {60 * kNmPerMm};
  return rules;
}

// One line of this cut every `every` days, for `days` days up to `today`.
inline Past SteadyPast(Length cut, int quantity, int every, int days = 720, int today = 1000) {
  Past past;
  past.first_day = today - days;
  past.today = today;
  for (int day = today - every; day >= past.first_day; day -= every) past.lines.push_back({day, cut, quantity, {}, {}, false});
  return past;
}

}  // namespace heatkeep::year
