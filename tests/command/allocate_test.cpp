// Planning from the rack: which pieces are promised, what is short and why. The worked examples are the trade's own,
// computed by hand in millimetres (common practice, no source).
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

using Allocate = Works;

constexpr const char* kTwoDropsAndABar =
    "D-0101,drop,Vandrek,K3317,42CrMo4,round 80,1100,2,3.1,,\n"
    "D-0102,drop,Vandrek,M2208,42CrMo4,round 80,1900,2,3.1,,\n"
    "F-1,bar,Vandrek,K3317,42CrMo4,round 80,6000,0,3.1,,\n";
constexpr const char* kTheirPapers = "C1,3.1,Vandrek,K3317,round 80,42CrMo4\nC2,3.1,Vandrek,M2208,round 80,42CrMo4\n";

// 1 900 - 7 x 242 = 206; the shorter drop holds only (1 100 - 60) / 242 = 4.
TEST_F(Allocate, TakesTheOneDropThatHoldsAllOfItInOneHeatBeforeABar) {
  TakeIn(kTwoDropsAndABar);
  Certify(kTheirPapers);
  Want("A", "O1,10,Pallant,round 80,42CrMo4,240,7,3.1,H1,,\n");
  const Ran ran = As("planner", {"allocate", "A"});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_TRUE(Has(ran.out, "plan 1: saw 1 takes 1 drop, opens no full bar; no plan opens less (proved)")) << ran;
  const Json sheet = Sheet(1);
  ASSERT_EQ(sheet["blocks"].size(), 1U);
  const Json& block = sheet["blocks"][0];
  EXPECT_EQ(block["tag"], TagOf("D-0102"));
  EXPECT_EQ(block["heat"], "M2208");
  EXPECT_EQ(block["cuts"], Json::parse(R"([{"order":"O1","line":"10","count":7,"set_nm":240000000,"nominal_nm":240000000}])"));
  EXPECT_EQ(block["left_nm"], 206 * kMm);
  EXPECT_EQ(block["left"], "drop");
  EXPECT_EQ(Number("select count(*) as n from book.promise where state = 'live'"), 1);
}

// 25 x 280: a bar of 6 000 gives (6 000 - 12 - 60) / 282 = 21; for the other 4 a bar of 12 + 4 x 282 + 60 = 1 200 and the doubt of 1.
TEST_F(Allocate, LeavesTheRestShortWhenPapersAreTooWeakAndSaysWhatToBuy) {
  TakeIn("P,bar,Vandrek,T901,S355J2,round 100,6000,0,3.1,,1\nQ,bar,Vandrek,T902,S355J2,round 100,6000,0,2.2,,1\n");
  Certify("C1,3.1,Vandrek,T901,round 100,S355J2\nC2,2.2,Vandrek,T902,round 100,S355J2\n");
  Want("A", "O1,10,Pallant,round 100,S355J2,280,25,3.1,,,\n");
  const Ran ran = As("planner", {"allocate", "A"});
  EXPECT_EQ(ran.code, 3) << ran;
  EXPECT_TRUE(Has(ran.out, "short: order O1 line 10, 4 missing: ")) << ran;
  EXPECT_TRUE(Has(ran.out, "1 piece not: its papers are 2.2, asked is 3.1")) << ran;
  EXPECT_TRUE(Has(ran.out, "the shortest bar to buy for 4 is 1201 mm")) << ran;
  const Json sheet = Sheet(1);
  ASSERT_EQ(sheet["blocks"].size(), 1U);
  EXPECT_EQ(sheet["blocks"][0]["tag"], TagOf("P"));
  EXPECT_EQ(sheet["blocks"][0]["cuts"][0]["count"], 21);
  EXPECT_EQ(sheet["blocks"][0]["left_nm"], 66 * kMm);
  EXPECT_EQ(sheet["blocks"][0]["left"], "scrap");
  ASSERT_EQ(sheet["short"].size(), 1U);
  EXPECT_EQ(sheet["short"][0]["missing"], 4);
  const Ran shown = As("planner", {"plan", "show", "1"});
  EXPECT_TRUE(Has(shown.out, "short: O1/10, 4 missing: ")) << shown;
}

