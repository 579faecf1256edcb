// What the standards print about the grades, from the tables that come with the program (seed/reference/README.md).
// Sizes are millimetres: more than over_mm, up to and with upto_mm. Numbers keep the figures they are printed with.
#pragma once

#include <string>
#include <string_view>

#include "client/intake/file_rows.h"
#include "schema/terms/grade_limit.h"

namespace heatkeep::intake {

// Header: grade,over_mm,upto_mm,element,min_pct,max_pct,kind,source,edition_or_note,evidence. A minimum over its maximum,
// a row without either or without source, a row twice is a problem.
FileRows<GradeLimit> ReadLimitsFile(std::string_view bytes, const std::string& name, ReadingOptions how = {});

// The same with a column "what" for the element: sums and carbon equivalents (client/papers/quantity.h).
FileRows<GradeLimit> ReadSumsFile(std::string_view bytes, const std::string& name, ReadingOptions how = {});

// Header: grade,condition,over_mm,upto_mm,property,min,max,unit,source,edition_or_note,evidence.
FileRows<MechanicalLimit> ReadMechanicalFile(std::string_view bytes, const std::string& name, ReadingOptions how = {});

// Header: standard,grade,element,over_pct,upto_pct,above_pct,below_pct,source,evidence,note.
FileRows<ProductDeviation> ReadDeviationsFile(std::string_view bytes, const std::string& name, ReadingOptions how = {});

}  // namespace heatkeep::intake
