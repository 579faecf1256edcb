// Ticks of the thin ruler above a view's bars: round steps of the reader's unit, so far apart that the
// numbers do not touch. Metric: 1, 2, 5 x 10^k mm; inch: 1/4, 1/2, 1, 2, 3, 6 in, then feet in 1, 2, 5 x
// 10^k.
#pragma once

#include <string>
#include <vector>

#include "schema/terms/length.h"

namespace heatkeep {

enum class Units { Metric, Inch, InchDecimal };  // Inch: with fractions

struct RulerTick {
  Length at;
  std::string label;  // empty: a small tick. The last labelled tick names the unit ("6000 mm", "240 in").
};

// Ticks from 0 to `full` where `full` is `width` long and labels stand at least `label_room` apart.
std::vector<RulerTick> RulerTicks(Length full, double width, double label_room, Units units);

}  // namespace heatkeep