// The customer's 3 000 gives 5 x 502 = 2 510, 490 left: kept though the house keeps from 600. Ours: 4 000 - 12 - 402 = 3 586.
TEST_F(Allocate, GivesACustomersMetalToItsOwnerOnlyAndKeepsTheirRests) {
  TakeIn(
      "X1,bar,Vandrek,R5512,X2CrNiMo17-12-2,round 50,3000,2,none,Ister,\n"
      "X2,bar,Vandrek,R5512,X2CrNiMo17-12-2,round 50,3000,2,none,Ister,\n"
      "Y,bar,Vandrek,R5513,X2CrNiMo17-12-2,round 50,4000,0,none,,\n");
  Want("A", "O1,10,Ister,round 50,X2CrNiMo17-12-2,500,5,,,Ister,\nO2,10,Pallant,round 50,X2CrNiMo17-12-2,400,1,,,,\n");
  const Json sheet = Sheet(Plan("A"));
  ASSERT_EQ(sheet["blocks"].size(), 2U);
  for (const Json& block : sheet["blocks"]) {
    const bool theirs = block["owner"] == "Ister";
    EXPECT_EQ(block["cuts"].size(), 1U);
    EXPECT_EQ(block["cuts"][0]["order"], theirs ? "O1" : "O2");
    EXPECT_EQ(block["left_nm"], (theirs ? 490 : 3586) * kMm);
    EXPECT_EQ(block["left"], "drop");
  }
  Want("B", "O3,10,Pallant,round 50,X2CrNiMo17-12-2,2900,2,,,,\n");
  const Ran ran = As("planner", {"allocate", "B"});
  EXPECT_EQ(ran.code, 3) << ran;
  EXPECT_FALSE(Has(ran.out + ran.err, "Ister")) << "a stranger's metal is not even spoken of\n" << ran;
}

TEST_F(Allocate, LeavesHeldQuarantinedAndPaperlessMetalAlone) {
  TakeIn(kTwoDropsAndABar);
  Want("A", "O1,10,Pallant,round 80,42CrMo4,240,1,,,,\n");
  EXPECT_EQ(Plan("A", {"--dry"}), 0);
  EXPECT_EQ(As("planner", {"allocate", "A", "--dry"}).code, 3) << "papers are awaited";
  Certify(kTheirPapers);
  EXPECT_EQ(As("planner", {"allocate", "A", "--dry"}).code, 0);
  EXPECT_EQ(As("quality", {"hold", "heat", "K3317", "--reason", "letter of the mill"}).code, 0);
  EXPECT_EQ(As("stranger", {"quarantine", TagOf("D-0102"), "--reason", "a crack"}).code, 4) << "no door to the book";
  EXPECT_EQ(As("saw", {"quarantine", TagOf("D-0102"), "--reason", "a crack"}).code, 0);
  EXPECT_EQ(As("planner", {"allocate", "A"}).code, 3);
  EXPECT_EQ(Number("select count(*) as n from book.promise"), 0);
  EXPECT_EQ(As("quality", {"release", TagOf("D-0102"), "--evidence", "looked at: a scratch"}).code, 0);
  EXPECT_EQ(As("planner", {"allocate", "A"}).code, 0);
}

TEST_F(Allocate, DryPromisesNothingAndChangesNothing) {
  TakeIn(kTwoDropsAndABar);
  Certify(kTheirPapers);
  Want("A", "O1,10,Pallant,round 80,42CrMo4,240,7,3.1,H1,,\n");
  const std::string before = Digest();
  const Ran ran = As("planner", {"allocate", "A", "--dry"});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_TRUE(ran.out.starts_with("not promised: saw 1 takes 1 drop")) << ran;
  EXPECT_EQ(Digest(), before);
}

TEST_F(Allocate, FindsNothingOpenTheSecondTime) {
  TakeIn(kTwoDropsAndABar);
  Certify(kTheirPapers);
  Want("A", "O1,10,Pallant,round 80,42CrMo4,240,7,3.1,H1,,\n");
  EXPECT_EQ(Plan("A"), 1);
  const Ran again = As("planner", {"allocate", "A"});
  EXPECT_EQ(again.code, 0) << again;
  EXPECT_EQ(again.out, "nothing for saw 1 is open in these cut lists\n");
  EXPECT_EQ(Number("select count(*) as n from book.plan"), 1);
}

