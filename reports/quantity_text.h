// Lengths and masses in the phrases of reports, always with the unit: what length_text.h and mass_text.h
// write, put together once. Material at hand and rests are rounded down, never up.
#pragma once

#include <string>

#include "schema/terms/length.h"
#include "schema/terms/mass.h"

namespace heatkeep {

// "240", "352.425": at most three decimals, nearest.
std::string MmNumber(Length length);
// "240.0", "352.425": as the stop of a saw is read, at least one decimal.
std::string StopNumber(Length length);
// "240 mm".
std::string MmText(Length length);
// "74 3/4 in": down to the sixteenth.
std::string InchText(Length length);
// "1900 mm (74 3/4 in)": of material, both rounded down.
std::string BothUnits(Length length);
// "250 mm (9.843 in)": of what is asked for, to the nearest; no length is taken off it.
std::string WantedText(Length length);
// "30 000.000000": millimetres with all six decimals, so that every nanometre shows; grouped.
std::string MmFull(Length length);
// "418.612 m": whole millimetres, nearest.
std::string MetreText(Length length);
// "8.2 kg" below 100 kg, "412 kg" from there.
std::string KgText(Mass mass);

// "75.300": kilograms to the gram, no unit; grouped.
std::string KgNumber(Mass mass);

}  // namespace heatkeep
