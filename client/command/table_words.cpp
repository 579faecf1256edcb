#include "client/command/table_words.h"

namespace heatkeep::command {

void AddTableOptions(CLI::App& app, TableFile& file) {
  app.add_option("file", file.path, "CSV, XLSX or ODS")->required();
  app.add_option("--sheet", file.sheet, "which sheet of a spreadsheet; else the first that is shown");
}

}  // namespace heatkeep::command
