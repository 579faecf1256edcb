// The list of grades that comes with the program: names, where their limits stand, and their density.
// Header: designation,number,uns,family,standard,density_kg_m3,density_source,source,evidence, all of them.
// A designation stands once; density is whole kg/m3 in 500..25 000.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "client/intake/file_rows.h"
#include "schema/terms/grade.h"

namespace heatkeep::intake {

FileRows<Grade> ReadGradesFile(std::string_view bytes, const std::string& name, ReadingOptions how = {});

// The grade somebody means: its designation, else (without case and blanks) designation, number or UNS number.
// Null when there is none. Points into `grades`.
const Grade* FindGrade(const std::vector<Grade>& grades, std::string_view text);

// Designations that are nearest to `text` in letters (designation, number or UNS number; at most a third of it
// different), nearest first, at most `most`.
std::vector<std::string> NearGrades(const std::vector<Grade>& grades, std::string_view text, std::size_t most = 3);

}  // namespace heatkeep::intake
