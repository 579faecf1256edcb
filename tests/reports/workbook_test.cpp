#include "reports/workbook.h"

#include <gtest/gtest.h>

#include <stdexcept>

#include "reports/pick_list.h"
#include "tests/reports/invented_sheet.h"
#include "tests/reports/read_back.h"

namespace heatkeep {
namespace {

const PrintOptions kTold{PaperSize::A4, "2026-11-25T07:40:12", "Ostrel Shaftworks"};

std::string SheetXml(const std::string& file, int sheet) {
  return OutputOf("unzip -p '" + file + "' xl/worksheets/sheet" + std::to_string(sheet) + ".xml");
}

TEST(Workbook, ATextThatLooksLikeAFormulaStaysAText) {
  OwnFolder folder;
  const std::vector<std::string> texts{"=1+1", "+1", "-1", "@SUM(A1)", "=cmd|' /C calc'!A0", "\t=1", "123E3"};
  Table table{"Texts", {{"text", 20}}, {}};
  for (const std::string& text : texts) table.rows.push_back({text});
  WriteWorkbook(folder / "t.xlsx", "texts", {table}, kTold);
  const std::string xml = SheetXml(folder / "t.xlsx", 1);
  EXPECT_EQ(xml.find("<f>"), std::string::npos);
  EXPECT_NE(xml.find("t=\"s\""), std::string::npos);
  const std::string csv = OutputOf("xlsx2csv '" + (folder / "t.xlsx") + "'");
  EXPECT_NE(csv.find("=1+1"), std::string::npos);
  EXPECT_NE(csv.find("123E3"), std::string::npos) << "a heat stays as it was read";
}

TEST(Workbook, TheSheetReadsBackWithNumbersAsNumbers) {
  OwnFolder folder;
  Sheet sheet = InventedSheet(5);
  sheet.blocks[0].heat = "=HYPERLINK(\"x\")";
  WritePickListXlsx(folder / "s.xlsx", sheet, kTold);
  const std::string xml = SheetXml(folder / "s.xlsx", 1);
  EXPECT_EQ(xml.find("<f>"), std::string::npos);
  EXPECT_NE(xml.find("state=\"frozen\""), std::string::npos);
  EXPECT_NE(xml.find("<autoFilter"), std::string::npos);
  EXPECT_NE(xml.find("<v>1900</v>"), std::string::npos) << "the first block's length, 1900 mm, is a number";
  const std::string csv = OutputOf("xlsx2csv -n Pieces '" + (folder / "s.xlsx") + "'");
  EXPECT_NE(csv.find("length mm"), std::string::npos);
  for (const SheetBlock& block : sheet.blocks) EXPECT_NE(csv.find(block.tag), std::string::npos) << block.tag;
  const std::string cuts = OutputOf("xlsx2csv -n Cuts '" + (folder / "s.xlsx") + "'");
  for (const SheetBlock& block : sheet.blocks)
    for (const SheetCut& cut : block.cuts) EXPECT_NE(cuts.find(cut.order), std::string::npos) << cut.order;
  EXPECT_NE(OutputOf("xlsx2csv -n Short '" + (folder / "s.xlsx") + "'").find("W-3307"), std::string::npos);
}

TEST(Workbook, TheSameTablesGiveTheSameBytes) {
  OwnFolder folder;
  WritePickListXlsx(folder / "a.xlsx", InventedSheet(3), kTold);
  WritePickListXlsx(folder / "b.xlsx", InventedSheet(3), kTold);
  EXPECT_EQ(WholeFile(folder / "a.xlsx"), WholeFile(folder / "b.xlsx"));
  EXPECT_NE(OutputOf("unzip -p '" + (folder / "a.xlsx") + "' docProps/core.xml").find("2026-11-25T07:40:12Z"), std::string::npos);
}

TEST(Workbook, AFolderThatIsNotThereIsNamedInTheError) {
  OwnFolder folder;
  try {
    WriteWorkbook(folder / "none/t.xlsx", "t", {{"T", {{"a", 5}}, {}}}, kTold);
    FAIL() << "an error was expected";
  } catch (const std::runtime_error& error) { EXPECT_NE(std::string(error.what()).find("none/t.xlsx"), std::string::npos) << error.what(); }
}

TEST(Workbook, ATextLongerThanACellHoldsIsRefusedAndNothingIsLeftBehind) {
  OwnFolder folder;
  EXPECT_THROW(WriteWorkbook(folder / "t.xlsx", "t", {{"T", {{"a", 5}}, {{std::string(40000, 'x')}}}}, kTold), std::runtime_error);
  EXPECT_TRUE(std::filesystem::is_empty(folder.path()));
}

}  // namespace
}  // namespace heatkeep
