// Components with rules on heats: which heats serve which unit, and what that proves.
#pragma once

#include "client/allocator/component.h"
#include "client/allocator/component_search.h"

namespace heatkeep::allocator {

// Requires c.units not empty. Few possible choices of heats: each is searched, and the least of their bounds holds.
// Many: the best choice by quick plans is searched, and the bound is that of the component freed of the rule.
ComponentResult SearchHeats(const Component& c, const SearchControl& control);

}  // namespace heatkeep::allocator
