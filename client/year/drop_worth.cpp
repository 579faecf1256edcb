#include "client/year/drop_worth.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace heatkeep::year {
namespace {

constexpr double kLn2 = 0.69314718055994530942;
constexpr double kNmPerMetre = 1e9;

void RefuseNonsense(const WorthRules& rules) {
  if (rules.replace_per_metre.micro < 0 || rules.scrap_per_metre.micro < 0 || rules.return_cost.cents < 0 ||
      rules.shelf_per_year.cents < 0 || rules.kerf.nm < 0 || rules.grip.nm < 0)
    throw std::invalid_argument("a price, a cost, the kerf or the grip is below 0; expected 0 or more");
  if (rules.horizon_days < 1 || rules.days_a_year < 1 || rules.window_days < 1 || rules.half_life_days < 1)
    throw std::invalid_argument("horizon, year, window or half-life is below 1 day; expected 1 or more");
}

FineMoney Fine(double micro) { return {static_cast<std::int64_t>(std::llround(micro))}; }

double Weight(int age, const WorthRules& rules) { return ExpMinus(kLn2 * age / rules.half_life_days); }

// Weight of all days seen up to today.
double WeightOfDays(const Past& past, const WorthRules& rules) {
  const int days = std::min(rules.window_days, past.today - past.first_day);
  if (days < 1) throw std::invalid_argument("no day has passed since the first; expected at least 1");
  double sum = 0;
  for (int age = 1; age <= days; ++age) sum += Weight(age, rules);
  return sum;
}

bool Allows(const RackDrop& drop, const PastLine& line) { return drop.papers >= line.papers && drop.owner == line.owner; }

}  // namespace

double ExpMinus(double x) {
  if (!(x > 0)) return 1;
  if (x > 700) return 0;
  int halvings = 0;
  for (; x > 0.5; ++halvings) x /= 2;
  double sum = 1, term = 1;
  for (int j = 1; j <= 16; ++j) {
    term *= x / j;
    sum += term;
  }
  for (; halvings > 0; --halvings) sum *= sum;
  return 1 / sum;
}

Money Cents(FineMoney fine) {
  const std::int64_t half = fine.micro < 0 ? -500'000 : 500'000;
  return {(fine.micro + half) / 1'000'000};
}

DropWorth WorthOf(Length drop, const Demand& demand, const WorthRules& rules, bool racked) {
  RefuseNonsense(rules);
  if (drop.nm <= 0) throw std::invalid_argument("the drop has no length; expected above 0");
  DropWorth w;
  w.demand = demand;
  const double metres = static_cast<double>(drop.nm) / kNmPerMetre;
  const double horizon = static_cast<double>(rules.horizon_days) / rules.days_a_year;
  w.effective_a_year = demand.lines_a_year / (1 + demand.ahead);
  w.chance = 1 - ExpMinus(w.effective_a_year * horizon);
  w.stay_years = w.effective_a_year > 0 ? w.chance / w.effective_a_year : horizon;
  const auto spread = static_cast<double>(rules.replace_per_metre.micro - rules.scrap_per_metre.micro);
  w.gain = Fine(metres * w.chance * demand.share_used * spread);
  const double back = racked ? 0 : static_cast<double>(rules.return_cost.cents);
  w.cost = Fine((back + static_cast<double>(rules.shelf_per_year.cents) * w.stay_years) * 1e6);
  w.net = {w.gain.micro - w.cost.micro};
  w.keep = w.net.micro > 0;
  w.value = Fine(metres * static_cast<double>(rules.scrap_per_metre.micro));
  if (w.keep) w.value.micro += w.net.micro;
  return w;
}

Demand DemandFor(const RackDrop& drop, const Past& past, const WorthRules& rules,
                 const std::function<void(Length used, double weight)>& each) {
  RefuseNonsense(rules);
  const Length room = drop.length - rules.grip;
  double lambda = 0, effective = 0, share = 0;
  for (const PastLine& line : past.lines) {
    const int age = past.today - line.day;
    if (age < 1 || age > rules.window_days || line.day < past.first_day || line.quantity < 1) continue;
    if (room.nm <= 0 || !Allows(drop, line)) continue;
    const Length one = line.cut + rules.kerf;
    const std::int64_t n = std::min<std::int64_t>(line.quantity, room.nm / one.nm);
    const std::int64_t least = line.one_heat ? line.quantity : 1;
    if (n < least) continue;
    const Length needed = rules.grip + one * least;
    const auto ahead = std::count_if(past.rack.begin(), past.rack.end(), [&](const RackDrop& other) {
      return other.length >= needed && other.length <= drop.length && Allows(other, line);
    });
    const double weight = Weight(age, rules);
    const double first = weight / (1 + static_cast<double>(ahead));
    lambda += weight;
    effective += first;
    if (each) each(one * n, first);
    share += first * static_cast<double>(n * one.nm) / static_cast<double>(drop.length.nm);
  }
  if (!(effective > 0)) return {};
  return {rules.days_a_year * lambda / WeightOfDays(past, rules), lambda / effective - 1, share / effective};
}

DropWorth WorthOf(const RackDrop& drop, const Past& past, const WorthRules& rules, bool racked) {
  return WorthOf(drop.length, DemandFor(drop, past, rules), rules, racked);
}

}  // namespace heatkeep::year
