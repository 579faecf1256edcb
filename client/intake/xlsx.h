// A workbook of SpreadsheetML (ISO/IEC 29500-1, and its strict form): which sheet, what its strings and formats are.
#pragma once

#include <string>
#include <vector>

#include "client/intake/number_shown.h"
#include "client/intake/sheet_rows.h"
#include "client/intake/zip_parts.h"

namespace heatkeep::intake {

struct XlsxLook {
  std::vector<std::string> strings;   // the shared ones
  std::vector<NumberFormat> formats;  // by the style number of a cell
  bool from_1904 = false;
};

// The workbook's part found through _rels/.rels; empty where this is no such workbook. Throws BadText.
std::string XlsxWorkbookPart(ZipParts& zip);

// Fills table.facts, rows and warnings. Throws BadText.
void ReadXlsx(ZipParts& zip, const std::string& workbook_part, const std::string& name, const std::string& sheet, Table& table);

// The cells of a worksheet's part (xlsx_sheet.cpp). Throws BadText.
void ReadXlsxSheet(std::string part_bytes, const std::string& part, const XlsxLook& look, SheetRows& rows);

// _x000A_ as SpreadsheetML writes a character that XML does not take.
std::string UnescapedXlsx(const std::string& text);

// `wanted` among `names`, else the first that is not hidden, else the first. Throws BadText with the names.
std::size_t ChosenSheet(const std::vector<std::string>& names, const std::vector<bool>& hidden, const std::string& wanted);

}  // namespace heatkeep::intake
