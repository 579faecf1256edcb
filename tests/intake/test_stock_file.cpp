#include <gtest/gtest.h>

#include "client/intake/stock_file.h"

namespace heatkeep::intake {
namespace {

using namespace literals;

constexpr std::string_view kHeader = "tag,kind,section,grade,heat,length,count,ends\n";
constexpr std::string_view kFullHeader = "tag,kind,section,grade,heat,length,count,ends,papers,owner,condition,held,price,place,doubt\n";

FileRows<StockFileRow> Read(std::string_view header, std::string_view rows) {
  return ReadStockFile(std::string(header) + std::string(rows), "stock.csv");
}

std::string Problems(std::string_view rows) { return ProblemsText(Read(kHeader, rows).problems); }

TEST(StockFile, ReadsTheShortHeader) {
  const auto file = Read(kHeader,
                         "B1,bar,round 50,42CrMo4,K3317,6000mm,,\n"
                         "B2,Bar,round 2in,42CrMo4,,20ft,4,1\n"
                         "D1,drop,round 50,42CrMo4,K3317,19' 11-3/8\",1,\n"
                         "D2,drop,round 50,42CrMo4,K3317,1100,unlimited,2\n");
  ASSERT_TRUE(file.Good()) << ProblemsText(file.problems);
  ASSERT_EQ(file.rows.size(), 4U);
  EXPECT_EQ(file.rows[0].tag, "B1");
  EXPECT_EQ(file.rows[0].line, 2);
  EXPECT_EQ(file.rows[0].length, 6000_mm);
  EXPECT_EQ(file.rows[0].count, std::nullopt);
  EXPECT_EQ(file.rows[0].ends, 0);
  EXPECT_EQ(file.rows[1].kind, PieceKind::Bar);
  EXPECT_EQ(file.rows[1].section, ReadSection("round 50.8"));
  EXPECT_EQ(file.rows[1].count, 4);
  EXPECT_EQ(file.rows[1].ends, 1);
  EXPECT_EQ(file.rows[2].kind, PieceKind::Drop);
  EXPECT_EQ(file.rows[2].length.nm, 6'080'125'000);
  EXPECT_EQ(file.rows[2].ends, 1);
  EXPECT_EQ(file.rows[3].count, std::nullopt);
  EXPECT_EQ(file.rows[3].ends, 2);
  EXPECT_EQ(file.rows[3].papers, Papers::None);
  EXPECT_FALSE(file.rows[3].held);
}

TEST(StockFile, ReadsEveryOptionalColumn) {
  const auto file = Read(kFullHeader, "D1,drop,round 50,42CrMo4, K 3317 ,1100,1,1,3.1,Osmund,+ qt,yes,1.60,B3-2,1\n");
  ASSERT_TRUE(file.Good()) << ProblemsText(file.problems);
  const StockFileRow& row = file.rows.at(0);
  EXPECT_EQ(row.heat, "K 3317");
  EXPECT_EQ(row.papers, Papers::P31);
  EXPECT_EQ(row.owner, "Osmund");
  EXPECT_EQ(row.condition, "+QT");
  EXPECT_TRUE(row.held);
  EXPECT_EQ(row.price_per_kg, Money{160});
  EXPECT_EQ(row.place, "B3-2");
  EXPECT_EQ(row.doubt, 1_mm);
}

TEST(StockFile, SaysWhatIsWrongInEveryLine) {
  EXPECT_EQ(
      Problems("B1,bar,round 50,42CrMo4,K1,6000,1,\n"
               "B1,bar,round 50,42CrMo4,K1,6000,1,\n"
               ",rod,octagon 5,,1.23E+05,0,0,3\n"),
      "stock.csv:3: tag \"B1\" stands in line 2 already; expected each tag once\n"
      "stock.csv:4: tag is empty; expected a name for the piece\n"
      "stock.csv:4: kind: \"rod\" is not known; expected bar or drop\n"
      "stock.csv:4: section: unknown shape \"octagon\" in section \"octagon 5\"; expected one of: round 50, square 50, "
      "hex 50, flat 100x20, tube 60.3x4, angle 100x75x8, box 100x60x5 cold, channel UPN 100, beam IPE 100 (or in inches: round 3 1/8 in)\n"
      "stock.csv:4: grade is empty; expected a grade like 42CrMo4\n"
      "stock.csv:4: heat: \"1.23E+05\" is a number a spreadsheet made of a heat like 123E3; expected the heat as marked "
      "on the metal, in a column formatted as text\n"
      "stock.csv:4: length: \"0\" is no length; expected a length over zero\n"
      "stock.csv:4: count: \"0\" is out of range; expected a whole number from 1 to 1000000\n"
      "stock.csv:4: ends: \"3\" is out of range; expected a whole number from 0 to 2\n");
}

TEST(StockFile, RefusesOptionalCellsThatMakeNoSense) {
  const auto file = Read(kFullHeader,
                         "D1,drop,round 50,42CrMo4,K,100,1,1,3.1B,,,maybe,1.605,,100\n"
                         "D2,drop,round 50,42CrMo4,K,100,2.5,1,,,,,,,-1\n");
  EXPECT_EQ(ProblemsText(file.problems),
            "stock.csv:2: papers: unknown papers \"3.1B\"; expected 2.1, 2.2, 3.1, 3.2 (EN 10204) or none\n"
            "stock.csv:2: held: \"maybe\" is not known; expected yes or no\n"
            "stock.csv:2: price: \"1.605\" has 3 decimals; expected at most 2 decimals\n"
            "stock.csv:2: doubt: as long as the piece itself; expected a doubt shorter than the length\n"
            "stock.csv:3: count: \"2.5\" has 1 decimal; expected a whole number from 1 to 1000000\n"
            "stock.csv:3: doubt: \"-1\" is negative; expected a length like 6000, 6000mm, 20 ft, 13 7/8 in or 19' 11-3/8\"\n");
  EXPECT_TRUE(file.rows.empty());
}

TEST(StockFile, NamesMissingColumns) {
  EXPECT_EQ(ProblemsText(ReadStockFile("tag,kind,grade,length,count\n", "stock.csv").problems),
            "stock.csv:1: column \"section\" is missing; expected a header with it\n"
            "stock.csv:1: column \"heat\" is missing; expected a header with it\n");
}

TEST(StockFile, ReadsASemicolonFileWithDecimalCommas) {
  const auto file =
      ReadStockFile("Tag;Kind;Section;Grade;Heat;Length;Count;Price\r\nR1;bar;tube 60,3x4;S355J2;T901;6000,5;2;1,60\r\n", "stock.csv");
  ASSERT_TRUE(file.Good()) << ProblemsText(file.problems);
  EXPECT_EQ(file.rows.at(0).section, ReadSection("tube 60.3x4"));
  EXPECT_EQ(file.rows.at(0).length, 6'000'500_um);
  EXPECT_EQ(file.rows.at(0).price_per_kg, Money{160});
}

}  // namespace
}  // namespace heatkeep::intake
