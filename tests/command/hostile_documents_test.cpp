// Documents nobody should send: refused with words, nothing filed; what is only odd is kept harmless.
#include <fstream>

#include "tests/command/works.h"
#include "tests/reports/invented_pdf.h"

namespace heatkeep::command {
namespace {

struct HostileDocuments : Works {
  void TakeInOne() { TakeIn("A,bar,Vandrek,K1,42CrMo4,round 80,6000,0,3.1,,\n"); }
  std::string Table(const std::string& number = "C1") {
    return File("c.csv", "number,type,issuer,heat,section,grade,issued\n" + number + ",3.1,Vandrek,K1,round 80,42CrMo4,2026-01-05\n");
  }
  std::int64_t Filed() { return Number("select (select count(*) from book.document) + (select count(*) from book.document_file) as n"); }
  void TearDown() override { EXPECT_EQ(Broken(), ""); }
};

TEST_F(HostileDocuments, APdfThatIsNoneIsRefusedAndNothingIsFiled) {
  TakeInOne();
  const std::string whole = InventedPdf({"INVENTED"});
  const std::vector<std::pair<std::string, std::string>> files{{"words.pdf", "this is no PDF"},
                                                               {"page.pdf", "<html><script>alert(1)</script></html>"},
                                                               {"program.pdf", std::string("MZ\x90\0\x03", 5) + std::string(2000, '\0')},
                                                               {"archive.pdf", "PK\x03\x04" + whole},
                                                               {"late.pdf", std::string(1100, '\0') + whole},
                                                               {"cut.pdf", whole.substr(0, whole.size() / 2)}};
  for (const auto& [name, bytes] : files) {
    const Ran ran = As("quality", {"certificate", "add", Table(), "--scan", File(name, bytes)});
    EXPECT_EQ(ran.code, 1) << name << ran;
    EXPECT_TRUE(Has(ran.err, "expected a whole PDF, PNG, JPEG or TIFF file")) << name << ran;
  }
  const Ran empty = As("quality", {"certificate", "add", Table(), "--scan", File("empty.pdf", "")});
  EXPECT_NE(empty.code, 0);
  EXPECT_TRUE(Has(empty.err, "the file is empty")) << empty;
  EXPECT_EQ(Filed(), 0);
}

// The size is asked for before a byte is read: three hundred thousand MiB, which no memory here holds, are refused as three hundred are.
TEST_F(HostileDocuments, AFileOverTheSettingIsRefusedBySizeBeforeItIsRead) {
  TakeInOne();
  ASSERT_EQ(As("quality", {"certificate", "add", Table()}).code, 0);
  for (const std::uintmax_t mib : {std::uintmax_t{300}, std::uintmax_t{300'000}}) {
    const std::string scan = File("large.pdf", "%PDF-1.4\n");
    std::filesystem::resize_file(scan, mib * 1048576);
    const Ran attached = As("quality", {"certificate", "attach", "C1", "--scan", scan});
    EXPECT_NE(attached.code, 0);
    EXPECT_TRUE(Has(attached.err, "large.pdf: more than 20 MiB; expected a smaller file")) << attached;
    EXPECT_FALSE(As("quality", {"certificate", "replace", Table(), "--reason", "x", "--scan", scan}).code == 0);
    const std::string table = File("large.csv", "number,type\n");
    std::filesystem::resize_file(table, mib * 1048576);
    const Ran typed = As("quality", {"certificate", "add", table});
    EXPECT_NE(typed.code, 0);
    EXPECT_TRUE(Has(typed.err, "large.csv: more than 64 MiB")) << typed;
    EXPECT_TRUE(Has(As("quality", {"grades", "correct", table, "--reason", "x"}).err, "large.csv: more than 64 MiB"));
    std::filesystem::remove(scan);
    std::filesystem::remove(table);
  }
  EXPECT_EQ(Number("select count(*) as n from book.document_file"), 0);
}

TEST_F(HostileDocuments, BrokenEncodingIsRefusedWithItsLineOrReadAsWhatItIs) {
  TakeInOne();
  const std::string head = "number,type,issuer,heat,section,grade,issued\n", row = ",3.1,Vandrek,K1,round 80,42CrMo4,2026-01-05\n";
  const auto add = [&](const std::string& bytes) { return As("quality", {"certificate", "add", File("b.csv", bytes)}); };
  for (const std::string& bytes : {"\xEF\xBB\xBF" + head + "C\xFF\xFE" + row, head + "C\x81" + row, "\xFF\xFE" + head + "x",
                                   head +
                                       std::string("C\0"
                                                   "1",
                                                   3) +
                                       row}) {
    const Ran ran = add(bytes);
    EXPECT_EQ(ran.code, 2) << ran;
    EXPECT_TRUE(Has(ran.err, "b.csv")) << ran;
    EXPECT_TRUE(Has(ran.err, "; expected ")) << ran;
  }
  EXPECT_EQ(Filed(), 0);
  const Ran western = add(head + "C\xE4" + row);  // Windows-1252, as a spreadsheet writes it
  EXPECT_EQ(western.code, 0) << western;
  EXPECT_EQ(Word("select number as w from book.document"), "C\xC3\xA4");
}

// Texts that a spreadsheet would compute, and every quote there is: kept letter by letter, found again by them, and no query falls apart.
TEST_F(HostileDocuments, FormulasAndQuotesAreTextAndStayIt) {
  const std::string formula = "=HYPERLINK(\"http://x\";1)",
                    quotes = "O'Neil \"Q\" `$$` \\' \xE2\x80\x99\xE2\x80\x9C; drop table book.lot; --";
  const auto cell = [](const std::string& text) {
    std::string all = "\"";
    for (const char c : text) all += c == '"' ? std::string("\"\"") : std::string(1, c);
    return all + "\"";
  };
  TakeIn("A,drop,Vandrek," + cell(formula) + ",42CrMo4,round 80,900,1,3.1,,\nB,drop,Vandrek," + cell(quotes) +
         ",42CrMo4,round 80,800,1,3.1,,\n");
  const std::string head = "number,type,issuer,heat,section,grade,issued,validated_by\n";
  const auto row = [&](const std::string& text) {
    return cell(text) + ",3.1,Vandrek," + cell(text) + ",round 80,42CrMo4,2026-01-05," + cell("A. O'Lund, @SUM(A1), independent") + "\n";
  };
  const Ran filed = As("quality", {"certificate", "add", File("q.csv", head + row(formula) + row(quotes))});
  ASSERT_EQ(filed.code, 0) << filed;
  for (const std::string& text : {formula, quotes}) {
    const Json shown = Asked("saw", {"certificate", "show", text});
    EXPECT_EQ(shown.at("number"), text);
    EXPECT_EQ(shown.at("lots").at(0).at("heat"), text);
    EXPECT_EQ(shown.at("validated_by").at(0).at("position"), "@SUM(A1)");
    EXPECT_EQ(Asked("clerk", {"papers", "values", text}).size(), 1u);
    EXPECT_EQ(Asked("clerk", {"papers", "list", text}).at(0).at("heat"), text);
  }
  // what goes out is a text there too: a spreadsheet that opens the CSV computes nothing
  ASSERT_EQ(As("owner", {"report", "drops", "--to", PathOf("d.csv"), "--to", PathOf("d.xlsx")}).code, 0);
  std::ifstream in(PathOf("d.csv"));
  const std::string csv{std::istreambuf_iterator<char>(in), {}};
  EXPECT_TRUE(Has(csv, "\"'=HYPERLINK(\"\"http://x\"\";1)\"")) << csv;
  EXPECT_TRUE(Has(csv, "O'Neil \"\"Q\"\"")) << csv;
  for (const std::string& text : {formula, quotes}) {
    const Ran trace = As("quality", {"report", "trace", "heat", text, "--mill", "Vandrek", "--to", PathOf("t.pdf")});
    EXPECT_EQ(trace.code, 0) << trace;
  }
  EXPECT_EQ(Number("select count(*) as n from book.lot"), 2);
}

TEST_F(HostileDocuments, NumbersThatNobodyMeasuredAreRefusedWithTheirCells) {
  TakeInOne();
  const std::string head = "number,type,issuer,heat,section,grade,issued,C,Rm\n";
  for (const char* values : {"=1+1,900", "0.4,=900", "1e9,900", "nan,900", "-0.1,900", "0.4,99999999999999999999", "0.4,1'000"}) {
    const Ran ran =
        As("quality", {"certificate", "add", File("n.csv", head + "C1,3.1,Vandrek,K1,round 80,42CrMo4,2026-01-05," + values + "\n")});
    EXPECT_EQ(ran.code, 2) << values << ran;
    EXPECT_TRUE(Has(ran.err, "n.csv:2: ")) << ran;
  }
  EXPECT_EQ(Filed(), 0);
}

}  // namespace
}  // namespace heatkeep::command
