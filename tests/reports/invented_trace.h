// A trace record and a balance of Ostrel Shaftworks: invented, sums exact.
#pragma once

#include "schema/terms/recall.h"

namespace heatkeep {

// Heat M2208: received 30 000 mm, shipped 5 740, on site 3 000, on hand 21 174, kerf 66, trim 20, unexplained
// 0.
HeatBalance InventedBalance();
// `bars` bars of the heat, each with cut pieces, a drop of it cut again, kerf and a scrap end.
TraceRecord InventedTrace(int bars);
// `bars` bars of 6 000 mm: trim 10, seven pieces of 580, a reject of 577, kerf 18; the rest of 1 335 is a drop (left on the bar where
// `depth` is 0), of which a piece of 20 is cut, and so on for `depth` drops, each out of the one before.
TraceRecord InventedFamily(int bars, int depth);
// Metal of heat M2208 wherever it can be.
RecallRecord InventedRecall();

}  // namespace heatkeep
