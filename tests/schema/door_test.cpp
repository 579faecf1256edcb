// At the door: counted, read and ordered against each other; what does not agree is quarantined, claimed and decided.
// The rules are common practice of the trade, no source; the figures were worked out by hand.
#include <limits>

#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

struct Door : ShopTest {
  Json Line(const Bars& bars, const Json& more = Json::object(), const std::string& order = {}) {
    Json line = LineJson(bars, "1");
    line.update(more);
    Json body{{"note", "N" + std::to_string(++notes)}, {"supplier", "Vandrek"}, {"lines", Json::array({line})}};
    if (!order.empty()) body["purchase_order"] = order;
    return DoBody(shop.clerk, "receive_delivery", body).at("lines").at(0);
  }
  std::string Blocked(const std::string& tag) { return shop.Word("select blocked as w from api.stock_on_hand where tag = $1", {tag}); }
  std::vector<std::string> Claims() {
    std::vector<std::string> words;
    for (const Row row : shop.clerk.Execute("select words from api.claims order by words")) words.push_back(row.Text("words"));
    return words;
  }
  void Expect(int quantity, std::int64_t round = 80, const std::string& grade = "42CrMo4") {
    DoBody(shop.planner, "expect_delivery",
           {{"purchase_order", "P1"},
            {"supplier", "Vandrek"},
            {"lines",
             Json::array({{{"line", "1"},
                           {"section", Round(round)},
                           {"grade", grade},
                           {"condition", "+QT"},
                           {"length_nm", Mm(6000)},
                           {"quantity", quantity},
                           {"due", "2030-01-02"}}})}});
  }
  int notes = 0;
};

// Slip: 12 x round 80 x 6 000, heat K3317. On the lorry 11, one of them stencilled K3371. The certificate names K3317 only.
TEST_F(Door, AShortDeliveryOfTwoHeatsIsClaimedInBothPointsAndOnlyTheTenGoodBarsAreFree) {
  Json ten = LineJson({.heat = "K3317", .count = 10}, "1"), odd = LineJson({.heat = "K3371", .count = 1}, "2");
  for (Json* line : {&ten, &odd}) line->update({{"slip_line", "1"}, {"slip_heat", "K3317"}});
  ten["slip_count"] = 12;
  const Json answer = DoBody(shop.clerk, "receive_delivery", {{"note", "N12"}, {"supplier", "Vandrek"}, {"lines", {ten, odd}}});
  EXPECT_EQ(answer["lines"][0]["theoretical_g"], 2'367'504);  // 2 367.5 kg
  EXPECT_EQ(answer["lines"][1]["theoretical_g"], 236'750);    // 236.75 kg
  EXPECT_EQ(answer["lines"][1]["quarantined"], "the heats disagree: metal K3371, slip K3317");
  shop.Certify("K3317", {});
  EXPECT_EQ(shop.Number("select sum(length_nm)::bigint as n from api.candidates"), Mm(60000));
  EXPECT_EQ(shop.Number("select sum(mass_g)::bigint as n from api.stock_on_hand where blocked is null"), 2'367'500);
  EXPECT_EQ(Claims(),
            (std::vector<std::string>{
                "1 bars round 80 42CrMo4 of 6000 mm not as ordered: the heats disagree: metal K3371, slip K3317 (236.75 kg by theory)",
                "short 1: the slip says 12 bars round 80 42CrMo4 of 6000 mm, 11 came (236.75 kg by theory)"}));
  const std::string tag = answer["lines"][1]["tags"][0];
  const std::string right = LineJson({.heat = "K3317"}, "1").dump();
  for (Connection* who : {&shop.clerk, &shop.planner, &shop.saw, &shop.owner})
    EXPECT_EQ(Code([&] { Do(*who, "correct_receipt", {tag, right, "", "misread"}); }), "42501");
}

TEST_F(Door, AllFourReadingsOfAHeatAreKeptAndFreedOnlyByANamedPersonWhoSaysWhy) {
  const Json line = Line({.heat = "K1"}, {{"tag_heat", "K1"}, {"slip_heat", "K7"}, {"certificate_heat", "KI"}});
  EXPECT_EQ(line.at("quarantined"), "the heats disagree: metal K1, tag K1, slip K7, certificate KI");
  EXPECT_EQ(shop.Word("select string_agg(read_from || ' ' || read_as, ', ' order by read_from) as w from book.heat_reading"),
            "metal K1, tag K1, slip K7, certificate KI");
  const std::string tag = line.at("tags").at(0);
  EXPECT_EQ(Code([&] { Do(shop.quality, "release", {tag, " "}); }), "HK026");
  EXPECT_EQ(Code([&] { Do(shop.clerk, "release", {tag, "it is K1"}); }), "42501");
  Do(shop.quality, "release", {tag, "stencil seen by two; the slip was typed wrong"});
  EXPECT_EQ(shop.Word("select who || ': ' || reason as w from api.piece_history where deed = 'release'"),
            "test_quality: stencil seen by two; the slip was typed wrong");
}

TEST_F(Door, AHeatIsOneLotEachHoweverTheyCameBundled_HK042) {
  const Json answer = shop.Deliver("N1", {{.heat = "K1", .count = 2}, {.heat = "K2", .count = 1}});
  EXPECT_EQ(shop.Number("select count(distinct lot_id) as n from book.piece"), 2);
  const std::string one = answer["lines"][0]["tags"][0], two = answer["lines"][1]["tags"][0];
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "make_bundle", {{"bundle", "s"}, {"tags", {one, two}}}); }), "HK042");
}

