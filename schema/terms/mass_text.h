// Masses as weighed and shown. 1 lb = 0.45359237 kg by definition (international yard and pound agreement, 1959).
#pragma once

#include <string>
#include <string_view>

#include "schema/terms/bad_text.h"
#include "schema/terms/mass.h"

namespace heatkeep {

// "2841", "2841.0 kg", "6263 lb", "2.841 t": a bare number is kilograms. To the nearest gram, halves away from zero.
// Throws BadText; refuses over 100 000 t.
Mass ReadMass(std::string_view text, char decimal_mark = '.');

// "75.3": kilograms without the unit, at most `decimals` (0..3) decimals, nearest, halves away from zero.
std::string WriteKg(Mass mass, int decimals = 1, bool grouped = false);
// The same in pounds.
std::string WriteLb(Mass mass, int decimals = 1, bool grouped = false);

}  // namespace heatkeep
