// How a section and a price travel to the book's deeds.
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>

#include "schema/terms/money.h"
#include "schema/terms/section.h"

namespace heatkeep {

// {"shape", "dim1_nm", "dim2_nm", "thickness_nm", "label"}; of an angle or box "r1_nm", "r2_nm" too, of a channel or beam
// "name", "g_per_m"; as guard.section reads it.
nlohmann::json SectionJson(const Section& section);

// Money a kilogram in hundredths a tonne.
inline std::int64_t CentsPerTonne(Money per_kg) { return per_kg.cents * 1000; }

}  // namespace heatkeep
