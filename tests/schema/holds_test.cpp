// Held, quarantined, counted or unpapered metal stays where it is, all its descendants at once; facts are
// recorded.
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct Holds : ShopTest {
  void SetUp() override {
    tags = shop.ReceiveCertified({.count = 5});
    shop.AddLines({{.quantity = 100}, {.line = "20", .length = 300, .quantity = 15}});
  }
  // Refused to be promised, pulled and shipped, and not offered to planners.
  void ExpectBlocked(const std::string& tag, const std::string& word) {
    const Json promised = shop.Promise(tag, {{.count = 1}});
    ASSERT_TRUE(promised.contains("taken")) << promised;
    EXPECT_NE(promised["taken"][0]["why"].get<std::string>().find(word), std::string::npos) << promised;
    const Json pulled = shop.Pull(tag);
    EXPECT_EQ(pulled.value("refused", ""), "HK040") << pulled;
    EXPECT_NE(pulled.value("words", "").find(word), std::string::npos) << pulled;
    EXPECT_EQ(shop.Number("select count(*) as n from api.candidates where tag = $1", {tag}), 0);
  }
  std::vector<std::string> tags;
};

TEST_F(Holds, AHeldHeatIsNotPromisedPulledOrOffered_HK040) {
  shop.Hold("M2208");
  for (const std::string& tag : {tags[0], tags[4]}) ExpectBlocked(tag, "letter of the mill");
  EXPECT_EQ(shop.Number("select count(*) as n from api.refusals where code = 'HK040' and deed = 'pull'"), 2);
}

TEST_F(Holds, DescendantsAreHeldWithTheirHeatAndWithAPieceTheyCameFrom_HK040) {
  const std::string drop = shop.Record(tags[0], {Trim(), Good(1, 290)}, DropLeft(5696)).at("drop_tag");
  const std::string second = shop.Record(drop, {Good(1, 290)}, DropLeft(5404)).at("drop_tag");
  Do(shop.quality, "place_hold", {"piece", tags[0], std::nullopt, "crack seen"});
  ExpectBlocked(second, "crack seen");
  EXPECT_TRUE(shop.Promise(tags[1], {{.count = 1}}).contains("plan"));  // a neighbour of the same heat is free
  shop.Hold("M2208");
  ExpectBlocked(tags[2], "letter of the mill");
}

TEST_F(Holds, AHoldOfOneMillLeavesTheSameHeatNumberOfAnotherFree) {
  const Bars twin{.mill = "Kestholm"};
  const std::string theirs = shop.Receive(twin).at(0);
  shop.Certify("M2208", twin);
  Do(shop.quality, "place_hold", {"heat", "M2208", "Vandrek", "letter"});
  ExpectBlocked(tags[0], "letter");
  EXPECT_TRUE(shop.Promise(theirs, {{.count = 1}}).contains("plan"));
  EXPECT_EQ(Code([&] { shop.Hold("M2209"); }), "HK026");
}

// 7OB41 with a letter O, 70B41 with a nought; "C 9921" with a blank: nothing is taken for another, and each is named.
TEST_F(Holds, AHeatThatLooksLikeTheOneAskedForIsNamed) {
  shop.Receive({.heat = "70B41"});
  shop.Receive({.heat = "7OB41"});
  shop.Receive({.heat = "C 9921"});
  const auto preview = [&](const std::string& heat) {
    return Answer(shop.quality, "api.preview_hold('heat', $1)", {heat}).at("words").get<std::string>();
  };
  EXPECT_EQ(preview("7OB41"), "1 bar; it looks like heat 70B41, which would not be stopped");
  EXPECT_EQ(preview("M2208"), "5 bars");
  EXPECT_EQ(Refusal([&] { preview("C9921"); }).message, "no lot has heat \"C9921\"; it looks like heat C 9921");
  EXPECT_EQ(Refusal([&] { preview("C9922"); }).message, "no lot has heat \"C9922\"");
  EXPECT_EQ(Do(shop.quality, "place_hold", {"heat", "7OB41", std::nullopt, "letter"}).at("look_alikes"), "70B41");
  EXPECT_TRUE(Do(shop.quality, "place_hold", {"heat", "M2208", std::nullopt, "letter"}).at("look_alikes").is_null());
  EXPECT_NE(Refusal([&] { shop.Certify("C9921", {}); }).message.find("there is no such lot of Vandrek; it looks like heat C 9921"),
            std::string::npos);
}

