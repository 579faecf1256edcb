// Labels with invented contents, plain and hard.
#pragma once

#include <vector>

#include "schema/terms/label_rows.h"

namespace heatkeep {

PieceLabel PlainLabel();               // a drop of 42CrMo4, 17 15/16 in
std::vector<PieceLabel> HardLabels();  // others' metal, held, limited, reprinted, without a heat, long in everything
std::vector<PlaceLabel> InventedPlaces();
std::vector<BatchLabel> InventedBatches();

}  // namespace heatkeep
