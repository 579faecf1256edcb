// Bettering a whole plan two pieces at a time: the cuts of both are dealt out anew between them.
//
// Every way to split the cuts of a pair between its two pieces is looked at; a bar may become any other bar the cuts
// fit. A split with lower costs is taken at once. Where the key is a length or a number of bars, it changes only when
// a bar has room enough to become the next shorter one, so room is gathered: one bar at a time is the target, and a
// split that leaves more room on it and costs no more is taken too; the other pairs are dealt out at random, at equal
// costs, so that new splits come up. The sum of room is the same before and after: it only moves. For the other keys
// the pair's room is pushed onto one of the two.
// Cost: one split is a few nanoseconds; a pair has some hundreds at most, beyond that some of its cuts stay put.
#pragma once

#include <cstdint>

#include "client/allocator/starts.h"
#include "client/allocator/whole_plans.h"

namespace heatkeep::allocator {

// Requires key >= the number of ranks. Looks at about `looks` splits, stops when score[key] <= goal, and offers the
// plan if it is better in score[key], those before it being no worse.
void Recut(const Component& c, std::size_t key, const Solution& best, std::int64_t goal, std::int64_t looks, Chance& chance,
           const SearchControl& control, const Offer& offer);

}  // namespace heatkeep::allocator
