// Documents with their files and validators by the command line. What makes a 3.1 and a 3.2: EN 10204:2004 clause 4, from memory.
#include <fstream>

#include "schema/terms/sha256.h"
#include "tests/command/works.h"
#include "tests/reports/invented_pdf.h"

namespace heatkeep::command {
namespace {

struct CertificateFile : Works {
  void TakeInTwo() { TakeIn("A,bar,Vandrek,K1,42CrMo4,round 80,6000,0,3.1,,\nB,bar,Vandrek,K2,42CrMo4,round 60,6000,0,3.1,,\n"); }
  std::string Table(const std::string& type, const std::string& number = "C1") {
    const std::string end = ",42CrMo4,2026-01-05\n";
    return File("c.csv",
                "number,type,issuer,heat,section,grade,issued\n" + number + "," + type + ",Vandrek,K1,round 80" + end + number + "," +
                    type + ",Vandrek,K2,round 60" + end);
  }
  std::string Read(const std::string& name) {
    std::ifstream in(PathOf(name), std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
  }
  void TearDown() override { EXPECT_EQ(Broken(), ""); }
  const std::string pdf = InventedPdf({"INVENTED"}) + std::string("\0\xFF behind the end", 17);
};

TEST_F(CertificateFile, OneDocumentOfManyLotsKeepsItsFileByteForByte) {
  TakeInTwo();
  const Ran filed = As("clerk", {"certificate", "file", Table("3.1"), "--scan", File("c.pdf", pdf)});
  ASSERT_EQ(filed.code, 0) << filed;
  EXPECT_TRUE(Has(filed.out, "1 document filed for 2 lots")) << filed;
  ASSERT_EQ(As("quality", {"papers", "accept", "Vandrek", "C1"}).code, 0);
  EXPECT_EQ(Number("select count(*) as n from book.lot where papers = '3.1'"), 2);
  const Ran out = As("saw", {"certificate", "export", "C1", "--to", PathOf("out.pdf")});
  ASSERT_EQ(out.code, 0) << out;
  EXPECT_EQ(Read("out.pdf"), pdf);
  EXPECT_TRUE(Has(out.out, Sha256Hex(pdf))) << out;
  EXPECT_TRUE(Has(As("saw", {"certificate", "show", "C1"}).out, "file SHA-256 " + Sha256Hex(pdf)));
}

TEST_F(CertificateFile, WhoValidatedItIsEnteredByCommandAndMakesTheType) {
  TakeInTwo();
  EXPECT_EQ(As("quality", {"certificate", "add", Table("3.2"), "--validated-by", "A. Lund, laboratory, independent"}).code, 1);
  EXPECT_EQ(As("quality", {"certificate", "add", Table("3.1"), "--validated-by", "A. Lund, works manager, manufacturer"}).code, 1);
  EXPECT_EQ(As("quality", {"certificate", "add", Table("3.1"), "--validated-by", "A. Lund"}).code, 2);
  const Ran filed = As(
      "quality", {"certificate", "add", Table("3.2"), "--validated-by", "A. Lund, laboratory, independent; B. Roe, inspector, official"});
  ASSERT_EQ(filed.code, 0) << filed;
  const Json shown = Asked("saw", {"certificate", "show", "C1"});
  EXPECT_EQ(shown["type"], "3.2");
  EXPECT_EQ(shown["validated_by"][1]["name"], "B. Roe");
  EXPECT_EQ(shown["validated_by"][1]["for"], "official");
}

TEST_F(CertificateFile, AReplacedVersionStaysAndIsShownWithItsFile) {
  TakeInTwo();
  ASSERT_EQ(As("quality", {"certificate", "add", Table("3.1"), "--scan", File("one.pdf", pdf)}).code, 0);
  const std::string second = InventedPdf({"INVENTED, corrected"});
  const Ran replaced =
      As("quality",
         {"certificate", "replace", Table("3.1"), "--reason", "the issuer's letter of May", "--scan", "C1=" + File("two.pdf", second)});
  ASSERT_EQ(replaced.code, 0) << replaced;
  const Ran shown = As("planner", {"certificate", "show", "C1"});
  EXPECT_TRUE(Has(shown.out, "version 1: 3.1 issued 2026-01-05, file SHA-256 " + Sha256Hex(pdf) + ", REPLACED by version 2\n")) << shown;
  EXPECT_TRUE(Has(shown.out,
                  "version 2: 3.1 issued 2026-01-05, file SHA-256 " + Sha256Hex(second) + ", filed because: the issuer's letter of May\n"))
      << shown;
  for (const auto& [version, bytes] : std::vector<std::pair<std::string, std::string>>{{"1", pdf}, {"2", second}}) {
    ASSERT_EQ(As("planner", {"certificate", "export", "C1", "--version", version, "--to", PathOf("v.pdf")}).code, 0);
    EXPECT_EQ(Read("v.pdf"), bytes);
  }
  EXPECT_EQ(Asked("planner", {"certificate", "show", "C1", "--version", "1"})["file_sha256"], Sha256Hex(pdf));
}

TEST_F(CertificateFile, AScanThatBelongsNowhereIsRefusedAndNothingIsFiled) {
  TakeInTwo();
  const std::string two = File(
      "two.csv",
      "number,type,issuer,heat,section,grade,issued\nC1,3.1,Vandrek,K1,round 80,42CrMo4,2026-01-05\nC2,3.1,Vandrek,K2,round 60,42CrMo4,2026-01-05\n");
  const std::string scan = File("c.pdf", pdf);
  for (const Words& told : {Words{"--scan", scan},
                            {"--scan", "C9=" + scan},
                            {"--scan", "C1=" + scan, "--scan", "C1=" + scan},
                            {"--validated-by", "A, B, independent"}}) {
    Words words{"certificate", "add", two};
    words.insert(words.end(), told.begin(), told.end());
    EXPECT_EQ(As("quality", words).code, 2) << told[1];
  }
  EXPECT_NE(As("quality", {"certificate", "add", two, "--scan", "C1=" + PathOf("nowhere.pdf")}).code, 0);
  EXPECT_EQ(Number("select count(*) as n from book.document"), 0);
  ASSERT_EQ(As("quality", {"certificate", "add", two, "--scan", "C2=" + scan}).code, 0);
  EXPECT_EQ(Word("select string_agg(number, ',') as w from book.document where file_sha256 is not null"), "C2");
  EXPECT_EQ(As("quality", {"certificate", "export", "C1", "--to", PathOf("x.pdf")}).code, 2);
  EXPECT_FALSE(std::filesystem::exists(PathOf("x.pdf")));
}

}  // namespace
}  // namespace heatkeep::command
