#include "client/intake/cuts_file.h"

#include "client/intake/piece_cells.h"
#include "schema/terms/condition_text.h"
#include "schema/terms/date_text.h"
#include "schema/terms/number_text.h"

namespace heatkeep::intake {
namespace {

constexpr int kLastPriority = 1000;

CutsFileRow ReadRow(CheckedRows& file) {
  CutsFileRow row;
  row.line_in_file = file.Line();
  row.order = file.Needed("order", "an order number");
  row.line = file.Needed("line", "a line number of the order");
  if (!row.order.empty() && !row.line.empty()) file.Once("order and line", row.order + " " + row.line);
  row.section = SectionCell(file);
  row.grade = file.Needed("grade", "a grade like 42CrMo4");
  row.length = LengthCell(file);
  row.quantity = file.NeededValue<int>("quantity", "a whole number, 1 or more",
                                       [](const std::string& cell) { return static_cast<int>(ReadWhole(cell, 1, kMostPieces)); });
  row.tolerance =
      file.Value("tolerance", std::optional<Tolerance>(), [&file](const std::string& cell) { return ReadTolerance(cell, file.Lengths()); });
  if (row.tolerance && row.tolerance->minus >= row.length && row.length.nm > 0) {
    file.Problem("tolerance: the lower limit takes away the whole length", "a tolerance smaller than the length");
  }
  row.due = file.Value("due", std::string(), ReadIsoDate);
  row.priority = WholeCell(file, "priority", 1, kLastPriority, 5);
  row.one_heat = file.Text("one_heat");
  row.max_heats = WholeCell(file, "max_heats", 1, kMostPieces, 0);
  row.face = OptionalLengthCell(file, "face");
  row.papers = PapersCell(file);
  row.owner = file.Text("owner");
  row.condition = NormalCondition(file.Text("condition"));
  row.customer = file.Text("customer");
  return row;
}

}  // namespace

FileRows<CutsFileRow> ReadCutsFile(std::string_view bytes, const std::string& name, ReadingOptions how) {
  return ReadCheckedRows<CutsFileRow>(bytes, name,
                                      {{"order", true},
                                       {"line", true},
                                       {"section", true, true, kLengthUnit},
                                       {"grade", true},
                                       {"length", true, true, kLengthUnit},
                                       {"quantity", true},
                                       {"tolerance", false, true, kLengthUnit},
                                       {"due"},
                                       {"priority"},
                                       {"one_heat"},
                                       {"max_heats"},
                                       {"face", false, true, kLengthUnit},
                                       {"papers"},
                                       {"owner"},
                                       {"condition"},
                                       {"customer"}},
                                      how, ReadRow);
}

}  // namespace heatkeep::intake
