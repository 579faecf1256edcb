// Pulling, booking what was cut, shipping. Sums by hand, in millimetres: a bar of 6 000 with rough ends gives 14 x 290 and
// 6 000 - 12 - 14 x 292 = 1 900.
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

struct Cut : Works {
  // One bar of heat K1 in plan 1: 14 x 290 for O1/10.
  void OneBar() {
    TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 80,6000,0,none,,\n");
    Want("A", "O1,10,Pallant,round 80,42CrMo4,290,14,,,,-1/+1\n");
    ASSERT_EQ(Plan("A"), 1);
    tag = TagOf("T1");
  }
  // Two bars, of heats K1 and K2, for the same line: 28 x 290.
  void TwoBars() {
    TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 80,4200,0,none,,\nT2,bar,Vandrek,K2,42CrMo4,round 80,4200,0,none,,\n");
    Want("A", "O1,10,Pallant,round 80,42CrMo4,290,28,,,,\n");
    ASSERT_EQ(Plan("A"), 1);
    ASSERT_EQ(Sheet(1)["blocks"].size(), 2U);
  }
  Ran Record(const Words& more = {}, const std::string& who = "saw") {
    Words words{"cut", "record", "--plan", "1"};
    words.insert(words.end(), more.begin(), more.end());
    return As(who, words);
  }
  std::int64_t Good() { return Number("select count(*) as n from book.stroke where class = 'good'"); }
  void TearDown() override { EXPECT_EQ(Broken(), ""); }
  std::string tag;
};

TEST_F(Cut, AsPlannedBooksEveryNanometreAndGivesTheDropATag) {
  OneBar();
  const Ran ran = Record();
  EXPECT_EQ(ran.code, 0) << ran;
  const std::string drop = Word("select tag as w from book.piece where parent_id is not null");
  EXPECT_EQ(ran.out, tag + ": 14 pieces, drop " + drop + " (1900 mm) to GATE\n");
  EXPECT_EQ(Balance("K1", "received"), 6000 * kMm);
  EXPECT_EQ(Balance("K1", "on site"), 4060 * kMm);
  EXPECT_EQ(Balance("K1", "on hand"), 1900 * kMm);
  EXPECT_EQ(Balance("K1", "kerf"), 30 * kMm);
  EXPECT_EQ(Balance("K1", "trim"), 10 * kMm);
  EXPECT_EQ(Balance("K1", "unexplained"), 0);
  EXPECT_EQ(Asked("planner", {"plan", "list"})[0]["state"], "done");
  const std::string before = Digest();
  EXPECT_EQ(Record().out, "all of it is booked already; nothing was changed\n");
  EXPECT_EQ(Record({"--tag", tag}).code, 0);
  EXPECT_EQ(Digest(), before);
}

TEST_F(Cut, WhatDiffersIsBookedAsItWas) {
  OneBar();
  // measured 5 995: 5 missing. 12 good: 5 995 - 12 - 12 x 292 = 2 479 by arithmetic, 2 478 by the tape.
  const Ran ran =
      Record({"--tag", tag, "--done", "O1/10=12", "--measured", "5995", "--rest", "2478", "--place", "B1-2", "--reason", "bent end"});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_TRUE(Has(ran.out, tag + ": 12 pieces, drop ")) << ran;
  EXPECT_TRUE(Has(ran.out, "(2478 mm) to B1-2")) << ran;
  EXPECT_EQ(Balance("K1", "on site"), 12 * 290 * kMm);
  EXPECT_EQ(Balance("K1", "on hand"), 2478 * kMm);
  EXPECT_EQ(Balance("K1", "unexplained"), 6 * kMm);
  EXPECT_EQ(Word("select string_agg(distinct named, ' ') as w from book.metal_out where class = 'unexplained'"), "test_saw");
  EXPECT_EQ(Asked("planner", {"cutlist", "list"})[0]["open"], 2);
}

TEST_F(Cut, SaysTheDropAsMeasuredEvenWithoutARest) {
  OneBar();
  const Ran ran = Record({"--tag", tag, "--measured", "5990", "--reason", "the tape"});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_TRUE(Has(ran.out, "(1890 mm)")) << ran;
  EXPECT_EQ(Balance("K1", "on hand"), 1890 * kMm);
}

