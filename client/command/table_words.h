// How a table is named on the command line: FILE [--sheet NAME].
#pragma once

#include <CLI/CLI.hpp>

#include "client/incoming/table_file.h"

namespace heatkeep::command {

using incoming::TableFile;

void AddTableOptions(CLI::App& app, TableFile& file);

}  // namespace heatkeep::command
