// A table as one text: "line|cell|cell" a row, kinds other than text behind the cell (# number, 0 padded number, @ date,
// ? boolean, ! error); or its problems; warnings follow.
#pragma once

#include <string>

#include "client/intake/table.h"

namespace heatkeep::intake {

inline std::string ShownTable(const Table& table) {
  if (!table.problems.empty()) return ProblemsText(table.problems);
  std::string text;
  for (const TableRow& row : table.rows) {
    text += std::to_string(row.line);
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
      text += "|" + row.cells[i];
      if (!row.kinds.empty() && row.kinds[i] != CellKind::Text)
        text += std::string(" #0@?!").substr(static_cast<std::size_t>(row.kinds[i]), 1);
    }
    text += "\n";
  }
  return text + ProblemsText(table.warnings);
}

inline std::string ShownTable(std::string_view bytes, const std::string& sheet = {}) { return ShownTable(ReadTable(bytes, "f", sheet)); }

}  // namespace heatkeep::intake
