// What was cut of bars cut together, as `heatkeep saw cut-bundle` is told it: what holds for all, and what one bar had otherwise.
//
//   TAG: measured 5998        its start length             TAG: rest 248       its rest as measured
//   TAG: left scrap           what becomes of its rest     TAG: place B1-2     where its drop is put
//   TAG: good 18x300 O1/10    a stroke of it; those that are said of a bar stand in place of the strokes of all
//
// Lengths as everywhere. Throws BadText, std::invalid_argument.
#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "schema/terms/length.h"

namespace heatkeep::command {

// One word about a bar, added to {"words": {TAG: {...}}} of the body.
void ReadBarWord(const std::string& text, Length kerf, nlohmann::json& body);

// {"tags", "strokes", "left", "words", ...} as record_bundle takes it: every bar with strokes and a rest of its own.
nlohmann::json BundleBody(nlohmann::json told);

}  // namespace heatkeep::command