TEST_F(Cut, TheRestCanBeScrapAndIsMeasuredThenToo) {
  OneBar();
  const Ran ran = Record({"--tag", tag, "--scrap", "--rest", "1899"});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_EQ(ran.out, tag + ": 14 pieces\n");
  EXPECT_EQ(Balance("K1", "scrap"), 1899 * kMm);
  EXPECT_EQ(Balance("K1", "unexplained"), 1 * kMm);
  EXPECT_EQ(Balance("K1", "on hand"), 0);
}

// 4 200 - 12 - 14 x 292 = 100: under the keep length, scrap by plan; still scrap where the bar was shorter.
TEST_F(Cut, ARestThatWasScrapByPlanIsNoDropWhenItIsShorterStill) {
  TwoBars();
  const std::string first = TagOf("T1");
  const Ran ran = Record({"--tag", first, "--measured", "4190", "--reason", "the tape"});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_EQ(Balance("K1", "scrap"), 90 * kMm);
  EXPECT_EQ(Balance("K1", "on hand"), 0);
}

TEST_F(Cut, BooksOnePieceAndTheRestLater) {
  TwoBars();
  const std::string first = TagOf("T1");
  const Ran one = Record({"--tag", first.substr(0, 1) + "-" + first.substr(1)});
  EXPECT_EQ(one.code, 0) << one;
  EXPECT_EQ(Good(), 14);
  EXPECT_TRUE(Has(Record({"--tag", first}).out, "all of it is booked already"));
  const Ran rest = Record();
  EXPECT_EQ(rest.code, 0) << rest;
  EXPECT_TRUE(rest.out.starts_with(TagOf("T2") + ": 14 pieces")) << rest;
  EXPECT_EQ(Good(), 28);
}

TEST_F(Cut, RefusesWordsThatFitNothingAndBooksNothing) {
  OneBar();
  const std::string before = Digest();
  for (const auto& [words, wrong] :
       std::vector<std::pair<Words, std::string>>{{{"--tag", "A999999X"}, "has no piece A999999X"},
                                                  {{"--done", "O1/10=12"}, "expected --tag"},
                                                  {{"--measured", "5995"}, "expected --tag"},
                                                  {{"--tag", tag, "--done", "O1/11=12"}, "O1/11"},
                                                  {{"--tag", tag, "--done", "O1/10"}, "ORDER/LINE=COUNT"},
                                                  {{"--tag", tag, "--done", "O1=2"}, "ORDER/LINE=COUNT"},
                                                  {{"--tag", tag, "--done", "O1/10=-1"}, "-1"},
                                                  {{"--tag", tag, "--done", "O1/10=3", "--done", "O1/10=4"}, "twice"},
                                                  {{"--tag", tag, "--measured", "long"}, "long"}}) {
    const Ran ran = Record(words);
    EXPECT_EQ(ran.code, 2) << ran;
    EXPECT_TRUE(Has(ran.err, wrong)) << wrong << '\n' << ran;
  }
  EXPECT_EQ(As("saw", {"cut", "record", "--plan", "9"}).code, 2);
  EXPECT_EQ(Digest(), before);
  EXPECT_EQ(Good(), 0);
}

TEST_F(Cut, WhatTheBookRefusesBooksNothingOfThatPiece) {
  OneBar();
  for (const auto& [words, wrong] :
       std::vector<std::pair<Words, std::string>>{{{"--tag", tag, "--measured", "3000"}, "holds 3000"},
                                                  {{"--tag", tag, "--done", "O1/10=40"}, "holds 6000"},
                                                  {{"--tag", tag, "--measured", "6001"}, "cannot measure 6001"},
                                                  {{"--tag", tag, "--rest", "1910"}, "cannot measure 1910"},
                                                  {{"--tag", tag, "--rest", "1800"}, "say why"},
                                                  {{"--tag", tag, "--place", "Z9"}, "no place is called"}}) {
    const Ran ran = Record(words);
    EXPECT_EQ(ran.code, 1) << ran;
    EXPECT_TRUE(Has(ran.err, wrong)) << wrong << '\n' << ran;
  }
  EXPECT_EQ(Good(), 0);
  EXPECT_EQ(Record({}, "planner").code, 1) << "the saw's alone";
  EXPECT_EQ(Record().code, 0);
}

