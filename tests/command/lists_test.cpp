// The lists of month end, by the command line: figures worked out by hand (7 850 kg/m3; a metre of round 80 has 39.458 kg).
#include <csignal>

#include "client/command/work_watch.h"
#include "client/gateway/read_rows.h"
#include "tests/command/works.h"
#include "tests/reports/read_back.h"

namespace heatkeep::command {
namespace {

struct Lists : Works {
  // Of 1 900 of M2208: 7 x 240 and 7 kerfs of 2; 206 go back to the rack.
  void SevenOf240() {
    TakeIn("D1,drop,Vandrek,M2208,42CrMo4,round 80,1900,2,3.1,,\n");
    Certify("C1,3.1,Vandrek,M2208,round 80,42CrMo4\n");
    Done("owner",
         {"shop", "set", File("p.json", R"({"currency":"EUR","prices":[{"grade":"42CrMo4","per_kg":"1.60","scrap_per_kg":"0.25"}]})")});
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
  EXPECT_EQ(month["trim_g"].get<std::int64_t>() + month["spoilt_g"].get<std::int64_t>() + month["scrap_g"].get<std::int64_t>() +
                month["unexplained_g"].get<std::int64_t>(),
            0);
  EXPECT_EQ(month["yield_tenths"], 992);
  EXPECT_EQ(List("planner", {"yield", "--by-section"})["rows"][0]["section"], "round 80");
  EXPECT_EQ(List("planner", {"yield", "--from", "2999-01"})["rows"].size(), 0U);
}

TEST_F(Lists, TheStockIsSummedByWhatItIsAndWhoseNotByHowItIsWritten) {
  TakeIn(
      "T1,bar,Vandrek,K1,42CrMo4,round 50.8,3000,0,3.1,,\nT2,bar,Vandrek,K1,42CrMo4,round 2 in,3000,0,3.1,,\n"
      "T3,drop,Vandrek,K1,42CrMo4,round 2 in,500,2,3.1,,\nT4,bar,Vandrek,K1,42CrMo4,round 50.8,1000,0,3.1,Drewe,\nT5,bar,Vandrek,K1,42CrMo4,round 100,1000,0,3.1,,\n");
  Done("owner",
       {"shop", "set", File("p.json", R"({"currency":"EUR","prices":[{"grade":"42CrMo4","per_kg":"1.60","scrap_per_kg":"0.25"}]})")});
  const Json list = List("owner", {"stock"}), rows = list["rows"];
  ASSERT_EQ(rows.size(), 4U) << list;
  EXPECT_EQ(rows[0]["kind"], "bar");
  EXPECT_EQ(rows[0]["pieces"], 2);
  EXPECT_EQ(rows[0]["length_nm"], 6000 * kMm);
  // 3 m of round 50.8: pi / 4 x 50.8^2 = 2 026.83 mm2 x 3 m x 7 850 = 47.732 kg, twice
  EXPECT_EQ(rows[0]["mass_g"], 2 * 47732);
  EXPECT_EQ(rows[0]["scrap_cents"], 2 * 1193);        // 47.732 kg x 0.25
  EXPECT_EQ(rows[0]["replacement_cents"], 2 * 7637);  // x 1.60
  EXPECT_EQ(rows[1]["owner"], "Drewe");
  EXPECT_TRUE(rows[1]["replacement_cents"].is_null()) << "a customer's metal is worth nothing to us";
  EXPECT_EQ(rows[2]["kind"], "drop");
  EXPECT_EQ(rows[3]["section"], "round 100") << "by size, not by its letters";
  EXPECT_EQ(list["sums"]["pieces"], 5);
  EXPECT_EQ(List("owner", {"stock", "--section", "round 100"})["rows"].size(), 1U);
  EXPECT_EQ(As("saw", {"report", "stock"}).code, 1) << "what metal is worth is not the saw's";
  const Json pieces = List("planner", {"stock", "--pieces"});
  EXPECT_EQ(pieces["rows"].size(), 5U);
  for (const Json& row : pieces["rows"]) EXPECT_EQ(row["heat"], "K1") << row;
}

TEST_F(Lists, EveryReportIsWrittenInEveryForm) {
  SevenOf240();
  TakeIn("T1,drop,Vandrek,K1,42CrMo4,round 80,643,2,3.1,,\n");
  Done("clerk", {"putaway", TagOf("T1"), "B1-1"});
  Want("B", "O2,10,Pallant,round 80,42CrMo4,240,7,3.1,,,\n");
  for (const Words& report : std::vector<Words>{{"stock"},
                                                {"stock", "--pieces"},
                                                {"drops"},
                                                {"yield"},
                                                {"yield", "--by-section"},
                                                {"unused", "--days", "1"},
                                                {"count", "B1-1"},
                                                {"buy"},
                                                {"scrap"},
                                                {"balance", "M2208"}}) {
    const std::string who = report[0] == "balance" ? "quality" : "planner";
    for (const char* form : {"pdf", "xlsx", "csv", "json"}) {
      const std::string file = PathOf(report[0] + "." + form);
      Words words{"report"};
      words.insert(words.end(), report.begin(), report.end());
      words.insert(words.end(), {"--to", file, "--letter"});
      Done(who, words);
      const std::string text = form == std::string("pdf") ? TextOf(file)
          : form == std::string("xlsx")                   ? OutputOf("unzip -p '" + file + "' xl/worksheets/sheet1.xml")
                                                          : WholeFile(file);
      EXPECT_GT(text.size(), 20U) << file;
      if (form == std::string("pdf")) { EXPECT_EQ(CrowdingOf(file, 215.9, 279.4), "") << file; }
      if (form == std::string("xlsx")) { EXPECT_TRUE(Has(text, "state=\"frozen\"")) << file; }
      if (form == std::string("json")) { EXPECT_EQ(Json::parse(text).is_object(), true) << file; }
    }
    Words here{report};
    EXPECT_EQ(Json::parse(WholeFile(PathOf(report[0] + ".json"))).size(), List(who, here).size()) << "here as in the file: " << report[0];
  }
}

TEST_F(Lists, ALongReportSaysHowFarItIsWhereItIsAskedTo) {
  TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 80,6000,0,3.1,,\nT2,bar,Vandrek,K1,42CrMo4,round 80,3000,0,3.1,,\n");
  const std::string pdf = PathOf("s.pdf");
  const Ran silent = As("planner", {"report", "stock", "--pieces", "--to", pdf});
  EXPECT_EQ(silent.err, "") << "nobody sits at a terminal";
  const Ran ran = As("planner", {"report", "stock", "--pieces", "--progress", "--to", pdf});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_TRUE(Has(ran.err, "rows read; Ctrl-C stops")) << ran;
  EXPECT_TRUE(Has(ran.err, "2 of 2 rows laid out")) << ran;
  EXPECT_TRUE(Has(ran.err, "1 of 1 pages painted")) << ran;
}

TEST_F(Lists, RowsComeOneAfterTheOtherAndTheSessionGoesOnAfterAStop) {
  TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 80,6000,0,3.1,,\nT2,bar,Vandrek,K1,42CrMo4,round 80,3000,0,3.1,,\n");
  std::vector<std::string> tags;
  EachRowOf(admin, "stock_worth", "length_nm", "tag", [&](Json&& row) {
    EXPECT_EQ(row.size(), 1U) << "only what is asked for";
    tags.push_back(row["tag"]);
  });
  EXPECT_EQ(tags, (std::vector<std::string>{TagOf("T2"), TagOf("T1")}));
  EXPECT_GE(AboutHowMany(admin, "stock_worth"), 1);
  EXPECT_THROW(EachRowOf(admin, "stock_worth", "tag", {}, [](Json&&) { throw Stopped(); }), Stopped);
  EXPECT_THROW(admin.EachRow(
                   "select pg_sleep(600)", {}, [](const Row&) {}, [] { throw Stopped(); }),
               Stopped)
      << "also while the server is still at it";
  EXPECT_THROW(admin.EachRow("select 1 / (3 - g) from generate_series(1, 5) g", {}, [](const Row&) {}), DbError);
  EXPECT_EQ(Number("select 7 as n"), 7);
}

TEST(WorkWatch, AnInterruptStopsTheWorkAndNothingElse) {
  std::ostringstream err;
  {
    WorkWatch watch(err, true);
    watch.Count("rows read", 0, 30'000, true);
    std::raise(SIGINT);
    EXPECT_THROW(watch.Count("rows read", 1, 30'000, true), Stopped);
  }
  EXPECT_TRUE(err.str().ends_with(" s: 0 of about 30 000 rows read; Ctrl-C stops\n")) << err.str();
  WorkWatch next(err);
  EXPECT_NO_THROW(next.Check()) << "the next work is not stopped by it";
}

TEST_F(Lists, ADropIsWorthThreeThingsSideBySideAndSaysWhereOneIsNotKnown) {
  SevenOf240();
  const Json list = List("owner", {"drops"});
  ASSERT_EQ(list["rows"].size(), 1U) << list;
  const Json drop = list["rows"][0];
  EXPECT_EQ(drop["length_nm"], 206 * kMm);
  EXPECT_EQ(drop["mass_g"], 8128);             // 0.206 m
  EXPECT_EQ(drop["scrap_cents"], 203);         // 8.128 kg x 0.25
  EXPECT_EQ(drop["replacement_cents"], 1300);  // x 1.60
  EXPECT_TRUE(drop["expected_cents"].is_null()) << "no past of 90 days";
  EXPECT_TRUE(Has(list["note"], "not worked out")) << list;
  EXPECT_EQ(list["currency"], "EUR");
  EXPECT_EQ(list["sums"]["replacement_cents"], 1300);
  EXPECT_EQ(list["chart"]["rows"][0]["drops"], 1) << "under 30 days";
  EXPECT_EQ(list["chart"]["rows"][0]["mass_g"], 8128);
  Earlier(180);
  EXPECT_EQ(List("owner", {"drops"})["chart"]["rows"][3]["replacement_cents"], 1300) << "180 days and more";
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
  TakeIn("T2,drop,Vandrek,K2,X2CrNiMo17-12-2,round 80,1000,2,3.1,,\n");
  const std::string stainless = Word("select family as w from api.grades where designation = 'X2CrNiMo17-12-2'");
  Done("owner", {"saw", "bins", "--bin", "BIN-2=stainless", "--family", stainless + "=stainless"});
  Done("saw", {"saw", "scrap", TagOf("T2"), "--bin", "BIN-2", "--reason", "bent"});
  const Json list = List("planner", {"scrap"});
  ASSERT_EQ(list["chart"]["rows"].size(), 2U) << list;
  EXPECT_EQ(list["chart"]["rows"][0]["weighed_g"], 41000) << "of a group, all its months";
  EXPECT_TRUE(list["chart"]["rows"][1]["weighed_g"].is_null());
  const std::string xlsx = PathOf("s.xlsx"), pdf = PathOf("s.pdf");
  Done("planner", {"report", "scrap", "--to", xlsx, "--to", pdf});
  EXPECT_TRUE(Has(OutputOf("unzip -p '" + xlsx + "' xl/charts/chart1.xml"), "<c:barChart>"));
  EXPECT_TRUE(Has(TextOf(pdf), "weighed 41.000 kg")) << TextOf(pdf);
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
  EXPECT_TRUE(Has(OutputOf("unzip -p '" + xlsx + "' xl/charts/chart1.xml"), "<c:lineChart>"));
  const std::string text = TextOf(pdf), month = Word("select to_char(now() - interval '40 days', 'YYYY-MM') as w");
  EXPECT_TRUE(Has(text, "99.2")) << text;
  EXPECT_TRUE(Has(text.substr(0, text.find("used up")), month)) << "the months stand under the line: " << text;
}

}  // namespace
}  // namespace heatkeep::command
