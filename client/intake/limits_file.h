// What the standards print about the grades, from the tables that come with the program (seed/reference/README.md).
// Sizes are millimetres: more than over_mm, up to and with upto_mm. Numbers keep the figures they are printed with.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "client/intake/checked_rows.h"
#include "schema/terms/grade_limit.h"

namespace heatkeep::intake {

// A minimum over its maximum, a row without either or without source, a row twice is a problem.
const std::vector<Column>& LimitsColumns();
FileRows<GradeLimit> ReadLimitsFile(std::string_view bytes, const std::string& name, const ReadingOptions& how = {});

// The same with a column "what" for the element: sums and carbon equivalents (client/papers/quantity.h).
const std::vector<Column>& SumsColumns();
FileRows<GradeLimit> ReadSumsFile(std::string_view bytes, const std::string& name, const ReadingOptions& how = {});

const std::vector<Column>& MechanicalColumns();
FileRows<MechanicalLimit> ReadMechanicalFile(std::string_view bytes, const std::string& name, const ReadingOptions& how = {});

const std::vector<Column>& DeviationColumns();
FileRows<ProductDeviation> ReadDeviationsFile(std::string_view bytes, const std::string& name, const ReadingOptions& how = {});

}  // namespace heatkeep::intake
