// `heatkeep certificate show|check` on a book, and limits put right; the first analysis is case H08 of
// tests/reference/heat_analysis_cases.csv (constructed).
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

using CertificateCheck = Works;

TEST_F(CertificateCheck, EveryLotIsHeldAgainstItsGradeInTheBook) {
  TakeIn("A1,bar,Vandrek,R5512,316L,round 50,4000,2,3.1,,\n");
  const std::string file = File(
      "c.csv",
      "number,type,issuer,issued,heat,section,grade,C,Mn,P,S,Si,Cr,Ni,Mo,N\nC1,3.1,Vandrek,2026-01-05,R5512,round 50,316L,0.019,1.42,0.031,0.024,0.41,16.62,9.98,1.98,0.051\n");
  EXPECT_EQ(As("quality", {"certificate", "add", file}).code, 0);  // no limits are in the book yet
  EXPECT_EQ(As("quality", {"certificate", "check", "C1"}).code, 1);
  EXPECT_TRUE(Has(As("owner", {"grades", "limits"}).out, "limits added"));
  const Ran ran = As("quality", {"certificate", "check", "C1", "--json"});
  EXPECT_EQ(ran.code, 1) << ran;
  const Json lot = Json::parse(ran.out).at("lots").at(0);
  EXPECT_EQ(lot.at("overall"), "violates");
  std::string wrong;
  for (const Json& line : lot.at("elements")) {
    if (line.at("verdict") != "ok") wrong += line.at("element").get<std::string>() + " " + line.at("verdict").get<std::string>() + ";";
  }
  EXPECT_EQ(wrong, "Mo low;Ni low;");
  EXPECT_TRUE(Has(As("quality", {"certificate", "check", "C1"}).out, "Ni 9.98 %, at least 10.00")) << ran;
  EXPECT_EQ(Asked("saw", {"certificate", "show", "C1"}).at("lots").at(0).at("heat_analysis").at("Ni"), 9.98);
  EXPECT_EQ(As("quality", {"certificate", "show", "C9"}).code, 2);
}

constexpr const char* kLimitsHead = "grade,condition,over_mm,upto_mm,property,min,max,unit,source,edition_or_note,evidence\n";

// 42CrMo4 +QT over 40 to 100 mm: EN 10083-3:2006 from memory, as seed/reference/mechanical_limits.csv says it.
TEST_F(CertificateCheck, TestsAreHeldAgainstTheLimitsOfTheirConditionAndSize) {
  ASSERT_EQ(As("owner", {"grades", "limits"}).code, 0);
  EXPECT_EQ(As("owner", {"grades", "limits"}).out, "0 limits added\n");
  TakeIn("A1,bar,Vandrek,K1,42CrMo4,round 80,4000,2,3.1,,\n");
  const std::string head =
      "number,type,issuer,issued,heat,section,condition,grade,Rm,Re,A\nC1,3.1,Vandrek,2026-01-05,K1,round 80,,42CrMo4,";
  ASSERT_EQ(As("clerk", {"certificate", "file", File("c.csv", head + "880,700,13\n")}).code, 0);
  const Ran unknown = As("quality", {"certificate", "check", "C1"});  // no condition: no limit of it is known
  EXPECT_EQ(unknown.code, 1);
  EXPECT_TRUE(Has(unknown.out, "Rm: no limit known\n")) << unknown;
  EXPECT_TRUE(Has(unknown.out, "heat K1, 42CrMo4, round 80: incomplete\n")) << unknown;
  const Ran accepted = As("quality", {"papers", "accept", "Vandrek", "C1"});
  EXPECT_EQ(accepted.code, 0) << accepted;
  EXPECT_TRUE(Has(accepted.err, "no limit known: heat K1 A, Re, Rm")) << accepted;
}

