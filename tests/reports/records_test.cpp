#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "reports/balance_record.h"
#include "reports/record_words.h"
#include "reports/sheet_words.h"
#include "reports/trace_report.h"
#include "tests/reports/invented_trace.h"
#include "tests/reports/read_back.h"

namespace heatkeep {
namespace {

using namespace literals;

const PrintOptions kTold{PaperSize::A4, "2026-11-25T07:40:12", "Ostrel Shaftworks"};
const PrintOptions kLetter{PaperSize::Letter, "2026-11-25T07:40:12", "Ostrel Shaftworks"};

TEST(Balance, InEqualsOutIsShownToTheNanometre) {
  HeatBalance balance = InventedBalance();
  EXPECT_EQ(BalanceCheckWords(balance), "in 30 000.000000 mm = out 30 000.000000 mm: balanced to the nanometre");
  balance.classes[3].length -= 1_nm;
  EXPECT_EQ(BalanceCheckWords(balance), "in 30 000.000000 mm \u2260 out 29 999.999999 mm: NOT BALANCED, difference 0.000001 mm");
}

TEST(Balance, PaperWorkbookAndJsonSayTheSameSums) {
  OwnFolder folder;
  const HeatBalance balance = InventedBalance();
  WriteBalancePdf(folder / "b.pdf", balance, kTold);
  WriteBalanceXlsx(folder / "b.xlsx", balance, kTold);
  const std::string text = TextOf(folder / "b.pdf");
  EXPECT_NE(text.find("21 174.000000"), std::string::npos);
  EXPECT_NE(text.find("balanced to the nanometre"), std::string::npos);
  EXPECT_EQ(CrowdingOf(folder / "b.pdf", 210, 297), "");
  EXPECT_NE(OutputOf("xlsx2csv '" + (folder / "b.xlsx") + "'").find("21174000000"), std::string::npos);
  const auto json = nlohmann::json::parse(BalanceRecordJson(balance, kTold));
  EXPECT_EQ(json.at("balance").at("in_nm").get<std::int64_t>(), 30'000'000'000);
  EXPECT_EQ(json.at("balance").at("difference_nm").get<std::int64_t>(), 0);
  EXPECT_TRUE(json.at("balance").at("balanced").get<bool>());
}

TEST(Balance, MetalFoundOverIsShownWithItsSign) {
  OwnFolder folder;
  HeatBalance balance = InventedBalance();
  balance.classes[3].length += 100_mm;  // more on hand
  balance.classes[6].length = -100_mm;  // than was received
  WriteBalancePdf(folder / "b.pdf", balance, kTold);
  const std::string text = TextOf(folder / "b.pdf");
  EXPECT_NE(text.find("-100.000000"), std::string::npos);
  EXPECT_NE(text.find("balanced to the nanometre"), std::string::npos);
}

TEST(Trace, EveryLineIsOnThePaperWithDigestAndStatementOnEveryPage) {
  OwnFolder folder;
  const TraceRecord trace = InventedTrace(9);
  WriteTracePdf(folder / "t.pdf", trace, kTold);
  const std::string text = TextOf(folder / "t.pdf");
  for (const TraceLine& line : trace.lines) EXPECT_NE(text.find(line.name), std::string::npos) << line.name;
  EXPECT_NE(text.find("states only our own work"), std::string::npos);
  EXPECT_NE(text.find("HELD, place B3-2"), std::string::npos);
  EXPECT_NE(text.find("balanced to the nanometre"), std::string::npos);
  int digests = 0;
  for (const PdfWord& word : WordsOf(folder / "t.pdf"))
    if (word.text == trace.digest) ++digests;
  EXPECT_EQ(digests, PagesOf(folder / "t.pdf"));
  EXPECT_EQ(CrowdingOf(folder / "t.pdf", 210, 297), "");
  WriteTracePdf(folder / "l.pdf", trace, kLetter);
  EXPECT_EQ(CrowdingOf(folder / "l.pdf", 215.9, 279.4), "");
}

TEST(Trace, ADeepChainOfDropsStaysOnThePage) {
  OwnFolder folder;
  TraceRecord trace = InventedTrace(1);
  const TraceLine one = trace.lines.back();
  for (int depth = 3; depth < 40; ++depth) {
    trace.lines.push_back(one);
    trace.lines.back().depth = depth;
    trace.lines.back().name = "deep-" + std::to_string(depth);
  }
  WriteTracePdf(folder / "t.pdf", trace, kTold);
  EXPECT_NE(TextOf(folder / "t.pdf").find("deep-39"), std::string::npos);
  EXPECT_EQ(CrowdingOf(folder / "t.pdf", 210, 297), "");
}

TEST(Trace, StrokesGoOnWhileABrotherFollows) {
  std::vector<TraceLine> lines(5);
  const int depths[] = {0, 1, 2, 1, 2};
  for (std::size_t i = 0; i < 5; ++i) lines[i].depth = depths[i];
  const auto strokes = TreeStrokes(lines);
  EXPECT_TRUE(strokes[0].empty());
  EXPECT_EQ(strokes[1], (std::vector<bool>{true}));
  EXPECT_EQ(strokes[2], (std::vector<bool>{true, false}));
  EXPECT_EQ(strokes[3], (std::vector<bool>{false}));
  EXPECT_EQ(strokes[4], (std::vector<bool>{false, false}));
}

TEST(Trace, JsonKeepsNanometresAndGramsAsWholeNumbers) {
  const TraceRecord trace = InventedTrace(2);
  const auto json = nlohmann::json::parse(TraceJson(trace));
  EXPECT_EQ(json.at("record"), "trace");
  EXPECT_EQ(json.at("digest"), trace.digest);
  EXPECT_EQ(json.at("happenings").get<std::int64_t>(), 4711);
  ASSERT_EQ(json.at("lines").size(), trace.lines.size());
  for (std::size_t i = 0; i < trace.lines.size(); ++i) {
    ASSERT_TRUE(json["lines"][i].at("length_nm").is_number_integer());
    EXPECT_EQ(json["lines"][i].at("length_nm").get<std::int64_t>(), trace.lines[i].length.nm);
    EXPECT_EQ(json["lines"][i].at("mass_g").get<std::int64_t>(), trace.lines[i].mass.g);
    EXPECT_EQ(json["lines"][i].at("held").get<bool>(), trace.lines[i].held);
  }
}

TEST(Trace, WorkbookHasTheLinesTheBalanceAndTheDigest) {
  OwnFolder folder;
  const TraceRecord trace = InventedTrace(2);
  WriteTraceXlsx(folder / "t.xlsx", trace, kTold);
  const std::string lines = OutputOf("xlsx2csv -n Trace '" + (folder / "t.xlsx") + "'");
  for (const TraceLine& line : trace.lines) EXPECT_NE(lines.find(line.name), std::string::npos) << line.name;
  EXPECT_NE(OutputOf("xlsx2csv -n Balance '" + (folder / "t.xlsx") + "'").find("unexplained"), std::string::npos);
  EXPECT_NE(OutputOf("xlsx2csv -n About '" + (folder / "t.xlsx") + "'").find(trace.digest), std::string::npos);
}

TEST(Words, HeatsAreGroupedForReadingOnly) {
  EXPECT_EQ(HeatInGroups("M2208"), "M22 08");
  EXPECT_EQ(HeatInGroups("88417003"), "884 170 03");
  EXPECT_EQ(HeatInGroups("H7731/2"), "H7731/2");
  EXPECT_EQ(HeatInGroups("123"), "123");
}

TEST(Words, LiftingFollowsTheShopsLimit) {
  const Mass limit{25'000};
  EXPECT_EQ(HowToLift({25'000}, 634_mm, limit), "hand");
  EXPECT_EQ(HowToLift({25'001}, 634_mm, limit), "TWO PEOPLE");
  EXPECT_EQ(HowToLift({50'001}, 1300_mm, limit), "CRANE");
  EXPECT_EQ(HowToLift({12'000}, 6000_mm, limit), "hand, long: two people");
  EXPECT_EQ(HowToLift({12'000}, 600_mm, {0}), "no limit set");
}

TEST(Words, WhatIsLeftIsNeverMoreThanThereIs) {
  SheetBlock b;
  b.left = {206'999'999};
  b.fate = LeftFate::Drop;
  EXPECT_EQ(WhatIsLeft(b), "LEFT \u2248 206 mm: KEEP, label prints");
  b.left = 66_mm;
  b.fate = LeftFate::Scrap;
  EXPECT_EQ(WhatIsLeft(b), "LEFT 66 mm: SCRAP");
  b.left = {};
  EXPECT_EQ(WhatIsLeft(b), "NOTHING LEFT");
}

}  // namespace
}  // namespace heatkeep
