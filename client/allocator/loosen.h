// Bettering a whole plan: some of its pieces are taken back and what they carried is planned anew.
#pragma once

#include "client/allocator/starts.h"
#include "client/allocator/whole_plans.h"

namespace heatkeep::allocator {

// Takes about `pieces` pieces of `best` back (half of them such as cost something in score[key]), solves the small
// problem of their cuts, their pieces and some unused ones by relaxation and MIP, and offers the whole plan that
// comes of it. `pool` are layouts worth knowing. The keys before `key` are held at their values.
void Loosen(const Component& c, std::size_t key, const Solution& best, const std::vector<Pattern>& pool, int pieces, Chance& chance,
            const SearchControl& control, const Offer& offer);

}  // namespace heatkeep::allocator