TEST_F(CertificateCheck, ATestBelowItsMinimumIsSaidWithLimitAndSourceAndRefusesAcceptance) {
  ASSERT_EQ(As("owner", {"grades", "limits"}).code, 0);
  const std::string delivery =
      "note,supplier,line,mill,heat,grade,section,condition,length,count,place,papers,read_from\nN1,Vandrek,1,Vandrek,K1,42CrMo4,round 80,+QT,6000,1,B1-1,awaited,metal\n";
  const Ran received = As("clerk", {"receive", File("n.csv", delivery)});
  ASSERT_EQ(received.code, 0) << received;
  const std::string head = "A03,A02,A01,Z02,B07,B09,B04,B02,C12,C11,C13\nC1,3.1,Vandrek,2026-01-05,K1,round 80,+QT,42CrMo4,";
  const Ran refused = As("quality", {"certificate", "add", File("low.csv", head + "880,700,13\n")});
  EXPECT_EQ(refused.code, 1) << refused;
  EXPECT_TRUE(Has(refused.err, "Rm 880 MPa, 42CrMo4 +QT allows at least 900 (EN 10083-3")) << refused;
  ASSERT_EQ(As("clerk", {"certificate", "file", File("low.csv", head + "880,700,13\n")}).code, 0);
  const Ran check = As("quality", {"certificate", "check", "C1", "--json"});
  EXPECT_EQ(check.code, 1);
  const Json lot = Json::parse(check.out).at("lots").at(0);
  EXPECT_EQ(lot.at("overall"), "violates");
  std::string verdicts;
  for (const Json& t : lot.at("tests")) {
    verdicts += t.at("property").get<std::string>() + " " + t.at("verdict").get<std::string>() + " " + t.at("min").dump() + ";";
    EXPECT_TRUE(Has(t.at("source"), "EN 10083-3")) << t;
    EXPECT_EQ(t.at("evidence"), "FROM MEMORY, added");
  }
  EXPECT_EQ(verdicts, "Rm low 900.0;Re ok 650.0;A ok 12.0;");
  const Ran accepted = As("quality", {"papers", "accept", "Vandrek", "C1"});
  EXPECT_EQ(accepted.code, 1) << accepted;
  EXPECT_EQ(accepted.out, "");
  EXPECT_TRUE(Has(accepted.err, "the document is not accepted: heat K1: Rm 880 MPa")) << accepted;
  const Json verdict = Asked("clerk", {"papers", "verdicts", "C1"});
  EXPECT_EQ(verdict.size(), 3u) << verdict;
  EXPECT_EQ(verdict.at(2).at("verdict"), "low") << verdict;
}

// Product analysis: EN 10083-3 (from memory) lets C of 42CrMo4 (0.38 to 0.45) lie 0.02 outside; a heat analysis not at all.
TEST_F(CertificateCheck, AProductAnalysisIsEnteredBesideThatOfTheHeatAndMayLieOutsideByItsDeviation) {
  ASSERT_EQ(As("owner", {"grades", "limits"}).code, 0);
  TakeIn("A1,bar,Vandrek,K1,42CrMo4,round 80,4000,2,3.1,,\n");
  const std::string head = "A03,A02,A01,Z02,B07,B09,B02,analysis,C71 C,C72 Si,C73 Mn,C74 P,C75 S,C76 Cr,C77 Mo\n";
  const auto row = [](const std::string& kind, const std::string& c) {
    return "C1,3.1,Vandrek,2026-01-05,K1,round 80,42CrMo4," + kind + "," + c + ",0.25,0.75,0.012,0.020,1.05,0.20\n";
  };
  EXPECT_EQ(As("quality", {"certificate", "add", File("c.csv", head + row("heat", "0.46"))}).code, 1);
  const Ran over = As("quality", {"certificate", "add", File("c.csv", head + row("heat", "0.44") + row("product", "0.48"))});
  EXPECT_EQ(over.code, 1);
  EXPECT_TRUE(Has(over.err, "product analysis C 0.48 %, 42CrMo4 allows at most 0.45 and 0.02 more for a product analysis (EN 10083-3"))
      << over;
  const Ran filed = As("quality", {"certificate", "add", File("c.csv", head + row("heat", "0.44") + row("product", "0.47"))});
  ASSERT_EQ(filed.code, 0) << filed;
  EXPECT_TRUE(Has(filed.out, "1 document filed for 1 lot")) << filed;
  const Json shown = Asked("saw", {"certificate", "show", "C1"}).at("lots").at(0);
  EXPECT_EQ(shown.at("heat_analysis").at("C"), 0.44);
  EXPECT_EQ(shown.at("product_analysis").at("C"), 0.47);
  const Json lot = Json::parse(As("quality", {"certificate", "check", "C1", "--json"}).out).at("lots").at(0);
  EXPECT_EQ(lot.at("overall"), "conforms") << lot;
  for (const Json& line : lot.at("product").at("elements")) {
    EXPECT_EQ(line.at("verdict"), "ok");
    if (line.at("element") == "C") { EXPECT_EQ(line.at("deviation_above"), 0.02); }
  }
  EXPECT_TRUE(Has(As("quality", {"certificate", "check", "C1"}).out, "product analysis\n"));
}

