// Bars cut together. 6 000 with trim 10 + 2 and a dead end of 120 holds (6 000 - 12 - 120) / 302 = 19 of 300, rest 250; with the
// trim that is 20 strokes (the trade's own worked example, common practice, no source).
#include <set>

#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

class Bundle : public Works {
 protected:
  void BarsOf(const std::string& first, int count, const std::string& heat) {
    std::string rows;
    for (int i = 0; i < count; ++i) rows += first + std::to_string(i) + ",bar,Vandrek," + heat + ",C45E,round 30,6000,0,none,,\n";
    TakeIn(rows);
  }
};

TEST_F(Bundle, FiveBarsOfOneHeatAreCutInTwentyStrokesAndLeaveFiveRestsOf250) {
  BarsOf("A", 5, "C30");
  Want("A", "O1,10,Pallant,round 30,C45E,300,95,,H1,,\n");
  ASSERT_EQ(Plan("A", {"--bundled"}), 1);
  const Json sheet = Sheet(1);
  EXPECT_EQ(sheet["bundled"], true);
  EXPECT_EQ(sheet["grip_nm"], 120 * kMm);
  ASSERT_EQ(sheet["blocks"].size(), 5U);
  for (const Json& block : sheet["blocks"]) {
    EXPECT_EQ(block["bundle"], 5);
    EXPECT_EQ(block["bundle_no"], 1);
    EXPECT_EQ(block["strokes"], 20);
    EXPECT_EQ(block["cuts"][0]["count"], 19);
    EXPECT_EQ(block["left_nm"], 250 * kMm);
    EXPECT_EQ(block["left"], "drop");
  }
  const Ran shown = As("saw", {"plan", "show", "1"});
  // a stroke goes through 5 x 706.858 mm2; carbon steel at 55 cm2/min, the rate that ships
  EXPECT_TRUE(Has(shown.out, "BUNDLE 1: 5 bars cut together, 20 strokes of 35.34 cm\u00B2, 0.6 min each")) << shown;
  EXPECT_EQ(sheet["blocks"][0]["stroke_area_um2"], 3'534'291'735);
  const Json load = Asked("planner", {"saw", "load"});
  EXPECT_EQ(load[0]["cuts"], 20);
  EXPECT_EQ(load[0]["pieces"], 100);
  EXPECT_EQ(load[0]["area_mm2"], 70'685);
  const Json time = Asked("planner", {"saw", "time", "1", "--rate", "50"});
  EXPECT_EQ(time["milliseconds"], 848'230);  // 706.8583 cm2 at 50 cm2/min
  EXPECT_EQ(time["rows"][0]["bars"], 5);

  const Ran done = As("saw", {"cut", "record", "--plan", "1", "--place", "B1-1"});
  ASSERT_EQ(done.code, 0) << done;
  EXPECT_TRUE(Has(done.out, "bundle 1: 5 bars in 20 strokes")) << done;
  EXPECT_TRUE(Has(done.out, TagOf("A3") + ": 19 pieces, drop ")) << done;
  EXPECT_EQ(Number("select count(*) as n from book.request where deed = 'record_bundle'"), 1);
  const Json saws = Asked("saw", {"saw", "list"});
  EXPECT_EQ(saws[0]["cuts_since"], load[0]["cuts"]);
  EXPECT_EQ(saws[0]["area_since_mm2"], load[0]["area_mm2"]);
  EXPECT_EQ(Balance("C30", "on site"), 28'500 * kMm);
  EXPECT_EQ(Balance("C30", "trim"), 50 * kMm);
  EXPECT_EQ(Balance("C30", "kerf"), 200 * kMm);
  EXPECT_EQ(Balance("C30", "on hand"), 1'250 * kMm);
  EXPECT_EQ(Number("select count(distinct tag) as n from book.piece where kind = 'drop' and length_nm = 250000000"), 5);
  EXPECT_EQ(Broken(), "");
}

TEST_F(Bundle, OneBarOfABundleMayDifferAndOneMayBeCutByItself) {
  BarsOf("A", 3, "C30");
  Want("A", "O1,10,Pallant,round 30,C45E,300,57,,,,\n");
  ASSERT_EQ(Plan("A", {"--bundled"}), 1);
  EXPECT_EQ(As("saw", {"cut", "record", "--plan", "1", "--bundle", "2"}).code, 2);
  ASSERT_EQ(As("saw", {"cut", "record", "--plan", "1", "--tag", TagOf("A0"), "--place", "B1-1"}).code, 0);
  const Ran rest = As("saw",
                      {"cut", "record", "--plan", "1", "--bundle", "1", "--tag", TagOf("A2"), "--rest", "248", "--reason", "as measured",
                       "--place", "B1-1"});
  ASSERT_EQ(rest.code, 0) << rest;
  EXPECT_TRUE(Has(rest.out, "bundle 1: 2 bars in 20 strokes")) << rest;
  EXPECT_EQ(Balance("C30", "on hand"), (250 + 250 + 248) * kMm);
  EXPECT_EQ(Asked("saw", {"saw", "list"})[0]["cuts_since"], 40);
  EXPECT_EQ(Broken(), "");
}

TEST_F(Bundle, IsMadeUpAndCutByWordsAndOffTheNetwork) {
  BarsOf("A", 4, "C30");
  Want("A", "O1,10,Pallant,round 30,C45E,300,76,,,,\n");
  ASSERT_EQ(As("owner", {"saw", "set", "1", "--bundle", "2"}).code, 0);
  ASSERT_EQ(Plan("A", {"--bundled"}), 1);
  for (const Json sheet = Sheet(1); const Json& block : sheet["blocks"]) EXPECT_EQ(block["bundle"], 2);
  const std::string a = TagOf("A0"), b = TagOf("A1"), c = TagOf("A2"), d = TagOf("A3");
  const Ran no = As("saw", {"saw", "make-up", a, b, c, "--saw", "1"});
  EXPECT_EQ(no.code, 1);
  EXPECT_TRUE(Has(no.err, "refused: saw 1 takes 2 bars at a time, not 3")) << no;
  ASSERT_EQ(As("saw", {"saw", "make-up", a, b, "--saw", "1", "--heat-of", a + "=C30"}).code, 0);
  const Words words{"--saw",  "1",    "--kerf",  "2",   "--stroke", "trim 10", "--stroke", "good 19x300 O1/10",
                    "--left", "drop", "--place", "B1-1"};
  const auto cut = [&](Words bars, const Words& more) {
    bars.insert(bars.begin(), {"saw", "cut-bundle"});
    bars.insert(bars.end(), words.begin(), words.end());
    bars.insert(bars.end(), more.begin(), more.end());
    return bars;
  };
  EXPECT_EQ(As("saw", cut({a, b}, {"--bar", c + ": rest 248"})).code, 2) << "not among the bars";
  EXPECT_EQ(As("saw", cut({a, b}, {"--bar", "rest 248"})).code, 2);
  const Json answer = Asked("saw",
                            cut({a, b},
                                {"--bar", b + ": trim 10", "--bar", b + ": good 18x300 O1/10", "--bar", b + ": reject 298 O1/10: short",
                                 "--bar", b + ": rest 252"}));
  EXPECT_EQ(answer["strokes"], 20);
  EXPECT_EQ(answer["good"], 37);

  const std::string file = PathOf("saw-1.queue");
  ASSERT_EQ(As("saw", {"saw", "block", "--device", "saw-1", "--site", "main", "--size", "5", "--queue", file}).code, 0);
  const Words keep{"--queue", file, "--login", "test_saw"};
  const auto queued = [&](Words all) {
    all.insert(all.end(), keep.begin(), keep.end());
    return Heatkeep(all);
  };
  ASSERT_EQ(queued({"saw", "make-up", c, d, "--saw", "1"}).code, 0);
  const Ran kept = queued(cut({c, d}, {}));
  ASSERT_EQ(kept.code, 0) << kept;
  EXPECT_TRUE(Has(As("saw", {"saw", "queue", file}).out, "2 waits  record_bundle " + c)) << kept;
  ASSERT_EQ(As("saw", {"saw", "send", file}).code, 0);
  EXPECT_EQ(Number("select count(*) as n from api.saw_bundles where bars = 2 and strokes = 20 and cuts = 40"), 2);
  EXPECT_EQ(Balance("C30", "on hand"), (250 + 252 + 250 + 250) * kMm);
  EXPECT_EQ(Broken(), "");
}

TEST_F(Bundle, ABarOfAnotherHeatIsNotInTheBundleOfASingleHeatOrder) {
  BarsOf("A", 4, "C30");
  BarsOf("B", 1, "C31");
  Want("A", "O1,10,Pallant,round 30,C45E,300,95,,H1,,\nO2,10,Pallant,round 30,C45E,300,19,,H2,,\n");
  const std::int64_t plan = Plan("A", {"--bundled"});
  ASSERT_NE(plan, 0);
  const Json sheet = Sheet(plan);
  ASSERT_EQ(sheet["blocks"].size(), 5U);
  std::set<int> bars;
  for (const Json& block : sheet["blocks"]) bars.insert(block["bundle"].get<int>());
  EXPECT_EQ(bars, (std::set<int>{1, 4})) << sheet["blocks"];
}

TEST_F(Bundle, WithoutAWishForHeatsLikeBarsGoTogetherAndSingleCuttingMakesNone) {
  BarsOf("A", 2, "C30");
  BarsOf("B", 2, "C31");
  Want("A", "O1,10,Pallant,round 30,C45E,300,38,,,,\n");
  Want("B", "O2,10,Pallant,round 30,C45E,300,38,,,,\n");
  ASSERT_EQ(Plan("A", {"--bundled"}), 1);
  for (const Json sheet = Sheet(1); const Json& block : sheet["blocks"]) EXPECT_EQ(block["bundle"], 2);
  ASSERT_EQ(Plan("B"), 2);
  for (const Json sheet = Sheet(2); const Json& block : sheet["blocks"]) EXPECT_EQ(block["bundle"], 1);
}

}  // namespace
}  // namespace heatkeep::command
