#include "client/intake/table.h"

#include "client/intake/csv.h"
#include "client/intake/file_bytes.h"
#include "client/intake/file_format.h"
#include "client/intake/ods.h"
#include "client/intake/xlsx.h"
#include "client/intake/zip_parts.h"
#include "schema/terms/bad_text.h"

namespace heatkeep::intake {
namespace {

constexpr const char* kFormats = "XLSX, ODS or CSV";

void ReadSpreadsheet(std::string_view bytes, const std::string& name, const std::string& sheet, Table& table) {
  ZipParts zip(bytes);
  if (IsOds(zip)) {
    ReadOds(zip, name, sheet, table);
    return;
  }
  const std::string workbook = XlsxWorkbookPart(zip);
  if (workbook.empty()) throw BadText("this is a zip file but no spreadsheet", kFormats);
  ReadXlsx(zip, workbook, name, sheet, table);
}

Table Refused(const std::string& name, const BadText& why) {
  Table table;
  table.problems.push_back({name, 0, why.Wrong(), why.Expected()});
  return table;
}

}  // namespace

Table ReadTable(std::string_view bytes, const std::string& name, const std::string& sheet) {
  try {
    if (bytes.size() > kLargestFile) throw BadText("more than 64 MiB", "a smaller file");
    const Recognised what = Recognise(bytes);
    if (what.format == FileFormat::Other) throw BadText("this is " + what.what, kFormats);
    if (what.format == FileFormat::Text) {
      if (!sheet.empty()) throw BadText("a text file has no sheets", "no --sheet, or a spreadsheet");
      return ReadCsv(bytes, name);
    }
    Table table;
    ReadSpreadsheet(bytes, name, sheet, table);
    if (sheet.empty() && table.facts.sheets.size() > 1) {
      table.warnings.insert(table.warnings.begin(),
                            {name, 0,
                             "only sheet " + Quoted(table.facts.sheet) + " is read, the first of " +
                                 std::to_string(table.facts.sheets.size()) + "; --sheet NAME reads another",
                             ""});
    }
    return table;
  } catch (const BadText& e) { return Refused(name, e); }
}

std::string ColumnLetters(std::size_t column) {
  std::string letters;
  for (std::size_t n = column + 1; n > 0; n = (n - 1) / 26) letters.insert(letters.begin(), static_cast<char>('A' + (n - 1) % 26));
  return letters;
}

}  // namespace heatkeep::intake
