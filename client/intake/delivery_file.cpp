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
  row.weighed =
      file.Value("weighed", std::optional<Mass>(), [&file](const std::string& cell) { return ReadMass(cell, file.DecimalMark()); });
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

FileRows<DeliveryFileRow> ReadDeliveryFile(std::string_view bytes, const std::string& name, ReadingOptions how) {
  return ReadCheckedRows<DeliveryFileRow>(bytes, name,
                                          {{"note", true},
                                           {"supplier", true},
                                           {"order"},
                                           {"order_line"},
                                           {"received"},
                                           {"line"},
                                           {"slip_line"},
                                           {"mill", true},
                                           {"heat", true},
                                           {"read_from", true},
                                           {"tag_heat"},
                                           {"slip_heat"},
                                           {"certificate_heat"},
                                           {"grade", true},
                                           {"section", true, true, kLengthUnit},
                                           {"condition"},
                                           {"length", true, true, kLengthUnit},
                                           {"count", true},
                                           {"slip_count"},
                                           {"weighed", false, true, "kg"},
                                           {"place"},
                                           {"bundle"},
                                           {"papers"},
                                           {"price", false, true, "money a kg"},
                                           {"owner"},
                                           {"owner_ref"},
                                           {"rests"},
                                           {"chips"},
                                           {"ends"},
                                           {"mark"},
                                           {"doubt", false, true, kLengthUnit},
                                           {"measured_with"}},
                                          how, ReadRow);
}

}  // namespace heatkeep::intake
