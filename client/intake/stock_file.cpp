#include "client/intake/stock_file.h"

#include "schema/terms/condition_text.h"
#include "schema/terms/number_text.h"
#include "schema/terms/plain_text.h"

namespace heatkeep::intake {
namespace {

std::optional<int> CountCell(CheckedRows& file) {
  return file.Value("count", std::optional<int>(), [](const std::string& cell) -> std::optional<int> {
    if (LowerCase(cell) == "unlimited") return std::nullopt;
    return static_cast<int>(ReadWhole(cell, 1, kMostPieces));
  });
}

StockFileRow ReadRow(CheckedRows& file) {
  StockFileRow row;
  row.line = file.Line();
  row.tag = file.Needed("tag", "a name for the piece");
  if (!row.tag.empty()) file.Once("tag", row.tag);
  row.kind = KindCell(file);
  row.section = SectionCell(file);
  row.grade = file.Needed("grade", "a grade like 42CrMo4");
  row.heat = HeatCell(file);
  row.length = LengthCell(file);
  row.count = CountCell(file);
  row.ends = EndsCell(file, row.kind == PieceKind::Drop ? 1 : 0);
  row.papers = PapersCell(file);
  row.owner = file.Text("owner");
  row.condition = NormalCondition(file.Text("condition"));
  row.held = file.Value("held", false, ReadYesNo);
  row.price_per_kg = PriceCell(file);
  row.place = file.Text("place");
  row.doubt = DoubtCell(file, row.length);
  return row;
}

}  // namespace

const std::vector<Column>& StockColumns() {
  static const std::vector<Column> columns{
      {"tag", true, "a name for the piece, once in the file"},
      {"kind", true, "bar or drop"},
      {"section", true,
       "round 80, square 50, hex 27, flat 60x20, tube 60x5, angle 100x75x8, box 100x60x5, channel UPN 100, beam IPE 100; in inches: round 3 1/8 in",
       true, kLengthUnit},
      {"grade", true, "as marked or written: 42CrMo4, 1.4404, 4140"},
      {"heat", true, "as stamped; empty: not known"},
      {"length", true, "of one piece", true, kLengthUnit},
      {"count", true, "how many alike, 1 or more; empty or unlimited: as many as wanted"},
      {"ends", false, "how many ends are square: 0, 1 or 2; empty: 0 of a bar, 1 of a drop"},
      {"papers", false, "what it has: 2.1, 2.2, 3.1, 3.2 or none (empty)"},
      {"owner", false, "whose metal it is; empty: the shop's own"},
      {"condition", false, "as delivered: +QT, +N, +A"},
      {"held", false, "yes or no (empty): a held piece is not planned"},
      {"price", false, "what was paid", true, "money a kg"},
      {"place", false, "where it lies"},
      {"doubt", false, "it may be this much shorter than written; empty: 0", true, kLengthUnit}};
  return columns;
}

FileRows<StockFileRow> ReadStockFile(std::string_view bytes, const std::string& name, const ReadingOptions& how) {
  return ReadCheckedRows<StockFileRow>(bytes, name, StockColumns(), how, ReadRow);
}

}  // namespace heatkeep::intake
