// The lists of month end, by the command line: figures worked out by hand (7 850 kg/m3; a metre of round 80 has 39.458 kg).
#include "tests/command/works.h"

#include "tests/reports/read_back.h"

namespace heatkeep::command {
namespace {

struct Lists : Works {
  // Of 1 900 of M2208: 7 x 240 and 7 kerfs of 2; 206 go back to the rack.
  void SevenOf240() {
    TakeIn("D1,drop,Vandrek,M2208,42CrMo4,round 80,1900,2,3.1,,\n");
    Certify("C1,3.1,Vandrek,M2208,round 80,42CrMo4\n");
    Done("owner", {"shop", "set", File("p.json", R"({"currency":"EUR","prices":[{"grade":"42CrMo4","per_kg":"1.60","scrap_per_kg":"0.25"}]})")});
    Want("A", "O1,10,Pallant,round 80,42CrMo4,240,7,3.1,,,\n");
    ASSERT_EQ(Plan("A"), 1);
    Done("saw", {"cut", "record", "--plan", "1", "--place", "B1-1"});
  }
  // As if all that is in the book had happened so many days before.
  void Earlier(int days) {
    admin.Execute("set session_replication_role = replica");
    admin.Execute("update book.happening set true_at = true_at - make_interval(days => $1::integer)", {std::to_string(days)});
    admin.Execute("reset session_replication_role");
  }
  void Done(const std::string& who, const Words& words) {
    const Ran ran = As(who, words);
    ASSERT_EQ(ran.code, 0) << ran;
  }
  Json List(const std::string& who, Words words) {
    words.insert(words.begin(), "report");
    const Ran ran = As(who, words);
    EXPECT_EQ(ran.code, 0) << ran;
    return Json::parse(ran.out);
  }
};

TEST_F(Lists, TheYieldOfAMonthIsGoodPiecesOfAllThatWasUsedUp) {
  SevenOf240();
  const Json list = List("planner", {"yield"});
  ASSERT_EQ(list["rows"].size(), 1U) << list;
  const Json month = list["rows"][0];
  // 1.680 m x 39.4584 = 66.290 kg; 0.014 m = 0.552 kg; 1 680 of 1 694 = 99.2 %
  EXPECT_EQ(month["good_g"], 66290);
  EXPECT_EQ(month["kerf_g"], 552);
  EXPECT_EQ(month["used_g"], 66290 + 552);
  EXPECT_EQ(month["trim_g"].get<std::int64_t>() + month["spoilt_g"].get<std::int64_t>() + month["scrap_g"].get<std::int64_t>() + month["unexplained_g"].get<std::int64_t>(), 0);
  EXPECT_EQ(month["yield_tenths"], 992);
  EXPECT_EQ(List("planner", {"yield", "--by-section"})["rows"][0]["section"], "round 80");
  EXPECT_EQ(List("planner", {"yield", "--from", "2999-01"})["rows"].size(), 0U);
}

TEST_F(Lists, ADropIsWorthThreeThingsSideBySideAndSaysWhereOneIsNotKnown) {
  SevenOf240();
  const Json list = List("owner", {"drops"});
  ASSERT_EQ(list["rows"].size(), 1U) << list;
  const Json drop = list["rows"][0];
  EXPECT_EQ(drop["length_nm"], 206 * kMm);
  EXPECT_EQ(drop["mass_g"], 8128);  // 0.206 m
  EXPECT_EQ(drop["scrap_cents"], 203);         // 8.128 kg x 0.25
  EXPECT_EQ(drop["replacement_cents"], 1300);  // x 1.60
  EXPECT_TRUE(drop["expected_cents"].is_null()) << "no past of 90 days";
  EXPECT_TRUE(Has(list["note"], "not worked out")) << list;
  EXPECT_EQ(list["currency"], "EUR");
  EXPECT_EQ(list["sums"]["replacement_cents"], 1300);
  EXPECT_EQ(List("owner", {"drops", "--section", "round 60"})["rows"].size(), 0U);
  EXPECT_EQ(As("saw", {"report", "drops"}).code, 1) << "what metal is worth is not the saw's";
}

TEST_F(Lists, OwnMetalThatNobodyTouchedForSoLongIsListedAndACustomersNever) {
  TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 80,6000,0,3.1,,\nT2,bar,Vandrek,K2,42CrMo4,round 80,6000,0,3.1,Drewe,\n");
  EXPECT_EQ(List("planner", {"unused", "--days", "365"})["rows"].size(), 0U);
  EXPECT_EQ(As("planner", {"report", "unused", "--days", "0"}).code, 2);
  Earlier(400);
  const Json list = List("planner", {"unused", "--days", "365"});
  ASSERT_EQ(list["rows"].size(), 1U) << list;
  EXPECT_EQ(list["rows"][0]["tag"], TagOf("T1"));
  EXPECT_EQ(list["rows"][0]["days"], 400);
}

TEST_F(Lists, WhatToBuyIsWhatIsOpenLessWhatIsFree) {
  TakeIn("T1,drop,Vandrek,K1,42CrMo4,round 80,500,2,3.1,,\n");
  Certify("C1,3.1,Vandrek,K1,round 80,42CrMo4\n");
  Want("A", "O1,10,Pallant,round 80,42CrMo4,1000,3,3.1,,,\n");
  const Json list = List("planner", {"buy"});
  ASSERT_EQ(list["rows"].size(), 1U) << list;
  EXPECT_EQ(list["rows"][0]["cut_nm"], 3000 * kMm);
  EXPECT_EQ(list["rows"][0]["free_nm"], 500 * kMm);
  EXPECT_EQ(list["rows"][0]["missing_nm"], 2500 * kMm);
  EXPECT_EQ(list["rows"][0]["orders"], "O1");
}

TEST_F(Lists, ACountSheetDoesNotSayWhatIsToBeMeasuredAndRead) {
  TakeIn("T1,drop,Vandrek,K33179,42CrMo4,round 80,643,2,3.1,,\n");
  Done("clerk", {"putaway", TagOf("T1"), "B1-1"});
  const std::string pdf = PathOf("count.pdf");
  Done("clerk", {"report", "count", "B1-1", "--to", pdf});
  const std::string text = TextOf(pdf);
  EXPECT_TRUE(Has(text, TagOf("T1"))) << text;
  EXPECT_TRUE(Has(text, "round 80"));
  EXPECT_FALSE(Has(text, "643"));
  EXPECT_FALSE(Has(text, "K33179"));
  EXPECT_EQ(CrowdingOf(pdf, 210, 297), "");
}

TEST_F(Lists, ScrapIsSummedByTheGroupOfItsBin) {
  TakeIn("T1,drop,Vandrek,K1,42CrMo4,round 80,1000,2,3.1,,\n");
  Done("owner", {"saw", "bins", "--bin", "BIN-1=low alloy", "--family", "low-alloy steel=low alloy"});
  const std::string family = Word("select family as w from api.grades where designation = '42CrMo4'");
  Done("owner", {"saw", "bins", "--family", family + "=low alloy"});
  Done("saw", {"saw", "scrap", TagOf("T1"), "--bin", "BIN-1", "--reason", "bent"});
  Json rows = List("planner", {"scrap"})["rows"];
  ASSERT_EQ(rows.size(), 1U) << rows;
  EXPECT_EQ(rows[0]["month"], "open");
  EXPECT_EQ(rows[0]["book_g"], 39458);
  Done("planner", {"saw", "ticket", "--bin", "BIN-1", "--dealer", "Kestholm", "--ticket", "W1", "--mass", "41", "--per-kg", "0.25"});
  rows = List("planner", {"scrap"})["rows"];
  std::int64_t weighed = 0, other = 0, paid = 0;
  for (const Json& row : rows) {
    if (row["month"] == "open") continue;
    weighed += row["weighed_g"].get<std::int64_t>();
    other += row["other_g"].get<std::int64_t>();
    paid += row["cents"].get<std::int64_t>();
  }
  EXPECT_EQ(weighed, 41000);
  EXPECT_EQ(other, 41000 - 39458);
  EXPECT_EQ(paid, 1025);  // 41 kg x 0.25
}

TEST_F(Lists, FilesHaveRealNumbersWithUnitsAndNoFormulas) {
  TakeIn("T1,drop,Vandrek,=1+1,42CrMo4,round 80,643,2,3.1,,\nT2,drop,Vandrek,\"@K\"\"2\",42CrMo4,round 80,500,2,3.1,,\n");
  const std::string xlsx = PathOf("l.xlsx"), csv = PathOf("l.csv"), pdf = PathOf("l.pdf");
  Done("planner", {"report", "unused", "--days", "1", "--to", xlsx, "--to", csv, "--to", pdf});
  Earlier(400);
  Done("planner", {"report", "unused", "--days", "1", "--to", xlsx, "--to", csv, "--to", pdf});
  const std::string sheet = OutputOf("unzip -p '" + xlsx + "' xl/worksheets/sheet1.xml");
  EXPECT_FALSE(Has(sheet, "<f>"));
  EXPECT_TRUE(Has(sheet, "<v>643</v>")) << sheet;
  EXPECT_TRUE(Has(sheet, "state=\"frozen\""));
  EXPECT_TRUE(Has(sheet, "<autoFilter"));
  EXPECT_TRUE(Has(OutputOf("xlsx2csv '" + xlsx + "'"), "length mm"));
  const std::string text = WholeFile(csv);
  EXPECT_TRUE(Has(text, "\"'=1+1\"")) << text;
  EXPECT_TRUE(Has(text, "\"'@K\"\"2\"")) << text;
  EXPECT_TRUE(Has(TextOf(pdf), "2 pieces, length 1.143 m, mass 45.101 kg")) << TextOf(pdf);
  EXPECT_EQ(CrowdingOf(pdf, 210, 297), "");
}

TEST_F(Lists, AMonthsYieldIsDrawnWhereThereAreSeveral) {
  SevenOf240();
  Earlier(40);
  TakeIn("D2,drop,Vandrek,M2208,42CrMo4,round 80,1900,2,3.1,,\n");
  Want("B", "O2,10,Pallant,round 80,42CrMo4,240,7,3.1,,,\n");
  ASSERT_EQ(Plan("B"), 2);
  Done("saw", {"cut", "record", "--plan", "2", "--place", "B1-1"});
  const std::string xlsx = PathOf("y.xlsx"), pdf = PathOf("y.pdf");
  Done("planner", {"report", "yield", "--to", xlsx, "--to", pdf});
  EXPECT_TRUE(Has(OutputOf("unzip -l '" + xlsx + "'"), "xl/charts/chart1.xml"));
  EXPECT_TRUE(Has(TextOf(pdf), "99.2")) << TextOf(pdf);
}

}  // namespace
}  // namespace heatkeep::command
