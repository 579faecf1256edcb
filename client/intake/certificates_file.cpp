#include "client/intake/certificates_file.h"

#include <map>

#include "client/intake/piece_cells.h"
#include "schema/terms/condition_text.h"
#include "schema/terms/date_text.h"
#include "schema/terms/number_text.h"

namespace heatkeep::intake {
namespace {

std::vector<ElementContent> ChemistryCells(CheckedRows& file) {
  std::vector<ElementContent> chemistry;
  for (std::string_view element : kElements) {
    if (file.Text(element).empty()) continue;
    chemistry.push_back({std::string(element), file.Value(element, std::int64_t{0}, [&file](const std::string& cell) {
                           return ReadContent(cell, file.CellMark());
                         })});
  }
  try {
    CheckSum(chemistry);
  } catch (const BadText& sum) { file.Problem(sum.Wrong(), sum.Expected()); }
  return chemistry;
}

std::optional<std::int64_t> ThousandthsCell(CheckedRows& file, std::string_view column, std::int64_t most) {
  return file.Value(column, std::optional<std::int64_t>(), [&](const std::string& cell) {
    const std::int64_t read = ReadScaled(cell, 3, file.CellMark());
    if (read > most) throw BadText(Quoted(cell) + " is too large", "at most " + WriteScaled(most, 3));
    return read;
  });
}

std::string LotKey(const CertificatesFileRow& row) {
  return row.issuer + " " + row.number + " " + row.heat + " " + SectionText(row.section);
}

CertificatesFileRow ReadRow(CheckedRows& file) {
  CertificatesFileRow row;
  row.line_in_file = file.Line();
  row.number = file.Needed("number", "the document's number");
  row.type = file.NeededValue<Papers>("type", "2.1, 2.2, 3.1 or 3.2", [](const std::string& cell) {
    const Papers type = ReadPapers(cell);
    if (type == Papers::None) throw BadText(Quoted(cell) + " is no type of document", "2.1, 2.2, 3.1 or 3.2");
    return type;
  });
  row.issuer = file.Needed("issuer", "who issued the document");
  row.issued = file.Value("issued", std::string(), ReadIsoDate);
  const bool has_heat = !file.Needed("heat", "the heat as the document has it").empty();
  row.heat = HeatCell(file);
  row.section = SectionCell(file);
  row.condition = NormalCondition(file.Text("condition"));
  row.grade = file.Needed("grade", "a grade like 42CrMo4");
  row.product = file.Word("analysis", {"heat", "product"}) == "product";
  row.chemistry = ChemistryCells(file);
  if (row.product && row.chemistry.empty() && file.LineGood())
    file.Problem("a product analysis without values", "mass % of an element at least", "analysis");
  row.rm_kpa = ThousandthsCell(file, "Rm", 10'000'000);
  row.re_kpa = ThousandthsCell(file, "Re", 10'000'000);
  row.a_millipercent = ThousandthsCell(file, "A", 100'000);
  row.validated_by = file.Value("validated_by", std::vector<Validator>(), [](const std::string& cell) { return ReadValidators(cell); });
  if (row.rm_kpa && row.re_kpa && *row.re_kpa > *row.rm_kpa) {
    file.Problem("Re is higher than Rm", "a yield strength below the tensile strength");
  }
  if (has_heat && file.LineGood()) {
    const std::string lot = LotKey(row);
    file.Once(row.product ? "product analysis of document, heat and section" : "document, heat and section", lot);
    if (row.rm_kpa || row.re_kpa || row.a_millipercent) file.Once("row with tests of document, heat and section", lot);
  }
  return row;
}

// A row of the product says the same of its lot as that of the heat.
void CheckPairs(FileRows<CertificatesFileRow>& file, const std::string& name) {
  std::map<std::string, const CertificatesFileRow*> first;
  for (const CertificatesFileRow& row : file.rows) {
    const CertificatesFileRow& other = *first.emplace(LotKey(row), &row).first->second;
    if (other.grade != row.grade || other.condition != row.condition || other.type != row.type || other.issued != row.issued ||
        other.validated_by != row.validated_by) {
      file.problems.push_back({name,
                               row.line_in_file,
                               "another grade, condition, type, date or validator than line " + std::to_string(other.line_in_file) +
                                   " has of this document and heat",
                               "the same in both rows",
                               {}});
    }
  }
}

}  // namespace

const std::vector<Column>& CertificatesColumns() {
  static const std::vector<Column> columns = [] {
    std::vector<Column> all{
        {"number", true, "of the document", false, {}, "A03"},
        {"type", true, "of EN 10204: 2.1, 2.2, 3.1 or 3.2", false, {}, "A02"},
        {"issuer", true, "who issued it", false, {}, "A01"},
        {"issued", false, "the day, 2026-03-04", false, {}, "Z02"},
        {"heat", true, "as it says", false, {}, "B07"},
        {"section", true,
         "round 80, square 50, hex 27, flat 60x20, tube 60x5, angle 100x75x8, box 100x60x5, channel UPN 100, beam IPE 100; in inches: round 3 1/8 in",
         true, kLengthUnit, "B09"},
        {"condition", false, "as delivered: +QT, +N, +A", false, {}, "B04"},
        {"grade", true, "as it says", false, {}, "B02"},
        {"Rm", false, "tensile strength", true, "MPa", "C12"},
        {"Re", false, "yield or proof strength", true, "MPa", "C11"},
        {"A", false, "elongation", true, "%", "C13"},
        {"validated_by", false, "NAME, POSITION, manufacturer|independent|purchaser|official; several with ; between"},
        {"analysis", false, "heat (empty) or product: whose the chemistry is; the two are two rows"}};
    for (std::string_view element : kElements) all.push_back({element, false, "its content", true, "mass %"});
    return all;
  }();
  return columns;
}

FileRows<CertificatesFileRow> ReadCertificatesFile(std::string_view bytes, const std::string& name, const ReadingOptions& how) {
  auto file = ReadCheckedRows<CertificatesFileRow>(bytes, name, CertificatesColumns(), how, ReadRow);
  CheckPairs(file, name);
  if (!file.problems.empty() && how.bad_lines == BadLines::RefuseFile) file.rows.clear();
  return file;
}

}  // namespace heatkeep::intake
