// The textbook problem: as few bars as possible, all of one length (cutting stock, bin packing; bins_search.h).
#pragma once

#include <cstdint>
#include <vector>

#include "client/allocator/component.h"
#include "client/allocator/component_search.h"
#include "client/allocator/whole_plans.h"

namespace heatkeep::allocator {

// Is the number of bars, all of one length, what counts first in this component?
bool OneLength(const Component& c);

// Offers the plan with the fewest bars found and gives a bound of their number for plans without unmet cuts; 0 if it
// knows none (a bar that may be used up in a way of its own, or too few bars for all cuts).
std::int64_t FewestOfOneLength(const Component& c, const SearchControl& control, const Offer& offer);

}  // namespace heatkeep::allocator
