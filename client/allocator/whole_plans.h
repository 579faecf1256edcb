// Whole plans from a relaxation: diving, and a small integer programme for the last handful.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>

#include "client/allocator/relaxation.h"
#include "client/allocator/starts.h"

namespace heatkeep::allocator {

using Offer = std::function<void(Solution)>;

// Takes layouts of the relaxation for good, round by round, re-pricing for what is left, and offers the plans that
// quick plans make of each rest. Uses the relaxation up. `chance` varies what is taken where nothing is whole.
void Dive(const Component& c, Relaxation& relaxation, const SearchControl& control, const Offer& offer, Chance* chance = nullptr);

// Takes the whole parts of the relaxation's use if `whole_first`, and solves for the rest the integer programme over
// the layouts known, at most `nodes` branches; with `below` only a value of the key below that counts. Offers the plan if there is one.
// Uses the relaxation up.
void SolveLastHandful(const Component& c, std::size_t key, Relaxation& relaxation, bool whole_first, int nodes, double seconds,
                      std::optional<std::int64_t> below, const SearchControl& control, const Offer& offer);

// Merges equal layouts, takes away cuts beyond the demand (where the layout still stands without them), scores.
Solution Assembled(const Component& c, const std::vector<std::pair<Pattern, std::int64_t>>& patterns);

}  // namespace heatkeep::allocator
