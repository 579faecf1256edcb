// Tensile values against the grade's minima and ranges, which depend on the condition and on the size. The same words and
// the same caution as check_heat.h.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "client/papers/verdict.h"
#include "schema/terms/length.h"

namespace heatkeep::papers {

struct TestValue {
  std::string property;         // "Rm", "Re" in MPa, "A" in %
  std::int64_t millionths = 0;  // of the unit
};

struct TestQuestion {
  std::string grade, condition;  // condition in its normal form
  std::optional<Length> size;
  std::vector<TestValue> values;
  Method method = Method::Absolute;
};

std::string_view UnitOf(std::string_view property);  // "MPa" or "%"

// A line a value, and one a limited property that is not reported: limited ones first. Nothing when no value is given and nothing is
// limited. Where limits depend on a size that is not said, they are missing. Rows of another condition do not count; rows for any
// condition only where this one has none of that property. A value that no limit is known of is not limited, and says so.
std::vector<Line> CheckTests(const TestQuestion& question, const std::vector<MechanicalLimit>& limits);

// As OverallOf, but a value that no limit is known of leaves it incomplete.
Overall OverallOfTests(const std::vector<Line>& lines);

}  // namespace heatkeep::papers