TEST_F(Door, AnotherGradeOrSectionThanOrderedIsQuarantined) {
  Expect(5);
  const Json line = Line({.heat = "K1", .grade = "C45E"}, {{"order_line", "1"}}, "P1");
  EXPECT_EQ(line.at("quarantined"), "ordered 42CrMo4 round 80, marked C45E round 80");
  EXPECT_TRUE(Line({.heat = "K2"}, {{"order_line", "1"}}, "P1").at("quarantined").is_null());
  EXPECT_EQ(Line({.heat = "K3", .round = 60}, {{"order_line", "1"}}, "P1").at("quarantined"),
            "ordered 42CrMo4 round 80, marked 42CrMo4 round 60");
  const std::string tag = line.at("tags").at(0);
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {tag, "B1-1"}); }), "HK040");
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {tag, "QUAR"}); }), "");
}

TEST_F(Door, AReceiptWithoutSectionOrGrade_HK026) {
  EXPECT_EQ(Code([&] { Line({.grade = ""}); }), "HK026");
  EXPECT_EQ(Code([&] { Line({}, {{"section", nullptr}}); }), "HK026");
}

TEST_F(Door, BarsOverTheSlipWaitForThePlannerAndForNobodyElse) {
  const Json line = Line({.count = 3, .slip_count = 2});
  EXPECT_EQ(line.at("mismatch"), "counted 3, the slip says 2; 1 more than the slip says: the planner decides");
  shop.Certify("M2208");
  EXPECT_EQ(shop.Number("select count(*) as n from api.candidates"), 2);
  const auto decide = [&](Connection& who, bool keep) {
    return Code([&] {
      DoBody(who, "decide_over", {{"supplier", "Vandrek"}, {"note", "N1"}, {"line", "1"}, {"keep", keep}, {"reason", "used next week"}});
    });
  };
  for (Connection* who : {&shop.clerk, &shop.saw, &shop.quality}) EXPECT_EQ(decide(*who, true), "42501");
  EXPECT_EQ(decide(shop.planner, true), "");
  EXPECT_EQ(decide(shop.planner, false), "HK043");
  EXPECT_EQ(shop.Number("select count(*) as n from api.candidates"), 3);
  EXPECT_EQ(Claims(), std::vector<std::string>{"over 1: the slip says 2 bars round 80 42CrMo4 of 6000 mm, 3 came (236.75 kg by theory)"});
}

// One line that cannot be metal would make every sum over the lines fail for everybody.
TEST_F(Door, NothingIsOrderedOrBoughtThatCannotBeMetal_HK026) {
  const std::int64_t most = std::numeric_limits<std::int64_t>::max();
  const Json good{{"order", "O1"},        {"line", "10"}, {"section", Round(80)}, {"grade", "42CrMo4"}, {"length_nm", Mm(1'000'000)},
                  {"quantity", 1'000'000}};
  const auto code = [&](const char* key, std::int64_t value) {
    Json line = good;
    line[key] = value;
    return Code([&] { DoBody(shop.planner, "add_cut_list", {{"name", "L1"}, {"lines", Json::array({line})}}); });
  };
  for (const auto& [key, value] : std::vector<std::pair<const char*, std::int64_t>>{{"length_nm", most},
                                                                                    {"length_nm", Mm(1'000'000) + 1},
                                                                                    {"face_nm", most},
                                                                                    {"tolerance_plus_nm", most},
                                                                                    {"tolerance_minus_nm", most},
                                                                                    {"quantity", 1'000'001}})
    EXPECT_EQ(code(key, value), "HK026") << key << ' ' << value;
  EXPECT_EQ(code("quantity", 1'000'000), "");
  const auto bought = [&](std::int64_t length, std::int64_t quantity) {
    return Code([&] {
      DoBody(shop.planner, "expect_delivery",
             {{"purchase_order", "P1"},
              {"supplier", "Vandrek"},
              {"lines",
               Json::array({{{"line", "1"},
                             {"section", Round(80)},
                             {"grade", "42CrMo4"},
                             {"condition", "+QT"},
                             {"length_nm", length},
                             {"quantity", quantity},
                             {"due", "2030-01-01"}}})}});
    });
  };
  EXPECT_EQ(bought(most, 1), "HK026");
  EXPECT_EQ(bought(Mm(6000), 1'000'001), "HK026");
  EXPECT_EQ(bought(Mm(6000), 9), "");
  EXPECT_EQ(shop.Number("select sum(open * (length_nm / 1000000))::bigint as n from api.cut_lines"), 1'000'000'000'000);
}

