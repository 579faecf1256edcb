#include "reports/bar_ruler.h"

#include <cstdint>

#include "schema/terms/length_text.h"

namespace heatkeep {
namespace {

std::vector<std::int64_t> StepsOf(Units units) {
  std::vector<std::int64_t> steps;
  const std::int64_t base = units == Units::Metric ? kNmPerMm : kNmPerInch * 12;
  if (units != Units::Metric)
    for (const std::int64_t quarters : {1, 2, 4, 8, 12, 24}) steps.push_back(quarters * (kNmPerInch / 4));
  for (std::int64_t ten = 1; ten <= 1'000'000; ten *= 10)
    for (const std::int64_t times : {1, 2, 5}) steps.push_back(base * ten * times);
  return steps;
}

std::string LabelOf(Length at, Units units) {
  if (units == Units::Metric) return WriteMm(at);
  return units == Units::Inch ? WriteInchFraction(at) : WriteInchDecimal(at);
}

}  // namespace

std::vector<RulerTick> RulerTicks(Length full, double width, double label_room, Units units) {
  std::vector<RulerTick> ticks;
  if (full.nm <= 0 || width <= 0) return ticks;
  std::int64_t step = kNmPerMm;
  for (const std::int64_t candidate : StepsOf(units)) {
    step = candidate;
    if (width * static_cast<double>(step) / static_cast<double>(full.nm) >= label_room) break;
  }
  const std::int64_t small = step % 5 == 0 && units == Units::Metric ? step / 5 : step / 2;
  std::size_t last_label = 0;
  for (std::int64_t at = 0; at <= full.nm; at += small) {
    const bool major = at % step == 0;
    const Length here{at};
    ticks.push_back({here, major ? LabelOf(here, units) : ""});
    if (major) last_label = ticks.size() - 1;
  }
  ticks[last_label].label += units == Units::Metric ? " mm" : " in";
  return ticks;
}

}  // namespace heatkeep
