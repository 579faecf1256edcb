// Sheets and trace records of Ostrel Shaftworks, an invented shop: everything in them is invented.
#pragma once

#include "schema/terms/rows.h"

namespace heatkeep {

// A sheet of `blocks` pieces whose lengths add up exactly, of mixed grades, sections, owners and fates.
Sheet InventedSheet(int blocks);

}  // namespace heatkeep
