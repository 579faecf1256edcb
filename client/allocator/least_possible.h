// What no plan of a component can go below: worked out from lengths alone, in milliseconds, before any search.
//
// Let every cut need l + k and every source give at most R = max(room, exact). With u_r cuts of rank r left unmet:
//   unmet      rank r: what is more than all sources could give of the cut alone; and since the shortest cuts of the
//              first ranks fill the metal that there is best, at least sum of their demand - the most of them that fit, less what is unmet
//              before r.
//   new length, bars opened: for every length t, the cuts of at least t (less the longest unmet ones) need
//              D(t) = their need - all room of the drops, and of the customer's own bars, that take one of them;
//              bars of room R and cost c then cost at least D(t) x min(c / R). One bar length and nothing else:
//              also the best of the step functions of Martello and Toth 1990 (L2, from memory).
//   consumed length: the same, with every source at its own cost, cheapest per room first.
//   money      the sawing of the cuts that must be served, less what leftovers can fetch as scrap.
//   lost worth, pieces pulled: 0, or as many as it takes when every piece gives the longest room.
// Every figure is a whole number, rounded so that it holds.
#pragma once

#include <cstdint>
#include <vector>

#include "client/allocator/component.h"

namespace heatkeep::allocator {

// A bound of score[key] for the plans whose entries before `key` are those of `score`. Rules on heats are ignored.
std::int64_t SimpleBound(const Component& c, std::size_t key, const std::vector<std::int64_t>& score);

// The least value not below `bound` that the key can take: a sum of the bars there are, a multiple of what all
// figures of the key share.
std::int64_t LeastPossible(const Component& c, std::size_t key, std::int64_t bound);

// A bar that costs `length` in a key and serves at most `serves`; there are `count` of it.
struct Serving {
  std::int64_t length, serves, count;
};

// The least sum of lengths, each bar taken a whole number of times, that serves at least `demand`; nothing below
// `bound` and nothing above `most` is looked at. `bound` itself if that would take too long.
std::int64_t LeastServing(const std::vector<Serving>& bars, std::int64_t demand, std::int64_t bound, std::int64_t most);

}  // namespace heatkeep::allocator
