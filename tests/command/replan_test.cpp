// A plan mended at the saw: what was promised is let go and promised anew in one transaction. Lengths by hand arithmetic in
// millimetres: kerf 2, trim 10, grip 60, rests kept from 150 (common practice, no source).
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

class Replan : public Works {
 protected:
  // Four of 240, one heat: D-0101 holds (1 100 - 60) / 242 = 4. D-0107 is of the same heat, D-0108 of another.
  void FourFromOneDrop() {
    TakeIn("D-0101,drop,Vandrek,K3317,42CrMo4,round 80,1100,2,3.1,,\n");
    Certify("C1,3.1,Vandrek,K3317,round 80,42CrMo4\n");
    Want("A", "O1,10,Pallant,round 80,42CrMo4,240,4,3.1,H1,,\n");
    ASSERT_EQ(Plan("A"), 1);
    ASSERT_EQ(Sheet(1)["blocks"].size(), 1U);
    TakeIn(
        "D-0107,drop,Vandrek,K3317,42CrMo4,round 80,420,2,3.1,,\n"
        "D-0108,drop,Vandrek,M2208,42CrMo4,round 80,400,2,3.1,,\n");
    Certify("C2,3.1,Vandrek,M2208,round 80,42CrMo4\n");
  }
  Json BlockOf(const std::string& old_tag) {
    const std::string tag = TagOf(old_tag);
    const Json sheet = Sheet(1);
    for (const Json& block : sheet["blocks"])
      if (block["tag"] == tag) return block;
    return Json();
  }
  std::string Promised() {
    return Word(
        "select string_agg(old_tag, ' ' order by old_tag) as w from book.promise join book.piece using (piece_id) where promise.state = 'live'");
  }
};

// Measured 1 018: (1 018 - 60) / 242 = 3 from D-0101, rest 1 018 - 726 = 292; one from D-0107, rest 420 - 242 = 178.
TEST_F(Replan, ShorterThanWrittenAtTheSawTakesTheFourthFromTheSameHeat) {
  FourFromOneDrop();
  const std::string tag = TagOf("D-0101");
  ASSERT_EQ(As("saw", {"pull", tag, "--saw", "1", "--plan", "1"}).code, 0);
  const Ran ran = As("saw", {"replan", "1", "--measured", tag + "=1018mm"});
  ASSERT_EQ(ran.code, 0) << ran;
  EXPECT_TRUE(Has(ran.out, "plan 1: 0 pieces as planned, 2 pieces planned anew")) << ran;
  EXPECT_TRUE(Has(ran.out, TagOf("D-0107") + " instead of " + tag + " for 1 x 240 mm")) << ran;
  EXPECT_TRUE(Has(ran.out, tag + " leaves 292 mm, kept")) << ran;
  EXPECT_EQ(Promised(), "D-0101 D-0107");
  EXPECT_EQ(BlockOf("D-0101")["cuts"][0]["count"], 3);
  EXPECT_EQ(BlockOf("D-0101")["left_nm"], 292 * kMm);
  EXPECT_EQ(BlockOf("D-0101")["state"], "at saw");
  EXPECT_EQ(BlockOf("D-0107")["left_nm"], 178 * kMm);
  EXPECT_EQ(BlockOf("D-0107")["state"], "promised");

  const Ran cut = As("saw", {"cut", "record", "--plan", "1", "--place", "B1-1"});
  ASSERT_EQ(cut.code, 0) << cut;
  EXPECT_EQ(Word("select state::text as w from book.plan"), "done");
  EXPECT_EQ(Number("select count(*) as n from book.stroke where class = 'good'"), 4);
  EXPECT_EQ(Number("select length_nm as n from book.metal_out where class = 'unexplained' and named <> ''"), 82 * kMm);
  EXPECT_EQ(Word("select reason as w from book.metal_out where class = 'unexplained'"), "measured at the saw");
  EXPECT_EQ(Balance("K3317", "unexplained"), 82 * kMm);
  EXPECT_EQ(Balance("K3317", "on hand"), (292 + 178) * kMm);
  EXPECT_EQ(Broken(), "");
}

