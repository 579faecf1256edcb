// The lines of a comparison, as JSON and as a table.
#pragma once

#include <iosfwd>
#include <nlohmann/json.hpp>
#include <vector>

#include "client/papers/verdict.h"

namespace heatkeep::command {

using Json = nlohmann::json;

// What a comparison is, and what it is not.
inline constexpr const char* kComparison =
    "Numbers are compared with published limits. That replaces neither the standard nor the judgement of the person responsible.";

// Millionths as a number of the unit.
Json NumberJson(const papers::Fraction& value);

// An array of {key: "C", value, min, max, verdict, rounded, deviation_below, deviation_above, words, source, note, evidence}; min, max and
// value are null where there is none, the rest is left out then.
Json LinesJson(const std::vector<papers::Line>& lines, const char* key);

void ShowLines(std::ostream& out, const std::vector<papers::Line>& lines);

// A sentence for every line that is not as it should be.
void SayWrong(std::ostream& out, const std::vector<papers::Line>& lines, const std::vector<papers::Line>& more);

}  // namespace heatkeep::command
