// The last handful of pieces of one length, packed exactly: bin completion (after Martello and Toth 1990, from memory).
//
// The longest cut left opens a piece; every maximal filling of it that wastes no more than the goal allows is tried,
// longest cuts first, and rests of the demand that failed are remembered. Finds packings; its failing proves nothing.
#pragma once

#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

#include "client/allocator/component.h"

namespace heatkeep::allocator {

using Cuts = std::vector<std::pair<int, int>>;  // (item, count), ascending by item

// Requires one source. All of `demand` on at most `pieces` pieces, within `nodes` steps; adds to `steps` what it took.
std::optional<std::vector<Cuts>> PackRest(const Component& c, const std::vector<int>& demand, std::int64_t pieces,
                                          std::int64_t nodes, std::int64_t& steps);

}  // namespace heatkeep::allocator
