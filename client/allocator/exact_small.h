// The exact answer for a small component, by trying everything that can still be best.
//
// Layouts are taken one at a time, always one that serves the first cut still missing. A branch is left when its
// score so far plus the least that the rest must cost anyway (worked out beforehand for every rest of the demand,
// as if pieces never ran out) is not below the best. All keys are whole numbers, so the answer is exact, set-ups
// and extra heats included.
#pragma once

#include <cstdint>
#include <functional>

#include "client/allocator/component.h"

namespace heatkeep::allocator {

// Requires c.units empty and best scored. Improves `best`; true if it is proved to have the least score of all.
// false: the component is too big, or `looks` at a choice of layout were not enough, or `enough()` said stop.
bool SolveExactly(const Component& c, Solution& best, std::int64_t looks, const std::function<bool()>& enough);

}  // namespace heatkeep::allocator
