// What standards tabulate of sections that their dimensions alone do not give: the root radius of an angle, and height,
// width and mass per metre of channels and beams.
//
//   angles             EN 10056-1, Table 1 and 2: a size is its legs and its thickness
//   UPE, UPN, IPE, HE  EN 10365: mass for 7850 kg/m3
//   C, W               ASTM A6: the name says depth and pounds a foot; the true depth and width stand beside it
//
// All from memory of the standards; the tests hold the masses against the geometry where it gives them.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "schema/terms/length.h"

namespace heatkeep {

// Of a size of the standard, legs in any order.
std::optional<Length> RootRadiusOfAngle(Length leg, Length other_leg, Length thickness);

struct NamedSection {
  std::string_view name;  // "IPE 100", "HE 100 A", "W8x31"
  bool channel = false;   // else a beam
  Length height, width;
  std::int64_t grams_per_metre = 0;
};

// By its name in any case and with any blanks; HEA 100 is HE 100 A. Nothing when the table does not have it.
const NamedSection* FindNamedSection(std::string_view name);

}  // namespace heatkeep