TEST_F(Cut, PullRefusesWithTheReasonAndRemembers) {
  OneBar();
  TakeIn("T9,bar,Vandrek,K9,42CrMo4,round 80,6000,0,none,,\n");
  const auto pull = [&](const std::string& which, const std::string& plan = "1") {
    return As("saw", {"pull", which, "--saw", "1", "--plan", plan});
  };
  EXPECT_TRUE(Has(pull(TagOf("T9")).err, "refused: " + TagOf("T9") + " is not promised to any plan"));
  EXPECT_TRUE(Has(pull(tag, "7").err, "is promised to plan 1, not to plan 7"));
  EXPECT_TRUE(Has(pull("A999999X").err, "refused: no piece has the tag"));
  EXPECT_EQ(pull(tag, "7").code, 1);
  EXPECT_EQ(As("saw", {"pull", tag, "--saw", "9", "--plan", "1"}).code, 1);
  EXPECT_EQ(As("saw", {"pull", tag, "--saw", "1"}).code, 2) << "no plan";
  EXPECT_EQ(Number("select count(*) as n from api.refusals where deed = 'pull'"), 4);
  const Ran fetched = pull(tag);
  EXPECT_EQ(fetched.code, 0) << fetched;
  EXPECT_EQ(fetched.out, tag + " is at saw 1, for plan 1\n");
  EXPECT_TRUE(Has(pull(tag).err, "taken by saw 1, order O1, "));
  EXPECT_EQ(Record().code, 0) << "what was pulled by hand is booked as well";
  EXPECT_EQ(Good(), 14);
}

TEST_F(Cut, AHeatHeldAfterPlanningIsNotCutAndTheOtherIs) {
  TwoBars();
  const std::string held = TagOf("T1");
  ASSERT_EQ(As("quality", {"hold", "heat", "K1", "--reason", "letter"}).code, 0);
  const Ran ran = Record();
  EXPECT_EQ(ran.code, 1) << ran;
  EXPECT_TRUE(Has(ran.err, "not cut: " + held)) << ran;
  EXPECT_TRUE(Has(ran.out, TagOf("T2") + ": 14 pieces")) << ran;
  EXPECT_EQ(Balance("K1", "on hand"), 4200 * kMm);
  const Ran that = Record({"--tag", held});
  EXPECT_EQ(that.code, 1) << that;
  EXPECT_TRUE(Has(that.err, "not cut: " + held)) << that;
}

TEST_F(Cut, WhatIsCutWhileItIsHeldIsBookedAndStopped) {
  OneBar();
  ASSERT_EQ(As("saw", {"pull", tag, "--saw", "1", "--plan", "1"}).code, 0);
  const Ran hold = As("quality", {"hold", "heat", "K1", "--reason", "letter"});
  EXPECT_EQ(hold.out, "hold 1: 1 piece stopped; AT A SAW NOW: " + tag + "; plan 1 lacks " + tag + ": heatkeep replan 1\n");
  const Ran ran = Record();
  EXPECT_TRUE(Has(ran.out, "STOP: ")) << ran;
  EXPECT_EQ(Good(), 14);
  const Ran ship = As("planner", {"ship", "O1/10=14", "--note", "D1", "--customer", "Pallant"});
  EXPECT_EQ(ship.code, 1) << ship;
  EXPECT_EQ(Number("select count(*) as n from book.shipment"), 0);
  const Json conflicts = Asked("quality", {"conflict", "list"});
  ASSERT_FALSE(conflicts.empty());
  for (const Json& conflict : conflicts) {
    EXPECT_EQ(conflict["tag"], tag);
    EXPECT_EQ(conflict["closed_by"], "");
  }
  const std::string number = std::to_string(conflicts[0]["conflict"].get<int>());
  const Words close{"conflict", "close", number, "--decision", "tested, fine", "--free"};
  EXPECT_EQ(As("saw", close).code, 1) << "quality decides";
  EXPECT_EQ(As("quality", close).code, 1) << "the heat is still held";
  EXPECT_EQ(As("quality", {"hold", "lift", "1", "--evidence", "tested"}).code, 0);
  EXPECT_EQ(As("quality", close).out, "conflict " + number + " is closed, 14 cut pieces are free\n");
  EXPECT_EQ(As("quality", close).code, 1) << "once";
  for (const Json& conflict : Asked("quality", {"conflict", "list"}))
    EXPECT_EQ(conflict["decision"], conflict["conflict"] == conflicts[0]["conflict"] ? "tested, fine" : "");
  EXPECT_EQ(As("planner", {"ship", "O1/10=14", "--note", "D1", "--customer", "Pallant"}).code, 0);
}

