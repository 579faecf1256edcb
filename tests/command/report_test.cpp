// Papers out of the book by the command line.
#include "tests/command/works.h"
#include "tests/reports/read_back.h"

namespace heatkeep::command {
namespace {

struct Report : Works {
  void Cut() {
    TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 80,6000,0,3.1,,\nT2,bar,Vandrek,K1,42CrMo4,round 60,3000,0,3.1,,\n");
    Certify("C1/7,3.1,Vandrek,K1,round 80,42CrMo4\nC1/8,3.1,Vandrek,K1,round 60,42CrMo4\n");
    Want("A", "O1,10,Pallant,round 80,42CrMo4,290,14,3.1,,,\n");
    ASSERT_EQ(Plan("A"), 1);
    const Ran ran = As("saw", {"cut", "record", "--plan", "1"});
    ASSERT_EQ(ran.code, 0) << ran;
    drop = Word("select tag as w from book.piece where parent_id is not null");
  }
  std::string drop;
};

TEST_F(Report, TraceNamesHeatPaperPieceAndDropWhicheverWayItIsAsked) {
  Cut();
  for (const auto& [kind, name] :
       std::vector<std::pair<std::string, std::string>>{{"order", "O1"}, {"heat", "K1"}, {"piece", drop}, {"piece", "T1"}}) {
    const Ran ran = As("quality", {"report", "trace", kind, name});
    EXPECT_EQ(ran.code, 0) << ran;
    const Json record = Json::parse(ran.out);
    EXPECT_EQ(record["subject"], name);
    EXPECT_EQ(record["asked_by"], "test_quality");
    std::int64_t pieces = 0, bars = 0, drops = 0;
    for (const Json& line : record["lines"]) {
      EXPECT_EQ(line["heat"], "K1");
      EXPECT_TRUE(Has(line["document"].get<std::string>(), "3.1 no. C1/")) << line;
      if (line["what"] == "cut piece") pieces += line["count"].get<std::int64_t>();
      bars += line["name"] == TagOf("T1");
      drops += line["name"] == drop;
    }
    EXPECT_EQ(pieces, kind == "piece" && name == drop ? pieces : 14) << kind;
    EXPECT_EQ(bars, 1) << kind;
    EXPECT_EQ(drops, kind == "order" ? 0 : 1) << kind;
  }
}

TEST_F(Report, TraceIsWrittenAsPdfWorkbookAndJson) {
  Cut();
  const std::string pdf = PathOf("t.pdf"), xlsx = PathOf("t.xlsx"), json = PathOf("t.json");
  const Ran ran = As("quality", {"report", "trace", "--to", pdf, "--to", xlsx, "--to", json, "heat", "K1"});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_EQ(ran.out, "wrote " + pdf + "\nwrote " + xlsx + "\nwrote " + json + "\n");
  const std::string text = OutputOf("pdftotext -layout '" + pdf + "' -");
  const std::string cells = OutputOf("xlsx2csv -a '" + xlsx + "'");
  for (const std::string& word : {std::string("K1"), std::string("C1/7"), drop, TagOf("T1"), std::string("O1")}) {
    EXPECT_TRUE(Has(text, word)) << word << " is not in\n" << text;
    EXPECT_TRUE(Has(cells, word)) << word << " is not in\n" << cells;
  }
  EXPECT_EQ(OutputOf("cat '" + json + "'").substr(0, 1), "{");
}

TEST_F(Report, SheetIsWrittenInEveryFormAndForEveryReader) {
  Cut();
  const std::string pdf = PathOf("s.pdf"), inch = PathOf("i.pdf");
  EXPECT_EQ(As("saw", {"report", "sheet", "--to", pdf, "1"}).code, 0);
  EXPECT_EQ(As("saw", {"report", "sheet", "1", "--inch", "--letter", "--to", inch}).code, 0);
  EXPECT_TRUE(Has(OutputOf("pdftotext -layout '" + pdf + "' -"), TagOf("T1")));
  EXPECT_TRUE(Has(OutputOf("pdfinfo '" + inch + "'"), "letter"));
  EXPECT_EQ(Json::parse(As("saw", {"report", "sheet", "1"}).out), Sheet(1));
}

TEST_F(Report, BalanceIsOfOneLotAndAsksWhichOne) {
  Cut();
  const Ran which = As("quality", {"report", "balance", "K1"});
  EXPECT_EQ(which.code, 2) << which;
  EXPECT_TRUE(Has(which.err, "heat \"K1\" is 2 lots here (Vandrek round 60, no condition; Vandrek round 80, no condition)")) << which;
  const Ran ran = As("quality", {"report", "balance", "K1", "--section", "round 80"});
  EXPECT_EQ(ran.code, 0) << ran;
  const Json balance = Json::parse(ran.out)["balance"];
  EXPECT_EQ(balance["in_nm"], 6000 * kMm);
  EXPECT_EQ(balance["out_nm"], 6000 * kMm);
  EXPECT_EQ(balance["balanced"], true);
  const std::string pdf = PathOf("b.pdf");
  EXPECT_EQ(As("quality", {"report", "balance", "K1", "--section", "round 80", "--to", pdf}).code, 0);
  EXPECT_TRUE(Has(OutputOf("pdftotext -layout '" + pdf + "' -"), "balanced"));
}

TEST_F(Report, BalanceTellsConditionsOfOneHeatAndSectionApart) {
  const auto come = [&](const std::string& note, const std::string& condition) {
    return As("clerk",
              {"receive",
               File(note + ".csv",
                    "note,supplier,mill,heat,read_from,grade,section,condition,length,count\n" + note +
                        ",Vandrek,Vandrek,K9,metal,42CrMo4,round 90," + condition + ",6000,1\n")});
  };
  TakeIn("T9,bar,Vandrek,K9,42CrMo4,round 90,3000,0,none,,\n");
  const Ran came = come("L9", "+QT");
  ASSERT_EQ(came.code, 0) << came;
  const Ran which = As("quality", {"report", "balance", "K9", "--section", "round 90"});
  EXPECT_EQ(which.code, 2) << which;
  EXPECT_TRUE(Has(
      which.err,
      "heat \"K9\" is 2 lots here (Vandrek round 90, no condition; Vandrek round 90 +QT); expected --mill, --section and --condition of one"))
      << which;
  EXPECT_EQ(Asked("quality", {"report", "balance", "K9", "--condition", "+qt"})["balance"]["in_nm"], 6000 * kMm);
  EXPECT_EQ(Asked("quality", {"report", "balance", "K9", "--condition", "none"})["balance"]["in_nm"], 3000 * kMm);
  const Ran none = As("quality", {"report", "balance", "K9", "--condition", "+A"});
  EXPECT_TRUE(Has(none.err, "heat \"K9\" has no such lot here (Vandrek round 90")) << none;
}

TEST_F(Report, RefusesWhatItCannotDo) {
  Cut();
  for (const auto& [words, wrong] : std::vector<std::pair<Words, std::string>>{
           {{"report", "trace", "order", "O9"}, "the book knows no order \"O9\""},
           {{"report", "trace", "heat", "K9"}, "the book knows no heat"},
           {{"report", "trace", "colour", "red"}, "colour"},
           {{"report", "balance", "K9"}, "the book knows no heat"},
           {{"report", "balance", "K1", "--section", "round 70"}, "has no such lot here (Vandrek round 60"},
           {{"report", "sheet", "9"}, "there is no plan 9"},
           {{"report", "sheet", "1", "--to", PathOf("x.doc")}, "expected .pdf, .xlsx or .json"},
           {{"report", "sheet", "1", "--to", PathOf("none") + "/x.json"}, "not written"},
           {{"report", "sheet", "1", "--to", PathOf("none") + "/x.pdf"}, "not written"}}) {
    const Ran ran = As("quality", words);
    EXPECT_EQ(ran.code, 2) << ran;
    EXPECT_TRUE(Has(ran.err, wrong)) << wrong << '\n' << ran;
    EXPECT_EQ(ran.out, "");
  }
}

}  // namespace
}  // namespace heatkeep::command
