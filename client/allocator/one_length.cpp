#include "client/allocator/one_length.h"

#include <algorithm>

#include "client/allocator/relaxation.h"
#include "client/allocator/starts.h"

namespace heatkeep::allocator {

bool OneLength(const Component& c) { return c.sources.size() == 1 && c.keys.front() == Key::BarsOpened; }

void QuickOneLength(const Component& c, const SearchControl& control, const std::function<bool()>& closed, const Offer& offer) {
  const auto tried = [&](const StartStyle& style) {
    if (closed() || control.enough()) return false;
    offer(QuickPlan(c, style));
    return true;
  };
  StartStyle style;
  if (!tried(style)) return;
  style.fill = true;
  if (!tried(style)) return;
  style.fullest = true;
  if (!tried(style)) return;
  Chance chance(control.seed);
  const int restarts = c.Pieces() > 3000 ? 10 : 20;
  for (int n = 0; n < std::min(restarts, control.iterations); ++n) {
    style.shuffle = chance.Next() | 1;
    if (!tried(style)) return;
  }
}

std::int64_t FewestOfOneLength(const Component& c, FewestBars& search, Pricing& find, Pricing& prove,
                               const SearchControl& control, const Offer& offer) {
  std::int64_t bound = search.bound;
  Chance chance(control.seed + search.limits.size());
  // Dives towards the bound, each a little different.
  for (int dive = 0; dive < 12; ++dive) {
    Relaxation relaxation(c, search.limits.size(), search.limits, search.known, find, prove);
    relaxation.Solve(control.iterations, search.value(), control);
    if (dive == 0 && relaxation.bound()) bound = std::max(bound, *relaxation.bound());
    if (control.enough() || search.value() <= bound) return bound;
    DiveTo(c, bound, relaxation, dive == 0 ? nullptr : &chance, control, offer);
    search.known = relaxation.patterns();
    if (control.enough() || search.value() <= bound) return bound;
  }
  return bound;
}

}  // namespace heatkeep::allocator
