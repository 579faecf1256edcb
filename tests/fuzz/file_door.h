// The file door from bytes of any kind: one function a door. Each ends quietly for good and for bad input, and throws
// std::logic_error("what") where a promise is broken; anything else it throws is a broken promise too.
#pragma once

#include <string_view>

namespace heatkeep::fuzz {

// A bad file has problems that name it and a line, and gives no rows; the rows of a good one keep their promises.
void StockDoor(std::string_view bytes);
void CutsDoor(std::string_view bytes);

// Any other table: a delivery, an opening balance, certificates, grades and their limits.
void CsvDoor(std::string_view bytes);

// A spreadsheet's sheet data, then after lines "=== strings", "=== styles", "=== workbook" other parts of it (XLSX), or table rows,
// then after "=== content" the whole content in place of them (ODS); or the whole file, when it begins as a zip file.
void XlsxDoor(std::string_view bytes);
void OdsDoor(std::string_view bytes);

// A bad file is refused by name.
void RulesDoor(std::string_view bytes);
void ShopDoor(std::string_view bytes);
void RecordDoor(std::string_view bytes);

// What is typed is refused in words, or read within its range and written and read again as the same.
void LengthsDoor(std::string_view bytes);  // masses, tolerances, numbers, dates too
void SectionsDoor(std::string_view bytes);
void TagsDoor(std::string_view bytes);

// What a scanner gives is read or refused; what was read is written and read again as the same.
void ScanDoor(std::string_view bytes);

// Stock, cuts and rules in one text, each but the first after a line "=== cuts" or "=== rules"; rules may be left out. A small
// problem is planned with a tiny budget, and by hand: both plans pass CheckPlan.
void PlanDoor(std::string_view bytes);

}  // namespace heatkeep::fuzz