TEST_F(Replan, APieceThatIsNotThereIsMissingAndAnotherIsPromised) {
  TakeIn(
      "D-1,drop,Vandrek,K3317,42CrMo4,round 80,600,2,none,,\nD-2,drop,Vandrek,K3317,42CrMo4,round 80,700,2,none,,\n"
      "D-3,drop,Vandrek,M2208,42CrMo4,round 80,900,2,none,,\n");
  Want("A", "O1,10,Pallant,round 80,42CrMo4,250,2,,,,\n");
  ASSERT_EQ(Plan("A"), 1);
  ASSERT_EQ(Promised(), "D-1");
  const Json told = Asked("planner", {"replan", "1", "--missing", TagOf("D-1")});
  EXPECT_EQ(told["kept"], 0);
  EXPECT_EQ(told["planned_anew"], 1);
  EXPECT_EQ(told["changed"][0], TagOf("D-2") + " instead of " + TagOf("D-1") + " for 2 x 250 mm");
  EXPECT_EQ(told["short"], Json::array());
  EXPECT_EQ(Promised(), "D-2");
  EXPECT_EQ(Word("select state::text as w from book.piece where old_tag = 'D-1'"), "missing");
  EXPECT_EQ(As("clerk", {"putaway", TagOf("D-1"), "B1-2"}).code, 1) << "it is to be looked at when it is found again";
  EXPECT_EQ(Broken(), "");
}

TEST_F(Replan, BadAndUnreadableMetalGoesToQuarantineAlsoFromTheSaw) {
  FourFromOneDrop();
  TakeIn("F-1,bar,Vandrek,K3317,42CrMo4,round 80,3000,0,3.1,,\n");
  const std::string tag = TagOf("D-0101");
  EXPECT_EQ(As("saw", {"replan", "1", "--bad", tag}).code, 2) << "without a reason";
  ASSERT_EQ(As("saw", {"pull", tag, "--saw", "1", "--plan", "1"}).code, 0);
  const Ran ran = As("saw", {"replan", "1", "--bad", tag, "--unreadable", tag, "--reason", "laminated"});
  ASSERT_EQ(ran.code, 0) << ran;
  EXPECT_TRUE(Has(ran.out, "nothing is cut from " + tag + ": take it from the saw")) << ran;
  EXPECT_EQ(Word("select quarantine as w from book.piece where old_tag = 'D-0101'"), "laminated");
  EXPECT_EQ(Promised(), "D-0107 F-1") << "one from the drop of the same heat, three from the bar";
  EXPECT_EQ(Broken(), "");
}

// What is cut already is of K3317: the one that failed comes from that heat too, though D-0108 is shorter.
TEST_F(Replan, WhatWasRejectedIsPlannedAgainFromTheHeatThatWasCut) {
  FourFromOneDrop();
  const std::string tag = TagOf("D-0101");
  const Ran cut = As("saw",
                     {"cut", "record", "--plan", "1", "--tag", tag, "--done", "O1/10=3", "--reason", "one was out of square", "--rest",
                      "374mm", "--place", "B1-1"});
  ASSERT_EQ(cut.code, 0) << cut;
  ASSERT_EQ(Word("select state::text as w from book.plan"), "done");
  const Ran ran = As("planner", {"replan", "1"});
  ASSERT_EQ(ran.code, 0) << ran;
  EXPECT_EQ(Word("select state::text as w from book.plan"), "live");
  EXPECT_EQ(
      Word("select heat as w from book.promise join book.piece using (piece_id) join book.lot using (lot_id) where promise.state = 'live'"),
      "K3317");
  EXPECT_EQ(Broken(), "");
}

TEST_F(Replan, ASecondPlanOfALineKeepsToTheHeatOfTheFirst) {
  FourFromOneDrop();
  const Ran cut =
      As("saw",
         {"cut", "record", "--plan", "1", "--done", "O1/10=3", "--reason", "one was out of square", "--tag", TagOf("D-0101"), "--scrap"});
  ASSERT_EQ(cut.code, 0) << cut;
  ASSERT_EQ(As("quality", {"quarantine", TagOf("D-0107"), "--reason", "bent"}).code, 0);
  const Ran ran = As("planner", {"allocate", "A"});
  EXPECT_EQ(ran.code, 3) << ran << "only metal of another heat is left";
  EXPECT_TRUE(Has(ran.out, "its heat is M2208 of Vandrek, which is refused for the line")) << ran;
}

