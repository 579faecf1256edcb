// Tables as CSV (RFC 4180, UTF-8, lines end with CR LF): what goes into a workbook, for programs. A text that a spreadsheet
// would take for a formula gets an apostrophe before it.
#pragma once

#include <string>

#include "reports/workbook.h"

namespace heatkeep {

// Numbers with the column's decimals and a point.
std::string TableCsv(const Table& table);

// Written whole or not at all (whole_file.h).
void WriteTableCsv(const std::string& path, const Table& table);

}  // namespace heatkeep
