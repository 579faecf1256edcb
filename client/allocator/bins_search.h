// As few bins as possible: what is sure is taken out, quick packings are held against quick bounds, then the
// relaxation (bins_relaxation.h) with dives, and at last a search that tries all there is.
//
// The last search asks whether N bins are enough. With prices p and T of the relaxation of what is left, N bins of
// which every fill f is worth p f <= T can only hold all if the losses T - p f of the fills taken add up to at most
// N T - p d; likewise the waste C - size f to at most N C - size d. The longest cut left goes in turn into every
// filling that loses no more than that, to which nothing can be added and for which no other can stand; the relaxation
// is solved anew for what is left; rests that failed are remembered. When nothing is left to try, the answer is no.
#pragma once

#include "client/allocator/bins.h"

namespace heatkeep::allocator {

struct BinsAnswer {
  Packing packing;
  std::int64_t bound = 0;  // no packing has fewer
};

// `effort` scales how long the search goes on (1000: as usual; below 10: hardly). Repeatable for a seed.
BinsAnswer FewestBins(const Bins& bins, std::uint64_t seed, int effort, const BinsControl& control);

}  // namespace heatkeep::allocator
