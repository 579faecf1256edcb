// The keep length of a group: the shortest drop that is put back on the rack.
//
// Lengths are tried on a grid of `step` from `least` to `most`. Whether keeping pays need not change only once along
// it (a crowded middle of the rack, say), so the limit is the grid length that divides best: the sum of what is lost
// below it by scrapping drops that pay and above it by keeping drops that do not is least; the shortest of equals.
// Where keeping pays from one length on and not below, that is the limit. When nothing pays it is `most` + `step`.
//
// Hysteresis: an older limit stays unless the new one differs from it by more than 10 % of it and more than 20 mm.
#pragma once

#include <optional>

#include "client/year/drop_worth.h"

namespace heatkeep::year {

struct KeepGrid {
  Length least, most, step;  // 0 < least <= most, step > 0
};

// `like` gives papers and owner of the drops in question; its length does not matter.
Length KeepLength(const RackDrop& like, const Past& past, const WorthRules& rules, const KeepGrid& grid,
                  std::optional<Length> older = std::nullopt);

}  // namespace heatkeep::year
