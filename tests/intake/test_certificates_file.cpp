#include <gtest/gtest.h>

#include "client/intake/certificates_file.h"

namespace heatkeep::intake {
namespace {

constexpr std::string_view kHeader = "number,type,issuer,issued,heat,section,condition,grade,C,Mn,P,Rm,Re,A\n";

FileRows<CertificatesFileRow> Read(std::string_view rows) {
  return ReadCertificatesFile(std::string(kHeader) + std::string(rows), "certs.csv");
}

std::string Problems(std::string_view rows) { return ProblemsText(Read(rows).problems); }

TEST(CertificatesFile, KeepsEveryDecimal) {
  const auto file = Read("88-1203,3.1,Vandrek,2026-03-04,K3317,round 80,+QT,42CrMo4,0.42,0.7,0.0110,1050,900.5,12.5\n");
  ASSERT_TRUE(file.Good()) << ProblemsText(file.problems);
  const CertificatesFileRow& row = file.rows.at(0);
  EXPECT_EQ(row.type, Papers::P31);
  EXPECT_EQ(row.issuer, "Vandrek");
  EXPECT_EQ(row.chemistry, (std::vector<ElementContent>{{"C", 420'000}, {"P", 11'000}, {"Mn", 700'000}}));
  EXPECT_EQ(row.rm_kpa, 1'050'000);
  EXPECT_EQ(row.re_kpa, 900'500);
  EXPECT_EQ(row.a_millipercent, 12'500);
}

TEST(CertificatesFile, TakesWhoValidatedIt) {
  const std::string head = "number,type,issuer,heat,section,grade,validated_by\n1,3.2,Vandrek,K1,round 80,42CrMo4,";
  const auto file = ReadCertificatesFile(head + "\"A. Lund, lab, independent; B. Roe, inspector, official\"\n", "certs.csv");
  ASSERT_TRUE(file.Good()) << ProblemsText(file.problems);
  EXPECT_EQ(file.rows.at(0).validated_by, (std::vector<Validator>{{"A. Lund", "lab", "independent"}, {"B. Roe", "inspector", "official"}}));
  const std::string wrong = ProblemsText(ReadCertificatesFile(head + "A. Lund\n", "certs.csv").problems);
  EXPECT_NE(wrong.find("certs.csv:2: validated_by: \"A. Lund\" does not say who validated it"), std::string::npos) << wrong;
}

TEST(CertificatesFile, TakesAnEmptyCellAsNotReported) {
  const auto file = Read("1,2.2,Vandrek,,K1,round 80,,42CrMo4,,0,,,,\n");
  ASSERT_TRUE(file.Good()) << ProblemsText(file.problems);
  EXPECT_EQ(file.rows.at(0).chemistry, (std::vector<ElementContent>{{"Mn", 0}}));
  EXPECT_EQ(file.rows.at(0).rm_kpa, std::nullopt);
}

TEST(CertificatesFile, ReadsDecimalCommasAndAnyElement) {
  const auto file = ReadCertificatesFile(
      "number;type;issuer;heat;section;grade;c;SI;nb;Fe\n1;3.1;Vandrek;K1;round 80;X;0,42;0,25;0,001;99,329\n", "certs.csv");
  ASSERT_TRUE(file.Good()) << ProblemsText(file.problems);
  EXPECT_EQ(file.rows.at(0).chemistry, (std::vector<ElementContent>{{"C", 420'000}, {"Si", 250'000}, {"Fe", 99'329'000}, {"Nb", 1'000}}));
}

TEST(CertificatesFile, SaysWhatIsWrong) {
  EXPECT_EQ(Problems("1,none,Vandrek,2026-13-01,K1,round 80,,42CrMo4,<0.42,0.7,,900,950,\n"),
            "certs.csv:2: type: \"none\" is no type of document; expected 2.1, 2.2, 3.1 or 3.2\n"
            "certs.csv:2: issued: \"2026-13-01\" is not a date; expected year-month-day, like 2026-03-04\n"
            "certs.csv:2: C: no number in \"<0.42\"; expected a number\n"
            "certs.csv:2: Re is higher than Rm; expected a yield strength below the tensile strength\n");
  EXPECT_EQ(Problems("1,3.1,Vandrek,,,round 80,,42CrMo4,101,,,,,\n"),
            "certs.csv:2: heat is empty; expected the heat as the document has it\n"
            "certs.csv:2: C: \"101\" % is more than all of it; expected mass %, 0 to 100\n");
  EXPECT_EQ(Problems("1,3.1,Vandrek,,K1,round 80,,42CrMo4,60,60,,,,\n"),
            "certs.csv:2: the elements add up to 120 %; expected mass % that add up to 100 or less\n");
  EXPECT_EQ(Problems("1,3.1,Vandrek,,K1,round 80,,42CrMo4,0.0000001,,,,,\n"),
            "certs.csv:2: C: \"0.0000001\" has 7 decimals; expected at most 6 decimals\n");
}

TEST(CertificatesFile, RefusesTheSameDocumentHeatAndSectionTwice) {
  const std::string_view line = "1,3.1,Vandrek,,K1,round 80,,42CrMo4,,,,,,\n";
  EXPECT_NE(Problems(std::string(line) + std::string(line)), "");
  EXPECT_EQ(Problems(std::string(line) + "1,3.1,Vandrek,,K1,round 60,,42CrMo4,,,,,,\n"), "");
  EXPECT_NE(ReadCertificatesFile("number,type,issuer,heat,section,grade,Xx\n", "c").problems.size(), 0U);
}

TEST(CertificatesFile, TakesAnAnalysisOfTheProductBesideThatOfTheHeat) {
  const std::string head = "number,type,issuer,heat,section,condition,grade,analysis,C,Rm\n";
  const auto read = [&](const std::string& rows) { return ReadCertificatesFile(head + rows, "c.csv"); };
  const auto file = read("1,3.1,Vandrek,K1,round 80,+QT,42CrMo4,,0.42,950\n1,3.1,Vandrek,K1,round 80,+QT,42CrMo4,Product,0.44,\n");
  ASSERT_TRUE(file.Good()) << ProblemsText(file.problems);
  EXPECT_FALSE(file.rows.at(0).product);
  EXPECT_TRUE(file.rows.at(1).product);
  EXPECT_EQ(file.rows.at(1).chemistry, (std::vector<ElementContent>{{"C", 440'000}}));
  const auto wrong = [&](const std::string& second) {
    return ProblemsText(read("1,3.1,Vandrek,K1,round 80,+QT,42CrMo4,heat,0.42,950\n" + second).problems);
  };
  EXPECT_EQ(
      wrong("1,3.1,Vandrek,K1,round 80,+N,42CrMo4,product,0.44,\n"),
      "c.csv:3: another grade, condition, type, date or validator than line 2 has of this document and heat; expected the same in both rows\n");
  EXPECT_EQ(wrong("1,3.1,Vandrek,K1,round 80,+QT,42CrMo4,piece,0.44,\n"),
            "c.csv:3: analysis: \"piece\" is not known; expected heat or product\n");
  EXPECT_EQ(wrong("1,3.1,Vandrek,K1,round 80,+QT,42CrMo4,product,,\n"),
            "c.csv:3: a product analysis without values; expected mass % of an element at least\n");
  EXPECT_NE(wrong("1,3.1,Vandrek,K1,round 80,+QT,42CrMo4,heat,0.44,\n"), "");        // the heat twice
  EXPECT_NE(wrong("1,3.1,Vandrek,K1,round 80,+QT,42CrMo4,product,0.44,950\n"), "");  // its tests twice
}

// Field codes of EN 10168:2004 (tests/reference/en10168_fields.csv, seen).
TEST(CertificatesFile, MayBeHeadedByTheFieldsOfEn10168) {
  const auto file = ReadCertificatesFile(
      "A03,A02,A01,B07,B09,B02,B04,C71 C,C72_Mn,C11,C12,C13,Z02\nC1,3.1,Vandrek,M2208,round 80,42CrMo4,+QT,0.42,0.70,700,950,14,2026-03-04\n",
      "c.csv");
  ASSERT_TRUE(file.Good()) << file.problems.front().Text();
  const CertificatesFileRow& row = file.rows.at(0);
  EXPECT_EQ(row.number + " " + row.issuer + " " + row.heat + " " + row.grade + " " + row.condition + " " + row.issued,
            "C1 Vandrek M2208 42CrMo4 +QT 2026-03-04");
  EXPECT_EQ(row.chemistry, (std::vector<ElementContent>{{"C", 420'000}, {"Mn", 700'000}}));
  EXPECT_EQ(row.re_kpa, 700'000);
  EXPECT_EQ(row.rm_kpa, 950'000);
  EXPECT_EQ(row.a_millipercent, 14'000);
  EXPECT_FALSE(ReadCertificatesFile("A03,A02,A01,B07,B09,B02,C71\n", "c.csv").Good());     // C71 of what?
  EXPECT_FALSE(ReadCertificatesFile("A03,number,A02,A01,B07,B09,B02\n", "c.csv").Good());  // the number twice
}

}  // namespace
}  // namespace heatkeep::intake
