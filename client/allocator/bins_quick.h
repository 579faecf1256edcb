// Packings in no time: best fit, and one bin after another as full as it takes; and the last handful, tried out.
#pragma once

#include <cstdint>
#include <optional>

#include "client/allocator/bins.h"

namespace heatkeep::allocator {

// Longest first, each into the fullest bin that has room.
Packing BestFit(const Bins& bins, const std::vector<int>& demand);

// Bin after bin: the longest cut left, and with it a filling that wastes no more than its share of what `goal` bins may
// waste, or the least found in `looks` (after the minimum bin slack of Gupta and Ho 1999, from memory). `chance`, if
// not 0, is the seed of a disorder in which cuts are tried.
Packing OneByOne(const Bins& bins, const std::vector<int>& demand, std::int64_t goal, int looks, std::uint64_t chance,
                 const BinsControl& control);

// All of `demand` in at most `goal` bins, by bin completion (Martello and Toth 1990, from memory): the longest cut left
// opens a bin; every filling to which nothing can be added and that wastes no more than the goal allows is tried; rests
// that failed are remembered. Finds packings within `looks`; its failing proves nothing.
std::optional<Packing> PackRest(const Bins& bins, const std::vector<int>& demand, std::int64_t goal, std::int64_t looks,
                                const BinsControl& control);

}  // namespace heatkeep::allocator
