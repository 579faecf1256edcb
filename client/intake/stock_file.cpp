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

FileRows<StockFileRow> ReadStockFile(std::string_view bytes, const std::string& name, ReadingOptions how) {
  return ReadCheckedRows<StockFileRow>(bytes, name,
                                       {{"tag", true},
                                        {"kind", true},
                                        {"section", true, true, kLengthUnit},
                                        {"grade", true},
                                        {"heat", true},
                                        {"length", true, true, kLengthUnit},
                                        {"count", true},
                                        {"ends"},
                                        {"papers"},
                                        {"owner"},
                                        {"condition"},
                                        {"held"},
                                        {"price", false, true, "money a kg"},
                                        {"place"},
                                        {"doubt", false, true, kLengthUnit}},
                                       how, ReadRow);
}

}  // namespace heatkeep::intake
