#include <gtest/gtest.h>

#include "client/intake/opening_file.h"

namespace heatkeep::intake {
namespace {

using namespace literals;

// An old list with every trap an old list has.
constexpr std::string_view kOldList =
    "old_tag;kind;grade;section;length;heat\n"
    "I1;bar;42CrMo4;round 80;6000;K3317\n"
    "I2;bar;42CrMo4;round 3 1/8in;6000;K3402\n"
    "I3;drop;4140;round 80;1100;\n"
    "I4;drop;42CrMo4;round 80;1,100;K3317\n"
    "I1;drop;42CrMo4;round 80;640;K3317\n"
    "I6;drop;C45E;round 60;2400;O7715\n"
    "I7;drop;C45E;round 60;0;07715\n"
    "I8;drop;C45E;round 60;900;1.23E+05\n";

TEST(OpeningFile, TakesTheGoodLinesAndNamesTheBadWhenAsked) {
  const auto file = ReadOpeningFile(kOldList, "old.csv", {BadLines::LeaveOut}, {"07715"});
  ASSERT_EQ(file.rows.size(), 4U);
  Length sum;
  for (const OpeningFileRow& row : file.rows) sum += row.length;
  EXPECT_EQ(sum, 15'500_mm);
  EXPECT_EQ(file.rows[1].section.first, 79'375_um);
  EXPECT_NE(file.rows[1].section, file.rows[0].section);
  EXPECT_EQ(file.rows[2].grade, "4140");
  EXPECT_EQ(file.rows[2].heat, "");
  EXPECT_EQ(file.rows[3].heat, "O7715");
  EXPECT_EQ(ProblemsText(file.problems),
            "old.csv:5: length: \"1,100\" can be read two ways, 1.1 mm or 1 100 mm; expected a number without that mark, or "
            "thousands set apart by a blank\n"
            "old.csv:6: old_tag \"I1\" stands in line 2 already; expected each old_tag once\n"
            "old.csv:8: length: \"0\" is no length; expected a length over zero\n"
            "old.csv:9: heat: \"1.23E+05\" is a number a spreadsheet made of a heat like 123E3; expected the heat as marked on "
            "the metal, in a column formatted as text\n");
  EXPECT_EQ(ProblemsText(file.warnings),
            "old.csv:4: no heat: not for certificated orders\n"
            "old.csv:7: heat \"O7715\" looks like \"07715\"; they are kept apart until somebody has looked\n");
}

TEST(OpeningFile, IsRefusedWholeUnlessAsked) {
  const auto file = ReadOpeningFile(kOldList, "old.csv");
  EXPECT_TRUE(file.rows.empty());
  EXPECT_EQ(file.problems.size(), 4U);
}

TEST(OpeningFile, WarnsOfLookAlikesInTheSameFileOnce) {
  const auto file = ReadOpeningFile(
      "old_tag,kind,grade,section,length,heat\n1,bar,C45E,round 60,600,S12\n2,bar,C45E,round 60,600,512\n3,bar,C45E,round 60,600,512\n",
      "old.csv");
  EXPECT_EQ(file.rows.size(), 3U);
  EXPECT_EQ(ProblemsText(file.warnings), "old.csv:3: heat \"512\" looks like \"S12\"; they are kept apart until somebody has looked\n");
}

TEST(OpeningFile, ReadsEveryColumn) {
  const auto file = ReadOpeningFile(
      "old_tag,kind,mill,heat,read_from,grade,section,condition,length,count,place,papers,owner,ends,doubt,price\n"
      "7,drop,Vandrek,K3317,tag,42CrMo4,round 80,+qt,640,3,B3-2,2.2,Osmund,2,2,0.9\n"
      "8,bar,,,,42CrMo4,round 80,,6000,,,,,,,\n",
      "old.csv");
  ASSERT_TRUE(file.Good()) << ProblemsText(file.problems);
  const OpeningFileRow& row = file.rows.at(0);
  EXPECT_EQ(row.kind, PieceKind::Drop);
  EXPECT_EQ(row.mill, "Vandrek");
  EXPECT_EQ(row.read_from, ReadFrom::Tag);
  EXPECT_EQ(row.condition, "+QT");
  EXPECT_EQ(row.count, 3);
  EXPECT_EQ(row.place, "B3-2");
  EXPECT_EQ(row.papers, Papers::P22);
  EXPECT_EQ(row.owner, "Osmund");
  EXPECT_EQ(row.ends, 2);
  EXPECT_EQ(row.doubt, 2_mm);
  EXPECT_EQ(row.price_per_kg, Money{90});
  EXPECT_EQ(file.rows.at(1).ends, 0);
  EXPECT_EQ(file.rows.at(1).count, 1);
  EXPECT_EQ(file.rows.at(1).read_from, std::nullopt);
}

}  // namespace
}  // namespace heatkeep::intake
