// The reference tables that come with the program, beside the installed SQL files or in the sources.
#pragma once

#include <string>
#include <vector>

#include "client/papers/check_heat.h"
#include "schema/terms/grade.h"
#include "schema/terms/grade_limit.h"

namespace heatkeep::command {

std::string ReferenceFile(const std::string& name);  // its path
std::string ScenarioFile(const std::string& name);   // of the demo shop

struct Reference {
  std::vector<Grade> grades;
  papers::Known known;
  std::vector<MechanicalLimit> mechanical;
};

// Throws std::runtime_error "file:line: ..." when a table is not as it should be.
Reference ReadReference();

// The grade somebody means; throws BadText that names what is near.
const Grade& GradeCalled(const std::vector<Grade>& grades, const std::string& name);

}  // namespace heatkeep::command