TEST_F(Door, WhatIsExpectedIsPromisedButIsNoStockAndHasNothingToCut) {
  Expect(3);
  shop.AddLine({.condition = "+QT"});
  const auto promise = [&](int bars, Connection& who) {
    return Code([&] {
      DoBody(who, "promise_expected", {{"purchase_order", "P1"}, {"purchase_line", "1"}, {"order", "O1"}, {"line", "10"}, {"bars", bars}});
    });
  };
  EXPECT_EQ(promise(2, shop.clerk), "42501");
  EXPECT_EQ(promise(2, shop.planner), "");
  EXPECT_EQ(promise(2, shop.planner), "HK034");
  EXPECT_EQ(shop.Word("select words || '; ' || promised as w from api.expected"),
            "not here yet, due 2030-01-02; 2 bars for order O1 line 10");
  EXPECT_EQ(shop.Number("select (select count(*) from api.stock_on_hand) + (select count(*) from api.candidates) as n"), 0);
  Line({.heat = "K2", .count = 3}, {{"order_line", "1"}}, "P1");
  EXPECT_EQ(shop.Word("select words as w from api.expected"), "delivered");
}

TEST_F(Door, TheOpeningBalanceIsSignedByThePlannerAndByQualityNotByWhoBroughtItIn) {
  Connection all = shop.book.As("all");
  Json line = LineJson({.heat = "", .read_from = "none", .kind = "drop", .old_tag = "I3"}, "1");
  line["raw"] = "I3;4140;80;1100;";
  DoBody(all, "open_balance", {{"name", "start"}, {"lines", Json::array({line})}});
  EXPECT_EQ(Code([&] { DoBody(all, "sign_opening", {{"name", "start"}}); }), "HK043");
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "sign_opening", {{"name", "start"}}); }), "42501");
  DoBody(shop.planner, "sign_opening", {{"name", "start"}});
  DoBody(shop.quality, "sign_opening", {{"name", "start"}});
  EXPECT_EQ(shop.Word("select signed_by_planner || ' ' || signed_by_quality || ' ' || raw_text as w from api.receipts"),
            "test_planner test_quality I3;4140;80;1100;");
}

TEST_F(Door, ADeliveryEnteredLateKeepsItsTrueTimeAndSaysSo) {
  const std::string tag = Line({}).at("tags").at(0);
  const std::string then = shop.Word("select (now() - interval '14 hours 5 minutes')::text as w");
  Do(shop.clerk, "put_away", {tag, "GATE", then, "scanner 4"});
  EXPECT_EQ(shop.Word("select entered || ' on ' || device as w from api.piece_history where deed = 'put_away'"),
            "entered 14 h later by test_clerk on scanner 4");
  EXPECT_EQ(shop.Number("select count(*) as n from api.piece_history where deed = 'receive_delivery' and entered is not null"), 0);
}

TEST_F(Door, TheDoubtOfALengthIsThatOfTheTapeAndAnOverdueTapeIsWarnedOf) {
  DoBody(shop.quality, "add_device", {{"device", "tape 7"}, {"kind", "tape"}, {"site", "main"}});
  Json more{{"measured_with", "tape 7"}, {"doubt_nm", nullptr}};
  EXPECT_EQ(Line({.heat = "K0"}, more).at("warning"), "tape 7 was never calibrated");
  DoBody(shop.quality, "calibrate_device",
         {{"device", "tape 7"}, {"calibrated_on", "2020-01-01"}, {"due_on", "2021-01-01"}, {"doubt_nm", Mm(2)}, {"certificate", "K 1"}});
  const Json old = Line({.heat = "K1"}, more);
  EXPECT_EQ(old.at("warning"), "the calibration of tape 7 ended on 2021-01-01: calibrate it, then measure again");
  EXPECT_EQ(shop.Number("select doubt_nm as n from api.stock_on_hand where heat = 'K1'"), Mm(2));
  EXPECT_EQ(shop.Number("select count(*) as n from api.devices where overdue"), 1);
  DoBody(shop.quality, "calibrate_device",
         {{"device", "tape 7"}, {"calibrated_on", "2026-01-01"}, {"due_on", "2099-01-01"}, {"doubt_nm", Mm(1)}, {"certificate", "K 2"}});
  EXPECT_TRUE(Line({.heat = "K2"}, more).at("warning").is_null());
  EXPECT_EQ(shop.Number("select doubt_nm as n from api.stock_on_hand where heat = 'K2'"), Mm(1));
  EXPECT_EQ(Code([&] { Line({.heat = "K3"}, {{"measured_with", "tape 8"}, {"doubt_nm", nullptr}}); }), "HK026");
}

}  // namespace
}  // namespace heatkeep
