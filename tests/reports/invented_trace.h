// A trace record and a balance of Ostrel Shaftworks: invented, sums exact.
#pragma once

#include "schema/terms/rows.h"

namespace heatkeep {

// Heat M2208: received 30 000 mm, shipped 5 740, on site 3 000, on hand 21 174, kerf 66, trim 20, unexplained
// 0.
HeatBalance InventedBalance();
// `bars` bars of the heat, each with cut pieces, a drop of it cut again, kerf and a scrap end.
TraceRecord InventedTrace(int bars);

}  // namespace heatkeep
