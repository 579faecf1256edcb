#include "client/intake/limits_file.h"

#include "client/intake/checked_rows.h"
#include "schema/terms/condition_text.h"
#include "schema/terms/element.h"
#include "schema/terms/number_text.h"

namespace heatkeep::intake {
namespace {

std::optional<Bound> BoundCell(CheckedRows& file, std::string_view column) {
  return file.Value(column, std::optional<Bound>(), [&file](const std::string& cell) { return ReadBound(cell, file.CellMark()); });
}

Length MmCell(CheckedRows& file, std::string_view column) {
  return file.Value(column, Length{}, [&file](const std::string& cell) { return Length{ReadScaled(cell, 6, file.CellMark())}; });
}

SizeRange SizesCells(CheckedRows& file) {
  SizeRange sizes{MmCell(file, "over_mm"), std::nullopt};
  if (!file.Text("upto_mm").empty()) sizes.upto = MmCell(file, "upto_mm");
  if (sizes.upto && *sizes.upto <= sizes.over) file.Problem("upto_mm is not above over_mm", "a range of sizes", "upto_mm");
  return sizes;
}

void CheckBounds(CheckedRows& file, const std::optional<Bound>& least, const std::optional<Bound>& most) {
  if (!least && !most) file.Problem("neither a minimum nor a maximum", "one of them at least");
  if (least && most && least->millionths > most->millionths) file.Problem("the minimum is over the maximum", "a range");
}

GradeLimit ReadLimit(CheckedRows& file, std::string_view what_column) {
  GradeLimit row;
  row.grade = file.Needed("grade", "a grade's designation");
  row.sizes = SizesCells(file);
  row.what = file.Needed(what_column, "what is limited");
  if (what_column == "element" && !row.what.empty() && !IsElement(row.what))
    file.Problem("unknown element " + Quoted(row.what), "a chemical symbol", "element");
  row.least = BoundCell(file, "min_pct");
  row.most = BoundCell(file, "max_pct");
  CheckBounds(file, row.least, row.most);
  row.source = file.Needed("source", "where the limit is from");
  row.note = file.Text("edition_or_note");
  row.evidence = file.Needed("evidence", "how the row is known");
  file.Once("limit", row.grade + " over " + WriteScaled(row.sizes.over.nm, 6) + " " + row.what);
  return row;
}

// The two differ in one column only.
std::vector<Column> ColumnsOfLimits(std::string_view what_column) {
  return {{"grade", true, "its designation"},
          {"over_mm", true, "sizes above this; empty: 0", true, "mm"},
          {"upto_mm", true, "up to and with this; empty: all larger ones", true, "mm"},
          {what_column, true, what_column == "what" ? "a sum or an equivalent: CEV, Cr+Mo+Ni" : "a chemical symbol: C, Mn, Cr"},
          {"min_pct", true, "at least, with the figures it is printed with", true, "mass %"},
          {"max_pct", true, "at most, the same; one of both is needed", true, "mass %"},
          {"kind", true, "of which analysis: heat analysis"},
          {"source", true, "where the limit is from"},
          {"edition_or_note", true, "which edition, or a note"},
          {"evidence", true, "how it is known: seen, or from memory"}};
}

FileRows<GradeLimit> ReadLimits(std::string_view bytes, const std::string& name, const ReadingOptions& how, std::string_view what_column) {
  return ReadCheckedRows<GradeLimit>(bytes, name, what_column == "what" ? SumsColumns() : LimitsColumns(), how,
                                     [what_column](CheckedRows& file) { return ReadLimit(file, what_column); });
}

MechanicalLimit ReadMechanical(CheckedRows& file) {
  MechanicalLimit row;
  row.grade = file.Needed("grade", "a grade's designation");
  row.condition = NormalCondition(file.Text("condition"));
  row.sizes = SizesCells(file);
  row.property = file.Needed("property", "Rm, Re or A");
  const std::string unit = file.Needed("unit", "MPa or %");
  if (row.property != "Rm" && row.property != "Re" && row.property != "A")
    file.Problem("unknown property " + Quoted(row.property), "Rm, Re or A", "property");
  if (unit != (row.property == "A" ? "%" : "MPa")) file.Problem("unit " + Quoted(unit), "MPa for Rm and Re, % for A", "unit");
  row.least = BoundCell(file, "min");
  row.most = BoundCell(file, "max");
  CheckBounds(file, row.least, row.most);
  row.source = file.Needed("source", "where the limit is from");
  row.note = file.Text("edition_or_note");
  row.evidence = file.Needed("evidence", "how the row is known");
  file.Once("limit", row.grade + " " + row.condition + " over " + WriteScaled(row.sizes.over.nm, 6) + " " + row.property);
  return row;
}

ProductDeviation ReadDeviation(CheckedRows& file) {
  ProductDeviation row;
  row.standard = file.Needed("standard", "the standard of the limits");
  row.grade = file.Text("grade");
  row.element = file.Needed("element", "a chemical symbol");
  if (!row.element.empty() && !IsElement(row.element))
    file.Problem("unknown element " + Quoted(row.element), "a chemical symbol", "element");
  row.over = BoundCell(file, "over_pct").value_or(Bound{});
  row.upto = BoundCell(file, "upto_pct");
  row.above = BoundCell(file, "above_pct");
  row.below = BoundCell(file, "below_pct");
  row.source = file.Needed("source", "where the deviation is from");
  row.evidence = file.Needed("evidence", "how the row is known");
  row.note = file.Text("note");
  file.Once("deviation", row.standard + " " + row.grade + " " + row.element + " over " + BoundText(row.over));
  return row;
}

}  // namespace

const std::vector<Column>& LimitsColumns() {
  static const std::vector<Column> columns = ColumnsOfLimits("element");
  return columns;
}

const std::vector<Column>& SumsColumns() {
  static const std::vector<Column> columns = ColumnsOfLimits("what");
  return columns;
}

FileRows<GradeLimit> ReadLimitsFile(std::string_view bytes, const std::string& name, const ReadingOptions& how) {
  return ReadLimits(bytes, name, how, "element");
}

FileRows<GradeLimit> ReadSumsFile(std::string_view bytes, const std::string& name, const ReadingOptions& how) {
  return ReadLimits(bytes, name, how, "what");
}

const std::vector<Column>& MechanicalColumns() {
  static const std::vector<Column> columns{{"grade", true, "its designation"},
                                           {"condition", true, "+QT, +N, +A"},
                                           {"over_mm", true, "sizes above this; empty: 0", true, "mm"},
                                           {"upto_mm", true, "up to and with this; empty: all larger ones", true, "mm"},
                                           {"property", true, "Rm, Re or A"},
                                           {"min", true, "at least, with the figures it is printed with", true},
                                           {"max", true, "at most, the same; one of both is needed", true},
                                           {"unit", true, "MPa of Rm and Re, % of A"},
                                           {"source", true, "where the limit is from"},
                                           {"edition_or_note", true, "which edition, or a note"},
                                           {"evidence", true, "how it is known: seen, or from memory"}};
  return columns;
}

FileRows<MechanicalLimit> ReadMechanicalFile(std::string_view bytes, const std::string& name, const ReadingOptions& how) {
  return ReadCheckedRows<MechanicalLimit>(bytes, name, MechanicalColumns(), how, ReadMechanical);
}

const std::vector<Column>& DeviationColumns() {
  static const std::vector<Column> columns{{"standard", true, "of the limits"},
                                           {"grade", true, "only of this one; empty: of all of the standard"},
                                           {"element", true, "a chemical symbol"},
                                           {"over_pct", true, "specified contents above this; empty: 0", true, "mass %"},
                                           {"upto_pct", true, "up to and with this; empty: all larger ones", true, "mass %"},
                                           {"above_pct", true, "so much above the maximum is permitted", true, "mass %"},
                                           {"below_pct", true, "so much below the minimum is permitted", true, "mass %"},
                                           {"source", true, "where the deviation is from"},
                                           {"evidence", true, "how it is known: seen, or from memory"},
                                           {"note", true, "a note"}};
  return columns;
}

FileRows<ProductDeviation> ReadDeviationsFile(std::string_view bytes, const std::string& name, const ReadingOptions& how) {
  return ReadCheckedRows<ProductDeviation>(bytes, name, DeviationColumns(), how, ReadDeviation);
}

}  // namespace heatkeep::intake
