// Components with rules on heats: which heats serve which unit, and what that proves.
//
// Branch and bound over the heats. A node says for some heats of some units "this one" or "not this one"; its bound is
// that of lengths alone and that of the relaxation with the rule in it (relaxation.h). The node with the least bound is
// split at the heat that the relaxation draws on most without having it whole; where nothing is left to choose, the
// component is searched like any other. Every key's bound is the least over all nodes that can still hold a best plan.
#pragma once

#include "client/allocator/component.h"
#include "client/allocator/component_search.h"

namespace heatkeep::allocator {

// Requires c.units not empty. Bounds are always given for the keys up to the first that is not proved.
ComponentResult SearchHeats(const Component& c, const SearchControl& control);

}  // namespace heatkeep::allocator
