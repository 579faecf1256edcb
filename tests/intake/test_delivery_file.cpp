#include <gtest/gtest.h>

#include "client/intake/delivery_file.h"

namespace heatkeep::intake {
namespace {

using namespace literals;

constexpr std::string_view kShort = "note,supplier,mill,heat,read_from,grade,section,length,count\n";

std::string Problems(std::string_view rows) {
  return ProblemsText(ReadDeliveryFile(std::string(kShort) + std::string(rows), "slip.csv").problems);
}

TEST(DeliveryFile, ReadsTheShortHeader) {
  const auto file = ReadDeliveryFile(std::string(kShort) +
                                         "L-88,Mirrowby,Vandrek,K3317,metal,42CrMo4,round 80,6000,10\n"
                                         "L-88,Mirrowby,Vandrek,,none,42CrMo4,round 80,6000,1\n",
                                     "slip.csv");
  ASSERT_TRUE(file.Good()) << ProblemsText(file.problems);
  ASSERT_EQ(file.rows.size(), 2U);
  EXPECT_EQ(file.rows[0].note, "L-88");
  EXPECT_EQ(file.rows[0].read_from, ReadFrom::Metal);
  EXPECT_EQ(file.rows[0].count, 10);
  EXPECT_TRUE(file.rows[0].papers_awaited);
  EXPECT_EQ(file.rows[0].mark, MarkEnd::Unknown);
  EXPECT_EQ(file.rows[0].ends, 0);
  EXPECT_EQ(file.rows[0].weighed, std::nullopt);
  EXPECT_EQ(file.rows[1].read_from, ReadFrom::None);
  EXPECT_EQ(file.rows[1].heat, "");
}

TEST(DeliveryFile, RefusesACellThatIsNotOneLine) {
  EXPECT_EQ(
      Problems(
          "L-88,Mirrowby,Vandrek,\"D1\n2\",metal,42CrMo4,round 80,6000,10\nL-88,Mir\u200browby,Vandrek,K1,metal,42CrMo4,round 80,6000,1\n"),
      "slip.csv:2: heat: character U+000A in \"D1?2\"; expected one line of characters that can be seen\n"
      "slip.csv:4: supplier: character U+200B in \"Mir\u200browby\"; expected one line of characters that can be seen\n");
}

TEST(DeliveryFile, ReadsEveryOptionalColumn) {
  const auto file = ReadDeliveryFile(
      "note,supplier,order,received,line,mill,heat,read_from,grade,section,condition,length,count,slip_count,weighed,place,"
      "papers,price,owner,ends,mark,doubt\n"
      "L-88,Mirrowby,4500,2026-03-04T08:15,3,Vandrek,K3317,tag,42CrMo4,round 80,+QT,6000,11,12,2841.0 kg,YARD,none,1.60,"
      "Osmund,2,last,50\n",
      "slip.csv");
  ASSERT_TRUE(file.Good()) << ProblemsText(file.problems);
  const DeliveryFileRow& row = file.rows.at(0);
  EXPECT_EQ(row.order, "4500");
  EXPECT_EQ(row.received, "2026-03-04T08:15");
  EXPECT_EQ(row.line, "3");
  EXPECT_EQ(row.read_from, ReadFrom::Tag);
  EXPECT_EQ(row.slip_count, 12);
  EXPECT_EQ(row.weighed, Mass{2'841'000});
  EXPECT_FALSE(row.papers_awaited);
  EXPECT_EQ(row.price_per_kg, Money{160});
  EXPECT_EQ(row.owner, "Osmund");
  EXPECT_EQ(row.ends, 2);
  EXPECT_EQ(row.mark, MarkEnd::Last);
  EXPECT_EQ(row.doubt, 50_mm);
}

TEST(DeliveryFile, ReadsWhatTheSlipTheTagAndTheDocumentSayBesideTheMetal) {
  const auto file = ReadDeliveryFile(
      "note,supplier,order,order_line,slip_line,mill,heat,read_from,tag_heat,slip_heat,certificate_heat,grade,section,length,count,owner,owner_ref,"
      "rests,chips,bundle,measured_with\n"
      "L-88,Mirrowby,4500,7,1,Vandrek,K3371,metal,K 3371,K3317,K3317,42CrMo4,round 80,6000,1,Osmund,OS-9,return,scrap,S-12,tape 7\n",
      "slip.csv");
  ASSERT_TRUE(file.Good()) << ProblemsText(file.problems);
  const DeliveryFileRow& row = file.rows.at(0);
  EXPECT_EQ(row.order_line + '|' + row.slip_line + '|' + row.tag_heat + '|' + row.slip_heat + '|' + row.certificate_heat,
            "7|1|K 3371|K3317|K3317");
  EXPECT_EQ(row.owner_ref + '|' + row.rests + '|' + row.chips + '|' + row.bundle + '|' + row.measured_with,
            "OS-9|return|scrap|S-12|tape 7");
  EXPECT_EQ(row.doubt, std::nullopt) << "the tape tells";
}

TEST(DeliveryFile, RefusesARuleForRestsWithoutAnOwnerAHeatTheSpreadsheetAteAndAStrapTwice) {
  const auto file = ReadDeliveryFile(
      "note,supplier,mill,heat,read_from,slip_heat,grade,section,length,count,rests,bundle\n"
      "L,M,V,K1,metal,1.23E+05,42CrMo4,round 80,6000,1,,S-1\n"
      "L,M,V,K1,metal,,42CrMo4,round 80,6000,1,return,\n"
      "L,M,V,K1,metal,,42CrMo4,round 80,6000,1,,S-1\n",
      "slip.csv");
  EXPECT_EQ(ProblemsText(file.problems),
            "slip.csv:2: slip_heat: \"1.23E+05\" is a number a spreadsheet made of a heat like 123E3; expected the heat as marked on "
            "the metal, in a column formatted as text\n"
            "slip.csv:3: owner is empty, and there is an owner's reference or rule; expected whose metal it is\n"
            "slip.csv:4: bundle \"S-1\" stands in line 2 already; expected each bundle once\n");
}

TEST(DeliveryFile, WantsAHeatOrTheWordThatThereIsNone) {
  EXPECT_EQ(Problems("L,M,V,,metal,42CrMo4,round 80,6000,1\n"),
            "slip.csv:2: heat is empty; expected the heat as marked, or read_from none when it cannot be read\n");
  EXPECT_EQ(Problems("L,M,V,K1,none,42CrMo4,round 80,6000,1\n"),
            "slip.csv:2: read_from is none but there is a heat; expected no heat, or what it was read from: metal, tag or slip\n");
  EXPECT_EQ(Problems("L,M,V,K1,,42CrMo4,round 80,6000,1\n"), "slip.csv:2: read_from is empty; expected metal, tag, slip or none\n");
  EXPECT_EQ(Problems("L,M,V,K1,hearsay,42CrMo4,round 80,6000,1\n"),
            "slip.csv:2: read_from: \"hearsay\" is not known; expected metal, tag, slip or none\n");
}

TEST(DeliveryFile, RefusesAHeatThatASpreadsheetAte) {
  EXPECT_EQ(Problems("L,M,V,1.23E+05,metal,42CrMo4,round 80,6000,1\n"),
            "slip.csv:2: heat: \"1.23E+05\" is a number a spreadsheet made of a heat like 123E3; expected the heat as marked on "
            "the metal, in a column formatted as text\n");
}

TEST(DeliveryFile, KeepsAHeatExactlyAsItStands) {
  const auto file = ReadDeliveryFile(std::string(kShort) + "L,M,V,  o77 15-b ,metal,42CrMo4,round 80,6000,1\n", "slip.csv");
  ASSERT_TRUE(file.Good());
  EXPECT_EQ(file.rows.at(0).heat, "o77 15-b");
}

TEST(DeliveryFile, RefusesALineWithoutSectionGradeOrCount) {
  EXPECT_EQ(Problems("L,M,V,K1,metal,,,6000,\n"),
            "slip.csv:2: grade is empty; expected a grade like 42CrMo4\n"
            "slip.csv:2: section is empty; expected for example round 50\n"
            "slip.csv:2: count is empty; expected a whole number, 1 or more\n");
}

TEST(DeliveryFile, ChecksTheOptionalCells) {
  const auto file = ReadDeliveryFile(
      "note,supplier,mill,heat,read_from,grade,section,length,count,received,weighed,papers,mark,slip_count\n"
      "L,M,V,K1,metal,42CrMo4,round 80,6000,1,yesterday,heavy,3.1,left,-1\n",
      "slip.csv");
  EXPECT_EQ(ProblemsText(file.problems),
            "slip.csv:2: received: \"yesterday\" is not a date or time; expected 2026-03-04 or 2026-03-04T08:15\n"
            "slip.csv:2: slip_count: \"-1\" is negative; expected a whole number from 0 to 1000000\n"
            "slip.csv:2: weighed: no number in \"heavy\"; expected a mass like 2841, 2841.5 kg, 6263 lb or 2.8 t\n"
            "slip.csv:2: papers: \"3.1\" is not known; expected awaited or none\n"
            "slip.csv:2: mark: \"left\" is not known; expected unknown, first, last, both or none\n");
}

}  // namespace
}  // namespace heatkeep::intake
