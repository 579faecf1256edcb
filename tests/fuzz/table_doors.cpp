// Tables of unknown origin: CSV as it is; of XLSX and ODS the parts inside, packed as a spreadsheet, so that what is tried is the
// reading of them and not only the zip file around.
#include <algorithm>
#include <string>

#include "client/intake/certificates_file.h"
#include "client/intake/csv_encoding.h"
#include "client/intake/delivery_file.h"
#include "client/intake/grades_file.h"
#include "client/intake/limits_file.h"
#include "client/intake/opening_file.h"
#include "client/intake/table.h"
#include "tests/fuzz/file_door.h"
#include "tests/fuzz/promise.h"
#include "tests/fuzz/up_to.h"
#include "tests/intake/packed.h"

namespace heatkeep::fuzz {
namespace {

void RequireWhole(const intake::Table& table) {
  Require(table.problems.empty() || table.rows.empty(), "a bad file gives no rows");
  int before = 0;
  for (const intake::TableRow& row : table.rows) {
    Require(row.line > before, "lines go on");
    before = row.line;
    Require(row.kinds.empty() || row.kinds.size() == row.cells.size(), "every cell has its kind");
    for (const std::string& cell : row.cells) Require(intake::IsUtf8(cell), "a cell is UTF-8");
  }
}

template <class Row>
void RequireAnswer(const intake::FileRows<Row>& file) {
  Require(file.Good() || file.rows.empty(), "a bad file gives no rows");
  for (const intake::FileProblem& p : file.problems) {
    Require(!p.wrong.empty() && !p.expected.empty() && p.line >= 0, "a problem says what and what is expected");
    Require(intake::IsUtf8(p.Text()), "a problem is readable");
  }
}

// The readers of every file that is a table.
void ReadAsAll(std::string_view bytes, const std::string& name) {
  RequireAnswer(intake::ReadDeliveryFile(bytes, name));
  RequireAnswer(intake::ReadOpeningFile(bytes, name));
  RequireAnswer(intake::ReadCertificatesFile(bytes, name));
  RequireAnswer(intake::ReadGradesFile(bytes, name));
  RequireAnswer(intake::ReadLimitsFile(bytes, name));
  RequireAnswer(intake::ReadSumsFile(bytes, name));
  RequireAnswer(intake::ReadMechanicalFile(bytes, name));
  RequireAnswer(intake::ReadDeviationsFile(bytes, name));
}

// Repetitions of at most four digits: larger ones are allowed up to the limit of cells and take their time (tests/intake tries them).
std::string FewRepeated(std::string content) {
  static constexpr std::string_view kRepeated = "-repeated=\"";
  for (std::size_t at = 0; (at = content.find(kRepeated, at)) != std::string::npos;) {
    at += kRepeated.size();
    const std::size_t end = std::min(content.find_first_not_of("0123456789", at), content.size());
    if (end - at > 4) content.erase(at + 4, end - at - 4);
  }
  return content;
}

void ReadSpreadsheet(const std::string& bytes, const std::string& name) {
  const intake::Table table = intake::ReadTable(bytes, name);
  RequireWhole(table);
  if (!table.rows.empty()) RequireAnswer(intake::ReadDeliveryFile(bytes, name));
}

}  // namespace

void CsvDoor(std::string_view bytes) {
  RequireWhole(intake::ReadTable(bytes, "table.csv"));
  ReadAsAll(bytes, "table.csv");
}

void XlsxDoor(std::string_view bytes) {
  if (bytes.starts_with("PK")) return ReadSpreadsheet(std::string(bytes), "table.xlsx");
  std::string_view rest = bytes;
  const std::string rows(UpTo(rest, "\n=== strings\n")), strings(UpTo(rest, "\n=== styles\n")), styles(UpTo(rest, "\n=== workbook\n"));
  intake::Parts parts = intake::XlsxParts(rows, strings);
  if (!styles.empty()) parts = intake::With(std::move(parts), "xl/styles.xml", styles);
  if (!rest.empty()) parts = intake::With(std::move(parts), "xl/workbook.xml", std::string(rest));
  ReadSpreadsheet(intake::Packed(parts), "table.xlsx");
}

void OdsDoor(std::string_view bytes) {
  if (bytes.starts_with("PK")) return ReadSpreadsheet(std::string(bytes), "table.ods");
  std::string_view rest = bytes;
  const std::string rows = FewRepeated(std::string(UpTo(rest, "\n=== content\n")));
  intake::Parts parts = intake::OdsParts(rows);
  if (!rest.empty()) parts = intake::With(std::move(parts), "content.xml", FewRepeated(std::string(rest)));
  ReadSpreadsheet(intake::Packed(parts), "table.ods");
}

}  // namespace heatkeep::fuzz
