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
  EXPECT_TRUE(Has(shown.out, "BUNDLE 1: 5 bars cut together, 20 strokes")) << shown;

  ASSERT_EQ(As("saw", {"cut", "record", "--plan", "1", "--place", "B1-1"}).code, 0);
  EXPECT_EQ(Balance("C30", "on site"), 28'500 * kMm);
  EXPECT_EQ(Balance("C30", "trim"), 50 * kMm);
  EXPECT_EQ(Balance("C30", "kerf"), 200 * kMm);
  EXPECT_EQ(Balance("C30", "on hand"), 1'250 * kMm);
  EXPECT_EQ(Number("select count(distinct tag) as n from book.piece where kind = 'drop' and length_nm = 250000000"), 5);
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
  for (const Json& block : Sheet(1)["blocks"]) EXPECT_EQ(block["bundle"], 2);
  ASSERT_EQ(Plan("B"), 2);
  for (const Json& block : Sheet(2)["blocks"]) EXPECT_EQ(block["bundle"], 1);
}

}  // namespace
}  // namespace heatkeep::command
