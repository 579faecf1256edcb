#include "client/intake/delivery_file.h"

#include "schema/terms/condition_text.h"
#include "schema/terms/date_text.h"
#include "schema/terms/mass_text.h"
#include "schema/terms/number_text.h"

namespace heatkeep::intake {
namespace {

void ReadHeat(CheckedRows& file, DeliveryFileRow& row) {
  row.heat = HeatCell(file);
  const std::string from = file.Needed("read_from", "metal, tag, slip or none");
  row.read_from = ReadFromCell(file);
  if (from.empty() || !file.LineGood()) return;
  if (row.heat.empty() && row.read_from != ReadFrom::None) {
    file.Problem("heat is empty", "the heat as marked, or read_from none when it cannot be read");
  }
  if (!row.heat.empty() && row.read_from == ReadFrom::None) {
    file.Problem("read_from is none but there is a heat", "no heat, or what it was read from: metal, tag or slip");
  }
}

DeliveryFileRow ReadRow(CheckedRows& file) {
  DeliveryFileRow row;
  row.line_in_file = file.Line();
  row.note = file.Needed("note", "the number of the delivery note");
  row.supplier = file.Needed("supplier", "who delivered");
  row.order = file.Text("order");
  row.received = file.Value("received", std::string(), ReadIsoDateOrTime);
  row.order_line = file.Text("order_line");
  row.line = file.Text("line");
  row.slip_line = file.Text("slip_line");
  row.mill = file.Needed("mill", "who made the metal");
  ReadHeat(file, row);
  row.tag_heat = HeatCell(file, "tag_heat");
  row.slip_heat = HeatCell(file, "slip_heat");
  row.certificate_heat = HeatCell(file, "certificate_heat");
  row.grade = file.Needed("grade", "a grade like 42CrMo4");
  row.section = SectionCell(file);
  row.condition = NormalCondition(file.Text("condition"));
  row.length = LengthCell(file);
  row.count = file.NeededValue<int>("count", "a whole number, 1 or more",
                                    [](const std::string& cell) { return static_cast<int>(ReadWhole(cell, 1, kMostPieces)); });
  row.slip_count = file.Value("slip_count", std::optional<int>(),
                              [](const std::string& cell) { return static_cast<int>(ReadWhole(cell, 0, kMostPieces)); });
  row.weighed = file.Value("weighed", std::optional<Mass>(), [&file](const std::string& cell) { return ReadMass(cell, file.CellMark()); });
  row.place = file.Text("place");
  row.bundle = file.Text("bundle");
  if (!row.bundle.empty()) file.Once("bundle", row.bundle);
  row.papers_awaited = file.Word("papers", {"awaited", "none"}) == "awaited";
  row.price_per_kg = PriceCell(file);
  row.owner = file.Text("owner");
  row.owner_ref = file.Text("owner_ref");
  if (!file.Text("rests").empty()) row.rests = file.Word("rests", {"return", "scrap", "ask"});
  row.chips = file.Text("chips");
  if (row.owner.empty() && !(row.owner_ref.empty() && row.rests.empty() && row.chips.empty()))
    file.Problem("owner is empty, and there is an owner's reference or rule", "whose metal it is");
  row.ends = EndsCell(file, 0);
  row.mark = MarkCell(file);
  row.measured_with = file.Text("measured_with");
  const Length doubt = DoubtCell(file, row.length);
  if (row.measured_with.empty() || !file.Text("doubt").empty()) row.doubt = doubt;
  return row;
}

}  // namespace

const std::vector<Column>& DeliveryColumns() {
  static const std::vector<Column> columns{
      {"note", true, "the delivery note"},
      {"supplier", true, "who delivered"},
      {"order", false, "the purchase order"},
      {"order_line", false, "its line"},
      {"received", false, "day, or day and time; empty: now"},
      {"line", false, "of the note; empty: they are numbered"},
      {"slip_line", false, "the line of the slip it answers, where two heats were counted on one line; empty: this line"},
      {"mill", true, "who made it"},
      {"heat", true, "as marked; empty only where read_from is none"},
      {"read_from", true, "what the heat was read from: metal, tag, slip or none (unreadable)"},
      {"tag_heat", false, "the heat as its tag says; empty: nobody looked"},
      {"slip_heat", false, "as the slip says; empty: nobody looked"},
      {"certificate_heat", false, "as the certificate says; empty: nobody looked"},
      {"grade", true, "as marked or written: 42CrMo4, 1.4404, 4140"},
      {"section", true,
       "round 80, square 50, hex 27, flat 60x20, tube 60x5, angle 100x75x8, box 100x60x5, channel UPN 100, beam IPE 100; in inches: round 3 1/8 in",
       true, kLengthUnit},
      {"condition", false, "as delivered: +QT, +N, +A"},
      {"length", true, "of one bar, as measured", true, kLengthUnit},
      {"count", true, "as counted, 1 or more"},
      {"slip_count", false, "what the slip says"},
      {"weighed", false, "the whole line, as weighed", true, "kg"},
      {"place", false, "where it is put"},
      {"bundle", false, "the name on the strap, one a row"},
      {"papers", false, "awaited (empty) or none"},
      {"price", false, "what was paid", true, "money a kg"},
      {"owner", false, "whose metal it is; empty: the shop's own"},
      {"owner_ref", false, "the owner's own reference"},
      {"rests", false, "what becomes of rests of an owner's metal: return, scrap or ask"},
      {"chips", false, "what becomes of its chips: return or scrap"},
      {"ends", false, "how many ends are square: 0, 1 or 2; empty: 0"},
      {"mark", false, "which end carries the mill's mark: first, last, both, none or unknown (empty)"},
      {"doubt", false, "it may be this much shorter; empty: what it was measured with tells", true, kLengthUnit},
      {"measured_with", false, "the tape or readout of the book"}};
  return columns;
}

FileRows<DeliveryFileRow> ReadDeliveryFile(std::string_view bytes, const std::string& name, const ReadingOptions& how) {
  return ReadCheckedRows<DeliveryFileRow>(bytes, name, DeliveryColumns(), how, ReadRow);
}

}  // namespace heatkeep::intake