TEST_F(Holds, LivePromisesFallAtOnceWhenTheHeatIsHeldOrAParentQuarantined) {
  const std::string drop = shop.Record(tags[0], {Trim(), Good(1, 290)}, DropLeft(5696)).at("drop_tag");
  shop.Promise(drop, {{.count = 1}});
  Do(shop.clerk, "quarantine", {tags[0], "bent"});
  EXPECT_EQ(shop.Number("select count(*) as n from book.promise where state = 'live'"), 0);
  shop.Promise(tags[1], {{.count = 1}});
  shop.Hold("M2208");
  EXPECT_EQ(shop.Number("select count(*) as n from book.promise where state = 'live'"), 0);
}

TEST_F(Holds, QuarantineStopsThePieceAndWhatWasCutFromIt_HK040) {
  const std::string drop = shop.Record(tags[0], {Trim(), Good(1, 290)}, DropLeft(5696)).at("drop_tag");
  Do(shop.saw, "quarantine", {tags[0], "looks wrong"});
  ExpectBlocked(drop, "looks wrong");
  EXPECT_EQ(Code([&] { shop.Ship("D1", 1); }), "HK040");
  Do(shop.quality, "release", {tags[0], "measured again"});
  EXPECT_TRUE(shop.Promise(drop, {{.count = 1}}).contains("plan"));
  EXPECT_EQ(Code([&] { Do(shop.quality, "release", {tags[0], "twice"}); }), "HK043");
}

TEST_F(Holds, AQuarantineOrAHoldWithoutReasonIsRefused) {
  EXPECT_EQ(Code([&] { Do(shop.clerk, "quarantine", {tags[0], " "}); }), "HK026");
  EXPECT_EQ(Code([&] { Do(shop.quality, "place_hold", {"heat", "M2208", std::nullopt, " "}); }), "HK026");
  EXPECT_EQ(Code([&] { Do(shop.quality, "lift_hold", {shop.Hold("M2208").at("hold_id").get<std::int64_t>(), ""}); }), "HK026");
}

TEST_F(Holds, APlaceThatIsBeingCountedGivesNothing_HK040) {
  ASSERT_EQ(shop.Raw("update book.piece set frozen = true where tag = '" + tags[0] + "'"), "");
  ExpectBlocked(tags[0], "counted");
}

TEST_F(Holds, PapersAwaitedStopEverythingUntilTheyAreHereOrTheRiskIsTaken_HK040) {
  const std::string bar = shop.Receive({.heat = "R5512"}).at(0);
  ExpectBlocked(bar, "papers are awaited");
  shop.AddLine({.line = "np", .papers = "none"});
  Do(shop.quality, "allow_at_risk", {"Vandrek", "R5512", "saw waits"});
  shop.Fetch(bar, {{.count = 10, .line = "np"}});
  shop.Record(bar, {Trim(), Good(10, 290, "np")}, DropLeft(3068));
  EXPECT_EQ(Code([&] { shop.Ship("D1", 10, "np"); }), "HK040");
  shop.Certify("R5512");
  EXPECT_EQ(shop.Ship("D1", 10, "np").at("lines").at(0).at("heat"), "R5512");
}

