// The textbook problem: as few bars as possible, all of one length (cutting stock, bin packing).
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "client/allocator/component.h"
#include "client/allocator/component_search.h"
#include "client/allocator/pricing.h"
#include "client/allocator/whole_plans.h"

namespace heatkeep::allocator {

// Is the number of bars, all of one length, what counts first in this component?
bool OneLength(const Component& c);

// Offers quick plans until `closed()` says that the best one reaches the bound from lengths alone.
void QuickOneLength(const Component& c, const SearchControl& control, const std::function<bool()>& closed, const Offer& offer);

// What the search for the fewest bars works on.
struct FewestBars {
  std::vector<std::int64_t> limits;     // what the keys before may not go above
  std::int64_t bound = 0;               // known so far
  std::function<std::int64_t()> value;  // of the best plan known
  std::vector<Pattern> known;           // layouts to begin with, those of the best plan among them; more come to it
};

// Offers plans with fewer bars until the best meets the bound or control.enough(); gives a valid bound.
std::int64_t FewestOfOneLength(const Component& c, FewestBars& search, Pricing& find, Pricing& prove,
                               const SearchControl& control, const Offer& offer);

}  // namespace heatkeep::allocator
