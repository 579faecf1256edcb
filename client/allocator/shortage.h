// Why a line is short, in words: what stands in the way, and the shortest bar that would serve it.
#pragma once

#include <string>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator {

// Requires missing >= 1. Never speaks of metal of another owner.
// The bar to buy is a mill bar of the line's own section and grade under its group's rules; if pieces of the group
// carry a measuring doubt, it allows for the greatest of their bars.
std::string WhyShort(const Problem& problem, int line, int missing);

// A length in millimetres without useless zeros: "1200 mm", "457.073 mm".
std::string InMillimetres(Length length);

}  // namespace heatkeep::allocator
