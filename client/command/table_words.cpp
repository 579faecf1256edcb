#include "client/command/table_words.h"

#include "client/command/option_values.h"

namespace heatkeep::command {

void AddTableOptions(CLI::App& app, TableFile& file) {
  app.add_option("file", file.path, "CSV, XLSX or ODS")->required()->type_name(kTableFile);
  app.add_option("--sheet", file.sheet, "which sheet of a spreadsheet; else the first that is shown");
}

}  // namespace heatkeep::command
