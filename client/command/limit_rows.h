// Limits as api.define_limits and api.correct_limits take them, from the tables that hold them.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "client/command/reference_files.h"
#include "client/incoming/table_file.h"
#include "client/intake/file_rows.h"

namespace heatkeep::command {

using incoming::TableFile;

nlohmann::json LimitRows(const Reference& reference);

// One table of limits_file.h, told apart by its header: "property" is a table of tests, "standard" one of deviations, "what" one of sums.
struct LimitTable {
  nlohmann::json rows;
  std::vector<intake::FileProblem> problems;  // with any there are no rows
};
LimitTable ReadLimitTable(const std::string& bytes, const TableFile& file);

}  // namespace heatkeep::command