TEST_F(Allocate, APlanOfWhichNothingCanBeCutIsNotPromised) {
  Want("A", "O1,10,Pallant,round 80,42CrMo4,240,7,,,,\n");
  const Ran ran = As("planner", {"allocate", "A"});
  EXPECT_EQ(ran.code, 3) << ran;
  EXPECT_TRUE(Has(ran.out, "not promised: ")) << ran;
  EXPECT_TRUE(Has(ran.out, "7 missing: there is no metal of round 80 42CrMo4")) << ran;
  EXPECT_EQ(Number("select count(*) as n from book.plan"), 0);
}

TEST_F(Allocate, GivesWhatIsTooLargeForOneSawToTheNext) {
  TakeIn("S,bar,Vandrek,K1,42CrMo4,round 80,6000,0,none,,\nL,bar,Vandrek,K2,42CrMo4,round 300,3000,0,none,,\n");
  Want("A", "O1,10,Pallant,round 80,42CrMo4,500,2,,,,\nO1,20,Pallant,round 300,42CrMo4,400,2,,,,\n");
  const Ran small = As("planner", {"allocate", "A", "--dry"});
  EXPECT_EQ(small.code, 3) << small;
  EXPECT_TRUE(Has(small.err, "too large for saw 1, to be planned on another: O1/20 (round 300)")) << small;
  const Ran both = As("planner", {"allocate", "--saw", "1", "--saw", "2", "A"});
  EXPECT_EQ(both.code, 0) << both;
  EXPECT_EQ(both.err, "");
  EXPECT_EQ(Sheet(1)["saw"], "1");
  EXPECT_EQ(Sheet(1)["blocks"][0]["tag"], TagOf("S"));
  EXPECT_EQ(Sheet(2)["saw"], "2");
  EXPECT_EQ(Sheet(2)["blocks"][0]["tag"], TagOf("L"));
}

TEST_F(Allocate, JsonIsOneListWithAPlanASaw) {
  TakeIn("S,bar,Vandrek,K1,42CrMo4,round 80,6000,0,none,,\nL,bar,Vandrek,K2,42CrMo4,round 300,3000,0,none,,\n");
  Want("A", "O1,10,Pallant,round 80,42CrMo4,500,2,,,,\nO1,20,Pallant,round 300,42CrMo4,400,2,,,,\n");
  const Json plans = Asked("planner", {"allocate", "A", "--saw", "1", "--saw", "2"});
  ASSERT_EQ(plans.size(), 2U);
  EXPECT_EQ(plans[0]["plan"], 1);
  EXPECT_EQ(plans[1]["plan"], 2);
  EXPECT_EQ(plans[1]["saw"], "2");
  EXPECT_EQ(plans[1]["bars_opened"], 1);
  EXPECT_EQ(plans[1]["short"], 0);
  EXPECT_EQ(Asked("planner", {"allocate", "A", "--saw", "1"}), Json::array()) << "nothing is open";
}

TEST_F(Allocate, NamesWhatItDoesNotKnow) {
  Want("A", "O1,10,Pallant,round 80,42CrMo4,240,7,,,,\n");
  const Ran list = As("planner", {"allocate", "B"});
  EXPECT_EQ(list.code, 2) << list;
  EXPECT_TRUE(Has(list.err, "no cut list is called \"B\"")) << list;
  const Ran saw = As("planner", {"allocate", "A", "--saw", "1", "--saw", "9"});
  EXPECT_EQ(saw.code, 2) << saw;
  EXPECT_TRUE(Has(saw.err, "no saw is called \"9\"")) << saw;
  EXPECT_EQ(Number("select count(*) as n from book.plan"), 0) << "not even the first saw's";
  EXPECT_EQ(As("planner", {"allocate", "A", "--aim", "most-fun"}).code, 2);
  EXPECT_EQ(As("planner", {"allocate", "A", "--threads", "0"}).code, 2);
  EXPECT_EQ(As("planner", {"allocate", "A", "--seconds", "0"}).code, 2);
}

TEST_F(Allocate, IsThePlannersAlone) {
  TakeIn(kTwoDropsAndABar);
  Certify(kTheirPapers);
  Want("A", "O1,10,Pallant,round 80,42CrMo4,240,7,,,,\n");
  const Ran ran = As("saw", {"allocate", "A"});
  EXPECT_EQ(ran.code, 1) << ran;
  EXPECT_TRUE(Has(ran.err, "you may not do this")) << ran;
}