TEST_F(Replan, WhatStillFitsStays) {
  TakeIn(
      "D-1,drop,Vandrek,K3317,42CrMo4,round 80,600,2,none,,\nD-2,drop,Vandrek,K3317,C45E,round 60,700,2,none,,\n"
      "D-3,drop,Vandrek,M2208,42CrMo4,round 80,900,2,none,,\n");
  Want("A", "O1,10,Pallant,round 80,42CrMo4,250,2,,,,\nO1,20,Pallant,round 60,C45E,300,2,,,,\n");
  ASSERT_EQ(Plan("A"), 1);
  const std::int64_t kept = Number("select layout_id as n from book.layout join book.piece using (piece_id) where old_tag = 'D-2'");
  const Json told = Asked("saw", {"replan", "1", "--missing", TagOf("D-1")});
  EXPECT_EQ(told["kept"], 1);
  EXPECT_EQ(Promised(), "D-2 D-3");
  EXPECT_EQ(
      Number("select layout_id as n from book.layout join book.piece using (piece_id) where old_tag = 'D-2' and layout.state = 'promised'"),
      kept);
  EXPECT_EQ(Asked("saw", {"replan", "1"})["changed"], Json::array()) << "nothing has changed since";
}

TEST_F(Replan, WhatIsShortThenIsPromisedAllTheSameAndSaid) {
  TakeIn("D-1,drop,Vandrek,K3317,42CrMo4,round 80,1100,2,none,,\n");
  Want("A", "O1,10,Pallant,round 80,42CrMo4,240,4,,,,\n");
  ASSERT_EQ(Plan("A"), 1);
  const Ran ran = As("saw", {"replan", "1", "--measured", TagOf("D-1") + "=800"});
  EXPECT_EQ(ran.code, 3) << ran;
  EXPECT_TRUE(Has(ran.out, "short: order O1 line 10, 1 missing")) << ran;
  EXPECT_EQ(Sheet(1)["short"][0]["missing"], 1);
  TakeIn("D-2,drop,Vandrek,K3317,42CrMo4,round 80,400,2,none,,\n");
  EXPECT_EQ(As("planner", {"replan", "1"}).code, 0);
  EXPECT_EQ(Sheet(1)["short"], Json::array()) << "what is served since is short no more";
}

TEST_F(Replan, DryAndRefusedChangeNothing) {
  FourFromOneDrop();
  const std::string tag = TagOf("D-0101"), other = TagOf("D-0107"), before = Digest();
  const Ran dry = As("planner", {"replan", "1", "--measured", tag + "=1018", "--dry"});
  EXPECT_EQ(dry.code, 0) << dry;
  EXPECT_TRUE(Has(dry.out, "plan 1 would change: ")) << dry;
  EXPECT_EQ(As("planner", {"replan", "1", "--measured", tag}).code, 2);
  EXPECT_EQ(As("planner", {"replan", "1", "--measured", tag + "=0"}).code, 2);
  EXPECT_EQ(As("planner", {"replan", "7"}).code, 2);
  const Ran foreign = As("planner", {"replan", "1", "--missing", other});
  EXPECT_EQ(foreign.code, 2);
  EXPECT_TRUE(Has(foreign.err, "plan 1 has no piece " + other)) << foreign;
  EXPECT_EQ(As("planner", {"replan", "1", "--measured", tag + "=9000"}).code, 1) << "no piece is longer than it ever was";
  EXPECT_NE(As("quality", {"replan", "1"}).code, 0);
  EXPECT_EQ(Digest(), before);
  ASSERT_EQ(As("planner", {"plan", "cancel", "1", "--reason", "no more"}).code, 0);
  EXPECT_EQ(As("planner", {"replan", "1"}).code, 2);
}

}  // namespace
}  // namespace heatkeep::command
