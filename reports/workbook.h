// Tables as an XLSX workbook. Numbers are numbers with the unit in the column's head; texts are texts: a text
// that begins like a formula stays a text. Head row bold and frozen, filter on. The creation date is told, so
// the same tables give the same bytes.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "reports/paper.h"
#include "schema/terms/length.h"
#include "schema/terms/mass.h"

namespace heatkeep {

struct Column {
  std::string head;   // with the unit: "length mm"
  double width = 12;  // in characters
  int decimals = 0;   // shown of a number; the cell holds the whole number
};

using Cell = std::variant<std::string, double, std::int64_t>;

// Beside the table, over its rows: the values of some columns, with the words of another below.
struct TableChart {
  std::string title;
  std::size_t labels = 0;
  std::vector<std::size_t> values;
  bool bars = false;  // else lines
};

struct Table {
  std::string name;  // of the sheet, at most 31 characters, none of []:*?/ or a backslash
  std::vector<Column> columns;
  std::vector<std::vector<Cell>> rows;  // each as long as `columns`
  std::optional<TableChart> chart = {};
};

// Millimetres and kilograms as a spreadsheet takes them: the nearest double.
double MmCell(Length length);
double KgCell(Mass mass);

// Throws std::runtime_error with the path and the reason (also for a text longer than a cell holds, 32767).
void WriteWorkbook(const std::string& path, const std::string& title, const std::vector<Table>& tables, const PrintOptions& options);

}  // namespace heatkeep
