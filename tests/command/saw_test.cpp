// `heatkeep saw ...`: what cutting takes, the deeds by words, and a saw off the network.

#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

struct Saw : Works {
  void SetUp() override {
    TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 80,6000,0,3.1,,\n");
    Certify("C1,3.1,Vandrek,K1,round 80,42CrMo4\n");
    Want("L", "O1,10,Pallant,round 80,42CrMo4,290,14,3.1,,,\n");
    tag = TagOf("T1");
  }
  void TearDown() override { EXPECT_EQ(Broken(), ""); }
  Ran Saws(const Words& more, const std::string& who = "saw") {
    Words words{"saw"};
    words.insert(words.end(), more.begin(), more.end());
    return As(who, words);
  }
  std::string tag;
};

// 100 mm round at 40 cm2/min: 1.963 min; kerf 2.5: 0.15413 kg a cut (worked by hand; the rate is constructed).
TEST(SawEstimate, OfOneSectionWithoutABook) {
  const Ran ran = Heatkeep({"saw", "estimate", "round 100", "--rate", "40", "--kerf", "2.5", "--cuts", "10", "--per-hour", "45.00",
                            "--length", "1600", "--stop", "500", "--json"});
  ASSERT_EQ(ran.code, 0) << ran;
  const Json j = Json::parse(ran.out);
  EXPECT_EQ(j["milliseconds"], 1'178'097);  // 78 539.8 / 4 000 min
  EXPECT_EQ(j["chips_g"], 1541);
  EXPECT_EQ(j["feed_widest_um_per_min"], 40'000);
  EXPECT_EQ(j["feed_strokes"], 4);
  EXPECT_EQ(j["kerfs"], 1);
  EXPECT_EQ(j["cost_cents"], 1473);
  // seven rounds of 40 in a bundle: 87.965 cm2 at 40 cm2/min: 2.199 min (tests/terms/test_sawing.cpp has the same)
  const Ran seven = Heatkeep({"saw", "estimate", "round 40", "--rate", "40", "--bars", "7", "--json"});
  EXPECT_EQ(Json::parse(seven.out)["milliseconds"], 131'947) << seven;
  EXPECT_EQ(Json::parse(seven.out)["area_um2"], 8'796'459'427) << seven;
  EXPECT_EQ(Heatkeep({"saw", "estimate", "round 100", "--rate", "0"}).code, 2);
  EXPECT_EQ(Heatkeep({"saw", "estimate", "oval 100", "--rate", "9"}).code, 2);
}

TEST_F(Saw, APieceIsReservedFetchedCutAndItsBandCounts) {
  EXPECT_EQ(Saws({"reserve", tag, "--line", "O1/10", "--count", "14"}, "planner").code, 0);
  const Ran twice = Saws({"reserve", tag, "--line", "O1/10", "--count", "1"}, "planner");
  EXPECT_EQ(twice.code, 1) << twice;
  EXPECT_TRUE(Has(twice.err, "promised by test_planner, order O1")) << twice;
  EXPECT_EQ(Saws({"reserve", tag, "--line", "O1/10", "--count", "1"}, "saw").code, 1) << "the lead's alone";
  const Ran wrong = Saws({"pull", tag, "--saw", "1", "--heat-read", "XXXX"});
  EXPECT_EQ(wrong.code, 1);
  EXPECT_TRUE(Has(wrong.err, "refused: the metal does not read as the heat")) << wrong;
  ASSERT_EQ(Saws({"pull", tag, "--saw", "1"}).code, 0);
  const Ran cut = Saws({"cut",      tag,
                        "--saw",    "1",
                        "--kerf",   "2",
                        "--stroke", "trim 10",
                        "--stroke", "good 13x290 O1/10",
                        "--stroke", "reject 285 O1/10: out of square",
                        "--left",   "drop",
                        "--rest",   "1905",
                        "--place",  "B1-2",
                        "--heat",   "K1",
                        "--json"});
  ASSERT_EQ(cut.code, 0) << cut;
  const Json answer = Json::parse(cut.out);
  EXPECT_EQ(answer["good"], 13);
  EXPECT_EQ(answer["label"]["heat"], "K1");
  const Json saws = Asked("saw", {"saw", "list"});
  EXPECT_EQ(saws[0]["cuts_since"], 15);
  EXPECT_EQ(saws[0]["out_of_square"], 1);
  EXPECT_FALSE(saws[0]["worn"].get<bool>());
}

TEST_F(Saw, TheOwnerSetsSawsAndBinsAndScrapGoesOnlyWhereItsChemistryIsBought) {
  ASSERT_EQ(Saws({"set", "1", "--stop", "500", "--per-hour", "45.00", "--capacity", "round=70x70"}, "owner").code, 0);
  EXPECT_EQ(Saws({"set", "1", "--capacity", "oval=70x70"}, "owner").code, 2);
  EXPECT_EQ(Asked("saw", {"saw", "list"})[0]["stop_stroke_nm"], 500 * kMm);
  EXPECT_EQ(Plan("L"), 0) << "round 80 is wider than saw 1 takes";
  ASSERT_EQ(Saws({"bins", "--bin", "BIN-2=Cr-Mo", "--bin", "BIN-3=stainless", "--family", "alloy steel=Cr-Mo"}, "owner").code, 0);
  const Ran mixed = Saws({"scrap", tag, "--bin", "BIN-3", "--reason", "bent"});
  EXPECT_EQ(mixed.code, 1);
  EXPECT_TRUE(Has(mixed.err, "bin BIN-3 is for stainless; this is Cr-Mo")) << mixed;
  EXPECT_EQ(Saws({"scrap", tag, "--bin", "BIN-2", "--reason", "bent"}).code, 0);
  EXPECT_EQ(Balance("K1", "scrap"), 6000 * kMm);
}

TEST_F(Saw, WordsThatCannotBeAreNamedByTheirOption) {
  for (const auto& [words, wrong] : std::vector<std::pair<Words, std::string>>{
           {{"cut", tag, "--saw", "1", "--stroke", "trim 10"}, "expected --kerf"},
           {{"cut", tag, "--saw", "1", "--kerf", "2", "--stroke", "saw 10"}, "--stroke: \"saw 10\" is no stroke"},
           {{"cut", tag, "--saw", "1", "--kerf", "2", "--stroke", "crop 10"}, "does not say why"},
           {{"cut", tag, "--saw", "1", "--rest", "10"}, "expected --left"},
           {{"split", tag, "--saw", "1", "--kerf", "2", "--part", "3000"}, "--part: \"3000\" is no part"},
           {{"first", "--saw", "1", "--line", "O1", "--measured", "290"}, "--line: \"O1\" names no line"}}) {
    const Ran ran = Saws(words);
    EXPECT_EQ(ran.code, 2) << ran;
    EXPECT_TRUE(Has(ran.err, wrong)) << wrong << '\n' << ran;
  }
}

TEST_F(Saw, ThePlansTimeSaysWhereItsRateIsFrom) {
  ASSERT_EQ(Plan("L"), 1);
  const Json time = Asked("planner", {"saw", "time", "1"});
  EXPECT_EQ(time["cuts"], 15);          // 14 and a trim
  EXPECT_EQ(time["area_mm2"], 75'398);  // 15 x 5 026.548
  const Json typed = Asked("planner", {"saw", "time", "1", "--rate", "50"});
  EXPECT_EQ(typed["milliseconds"], 904'779);  // 14 cuts 844 460 and one 60 319, at 5 000 mm2/min
  EXPECT_EQ(typed["rows"][0]["rate_source"], "typed for this job");
  const Json load = Asked("planner", {"saw", "load"});
  ASSERT_EQ(load.size(), 1U);
  EXPECT_EQ(load[0]["cuts"], 15);
  EXPECT_EQ(Asked("planner", {"saw", "rates"}).size() >= 9, true);
}

TEST_F(Saw, OffTheNetworkDeedsWaitInOrderAndAreSentOnce) {
  const std::string file = PathOf("saw-1.queue");
  const Words keep{"--queue", file, "--login", "test_saw"};
  const auto queued = [&](Words words) {
    words.insert(words.end(), keep.begin(), keep.end());
    words.insert(words.begin(), "saw");
    return Heatkeep(words);
  };
  for (const char* deed : {"queue", "send"}) {
    const Ran none = Saws({deed, PathOf("saw-7.queue")});
    EXPECT_EQ(none.code, 2) << none;
    EXPECT_TRUE(Has(none.err, "saw-7.queue: there is no such file")) << none;
  }
  EXPECT_EQ(queued({"pull", tag, "--saw", "1"}).code, 2) << "no tag numbers yet";
  ASSERT_EQ(Saws({"block", "--device", "saw-1", "--site", "main", "--size", "5", "--queue", file}).code, 0);
  ASSERT_EQ(Plan("L"), 1);
  ASSERT_EQ(queued({"pull", tag, "--saw", "1", "--plan", "1"}).code, 0);
  const Ran cut = queued({"cut", tag, "--saw", "1", "--kerf", "2", "--stroke", "trim 10", "--stroke", "good 14x290 O1/10", "--left", "drop",
                          "--rest", "1900", "--place", "B1-2"});
  ASSERT_EQ(cut.code, 0) << cut;
  EXPECT_TRUE(cut.out.starts_with("kept as number 2 of saw-1, new tag Q000001")) << cut;
  EXPECT_EQ(Number("select count(*) as n from book.stroke"), 0);
  const Ran other = As("all", {"saw", "send", file});
  EXPECT_EQ(other.code, 1);
  EXPECT_TRUE(Has(other.err, "was done by test_saw, who sends it")) << other;
  const Ran sent = Saws({"send", file});
  EXPECT_EQ(sent.code, 0) << sent;
  EXPECT_EQ(sent.out, "number 1 is booked\nnumber 2 is booked\n");
  EXPECT_EQ(Saws({"send", file}).out, "nothing waits to be sent\n");
  EXPECT_EQ(Balance("K1", "on site"), 14 * 290 * kMm);
  EXPECT_EQ(Balance("K1", "on hand"), 1900 * kMm);
  const Ran again =
      queued({"cut", tag, "--saw", "1", "--kerf", "2", "--stroke", "good 290 O1/10", "--left", "drop", "--rest", "10", "--place", "B1-2"});
  ASSERT_EQ(again.code, 0) << again;
  const Ran conflict = Saws({"send", file});
  EXPECT_EQ(conflict.code, 1) << conflict;
  EXPECT_TRUE(Has(conflict.out, "number 3 is a conflict for the lead: " + tag + " is cut up")) << conflict;
  EXPECT_EQ(Asked("planner", {"conflict", "list"}).size(), 1U);
  const Json rows = Json::parse(Heatkeep({"saw", "queue", file, "--json"}).out);
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_EQ(rows[2]["state"], "conflict");
}

}  // namespace
}  // namespace heatkeep::command