TEST_F(Holds, TheRowsThemselvesRefuseToPromiseOrMoveWhatIsHeld_HK040) {
  shop.Hold("M2208");
  const std::string where = " from book.piece where tag = '" + tags[0] + "'";
  EXPECT_EQ(shop.Raw("insert into book.promise (piece_id, words, promised_by, expires_at) select piece_id, "
                     "'w', 'p', now()" +
                     where),
            "HK040");
  EXPECT_EQ(shop.Raw("update book.piece set state = 'at saw' where tag = '" + tags[0] + "'"), "HK040");
  EXPECT_EQ(shop.Raw("update book.piece set state = 'shipped', length_nm = 0 where tag = '" + tags[0] + "'"), "HK040");
}

TEST_F(Holds, ShippingHeldCutPiecesIsRefusedByTheDeedAndByTheRow_HK040) {
  shop.Record(tags[0], {Trim(), Good(2, 290)}, DropLeft(5404));
  shop.Hold("M2208");
  EXPECT_EQ(Code([&] { shop.Ship("D1", 1); }), "HK040");
  EXPECT_EQ(shop.Raw("insert into book.shipment (note, customer_id, shipped_at, shipped_by) values ('X', 1, now(), 'x');"
                     "insert into book.shipment_line (shipment_id, cut_line_id) select max(shipment_id), 1 from "
                     "book.shipment;"
                     "update book.stroke set shipment_line_id = (select max(shipment_line_id) from book.shipment_line) "
                     "where class = 'good'"),
            "HK040");
}

// Scenario of a hold during a cut: bar 2 with 15 x 300 ordered, nine confirmed, the tenth in the blade.
TEST_F(Holds, AHoldDuringACutRecordsWhatIsCutFlagsItSaysStopAndTheBalanceIs30000) {
  shop.Fetch(tags[0], {{.count = 14}});
  const std::string d102 = shop.Record(tags[0], {Trim(), Good(14, 290)}, DropLeft(1900)).at("drop_tag");
  shop.AddLine({.line = "30", .length = 240, .quantity = 7, .order = "O2", .customer = "Drewe"});
  shop.Record(d102, {Good(7, 240, "30", "O2")}, DropLeft(206));
  shop.Ship("D1", 14);
  Do(shop.planner, "ship", {R"({"note": "D2", "customer": "Drewe", "lines": [{"order": "O2", "line": "30", "count": 7}]})"});
  shop.Fetch(tags[1], {{.count = 15, .length = 300, .line = "20"}});
  shop.Record(tags[1], {Trim(), Good(9, 300, "20")});
  const Json held = shop.Hold("M2208");
  EXPECT_EQ(held.at("at_saw"), Json::array({tags[1]}));
  EXPECT_EQ(held.at("pieces"), 5);  // the rest at the saw, the drop of 206 and three bars
  const Json tenth = shop.Record(tags[1], {Good(1, 300, "20")});
  EXPECT_NE(tenth.at("stop").get<std::string>().find("letter of the mill"), std::string::npos);
  EXPECT_EQ(shop.Number("select count(*) as n from book.stroke where held"), 1);
  EXPECT_EQ(shop.Number("select count(*) as n from api.conflicts where kind = 'cut while held'"), 1);
  EXPECT_EQ(shop.LengthOf(tags[1]), Mm(2968));
  EXPECT_EQ(shop.Pull(tags[2]).value("refused", ""), "HK040");
  for (const auto& [word, mm] : std::vector<std::pair<std::string, std::int64_t>>{{"received", 30000},
                                                                                  {"shipped", 5740},
                                                                                  {"on site", 3000},
                                                                                  {"on hand", 18206},
                                                                                  {"at saw", 2968},
                                                                                  {"kerf", 66},
                                                                                  {"trim", 20},
                                                                                  {"unexplained", 0}})
    EXPECT_EQ(shop.Balance("M2208", word), Mm(mm)) << word;
  const auto pieces = [&](const std::string& where) {
    return shop.quality
        .Execute(
            "select sum(count)::bigint as n from api.trace('heat', 'M2208') where what = 'cut piece' and "
            "where_now = $1",
            {where})
        .Only()
        .Int("n");
  };
  EXPECT_EQ(pieces("shipped to Pallant, note D1"), 14);
  EXPECT_EQ(pieces("shipped to Drewe, note D2"), 7);
  EXPECT_EQ(pieces("on site"), 10);
  EXPECT_EQ(Refusal([&] { shop.Ship("D3", 1, "20"); }).sqlstate, "HK040");
}

