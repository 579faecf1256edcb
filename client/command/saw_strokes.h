// One stroke, or several equal ones, in a few words, as record_cut takes it:
//
//   "trim 10"                       "good 9x300 O1/10"              "reject 1x285 O1/10: out of square"
//   "crop 150: pipe"                "slice 25: LAB 77"              "stock 3x200 B1-2"   (pieces with tags of their own)
//
// Lengths as everywhere (300, 13 7/8 in); "kerf" is what every one of them costs. Throws BadText.
#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "schema/terms/length.h"

namespace heatkeep::command {

nlohmann::json ReadStroke(const std::string& words, Length kerf);

// "ORDER/LINE" into {"order", "line"}. Throws BadText.
void ReadOrderLine(const std::string& text, nlohmann::json& into);

}  // namespace heatkeep::command