TEST_F(CertificateCheck, ALimitStoredWronglyIsCorrectedFromATableAndItsDocumentsAreLookedAtAgain) {
  const auto table = [&](const std::string& rows) { return File("limits.csv", kLimitsHead + rows); };
  ASSERT_EQ(As("quality", {"grades", "limits", table("42CrMo4,,,100,Rm,800,,MPa,our order,,typed\n")}).out, "1 limit added\n");
  TakeIn("A1,bar,Vandrek,K1,42CrMo4,round 80,4000,2,3.1,,\n");
  ASSERT_EQ(As("quality",
               {"certificate", "add",
                File("c.csv", "number,type,issuer,issued,heat,section,grade,Rm\nC1,3.1,Vandrek,2026-01-05,K1,round 80,42CrMo4,880\n")})
                .code,
            0);
  EXPECT_EQ(As("quality", {"grades", "correct", table("42CrMo4,,,,Rm,900,,MPa,our order,,\n"), "--reason", "x"}).code,
            2);  // how it is known is missing
  EXPECT_EQ(As("planner", {"grades", "correct", table("42CrMo4,,,100,Rm,900,,MPa,our order,,typed\n"), "--reason", "x"}).code, 1);
  const Words correct{"grades", "correct", table("42CrMo4,,,100,Rm,900,,MPa,our order,,typed\n"), "--reason", "the order says 900"};
  const Ran corrected = As("quality", correct);
  ASSERT_EQ(corrected.code, 0) << corrected;
  EXPECT_EQ(corrected.out, "1 limit replaced by 1; accepted under them: 1 document (`heatkeep grades look-again`)\n");
  EXPECT_TRUE(Has(As("quality", correct).out, "nothing was changed"));
  const Json changed = Asked("owner", {"grades", "changed", "42CrMo4"});
  EXPECT_EQ(changed.at(0).at("was"), "at least 800 MPa");
  EXPECT_EQ(changed.at(0).at("became"), "at least 900 MPa");
  EXPECT_EQ(changed.at(0).at("reason"), "the order says 900");
  EXPECT_EQ(changed.at(0).at("corrected_by"), "test_quality");
  const Json again = Asked("quality", {"grades", "look-again"});
  EXPECT_EQ(again.at(0).at("number"), "C1");
  EXPECT_EQ(again.at(0).at("wrong"), "heat K1: Rm 880 MPa, 42CrMo4 allows at least 900 (our order)");
  EXPECT_EQ(As("quality", {"certificate", "check", "C1"}).code, 1);
  EXPECT_EQ(Asked("saw", {"grades", "test-limits", "42CrMo4"}).size(), 1u);
  const Ran withdrawn =
      As("quality", {"grades", "withdraw", "42CrMo4", "--property", "Rm", "--upto", "100 mm", "--reason", "of another order"});
  EXPECT_EQ(withdrawn.out, "1 limit withdrawn; accepted under them: 0 documents\n") << withdrawn;
  EXPECT_EQ(As("quality", {"grades", "withdraw", "42CrMo4", "--reason", "x"}).code, 2);
  EXPECT_EQ(Asked("quality", {"grades", "changed"}).size(), 2u);
  EXPECT_EQ(Broken(), "");
}

}  // namespace
}  // namespace heatkeep::command
