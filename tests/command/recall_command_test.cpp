// Recall, its letters and drills, and printed records asked about again, by the command line.
#include <filesystem>

#include "tests/command/works.h"
#include "tests/reports/read_back.h"

namespace heatkeep::command {
namespace {

struct RecallCommand : Works {
  // Two orders of two customers from one bar; some of each left, the drop is on the rack.
  void ShipToTwo() {
    TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 80,6000,0,3.1,,\nT2,bar,Vandrek,K1,42CrMo4,round 80,6000,0,3.1,,\n");
    Certify("C1/7,3.1,Vandrek,K1,round 80,42CrMo4\n");
    Want("A", "O1,10,Pallant,round 80,42CrMo4,290,8,3.1,,,\nO2,10,Drewe,round 80,42CrMo4,300,6,3.1,,,\n");
    ASSERT_EQ(Plan("A"), 1);
    ASSERT_EQ(As("saw", {"cut", "record", "--plan", "1"}).code, 0);
    ASSERT_EQ(As("planner", {"ship", "O1/10=5", "--note", "D-118", "--customer", "Pallant"}).code, 0);
    ASSERT_EQ(As("planner", {"ship", "O2/10=6", "--note", "D-119", "--customer", "Drewe"}).code, 0);
  }
};

TEST_F(RecallCommand, TheListSaysWhereEverythingIsAndEachCustomerReadsOnlyOfTheirOwn) {
  ShipToTwo();
  const std::string pdf = PathOf("r.pdf"), csv = PathOf("r.csv"), xlsx = PathOf("r.xlsx"), json = PathOf("r.json"),
                    letters = PathOf("letters");
  const Ran ran = As(
      "quality",
      {"recall", "heat", "K1", "--to", pdf, "--to", csv, "--to", xlsx, "--to", json, "--letters", letters, "--from", "Ostrel Shaftworks"});
  ASSERT_EQ(ran.code, 0) << ran;
  const std::string list = TextOf(pdf);
  for (const char* word :
       {"Places to visit, saws first, then in walking order", "D-118", "D-119", "With Pallant", "With Drewe", "NOT ALL OF IT IS HELD"})
    EXPECT_TRUE(Has(list, word)) << word << list;
  const std::string pallant = TextOf(letters + "/letter_2_pallant.pdf"), drewe = TextOf(letters + "/letter_1_drewe.pdf");
  EXPECT_TRUE(Has(pallant, "D-118") && Has(pallant, "Pallant") && Has(pallant, "Ostrel Shaftworks")) << pallant;
  EXPECT_FALSE(Has(pallant, "Drewe") || Has(pallant, "D-119") || Has(pallant, "O2")) << pallant;
  EXPECT_TRUE(Has(drewe, "D-119") && Has(drewe, "O2 / 10")) << drewe;
  EXPECT_FALSE(Has(drewe, "Pallant") || Has(drewe, "D-118") || Has(drewe, "O1")) << drewe;
  EXPECT_TRUE(Has(OutputOf("cat '" + csv + "'"), "shipped,,"));
  EXPECT_TRUE(Has(OutputOf("xlsx2csv -n 'With customers' '" + xlsx + "'"), "D-118"));
  EXPECT_EQ(As("quality", {"book", "verify", "--record", json}).code, 0);
  EXPECT_EQ(As("quality", {"book", "verify", "--record", pdf}).code, 0);
}

TEST_F(RecallCommand, AHeatThatLooksLikeItIsNamedAndNotInIt) {
  TakeIn("L1,bar,Vandrek,70B41,42CrMo4,round 80,6000,0,none,,\nL2,bar,Vandrek,7OB41,42CrMo4,round 80,3000,0,none,,\n");
  const Ran ran = As("quality", {"recall", "heat", "7OB41"});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_EQ(ran.err, "heatkeep: 7OB41 looks like heat 70B41, which is not in this recall\n");
  EXPECT_EQ(As("quality", {"recall", "heat", "70841"}).err.find("no lot has heat \"70841\"; it looks like heat 70B41, 7OB41"),
            std::string("heatkeep: ").size());
}

TEST_F(RecallCommand, ADrillIsTimedSaysDrillAndChangesNothing) {
  ShipToTwo();
  const std::string before = Digest(), pdf = PathOf("r.pdf"), letters = PathOf("letters");
  const std::int64_t requests = Number("select count(*) as n from book.request");
  const Ran ran = As("quality", {"recall", "heat", "K1", "--drill", "--to", pdf, "--letters", letters, "--language", "de"});
  ASSERT_EQ(ran.code, 0) << ran;
  EXPECT_TRUE(Has(ran.out, "stopwatch: list of where everything is after ")) << ran;
  EXPECT_TRUE(Has(ran.out, "stopwatch: 2 letters after ")) << ran;
  EXPECT_TRUE(Has(ran.out, "the book is as it was before the drill: " + before)) << ran;
  EXPECT_EQ(Digest(), before);
  EXPECT_EQ(Number("select count(*) as n from book.request"), requests);
  EXPECT_EQ(Number("select count(*) as n from book.printed_record"), 0);
  EXPECT_TRUE(Has(TextOf(pdf), "DRILL, nothing has happened") && Has(TextOf(pdf), "Stopwatch")) << TextOf(pdf);
  EXPECT_TRUE(Has(TextOf(letters + "/letter_1_drewe.pdf"), "\u00DCBUNG")) << TextOf(letters + "/letter_1_drewe.pdf");
}

TEST_F(RecallCommand, APreviewOfAHoldNeedsNoReasonAndStopsNothing) {
  ShipToTwo();
  const std::string before = Digest();
  const Ran ran = As("quality", {"hold", "heat", "K1", "--preview"});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_TRUE(Has(ran.out, "it would stop: 1 bar, 1 drop, 3 cut pieces that wait to be shipped, 2 customers have 11 pieces")) << ran;
  EXPECT_EQ(Digest(), before);
  const Ran hold = As("quality", {"hold", "heat", "K1"});
  EXPECT_EQ(hold.code, 2) << hold;
  EXPECT_TRUE(Has(hold.err, "--reason is missing")) << hold;
  EXPECT_EQ(As("quality", {"hold", "heat", "K1", "--reason", "letter of the mill"}).code, 0);
  EXPECT_EQ(As("clerk", {"hold", "heat", "K1", "--preview"}).code, 1);
}

TEST_F(RecallCommand, APrintedRecordIsAskedAboutByFileTextOrDigest) {
  ShipToTwo();
  const std::string pdf = PathOf("t.pdf"), json = PathOf("t.json"), csv = PathOf("t.csv"), text = PathOf("t.txt");
  ASSERT_EQ(As("quality", {"report", "trace", "order", "O1", "--to", pdf, "--to", json, "--to", csv}).code, 0);
  EXPECT_TRUE(Has(TextOf(pdf), "no other heat went into this order")) << TextOf(pdf);
  EXPECT_TRUE(Has(TextOf(pdf), "Family tree")) << TextOf(pdf);
  ASSERT_EQ(OutputOf("pdftotext '" + pdf + "' '" + text + "'"), "");
  const std::string digest = Json::parse(OutputOf("cat '" + json + "'"))["proof"]["digest"];
  for (const std::string& what : {pdf, json, text, digest}) {
    const Ran ran = As("planner", {"book", "verify", "--record", what});
    EXPECT_EQ(ran.code, 0) << ran;
    EXPECT_TRUE(Has(ran.out, "record of order O1, first printed ") && Has(ran.out, "UNCHANGED: ") && Has(ran.out, "Not claimed: ")) << ran;
  }
  EXPECT_EQ(Asked("planner", {"book", "verify", "--record", digest})["verdict"], "unchanged");
  Json altered = Json::parse(OutputOf("cat '" + json + "'"));
  altered["lines"][0]["heat"] = "K2";
  const Ran ran = As("planner", {"book", "verify", "--record", File("altered.json", altered.dump())});
  EXPECT_EQ(ran.code, 1) << ran;
  EXPECT_TRUE(Has(ran.out, "ALTERED")) << ran;
  for (const auto& [what, wrong] : std::vector<std::pair<std::string, std::string>>{{"9f2c", "neither a file nor a digest"},
                                                                                    {File("x.json", "{\"a\":1}"), "it has no proof"},
                                                                                    {File("y.json", "{\"a\":"), "this is not JSON"},
                                                                                    {File("z.txt", "hello"), "no digest"}}) {
    const Ran bad = As("planner", {"book", "verify", "--record", what});
    EXPECT_EQ(bad.code, 2) << bad;
    EXPECT_TRUE(Has(bad.err, wrong)) << bad;
  }
  EXPECT_EQ(As("planner", {"book", "verify", "--record", std::string(64, '0')}).code, 1);
  // behind the book's back
  admin.ExecuteScript(
      "set session_replication_role = replica; update book.happening set who = 'nobody' where happening_id = (select max(happening_id) from book.happening where tbl = 'stroke')");
  EXPECT_EQ(As("planner", {"book", "verify", "--record", json}).code, 1);
}

TEST_F(RecallCommand, HostileNamesStayTexts) {
  const std::string name = "=HYPERLINK(\"x\")' ../../etc; drop table \"book\"";
  const Json shop{{"parties", {{{"name", name}, {"customer", true}}}}};
  ASSERT_EQ(As("owner", {"shop", "set", File("more.json", shop.dump())}).code, 0);
  TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 80,6000,0,3.1,,\n");
  Certify("C1/7,3.1,Vandrek,K1,round 80,42CrMo4\n");
  Want("A", "O1,10,\"=HYPERLINK(\"\"x\"\")' ../../etc; drop table \"\"book\"\"\",round 80,42CrMo4,290,2,3.1,,,\n");
  ASSERT_EQ(Plan("A"), 1);
  ASSERT_EQ(As("saw", {"cut", "record", "--plan", "1"}).code, 0);
  ASSERT_EQ(As("planner", {"ship", "O1/10=2", "--note", "D1", "--customer", name}).code, 0);
  const std::string csv = PathOf("r.csv"), letters = PathOf("letters");
  const Ran ran = As("quality", {"recall", "heat", "K1", "--to", csv, "--letters", letters});
  ASSERT_EQ(ran.code, 0) << ran;
  EXPECT_TRUE(Has(OutputOf("cat '" + csv + "'"), "\"'=HYPERLINK(\"\"x\"\")' ../../etc")) << OutputOf("cat '" + csv + "'");
  EXPECT_TRUE(std::filesystem::exists(letters + "/letter_1_hyperlink_x_etc_drop_table_book.pdf"));
  EXPECT_TRUE(Has(TextOf(letters + "/letter_1_hyperlink_x_etc_drop_table_book.pdf"), "=HYPERLINK"));
}

}  // namespace
}  // namespace heatkeep::command
