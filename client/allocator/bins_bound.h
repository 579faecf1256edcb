// What no packing goes below, and what may be packed at once without loss; both before any search.
#pragma once

#include "client/allocator/bins.h"

namespace heatkeep::allocator {

// The best of: all sizes over the capacity; L2 of Martello and Toth 1990; the rounding functions u(k) of Fekete and
// Schepers 2001 (x k+1 whole: x, else floor((k+1) x) / k), alone and after the steps of L2 (all from memory).
std::int64_t LeastBins(const Bins& bins);

// Takes out of `bins` what some best packing has together (after Martello and Toth 1990, from memory):
//   two cuts that fill a bin exactly; and, for a cut over half a bin, the largest cut that fits with it, when no other
//   cuts that fit with it add up to more.
// An exchange argument: whatever else lies in the bin with the cut takes no more room than its partner left elsewhere.
Packing TakeSure(Bins& bins);

}  // namespace heatkeep::allocator
