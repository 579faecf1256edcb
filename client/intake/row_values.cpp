#include "client/intake/row_values.h"

#include "schema/terms/mass_text.h"
#include "schema/terms/number_text.h"

namespace heatkeep::intake {
namespace {

std::string Mm(Length length) { return WriteMmExact(length) + " mm"; }
std::string PerKg(const std::optional<Money>& price) { return price ? WriteScaled(price->cents, 2) + " a kg" : ""; }
std::string Thousandths(const std::optional<std::int64_t>& n, const char* unit) { return n ? WriteScaled(*n, 3) + unit : ""; }

}  // namespace

std::vector<ReadValue> ValuesOf(const StockFileRow& row) {
  return {{"tag", row.tag},
          {"kind", std::string(PieceKindText(row.kind))},
          {"section", SectionText(row.section)},
          {"grade", row.grade},
          {"heat", row.heat},
          {"length", Mm(row.length)},
          {"count", row.count ? std::to_string(*row.count) : "unlimited"},
          {"ends", std::to_string(row.ends)},
          {"papers", std::string(PapersText(row.papers))},
          {"owner", row.owner},
          {"condition", row.condition},
          {"held", row.held ? "yes" : "no"},
          {"price", PerKg(row.price_per_kg)},
          {"place", row.place},
          {"doubt", Mm(row.doubt)}};
}

std::vector<ReadValue> ValuesOf(const CutsFileRow& row) {
  return {{"order", row.order},
          {"line", row.line},
          {"section", SectionText(row.section)},
          {"grade", row.grade},
          {"length", Mm(row.length)},
          {"quantity", std::to_string(row.quantity)},
          {"tolerance", row.tolerance ? ToleranceText(*row.tolerance) + " mm" : ""},
          {"due", row.due},
          {"priority", std::to_string(row.priority)},
          {"one_heat", row.one_heat},
          {"max_heats", row.max_heats > 0 ? std::to_string(row.max_heats) : "any number"},
          {"face", Mm(row.face)},
          {"papers", std::string(PapersText(row.papers))},
          {"owner", row.owner},
          {"condition", row.condition},
          {"customer", row.customer}};
}

std::vector<ReadValue> ValuesOf(const DeliveryFileRow& row) {
  return {{"note", row.note},
          {"supplier", row.supplier},
          {"order", row.order},
          {"order_line", row.order_line},
          {"received", row.received},
          {"line", row.line},
          {"slip_line", row.slip_line},
          {"mill", row.mill},
          {"heat", row.heat},
          {"read_from", std::string(ReadFromText(row.read_from))},
          {"tag_heat", row.tag_heat},
          {"slip_heat", row.slip_heat},
          {"certificate_heat", row.certificate_heat},
          {"grade", row.grade},
          {"section", SectionText(row.section)},
          {"condition", row.condition},
          {"length", Mm(row.length)},
          {"count", std::to_string(row.count)},
          {"slip_count", row.slip_count ? std::to_string(*row.slip_count) : ""},
          {"weighed", row.weighed ? WriteKg(*row.weighed, 3) + " kg" : ""},
          {"place", row.place},
          {"bundle", row.bundle},
          {"papers", row.papers_awaited ? "awaited" : "none"},
          {"price", PerKg(row.price_per_kg)},
          {"owner", row.owner},
          {"owner_ref", row.owner_ref},
          {"rests", row.rests},
          {"chips", row.chips},
          {"ends", std::to_string(row.ends)},
          {"mark", std::string(MarkEndText(row.mark))},
          {"doubt", row.doubt ? Mm(*row.doubt) : ""},
          {"measured_with", row.measured_with}};
}

std::vector<ReadValue> ValuesOf(const OpeningFileRow& row) {
  return {{"old_tag", row.old_tag},
          {"kind", std::string(PieceKindText(row.kind))},
          {"mill", row.mill},
          {"heat", row.heat},
          {"read_from", row.read_from ? std::string(ReadFromText(*row.read_from)) : ""},
          {"grade", row.grade},
          {"section", SectionText(row.section)},
          {"condition", row.condition},
          {"length", Mm(row.length)},
          {"count", std::to_string(row.count)},
          {"place", row.place},
          {"papers", std::string(PapersText(row.papers))},
          {"owner", row.owner},
          {"ends", std::to_string(row.ends)},
          {"doubt", Mm(row.doubt)},
          {"price", PerKg(row.price_per_kg)}};
}

std::vector<ReadValue> ValuesOf(const CertificatesFileRow& row) {
  std::vector<ReadValue> values{{"number", row.number},
                                {"type", std::string(PapersText(row.type))},
                                {"issuer", row.issuer},
                                {"issued", row.issued},
                                {"heat", row.heat},
                                {"section", SectionText(row.section)},
                                {"condition", row.condition},
                                {"grade", row.grade},
                                {"Rm", Thousandths(row.rm_kpa, " MPa")},
                                {"Re", Thousandths(row.re_kpa, " MPa")},
                                {"A", Thousandths(row.a_millipercent, " %")},
                                {"validated_by", ValidatorsText(row.validated_by)},
                                {"analysis", row.product ? "product" : "heat"}};
  for (const ElementContent& e : row.chemistry) values.push_back({e.element, WriteScaled(e.millionths, 6) + " %"});
  return values;
}

std::vector<ReadValue> ValuesOf(const Grade& grade) {
  return {{"designation", grade.designation},
          {"number", grade.number},
          {"uns", grade.uns},
          {"family", grade.family},
          {"standard", grade.standard},
          {"density_kg_m3", std::to_string(grade.density.kg_m3) + " kg/m3"},
          {"density_source", grade.density_source},
          {"source", grade.source},
          {"evidence", grade.evidence}};
}

}  // namespace heatkeep::intake
