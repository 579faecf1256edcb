// What was said at a saw, and of its scrap and papers, is read again by the command line.
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

struct SawLists : Works {
  void SetUp() override {
    TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 80,6000,0,3.1,,\n");
    Certify("C1,3.1,Vandrek,K1,round 80,42CrMo4\n");
    Want("A", "O1,10,Pallant,round 80,42CrMo4,300,10,3.1,,,-1/+1\n");
    ASSERT_EQ(Plan("A"), 1);
    tag = TagOf("T1");
    Done("saw", {"saw", "pull", tag, "--saw", "1", "--plan", "1", "--heat-read", "K1"});
  }
  void Done(const std::string& who, const Words& words) {
    const Ran ran = As(who, words);
    ASSERT_EQ(ran.code, 0) << ran;
  }
  std::string Said(const Words& words) {
    const Ran ran = As("planner", words);
    EXPECT_EQ(ran.code, 0) << ran;
    return ran.out;
  }
  std::string tag;
};

TEST_F(SawLists, AFirstPieceIsListedBesideWhatTheStopWasSetFor) {
  EXPECT_EQ(Said({"saw", "first-pieces"}), "none\n");
  Done("saw", {"saw", "first", "--saw", "1", "--line", "O1/10", "--measured", "300.4"});
  Done("saw", {"saw", "first", "--saw", "1", "--line", "O1/10", "--measured", "303"});
  EXPECT_EQ(Said({"saw", "first-pieces", "O1"}), "1  O1  10  300 mm  300.4 mm  yes  test_saw\n1  O1  10  300 mm  303 mm  no  test_saw\n");
  EXPECT_EQ(Asked("saw", {"saw", "first-pieces"})[1]["measured_nm"], 303'000'000);
}

TEST_F(SawLists, WhatWasNotCutAndWhyAndWhereTheMetalIsBad) {
  Done("saw", {"saw", "defect", tag, "--kind", "crack", "--at", "5000", "--to", "5020", "--words", "on the face"});
  EXPECT_EQ(Said({"saw", "bad-lengths", tag}), tag + "  crack  5000 mm  5020 mm\n");
  Done("saw",
       {"saw", "cut", tag, "--saw", "1", "--kerf", "2", "--stroke", "good 4x300 O1/10", "--left", "drop", "--place", "B1-1", "--heat", "K1",
        "--reason", "the order waits"});
  EXPECT_EQ(Said({"saw", "not-cut"}), "1  1  " + tag + "  O1  10  6  the order waits  test_saw\n");
  EXPECT_EQ(Said({"saw", "not-cut", "O7"}), "none of \"O7\"; without it all are listed\n");
}

TEST_F(SawLists, TheDealersTicketsStandBesideWhatWasBooked) {
  TakeIn("T2,drop,Vandrek,K1,42CrMo4,round 80,1000,2,3.1,,\n");
  const std::string family = Word("select family as w from api.grades where designation = '42CrMo4'");
  Done("owner", {"saw", "bins", "--bin", "BIN-1=low alloy", "--family", family + "=low alloy"});
  Done("saw", {"saw", "scrap", TagOf("T2"), "--bin", "BIN-1", "--reason", "bent"});
  Done("planner", {"saw", "ticket", "--bin", "BIN-1", "--dealer", "Kestholm", "--ticket", "W1", "--mass", "41", "--per-kg", "0.25"});
  // round 80 at 7 850 kg/m3: 39.458 kg a metre; 0.25 a kilogram is 250.00 a tonne
  EXPECT_EQ(Said({"saw", "tickets", "W1"}), "W1  Kestholm  BIN-1  low alloy  41 kg  39.5 kg  250  test_planner\n");
}

TEST_F(SawLists, WhichCustomerGotADocumentIsFoundByItsNumber) {
  Done("saw", {"cut", "record", "--plan", "1", "--place", "B1-1"});
  Done("planner", {"ship", "O1/10=10", "--note", "D1", "--customer", "Pallant"});
  EXPECT_EQ(Said({"certificate", "passed"}), "none\n");
  Done("quality", {"certificate", "pass", "C1", "--note", "D1", "--original"});
  const std::string passed = Said({"certificate", "passed", "C1"});
  EXPECT_TRUE(Has(passed, "C1  1  D1  Pallant")) << passed;
  EXPECT_TRUE(Has(passed, "test_quality")) << passed;
}

}  // namespace
}  // namespace heatkeep::command
