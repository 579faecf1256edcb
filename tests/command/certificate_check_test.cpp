// `heatkeep certificate show|check` on a book; the analysis is case H08 of tests/reference/heat_analysis_cases.csv (constructed).
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

using CertificateCheck = Works;

TEST_F(CertificateCheck, EveryLotIsHeldAgainstItsGradeInTheBook) {
  TakeIn("A1,bar,Vandrek,R5512,316L,round 50,4000,2,3.1,,\n");
  const std::string file = File("c.csv", "number,type,issuer,issued,heat,section,grade,C,Mn,P,S,Si,Cr,Ni,Mo,N\nC1,3.1,Vandrek,2026-01-05,R5512,round 50,316L,0.019,1.42,0.031,0.024,0.41,16.62,9.98,1.98,0.051\n");
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

}  // namespace
}  // namespace heatkeep::command
