#include "client/year/keep_length.h"

#include <algorithm>
#include <stdexcept>

namespace heatkeep::year {
namespace {

constexpr Length kLeastChange{20 * kNmPerMm};

bool Near(Length older, Length fresh) {
  const Length change = fresh < older ? older - fresh : fresh - older;
  return change <= std::max(kLeastChange, Length{older.nm / 10});
}

}  // namespace

Length KeepLength(const RackDrop& like, const Past& past, const WorthRules& rules, const KeepGrid& grid, std::optional<Length> older) {
  if (grid.least.nm <= 0 || grid.step.nm <= 0 || grid.most < grid.least)
    throw std::invalid_argument("the lengths to try are in no order; expected 0 < least <= most and a step above 0");
  // Loss of a limit at the grid's start: all that do not pay are kept. Each step up scraps one length more.
  std::int64_t loss = 0, best_loss = 0;
  Length best = grid.least;
  for (Length l = grid.least; l <= grid.most; l += grid.step) {
    loss += WorthOf(RackDrop{l, like.papers, like.owner}, past, rules).net.micro;
    if (loss < best_loss) {
      best_loss = loss;
      best = l + grid.step;
    }
  }
  return older && Near(*older, best) ? *older : best;
}

}  // namespace heatkeep::year
