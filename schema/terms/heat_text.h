// Heat numbers. A heat is kept exactly as it was read; two heats are the same only when mill and text are.
#pragma once

#include <string>
#include <string_view>

namespace heatkeep {

// What two heats that an eye may confuse have in common: capitals, no blanks, hyphens, dots or slashes,
// O = 0, I = 1, S = 5, B = 8. Only for warnings ("O7715 looks like 07715"), never for finding or merging.
std::string FoldedHeat(std::string_view heat);

bool LookAlike(std::string_view a, std::string_view b);  // not equal, but equal when folded

// "1.23E+05", "1,23E+05", "7.72E3": what a spreadsheet makes of a heat like 123E3. Whoever sees it must ask for the heat as marked.
bool SpreadsheetAte(std::string_view heat);

}  // namespace heatkeep
