// Rows of tests/reference and seed/reference.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "client/papers/check_heat.h"

namespace heatkeep::papers {

using Row = std::map<std::string, std::string>;
std::vector<Row> RowsOf(const std::string& file);  // of tests/reference

Known ProgramLimits();  // grade_limits.csv, grade_sums.csv and product_deviations.csv of the program
std::vector<MechanicalLimit> ProgramMechanical();

}  // namespace heatkeep::papers
