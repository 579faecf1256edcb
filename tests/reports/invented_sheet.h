// Sheets and trace records of Ostrel Shaftworks, an invented shop: everything in them is invented.
#pragma once

#include "schema/terms/rows.h"

namespace heatkeep {

// A sheet of `blocks` pieces whose lengths add up exactly, of mixed grades, sections, owners and fates.
Sheet InventedSheet(int blocks);

// The same sheet with names far too long, and a first block of 40 kinds of cut.
Sheet HardSheet();
// Angle, box, channel and beam cut one by one, and two rounds cut together.
Sheet BundledSheet();
// The pieces of InventedSheet as stock on hand.
std::vector<StockRow> InventedStock(int pieces);

}  // namespace heatkeep