TEST_F(Allocate, APlanThatIsNotPromisedIsShownPieceByPiece) {
  TakeIn(kTwoDropsAndABar);
  Certify(kTheirPapers);
  Want("A", "O1,10,Pallant,round 80,42CrMo4,240,7,3.1,H1,,\n");
  const Ran dry = As("planner", {"allocate", "A", "--dry"});
  EXPECT_TRUE(Has(dry.out, "  " + TagOf("D-0102") + " in ")) << dry;
  EXPECT_TRUE(Has(dry.out, "1900 mm, round 80 42CrMo4, heat M2208")) << dry;
  EXPECT_TRUE(Has(dry.out, ":  7 x 240 mm for O1/10; left 206 mm keep\n")) << dry;
}

TEST_F(Allocate, PlansAreListedShownAndCancelled) {
  EXPECT_EQ(As("planner", {"plan", "list"}).out, "no plans yet; `heatkeep allocate CUTLIST` makes one\n");
  TakeIn(kTwoDropsAndABar);
  Certify(kTheirPapers);
  Want("A", "O1,10,Pallant,round 80,42CrMo4,240,7,3.1,H1,,\n");
  ASSERT_EQ(Plan("A"), 1);
  const Json list = Asked("planner", {"plan", "list"});
  ASSERT_EQ(list.size(), 1U);
  EXPECT_EQ(list[0]["plan"], 1);
  EXPECT_EQ(list[0]["state"], "live");
  EXPECT_EQ(list[0]["made_by"], "test_planner");
  EXPECT_TRUE(Has(As("planner", {"plan", "show", "1"}).out,
                  TagOf("D-0102") + "  round 80 42CrMo4  heat M2208  1900 mm (promised):  7 x 240 mm for O1/10; left 206 mm keep"))
      << As("planner", {"plan", "show", "1"});
  EXPECT_EQ(As("planner", {"plan", "show", "9"}).code, 2);
  EXPECT_EQ(As("planner", {"plan", "cancel", "1"}).code, 2) << "no reason";
  const Ran gone = As("planner", {"plan", "cancel", "1", "--reason", "the order fell through"});
  EXPECT_EQ(gone.code, 0) << gone;
  EXPECT_EQ(gone.out, "plan 1 is cancelled, 1 piece free again\n");
  EXPECT_EQ(As("planner", {"plan", "cancel", "1", "--reason", "again"}).code, 1);
  EXPECT_EQ(Asked("planner", {"plan", "list"})[0]["state"], "cancelled");
  EXPECT_EQ(Plan("A"), 2) << "its lines and its piece are open again";
}

TEST_F(Allocate, SaysWhyAndWhatToBuyAndShowRemembersWhatElseHeldTheCuts) {
  TakeIn(kTwoDropsAndABar);
  Certify(kTheirPapers);
  Want("A", "O1,10,Pallant,round 80,42CrMo4,240,7,3.1,H1,,\n");
  const Ran ran = As("planner", {"allocate", "A", "--why", "--price-of-one-heat"});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_TRUE(Has(ran.out, "  " + TagOf("D-0102"))) << ran;
  EXPECT_TRUE(Has(ran.out, "opens a full bar of 6000 mm")) << ran;
  EXPECT_TRUE(Has(ran.out, "one heat costs more than 2 heats: metal as good as 0.04 m of full bar more used up")) << ran;
  EXPECT_TRUE(Has(As("planner", {"plan", "show", "1", "--why"}).out, "   not there: ")) << As("planner", {"plan", "show", "1", "--why"});
  EXPECT_FALSE(Has(As("planner", {"plan", "show", "1"}).out, "not there")) << "only when asked";
  Want("B", "O2,10,Pallant,round 80,42CrMo4,2900,9,,,,\n");
  const Ran shortage = As("planner", {"allocate", "B", "--dry", "--buy", "6000mm"});
  EXPECT_EQ(shortage.code, 3) << shortage;
  EXPECT_TRUE(Has(shortage.out, "buy ")) << shortage;
  const Json asked = Json::parse(As("planner", {"allocate", "B", "--dry", "--json"}).out);
  EXPECT_TRUE(asked[0]["buy"]["bars"].is_array());
  EXPECT_EQ(asked[0]["layouts"].size(), asked[0]["pieces"].get<std::size_t>());
  EXPECT_TRUE(asked[0]["by_hand"]["words"].is_string());
  EXPECT_EQ(As("planner", {"allocate", "B", "--dry", "--buy", "thin"}).code, 2);
}

}  // namespace
}  // namespace heatkeep::command