// The saw was told after the tenth: no eleventh is begun. One that has really been cut is a fact all the same, and
// is recorded like the tenth; the cut cries once.
TEST_F(Holds, AnEleventhPieceCutAllTheSameIsRecordedHeldToo) {
  shop.Fetch(tags[1], {{.count = 15, .length = 300, .line = "20"}});
  shop.Record(tags[1], {Trim(), Good(9, 300, "20")});
  shop.Hold("M2208");
  shop.Record(tags[1], {Good(1, 300, "20")});
  const DbError eleventh = Refusal([&] { shop.Record(tags[1], {Good(1, 300, "20")}); });
  EXPECT_EQ(eleventh.sqlstate, "HK040");
  EXPECT_TRUE(eleventh.message.starts_with("STOP: no more is cut from " + tags[1])) << eleventh.message;
  EXPECT_FALSE(shop.Record(tags[1], {Good(1, 300, "20")}, nullptr, {{"already_cut", true}}).at("stop").is_null());
  EXPECT_EQ(shop.Number("select count(*) as n from book.stroke where held"), 2);
  EXPECT_EQ(shop.Number("select count(*) as n from api.conflicts"), 1);
}

TEST_F(Holds, WhatIsCutInQuarantineIsFlaggedAndRaisesAConflictToo) {
  shop.Fetch(tags[1], {{.count = 15, .length = 300, .line = "20"}});
  Do(shop.saw, "quarantine", {tags[1], "pipe seen"});
  EXPECT_NE(shop.Record(tags[1], {Trim(), Good(1, 300, "20")}).at("stop").get<std::string>().find("pipe seen"), std::string::npos);
  EXPECT_GE(shop.Number("select count(*) as n from book.stroke where held"), 1);
  EXPECT_GE(shop.Number("select count(*) as n from api.conflicts"), 1);
}

TEST_F(Holds, AClosedConflictFreesWhatWasCutWhileHeldOnceNothingHoldsItAnyMore) {
  shop.Fetch(tags[0], {{.count = 2}});
  const std::int64_t hold = shop.Hold("M2208").at("hold_id");
  shop.Record(tags[0], {Trim(), Good(2, 290)}, DropLeft(5404));
  const std::int64_t conflict = shop.Number("select min(conflict_id) as n from api.conflicts where closed_by is null");
  EXPECT_EQ(Code([&] { Do(shop.quality, "close_conflict", {conflict, "analysis was right", true}); }), "HK040");
  Do(shop.quality, "lift_hold", {hold, "analysis was right"});
  EXPECT_EQ(Code([&] { shop.Ship("D1", 2); }), "HK040");
  EXPECT_EQ(Code([&] { Do(shop.quality, "close_conflict", {conflict, " ", true}); }), "HK026");
  EXPECT_EQ(Code([&] { Do(shop.planner, "close_conflict", {conflict, "mine", true}); }), "42501");
  EXPECT_EQ(Do(shop.quality, "close_conflict", {conflict, "analysis was right", true}).at("freed"), 2);
  shop.Ship("D1", 2);
  EXPECT_EQ(Code([&] { Do(shop.quality, "close_conflict", {conflict, "again", false}); }), "HK043");
}

TEST_F(Holds, ASettingThatIsNoAmountIsRefused_HK026) {
  for (const char* value : {"three", "-1", "", "1e9"}) {
    const Json rules = {{"settings", {{"mass_mismatch_percent", value}}}};
    EXPECT_EQ(Code([&] { Do(shop.owner, "set_rules", {rules.dump()}); }), "HK026") << value;
  }
}

}  // namespace
}  // namespace heatkeep