TEST_F(Cut, AnOverCutIsSaidAtOnceAndDoesNotLeave) {
  OneBar();
  const Ran ran = Record({"--tag", tag, "--done", "O1/10=15"});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_TRUE(Has(ran.out, "a person decides (heatkeep conflict list): order O1 line 10: 14 ordered, 15 cut\n")) << ran;
  const Ran ship = As("planner", {"ship", "O1/10=15", "--note", "D1", "--customer", "Pallant"});
  EXPECT_EQ(ship.code, 1) << ship;
  EXPECT_TRUE(Has(ship.err, "heatkeep saw to-stock")) << ship;
  EXPECT_EQ(As("planner", {"ship", "O1/10=14", "--note", "D1", "--customer", "Pallant"}).code, 0);
}

TEST_F(Cut, ShipsWhatWasCutAndNoMore) {
  OneBar();
  ASSERT_EQ(Record().code, 0);
  const Ran ran = As("planner", {"ship", "--note", "D1", "--customer", "Pallant", "O1/10=10"});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_EQ(ran.out, "shipped 10 of O1/10, heat K1\n");
  const Ran more = As("planner", {"ship", "O1/10=5", "--note", "D2", "--customer", "Pallant"});
  EXPECT_EQ(more.code, 1) << more;
  EXPECT_TRUE(Has(more.err, "4 pieces are on site, 5 were to be shipped")) << more;
  EXPECT_EQ(As("planner", {"ship", "O1/10=1", "--note", "D1", "--customer", "Pallant"}).code, 1) << "that note has left";
  EXPECT_EQ(Balance("K1", "shipped"), 2900 * kMm);
  EXPECT_EQ(Balance("K1", "on site"), 1160 * kMm);
  EXPECT_EQ(As("planner", {"ship", "O1=5", "--note", "D2", "--customer", "Pallant"}).code, 2);
  EXPECT_EQ(As("planner", {"ship", "O9/10=5", "--note", "D2", "--customer", "Pallant"}).code, 1);
  EXPECT_EQ(As("saw", {"ship", "O1/10=1", "--note", "D2", "--customer", "Pallant"}).code, 1);
}

TEST_F(Cut, JsonNamesWhatWasBookedEvenWhenSomethingWasRefused) {
  TwoBars();
  const Json all = Asked("saw", {"cut", "record", "--plan", "1", "--tag", TagOf("T1")});
  ASSERT_EQ(all.size(), 1U);
  EXPECT_EQ(all[0]["good"], 14);
  ASSERT_EQ(As("saw", {"quarantine", TagOf("T2"), "--reason", "crack"}).code, 0);
  const Ran ran = Record({"--json"});
  EXPECT_EQ(ran.code, 1) << ran;
  EXPECT_EQ(Json::parse(ran.out), Json::array());
}

TEST_F(Cut, TheHeatIsReadBackFromThePieceThatIsFetchedWhereTheShopDoesNotSetItOff) {
  ASSERT_EQ(As("owner", {"shop", "set", File("rules.json", R"({"settings": {"heat_read_back": "yes"}})")}).code, 0);
  TakeIn("T1,bar,Vandrek,M2208,42CrMo4,round 80,6000,0,3.1,,\n");
  Certify("C1,3.1,Vandrek,M2208,round 80,42CrMo4\n");
  Want("A", "O1,10,Pallant,round 80,42CrMo4,290,14,3.1,,,-1/+1\n");
  ASSERT_EQ(Plan("A"), 1);
  tag = TagOf("T1");
  const Ran unread = Record();
  EXPECT_EQ(unread.code, 1);
  EXPECT_TRUE(Has(unread.err, "read the last 4 characters of the heat from the metal")) << unread;
  EXPECT_EQ(As("saw", {"pull", tag, "--saw", "1", "--plan", "1", "--heat-read", "2280"}).code, 1);
  EXPECT_EQ(Record({"--heat-read", "2208"}).code, 2) << "whose?";
  EXPECT_EQ(Number("select count(*) as n from book.refusal where code = 'HK044'"), 2);
  EXPECT_EQ(Record({"--heat-read", tag + "=2208"}).code, 0);
  EXPECT_EQ(Good(), 14);
}

}  // namespace
}  // namespace heatkeep::command
