// Spreadsheets made in a test: zip files of given parts, and the smallest workbooks around given cells.
#pragma once

#include <string>
#include <utility>
#include <vector>

namespace heatkeep::intake {

using Parts = std::vector<std::pair<std::string, std::string>>;

// The bytes of a zip file with these parts, deflated. `password` not empty: locked (AES).
std::string Packed(const Parts& parts, const std::string& password = "");

// The parts of a workbook with one sheet "Rack" whose <sheetData> holds `rows`; cell formats 0 to 9 are
// General, 0.00E+00, 0000, 0.00%, dd/mm/yyyy, built-in 14, 0.0" in", h:mm, built-in 22, #,##0.00.
Parts XlsxParts(const std::string& rows, const std::string& strings = "");
std::string Xlsx(const std::string& rows, const std::string& strings = "");

// The parts of an OpenDocument spreadsheet with one table "Rack" that holds `rows`.
Parts OdsParts(const std::string& rows);
std::string Ods(const std::string& rows);

// The same parts with one of them in place of what it was (or behind, when it is new).
Parts With(Parts parts, const std::string& name, const std::string& content);

}  // namespace heatkeep::intake
