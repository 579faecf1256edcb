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

const std::vector<Column>& CutsColumns() {
  static const std::vector<Column> columns{
      {"order", true, "the customer's order"},
      {"line", true, "its line, once in the file"},
      {"section", true,
       "round 80, square 50, hex 27, flat 60x20, tube 60x5, angle 100x75x8, box 100x60x5, channel UPN 100, beam IPE 100; in inches: round 3 1/8 in",
       true, kLengthUnit},
      {"grade", true, "as marked or written: 42CrMo4, 1.4404, 4140"},
      {"length", true, "of one piece, as ordered", true, kLengthUnit},
      {"quantity", true, "how many, 1 or more"},
      {"tolerance", false, "like -0/+1; empty: none is said", true, kLengthUnit},
      {"due", false, "the day, 2026-03-31"},
      {"priority", false, "1 (first) to 1000; empty: 5"},
      {"one_heat", false, "a name: all lines that share it come from one heat"},
      {"max_heats", false, "from how many heats its pieces may come; empty: any number"},
      {"face", false, "allowance for facing, added to the length; empty: 0", true, kLengthUnit},
      {"papers", false, "at least 2.1, 2.2, 3.1 or 3.2; empty: none are asked for"},
      {"owner", false, "to be cut from this customer's own metal; empty: from the shop's"},
      {"condition", false, "asked for: +QT, +N, +A"},
      {"customer", false, "who ordered it"}};
  return columns;
}

FileRows<CutsFileRow> ReadCutsFile(std::string_view bytes, const std::string& name, const ReadingOptions& how) {
  return ReadCheckedRows<CutsFileRow>(bytes, name, CutsColumns(), how, ReadRow);
}

}  // namespace heatkeep::intake
