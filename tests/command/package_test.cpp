// The certificate package by the command line: scenario 13 (21 of 25, papers too weak for the rest) and the refusals. EN 10204:2004
// clause 6 and ISO 10474:2013 clause 6 from memory; what a package holds is common practice, no source. The package is opened
// again with poppler and qpdf.
#include <fstream>
#include <sstream>

#include "schema/terms/sha256.h"
#include "tests/command/works.h"
#include "tests/reports/invented_pdf.h"
#include "tests/reports/read_back.h"

namespace heatkeep::command {
namespace {

std::string BytesOf(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

int Count(const std::string& text, const std::string& part) {
  int n = 0;
  for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + part.size())) ++n;
  return n;
}

struct Packages : Works {
  // P and Q of scenario 13; 21 x 280 of P are cut for the 25 that O13 asks for.
  void Scenario13() {
    TakeIn("P,bar,Vandrek,T901,S355J2,round 100,6000,0,3.1,,\nQ,bar,Vandrek,T902,S355J2,round 100,6000,0,2.2,,\n");
    Certify("88-901,3.1,Vandrek,T901,round 100,S355J2\n88-902,2.2,Vandrek,T902,round 100,S355J2\n");
    Want("A", "O13,10,Pallant,round 100,S355J2,280,25,3.1,,,\n");
    ASSERT_EQ(Plan("A"), 1);
    ASSERT_EQ(As("saw", {"cut", "record", "--plan", "1"}).code, 0);
  }
  void Attach(const std::string& number, const std::string& bytes) {
    const Ran ran = As("quality", {"certificate", "attach", number, "--scan", File(number + ".scan", bytes)});
    ASSERT_EQ(ran.code, 0) << ran;
  }
  Ran Ship(int count, const std::string& note = "D13") {
    return As("planner", {"ship", "O13/10=" + std::to_string(count), "--note", note, "--customer", "Pallant"});
  }
  Ran Make(const Words& more, const std::string& who = "quality") {
    Words words{"certificate", "package", "--to", PathOf("package.pdf")};
    words.insert(words.end(), more.begin(), more.end());
    return As(who, words);
  }
  // The words in the order they were painted, one blank between: what a cell breaks into lines stays together.
  std::string Text(const std::string& more = {}) {
    std::istringstream in(OutputOf("pdftotext -raw " + more + " '" + PathOf("package.pdf") + "' -"));
    std::string text;
    for (std::string word; in >> word;) text += (text.empty() ? "" : " ") + word;
    return text;
  }
  bool Made() { return std::filesystem::exists(PathOf("package.pdf")); }
  std::int64_t Kept() { return Number("select count(*) as n from api.certificate_packages"); }
  void TearDown() override { EXPECT_EQ(Broken(), ""); }
  const std::string mill_document = InventedPdf({"INVENTED 88-901 heat T901 first page", "INVENTED 88-901 second page"});
};

TEST_F(Packages, For21Of25HoldsTheUnchangedDocumentAndSaysThePart) {
  Scenario13();
  Attach("88-901", mill_document);
  const Ran shipped = Ship(21);
  ASSERT_EQ(shipped.code, 0) << shipped;
  const Ran ran = Make({"--order", "O13", "--shop", "Ostrel Shaftworks"});
  ASSERT_EQ(ran.code, 0) << ran;
  EXPECT_TRUE(Has(ran.out, "4 pages, 1 document, SHA-256 ")) << ran;
  EXPECT_TRUE(Has(ran.out, "kept as package 1")) << ran;
  const std::string cover = Text("-f 1 -l 1"), delivery = Text("-f 2 -l 2");
  for (const char* part : {"Certificate package", "order O13", "for Pallant", "from Ostrel Shaftworks", "O13/10", "21 of 25", "280 mm",
                           "T901", "3.1 no. 88-901", "3 (D1-1)", "no inspection document"})
    EXPECT_TRUE(Has(cover, part)) << part << "\n" << cover;
  EXPECT_FALSE(Has(cover, "T902")) << cover;  // nothing of the other heat went into the order
  for (const char* part : {"Delivery note D13", "T901", "21 of 25", "EN 10204:2004 clause 6", "21 of 25 pieces of 280 mm"})
    EXPECT_TRUE(Has(delivery, part)) << part << "\n" << delivery;
  // pages 3 and 4 are the mill's own, of their own size, their content as it was
  EXPECT_TRUE(Has(Text("-f 3 -l 3"), "INVENTED 88-901 heat T901 first page"));
  EXPECT_TRUE(Has(OutputOf("pdfinfo -f 3 -l 4 '" + PathOf("package.pdf") + "'"), "420 x 298"));
  const std::string bytes = BytesOf(PathOf("package.pdf"));
  EXPECT_EQ(Count(bytes, "stream\n" + InventedContent("INVENTED 88-901 heat T901 first page")), 2);  // its page, and the file attached
  // the file itself comes out of the package byte for byte, and the cover says its SHA-256
  OutputOf("pdfdetach -saveall -o '" + PathOf("") + "' '" + PathOf("package.pdf") + "'");
  EXPECT_EQ(BytesOf(PathOf("D1_Vandrek_88-901_v1.pdf")), mill_document);
  const std::string sha256 = Sha256Hex(mill_document);  // broken into lines on the cover
  std::string unbroken = cover;
  std::erase(unbroken, ' ');
  EXPECT_TRUE(Has(unbroken, sha256)) << cover;
  EXPECT_EQ(OutputOf("qpdf --check '" + PathOf("package.pdf") + "' 2>&1 | tail -n 2 | head -n 1"),
            "No syntax or stream encoding errors found; the file may still contain\n");
  EXPECT_EQ(Asked("quality", {"certificate", "packages"})[0]["sha256"], Sha256Hex(bytes));
  EXPECT_TRUE(Has(Word("select words as w from api.documents_passed"), "21 of 25"));
}

TEST_F(Packages, AreTheSameBytesForTheSameDataAndKeptOnce) {
  Scenario13();
  Attach("88-901", mill_document);
  ASSERT_EQ(Ship(21).code, 0);
  ASSERT_EQ(Make({"--note", "D13"}).code, 0);
  const std::string first = BytesOf(PathOf("package.pdf"));
  const Ran again = Make({"--note", "D13"});
  EXPECT_TRUE(Has(again.out, "the same as package 1")) << again;
  EXPECT_EQ(BytesOf(PathOf("package.pdf")), first);
  EXPECT_EQ(Kept(), 1);
  EXPECT_EQ(Number("select count(*) as n from api.documents_passed"), 1);
  EXPECT_EQ(Make({"--note", "D13", "--order", "O13"}).code, 0);  // says something else, is another one
  EXPECT_EQ(Kept(), 2);
}

TEST_F(Packages, OfAnOrderNotDeliveredYetSaySo) {
  Scenario13();
  Attach("88-901", mill_document);
  ASSERT_EQ(Make({"--order", "O13"}).code, 0);
  EXPECT_TRUE(Has(Text("-f 1 -l 2"), "not delivered yet"));
  EXPECT_EQ(Number("select count(*) as n from api.documents_passed"), 0);
}

TEST_F(Packages, ByIso10474HaveTheAdditionalDocumentAsAPage) {
  Scenario13();
  Attach("88-901", mill_document);
  ASSERT_EQ(Ship(21).code, 0);
  EXPECT_EQ(Make({"--note", "D13", "--rule", "ISO 10474"}).code, 1);
  const Ran ran = Make({"--note", "D13", "--rule", "ISO 10474", "--additional", "OS-77"});
  ASSERT_EQ(ran.code, 0) << ran;
  const std::string page = Text("-f 3 -l 3");
  for (const char* part :
       {"Additional document (ISO 10474:2013 clause 6)", "OS-77", "T901", "21 of 25", "280 mm", "It is no inspection document"})
    EXPECT_TRUE(Has(page, part)) << part << "\n" << page;
  EXPECT_TRUE(Has(Text("-f 4 -l 4"), "INVENTED 88-901"));
}

TEST_F(Packages, AreRefusedWithEveryReasonAndNothingIsWritten) {
  Scenario13();
  TakeIn("R,bar,Vandrek,T903,S355J2,round 100,3000,0,3.1,,\n");
  Certify("88-903,3.1,Vandrek,T903,round 100,S355J2\n");
  ASSERT_EQ(Plan("A"), 2);
  ASSERT_EQ(As("saw", {"cut", "record", "--plan", "2"}).code, 0);
  ASSERT_EQ(As("quality", {"hold", "heat", "T901", "--reason", "letter of the mill"}).code, 0);
  const Ran ran = Make({"--order", "O13"});
  EXPECT_EQ(ran.code, 1) << ran;
  EXPECT_TRUE(Has(ran.err, "21 pieces of heat T901 cut from " + TagOf("P") + ": held by test_quality: letter of the mill")) << ran;
  EXPECT_TRUE(Has(ran.err, "of document 88-901 of Vandrek only typed values are here")) << ran;
  EXPECT_TRUE(Has(ran.err, "of document 88-903 of Vandrek only typed values are here")) << ran;
  // replaced by the issuer with a weaker one: the papers no longer reach
  const std::string weaker =
      File("w.csv", "number,type,issuer,heat,section,grade,issued\n88-903,2.2,Vandrek,T903,round 100,S355J2,2026-02-05\n");
  ASSERT_EQ(
      As("quality",
         {"certificate", "replace", weaker, "--reason", "typed 3.1 by mistake", "--scan", File("w.pdf", InventedPdf({"INVENTED 2.2"}))})
          .code,
      0);
  const Ran weak = Make({"--order", "O13"});
  EXPECT_TRUE(Has(weak.err, "its papers are weaker than asked for (2.2, not 3.1)")) << weak;
  EXPECT_FALSE(Made());
  EXPECT_EQ(Kept(), 0);
}

TEST_F(Packages, WithoutFilesSayInWordsThatOnlyTypedValuesAreHere) {
  Scenario13();
  ASSERT_EQ(Ship(21).code, 0);
  const Ran refused = Make({"--note", "D13"});
  EXPECT_EQ(refused.code, 1) << refused;
  ASSERT_EQ(Make({"--note", "D13", "--without-files"}).code, 0);
  const std::string cover = Text("-f 1 -l 1");
  EXPECT_TRUE(Has(cover, "not in this file")) << cover;
  EXPECT_TRUE(Has(cover, "typed values only")) << cover;
  EXPECT_EQ(Word("select without_files::text as w from api.certificate_packages"), "true");
}

TEST_F(Packages, ARepairedEncryptedOrScriptedPdfIsNamedAndRefused) {
  Scenario13();
  ASSERT_EQ(Ship(21).code, 0);
  std::string broken = mill_document;
  broken.replace(broken.find("0000000009 00000 n"), 10, "0000000099");
  const std::string plain = File("plain.pdf", mill_document), locked = PathOf("locked.pdf");
  ASSERT_EQ(OutputOf("qpdf --encrypt '' secret 256 -- '" + plain + "' '" + locked + "'"), "");
  const std::string scripted = InventedPdf({"INVENTED"}, 420, 298, "/OpenAction << /S /JavaScript /JS (app.alert\\(1\\)) >>");
  std::int64_t version = 1;
  for (const auto& [bytes, words] : std::vector<std::pair<std::string, std::string>>{
           {broken, "it is damaged"}, {BytesOf(locked), "it is encrypted"}, {scripted, "it has a script in it"}}) {
    const std::string table = File("r.csv",
                                   "number,type,issuer,heat,section,grade,issued\n88-901,3.1,Vandrek,T901,round 100,S355J2,2026-02-0" +
                                       std::to_string(++version) + "\n");
    const Ran filed = As("quality", {"certificate", "replace", table, "--reason", "scanned again", "--scan", File("r.pdf", bytes)});
    ASSERT_EQ(filed.code, 0) << filed;
    const Ran ran = Make({"--note", "D13"});
    EXPECT_EQ(ran.code, 1) << ran;
    EXPECT_TRUE(Has(ran.err, "document 88-901 of Vandrek cannot be passed on unchanged: " + words)) << ran;
  }
  EXPECT_FALSE(Made());
  // all four versions stay, and each file comes out as it went in
  EXPECT_EQ(Asked("clerk", {"certificate", "show", "88-901"})["versions"].size(), 4U);
  ASSERT_EQ(As("clerk", {"certificate", "export", "88-901", "--version", "2", "--to", PathOf("two.pdf")}).code, 0);
  EXPECT_EQ(BytesOf(PathOf("two.pdf")), broken);
  EXPECT_EQ(As("clerk", {"certificate", "export", "88-901", "--version", "9", "--to", PathOf("nine.pdf")}).code, 2);
}

TEST_F(Packages, OnlyQualityMakesThem) {
  Scenario13();
  Attach("88-901", mill_document);
  for (const char* who : {"clerk", "planner", "saw", "owner"}) {
    const Ran ran = Make({"--order", "O13"}, who);
    EXPECT_EQ(ran.code, 1) << who << ran;
    EXPECT_TRUE(Has(ran.err, "quality")) << ran;
  }
  EXPECT_FALSE(Made());
  EXPECT_EQ(Make({"--order", "O99"}).code, 1);
  EXPECT_EQ(Make({}).code, 1);
}

TEST_F(Packages, AFileThatIsTooLargeIsRefusedBeforeItIsRead) {
  Scenario13();
  const std::string giant = File("giant.pdf", mill_document);
  std::filesystem::resize_file(giant, 300ULL * 1024 * 1024);  // sparse: it takes no room
  const Ran ran = As("quality", {"certificate", "attach", "88-901", "--scan", giant});
  EXPECT_NE(ran.code, 0);
  EXPECT_TRUE(Has(ran.err, "giant.pdf: more than 20 MiB; expected a smaller file")) << ran;
  for (const auto& [bytes, words] : std::vector<std::pair<std::string, std::string>>{{"MZ not a PDF", "none that a document can be"},
                                                                                     {mill_document.substr(0, 200), "cut off"},
                                                                                     {"", "bad.pdf: the file is empty"}}) {
    const Ran small = As("quality", {"certificate", "attach", "88-901", "--scan", File("bad.pdf", bytes)});
    EXPECT_NE(small.code, 0) << small;
    EXPECT_TRUE(Has(small.err, words)) << small;
  }
  EXPECT_EQ(Number("select count(*) as n from book.document_file"), 0);
}

TEST_F(Packages, NamesOfAnyKindStayNames) {
  const std::string heat = "=1+1'\"`\\", number = "=cmd|'/C calc'!A0 \"`$(x)\\(\u20AC";
  TakeIn("P,bar,Vandrek,\"=1+1'\"\"`\\\",S355J2,round 100,6000,0,3.1,,\n");
  const std::string table = File(
      "c.csv",
      "number,type,issuer,heat,section,grade,issued\n\"=cmd|'/C calc'!A0 \"\"`$(x)\\(\u20AC\",3.1,Vandrek,\"=1+1'\"\"`\\\",round 100,S355J2,2026-01-05\n");
  const Ran filed = As("quality", {"certificate", "add", table, "--scan", File("m.pdf", mill_document)});
  ASSERT_EQ(filed.code, 0) << filed;
  Want("A", "O13,10,Pallant,round 100,S355J2,280,25,3.1,,,\n");
  ASSERT_EQ(Plan("A"), 1);
  ASSERT_EQ(As("saw", {"cut", "record", "--plan", "1"}).code, 0);
  const Ran shipped = Ship(21, "D'1\"; drop table x; --");
  ASSERT_EQ(shipped.code, 0) << shipped;
  const Ran ran = Make({"--note", "D'1\"; drop table x; --"});
  ASSERT_EQ(ran.code, 0) << ran;
  const std::string text = Text("-f 1 -l 2");
  EXPECT_TRUE(Has(text, heat)) << text;
  EXPECT_TRUE(Has(text, "=cmd|'/C")) << text;
  // the attachment's name holds nothing that a file system or a shell could take as more than a name
  EXPECT_TRUE(Has(OutputOf("pdfdetach -list '" + PathOf("package.pdf") + "'"), ": D1_Vandrek__cmd___C_calc__A0_____x_______v1.pdf\n"));
  EXPECT_EQ(Asked("clerk", {"certificate", "show", number})["version"], 1);
}

}  // namespace
}  // namespace heatkeep::command
