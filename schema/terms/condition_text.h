// The delivery or treatment condition of metal, as the trade writes it: +QT, +A, +AR, as rolled, T6.
#pragma once

#include <string>
#include <string_view>

namespace heatkeep {

// One form for comparing: capitals, single blanks, none around '+': " +  qt " becomes "+QT", "as  Rolled" "AS ROLLED".
std::string NormalCondition(std::string_view text);

}  // namespace heatkeep
