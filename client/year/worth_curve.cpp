#include "client/year/worth_curve.h"

#include <algorithm>
#include <cmath>

#include "client/allocator/value.h"

namespace heatkeep::year {
namespace {

constexpr std::int64_t kStep = 20 * kNmPerMm;
constexpr double kLater = 0.85;

double Metres(Length l) { return static_cast<double>(l.nm) / 1e9; }

}  // namespace

WorthCurve::WorthCurve(const RackDrop& like, const Past& past, const WorthRules& rules, Length longest) : rules_(rules) {
  const auto points = static_cast<std::size_t>(longest.nm / kStep) + 1;
  const auto spread = static_cast<double>(rules.replace_per_metre.micro - rules.scrap_per_metre.micro);
  for (std::size_t i = 0; i < points; ++i) {
    const Length drop{static_cast<std::int64_t>(i) * kStep};
    double gain = 0;
    if (drop.nm > 0) {
      double uses = 0, weight = 0;
      const Demand demand = DemandFor(RackDrop{drop, like.papers, like.owner}, past, rules, [&](Length used, double share) {
        uses += share * (Metres(used) * spread + Gain(drop - used));
        weight += share;
      });
      if (weight > 0) {
        const DropWorth once = WorthOf(drop, demand, rules, true);
        gain = kLater * once.chance * uses / weight - static_cast<double>(once.cost.micro);
      }
    }
    gain_.push_back(std::clamp(gain, 0.0, std::max(0.0, Metres(drop) * spread)));
  }
}

double WorthCurve::Gain(Length drop) const {
  if (gain_.empty() || drop.nm <= 0) return 0;
  return gain_[std::min(static_cast<std::size_t>(drop.nm / kStep), gain_.size() - 1)];
}

FineMoney WorthCurve::Racked(Length drop) const {
  return {allocator::Priced(rules_.scrap_per_metre, drop).micro + std::llround(Gain(drop))};
}

FineMoney WorthCurve::Left(Length rest) const {
  const double back = static_cast<double>(rules_.return_cost.cents) * 1e6;
  return {allocator::Priced(rules_.scrap_per_metre, rest).micro + std::llround(std::max(0.0, Gain(rest) - back))};
}

Length WorthCurve::KeepLength() const {
  const double back = static_cast<double>(rules_.return_cost.cents) * 1e6;
  double loss = 0, least = 0;
  std::size_t best = 0;
  for (std::size_t i = 0; i < gain_.size(); ++i) {
    loss += gain_[i] - back;
    if (loss < least) {
      least = loss;
      best = i + 1;
    }
  }
  return {static_cast<std::int64_t>(best) * kStep};
}

}  // namespace heatkeep::year
