// The list of grades that comes with the program: names, where their limits stand, and their density.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "client/intake/checked_rows.h"
#include "schema/terms/grade.h"

namespace heatkeep::intake {

// What its header may be, and what each column says.
const std::vector<Column>& GradesColumns();

FileRows<Grade> ReadGradesFile(std::string_view bytes, const std::string& name, const ReadingOptions& how = {});

// The grade somebody means: its designation, else (without case and blanks) designation, number or UNS number.
// Null when there is none. Points into `grades`.
const Grade* FindGrade(const std::vector<Grade>& grades, std::string_view text);

// Designations that are nearest to `text` in letters (designation, number or UNS number; at most a third of it
// different), nearest first, at most `most`.
std::vector<std::string> NearGrades(const std::vector<Grade>& grades, std::string_view text, std::size_t most = 3);

}  // namespace heatkeep::intake
