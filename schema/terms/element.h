// Chemical elements that inspection documents report, and their content of a metal: whole millionths of a percent by
// mass, so 0.42 % is 420 000 and all of it 100 000 000.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "schema/terms/bad_text.h"

namespace heatkeep {

// By atomic number, iron's companions, light metals and brass; yttrium last.
inline constexpr std::array<std::string_view, 41> kElements{
    "H",  "Be", "B",  "C",  "N",  "O",  "Mg", "Al", "Si", "P",  "S",  "Ca", "Ti", "V",  "Cr", "Mn", "Fe", "Co", "Ni", "Cu", "Zn",
    "Ga", "As", "Se", "Zr", "Nb", "Mo", "Pd", "Ag", "Cd", "Sn", "Sb", "Te", "La", "Ce", "Hf", "Ta", "W",  "Pb", "Bi", "Y"};

inline constexpr std::int64_t kHundredPercent = 100'000'000;

struct ElementContent {
  std::string element;          // "C", "Mn"
  std::int64_t millionths = 0;  // of one percent by mass
  bool operator==(const ElementContent&) const = default;
};

bool IsElement(std::string_view symbol);  // as written: "Mn", not "MN"

// A content in mass %, with at most six decimals, 0 to 100. Throws BadText: a sign, an exponent, no number, the other
// decimal mark, more than all of it.
std::int64_t ReadContent(std::string_view text, char mark = '.');

// Throws BadText when the contents add up to more than 101 %: that much the rounding of many values may make.
void CheckSum(const std::vector<ElementContent>& analysis);

}  // namespace heatkeep
