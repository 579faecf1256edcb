// What a record says in one line: the same on paper and at the desk, where the reader's language and units take it over.
#pragma once

#include <string>
#include <vector>

#include "schema/terms/rows.h"

namespace heatkeep {

// "in 30 000.000000 mm = out 30 000.000000 mm: balanced", or what is missing or too much.
std::string BalanceCheckWords(const HeatBalance& balance);

// "1 receipt, 2 bars, 5 drops, 12 cut pieces".
std::string TraceCounts(const std::vector<TraceLine>& lines);

}  // namespace heatkeep
