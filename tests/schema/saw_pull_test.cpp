// Who gets which piece at the saw: reserved for a line, pulled by a scanned tag, fetched for an urgent order, and what
// the one who comes second is told.
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct SawPull : ShopTest {
  void SetUp() override {
    const auto saw4 = Json{{"saw", "4"},   {"place", "SAW-4"}, {"max_section_nm", Mm(260)}, {"band", "34 x 1.1"}, {"kerf_nm", Mm(2)},
                           {"trim_nm", 0}, {"grip_nm", 0}};
    const auto place = [](const char* name, const char* kind) { return Json{{"place", name}, {"site", "main"}, {"kind", kind}}; };
    Do(shop.owner, "define_shop",
       {Json({{"places", {place("SAW-4", "saw"), place("B3-2", "rack")}}, {"saws", Json::array({saw4})}}).dump()});
    bar = shop.ReceiveCertified({}).at(0);
    shop.AddLine({.quantity = 14});
  }
  Json Reserve(const std::string& tag, int count, const Json& more = Json::object()) {
    Json body{{"tag", tag}, {"order", "O1"}, {"line", "10"}, {"count", count}};
    body.update(more);
    return Do(shop.planner, "reserve", {body.dump()});
  }
  Json PullForLine(const std::string& tag, const std::string& order, int count, const std::string& saw = "4",
                   const Json& more = Json::object()) {
    Json body{{"tag", tag}, {"saw", saw}, {"order", order}, {"line", "10"}, {"count", count}};
    body.update(more);
    return Do(shop.saw, "pull_for_line", {body.dump()});
  }
  std::string State(const std::string& tag) { return shop.Word("select state::text as w from book.piece where tag = $1", {tag}); }
  int Happenings(const std::string& tag, const std::string& deed) {
    return static_cast<int>(shop.Number("select count(*) as n from api.piece_history where tag = $1 and deed = $2", {tag, deed}));
  }
  // A drop with two sawn ends.
  std::string Drop(std::int64_t mm, const std::string& heat = "K1", const std::string& place = "B1-1") {
    return shop.ReceiveCertified({.heat = heat, .length = mm, .place = place, .kind = "drop", .ends = 2}).at(0);
  }
  std::string bar;
};

TEST_F(SawPull, APieceIsReservedForALineUntilTheEndOfTheNextShift) {
  const Json held = Reserve(bar, 14);
  EXPECT_EQ(held.at("count"), 14);
  EXPECT_EQ(shop.Number("select planned as n from api.cut_lines where order_no = 'O1'"), 14);
  EXPECT_EQ(shop.Number("select count(*) as n from api.candidates where tag = $1", {bar}), 0);
  EXPECT_EQ(Happenings(bar, "reserve"), 1);
  // shifts begin at 6, 14 and 22 where the owner says nothing else
  const auto until = [&](const std::string& now) {
    return shop.Word("select to_char(guard.promise_until($1::timestamp), 'DD HH24:MI') as w", {now});
  };
  EXPECT_EQ(until("2026-03-04 07:00"), "04 22:00");
  EXPECT_EQ(until("2026-03-04 23:30"), "05 14:00");
  EXPECT_EQ(until("2026-03-04 05:00"), "04 14:00");
  Do(shop.owner, "set_rules", {Json({{"settings", {{"promise_hours", "3"}}}}).dump()});
  EXPECT_EQ(until("2026-03-04 07:00"), "04 10:00");
}

TEST_F(SawPull, TheSameMetalIsNotReservedTwiceAndOnlyForWhatItMayServe) {
  Reserve(bar, 10);
  const DbError again = Refusal([&] { Reserve(bar, 1); });
  EXPECT_EQ(again.sqlstate, "HK409");
  EXPECT_TRUE(again.message.ends_with(": promised by test_planner, order O1")) << again.message;
  const std::string other = Drop(1000);
  EXPECT_EQ(Code([&] { Reserve(other, 5); }), "HK042");  // four are open
  EXPECT_EQ(Code([&] { Reserve(Drop(500), 4); }), "HK034");
  EXPECT_EQ(Code([&] { Reserve(other, 2, {{"until", "2020-01-01"}}); }), "HK026");
  shop.AddLine({.quantity = 1, .order = "C", .grade = "C45E"});
  EXPECT_EQ(Code([&] { Reserve(other, 1, {{"order", "C"}}); }), "HK042");
  shop.Hold("K1");
  EXPECT_EQ(Code([&] { Reserve(other, 1); }), "HK040");
  EXPECT_EQ(Code([&] { Do(shop.planner, "reserve", {Json({{"tag", "A0"}}).dump()}); }), "HK024");
}

TEST_F(SawPull, APromiseIsLetGoOrLapses) {
  Reserve(bar, 14);
  EXPECT_EQ(Code([&] { Do(shop.planner, "unreserve", {bar, ""}); }), "HK026");
  Do(shop.planner, "unreserve", {bar, "another bar is nearer"});
  EXPECT_EQ(Code([&] { Do(shop.planner, "unreserve", {bar, "again"}); }), "HK043");
  EXPECT_EQ(shop.Number("select open as n from api.cut_lines where order_no = 'O1'"), 14);
  shop.Promise(bar, {{.count = 14}});
  EXPECT_EQ(Do(shop.planner, "lapse_promises", {}).at("lapsed"), 0);
  ASSERT_EQ(shop.Raw("update book.promise set expires_at = now() - interval '1 s' where state = 'live'", "commit_plan"), "");
  EXPECT_EQ(Do(shop.planner, "lapse_promises", {}).at("lapsed"), 1);
  EXPECT_EQ(shop.Word("select string_agg(state, ',' order by promise_id) as w from api.promises"), "released,lapsed");
  EXPECT_EQ(shop.Word("select state as w from api.plan_layouts"), "dropped");
  EXPECT_EQ(shop.Number("select open as n from api.cut_lines where order_no = 'O1'"), 14);
}

// Nobody freed it: at the next look the piece and the order are open all the same, and the late saw is told.
TEST_F(SawPull, APromiseWhoseTimeIsOverIsFreeAtTheNextLook) {
  const std::string other = shop.ReceiveCertified({}).at(0);
  shop.Promise(bar, {{.count = 14}});
  ASSERT_EQ(shop.Raw("update book.promise set expires_at = now() - interval '1 s' where state = 'live'", "commit_plan"), "");
  EXPECT_EQ(shop.Number("select open as n from api.cut_lines where order_no = 'O1'"), 14);
  EXPECT_TRUE(shop.Promise(other, {{.count = 14}}).contains("plan"));
  const Json late = shop.Pull(bar);
  EXPECT_EQ(late.at("refused"), "HK042");
  EXPECT_NE(late.at("words").get<std::string>().find("its order was planned anew since"), std::string::npos) << late;
  EXPECT_EQ(shop.Pull(other).value("tag", ""), other);
}

TEST_F(SawPull, WhatIsAtASawNeitherLapsesNorIsLetGo) {
  Reserve(bar, 14);
  EXPECT_EQ(Do(shop.saw, "pull", {bar, "1"}).at("tag"), bar);
  ASSERT_EQ(shop.Raw("update book.promise set expires_at = now() - interval '1 s' where state = 'live'", "commit_plan"), "");
  EXPECT_EQ(Do(shop.planner, "lapse_promises", {}).at("lapsed"), 0);
  EXPECT_EQ(Code([&] { Do(shop.planner, "unreserve", {bar, "sorry"}); }), "HK043");
  shop.Record(bar, {Trim(), Good(14, 290)}, DropLeft(1900));
  EXPECT_EQ(shop.Word("select state as w from api.promises"), "kept");
}

// D-0240 (640): saw 3 for X 2 x 300; two seconds later saw 4 for Y 1 x 580, unplanned. Grip 0.
TEST_F(SawPull, OfTwoScannersTheSecondIsToldWhoHasItAndWhatToTakeInstead) {
  const std::string d240 = Drop(640, "M2208", "B1-1"), d244 = Drop(610, "M2208", "B3-2");
  shop.AddLine({.length = 300, .quantity = 2, .order = "X"});
  shop.AddLine({.length = 580, .quantity = 1, .order = "Y"});
  shop.Promise(d240, {{.count = 2, .length = 300, .order = "X"}}, "3");
  ASSERT_EQ(shop.Pull(d240, "3").value("tag", ""), d240);
  const Json second = PullForLine(d240, "Y", 1);
  EXPECT_EQ(second.at("refused"), "HK043");
  const std::string words = second.at("words");
  EXPECT_TRUE(words.starts_with(d240 + ": taken by saw 3, order X, ")) << words;
  EXPECT_TRUE(words.ends_with(" s ago; take " + d244 + " at B3-2 (610 mm, 28 mm left)")) << words;
  EXPECT_EQ(shop.Number("select count(*) as n from api.promises where state = 'live'"), 1);
  EXPECT_EQ(shop.Number("select count(*) as n from api.refusals where deed = 'pull_for_line' and who = 'test_saw'"), 1);
  shop.Record(d240, Good(2, 300, "10", "X"), ScrapLeft(), {{"saw", "3"}});
  EXPECT_EQ(shop.Balance("M2208", "scrap"), Mm(36));
  ASSERT_EQ(PullForLine(d244, "Y", 1).value("tag", ""), d244);
  shop.Record(d244, Good(1, 580, "10", "Y"), ScrapLeft(), {{"saw", "4"}});
  EXPECT_EQ(shop.Balance("M2208", "scrap"), Mm(36 + 28));
  EXPECT_EQ(shop.Balance("M2208", "unexplained"), 0);
}

TEST_F(SawPull, WrongHeldOthersAndReservedElsewhereAreRefusedInWordsAndLogged) {
  const std::string theirs = shop.ReceiveCertified({.heat = "E1", .owner = "Ister"}).at(0), held = Drop(3000, "H1"),
                    kept = Drop(2000, "P1");
  shop.Hold("H1");
  Reserve(kept, 3);
  shop.AddLine({.quantity = 3, .order = "U"});
  const auto refused = [&](const std::string& tag) { return PullForLine(tag, "U", 1).value("refused", ""); };
  EXPECT_EQ(refused("A0"), "HK024");
  EXPECT_EQ(refused(theirs), "HK042");
  EXPECT_EQ(refused(held), "HK040");
  EXPECT_EQ(refused(kept), "HK042");
  EXPECT_EQ(PullForLine(bar, "U", 4).value("refused", ""), "HK042");  // three are open
  EXPECT_EQ(shop.Number("select count(*) as n from api.refusals where deed = 'pull_for_line'"), 5);
  EXPECT_EQ(Code([&] { PullForLine(bar, "U", 0); }), "HK026");
  EXPECT_EQ(State(bar), "on rack");
}

TEST_F(SawPull, TheHeatIsReadBackBlind) {
  shop.Promise(bar, {{.count = 14}});
  const auto read = [&](const std::optional<std::string>& heat) {
    return Do(shop.saw, "pull", {bar, "1", 1, std::nullopt, "saw-1", heat});
  };
  const Json wrong = read("2280");
  EXPECT_EQ(wrong.at("refused"), "HK044");
  EXPECT_EQ(wrong.at("words").get<std::string>().find("M2208"), std::string::npos);
  EXPECT_EQ(read("08").at("refused"), "HK044");
  Do(shop.owner, "set_rules", {Json({{"settings", {{"heat_read_back", "yes"}}}}).dump()});
  EXPECT_EQ(read(std::nullopt).at("refused"), "HK044");
  EXPECT_EQ(read("2208").at("tag"), bar);
  EXPECT_EQ(shop.Number("select count(*) as n from api.refusals where code = 'HK044' and device = 'saw-1'"), 3);
}

TEST_F(SawPull, TheHeatIsReadBackForPapersAndForOneHeatUnlessTheShopSetsItOff) {
  spoilt = true;  // the shop of these tests has set it off: that it never did, no deed can say
  Connection admin = shop.book.Admin();
  admin.ExecuteScript("set session_replication_role = replica; delete from book.setting where name = 'heat_read_back'");
  const auto two = shop.ReceiveCertified({.heat = "K1", .count = 2});
  shop.AddLines({{.line = "one", .quantity = 2, .order = "O2", .papers = "none", .one_heat = "x"},
                 {.line = "any", .quantity = 2, .order = "O2", .papers = "2.2"}});
  shop.Promise(bar, {{.count = 14}});
  EXPECT_EQ(shop.Pull(bar).at("words"),
            bar + " goes to an order with papers or of one heat: read the last 4 characters of the heat from the metal");
  shop.Promise(two[0], {{.count = 2, .line = "one", .order = "O2"}});
  EXPECT_EQ(shop.Pull(two[0]).value("refused", ""), "HK044");
  shop.Promise(two[1], {{.count = 2, .line = "any", .order = "O2"}});
  EXPECT_EQ(shop.Pull(two[1]).value("tag", ""), two[1]);
  EXPECT_EQ(shop.Number("select count(*) as n from api.refusals where code = 'HK044'"), 2);
  Do(shop.owner, "set_rules", {Json({{"settings", {{"heat_read_back", "no"}}}}).dump()});
  EXPECT_EQ(shop.Pull(bar).value("tag", ""), bar);
}

TEST_F(SawPull, AStartLengthThatIsOffIsSaidAtThePull) {
  shop.Promise(bar, {{.count = 14}});
  const Json pulled = Do(shop.saw, "pull", {bar, "1", 1, std::nullopt, std::nullopt, std::nullopt, Mm(5980)});
  EXPECT_EQ(pulled.at("short_nm"), Mm(20));
  EXPECT_EQ(shop.LengthOf(bar), Mm(5980));
  shop.Record(bar, {Trim(), Good(14, 290)}, DropLeft(1880));
  EXPECT_EQ(shop.Balance("M2208", "unexplained"), Mm(20));
}

// A bar is at the saw for O1; an urgent order is cut from it first. What O1 did not get is explained and open again.
TEST_F(SawPull, AnUrgentOrderIsCutFromTheBarInTheViceAndTheRestOfTheSheetIsExplained) {
  shop.AddLine({.length = 500, .quantity = 3, .order = "URGENT"});
  shop.Fetch(bar, {{.count = 14}});
  shop.Record(bar, {Trim(), Good(3, 500, "10", "URGENT")});
  shop.Record(bar, Good(12, 290));  // 5 988 - 1 506 - 3 504 = 978
  EXPECT_EQ(Code([&] { shop.Record(bar, Json::array(), DropLeft(978)); }), "HK026");
  shop.Record(bar, Json::array(), DropLeft(978), {{"reason", "URGENT came first"}});
  EXPECT_EQ(shop.Word("select order_no || ' ' || missing || ' ' || why as w from api.open_pieces"), "O1 2 URGENT came first");
  EXPECT_EQ(shop.Number("select open as n from api.cut_lines where order_no = 'O1'"), 2);
  EXPECT_EQ(shop.Number("select open as n from api.cut_lines where order_no = 'URGENT'"), 0);
  EXPECT_EQ(shop.Balance("M2208", "unexplained"), 0);
}

TEST_F(SawPull, ACutWithoutAListMakesPiecesOfStockWithTagsOfTheirOwn) {
  const Json stock{{"class", "stock"}, {"count", 3}, {"length_nm", Mm(200)}, {"kerf_nm", Mm(2)}, {"place", "B1-2"}};
  const Json done = shop.Record(bar, {Trim(), stock}, DropLeft(5382));
  ASSERT_EQ(done.at("stock_tags").size(), 3u);
  for (const Json& tag : done.at("stock_tags")) {
    EXPECT_EQ(shop.LengthOf(tag), Mm(200));
    EXPECT_EQ(shop.Word("select label ->> 'heat' as w from api.labels_to_print($1)", {tag.get<std::string>()}), "M2208");
  }
  EXPECT_EQ(shop.Balance("M2208", "on hand"), Mm(600 + 5382));
  EXPECT_EQ(shop.Balance("M2208", "kerf"), Mm(8));
}

// A second plan for the same line looks at what was cut already: K1 has been cut, so the rest is K1's or nobody's.
TEST_F(SawPull, OneHeatLooksAtPiecesThatAnotherPlanHasCutOrMeansToCut_HK042) {
  shop.AddLine({.length = 300, .quantity = 6, .order = "S", .one_heat = "a"});
  shop.AddLine({.length = 300, .quantity = 6, .order = "M", .max_heats = 1});
  const std::string first = Drop(1000, "K1"), same = Drop(1300, "K1"), other = Drop(1300, "K2");
  for (const std::string order : {"S", "M"}) {
    const std::string source = order == "S" ? first : Drop(1000, "K1");
    shop.Promise(source, {{.count = 3, .length = 300, .order = order}}, "3");
    EXPECT_EQ(Code([&] { shop.Promise(other, {{.count = 3, .length = 300, .order = order}}, "3"); }), "HK042") << "planned " << order;
    shop.Pull(source, "3");
    shop.Record(source, Good(3, 300, "10", order), ScrapLeft(), {{"saw", "3"}});
    EXPECT_EQ(Code([&] { shop.Promise(other, {{.count = 3, .length = 300, .order = order}}, "3"); }), "HK042") << "cut " << order;
    EXPECT_EQ(PullForLine(other, order, 3).value("refused", ""), "HK042");
  }
  EXPECT_TRUE(shop.Promise(same, {{.count = 3, .length = 300, .order = "S"}}, "3").contains("plan"));
}

// Lines of one list that share a heat, one fetched after the other without a plan: what is at the saw or reserved settles the heat of all.
TEST_F(SawPull, OneHeatLooksAtMetalThatIsAtASawOrReservedForItsGroup_HK042) {
  shop.AddLines({{.line = "10", .length = 300, .quantity = 6, .order = "S", .one_heat = "g"},
                 {.line = "20", .length = 300, .quantity = 6, .order = "S", .one_heat = "g"}});
  const std::string first = Drop(1000, "K21"), same = Drop(1000, "K21"), other = Drop(1000, "K22");
  const Json twenty{{"order", "S"}, {"line", "20"}};
  const auto none_of_k22 = [&](const std::string& words) {
    const Json refused = PullForLine(other, "S", 3, "4", twenty);
    EXPECT_EQ(refused.value("refused", ""), "HK042");
    EXPECT_NE(refused.value("words", "").find(words), std::string::npos) << refused;
    EXPECT_EQ(Code([&] { Reserve(other, 3, twenty); }), "HK042");
    EXPECT_EQ(Code([&] { shop.Promise(other, {{.count = 3, .length = 300, .line = "20", .order = "S"}}, "4"); }), "HK042");
  };
  Reserve(first, 3, {{"order", "S"}});
  none_of_k22("one heat is asked for order S line 20, and it is planned from K21");
  EXPECT_EQ(PullForLine(first, "S", 3).value("tag", ""), first);
  none_of_k22("one heat is asked for order S line 20, and it is planned from K21");
  shop.Record(first, Good(3, 300, "10", "S"), ScrapLeft(), {{"saw", "4"}});
  none_of_k22("one heat is asked for order S line 20, and it was cut from K21");
  EXPECT_EQ(PullForLine(same, "S", 3, "4", twenty).value("tag", ""), same);
}

TEST_F(SawPull, APromiseThatIsLetGoSettlesNoHeat) {
  shop.AddLine({.length = 300, .quantity = 6, .order = "M", .max_heats = 1});
  const std::string first = Drop(1000, "K21"), other = Drop(1000, "K22");
  Reserve(first, 3, {{"order", "M"}});
  EXPECT_NE(PullForLine(other, "M", 3).value("words", "").find("order M line 10 may come from 1 heats, and is cut or planned from K21"),
            std::string::npos);
  Do(shop.planner, "unreserve", {first, "K22 instead"});
  EXPECT_EQ(PullForLine(other, "M", 3).value("tag", ""), other);
}

// A promise that ran out while its order got another heat is not good any more, though pieces of the line are open.
TEST_F(SawPull, APromiseThatRanOutIsNotFetchedAfterTheLineHasAnotherHeat_HK042) {
  shop.AddLine({.length = 300, .quantity = 6, .order = "S", .one_heat = "g"});
  const std::string first = Drop(1000, "K21"), other = Drop(1000, "K22");
  shop.Promise(first, {{.count = 3, .length = 300, .order = "S"}}, "4");
  ASSERT_EQ(shop.Raw("update book.promise set expires_at = now() - interval '1 s'", "commit_plan"), "");
  EXPECT_EQ(PullForLine(other, "S", 3).value("tag", ""), other);
  EXPECT_EQ(shop.Pull(first, "4").value("refused", ""), "HK042");
}

// What a deed could not count with is refused when it is set, not at the saw.
TEST_F(SawPull, ASettingThatWouldStopDeedsIsRefused_HK026) {
  const auto set = [&](const char* name, const char* value) {
    return Refusal([&] { Do(shop.owner, "set_rules", {Json({{"settings", {{name, value}}}}).dump()}); });
  };
  const std::vector<std::pair<const char*, std::vector<const char*>>> wrong{{"shift_hours", {"0", "25", "0.5"}},
                                                                            {"shift_first_hour", {"24"}},
                                                                            {"promise_hours", {"0", "999999999999999"}},
                                                                            {"tape_doubt_nm", {"1000000.5", "1000000001"}},
                                                                            {"rest_slack_nm", {"2000000.0"}},
                                                                            {"chase_days", {"7.5", "100000"}},
                                                                            {"photo_bytes", {"1.5"}},
                                                                            {"cents_per_pull", {"150.5", "999999999999999"}},
                                                                            {"mass_mismatch_percent", {"100.5"}},
                                                                            {"two_person_release", {"maybe"}},
                                                                            {"currency", {"euro"}}};
  for (const auto& [name, values] : wrong)
    for (const char* value : values) EXPECT_EQ(set(name, value).sqlstate, "HK026") << name << ' ' << value;
  EXPECT_EQ(set("shift_hours", "0").message, "settings that cannot be: shift_hours \"0\" (1 ... 24)");
  EXPECT_EQ(set("tape_doubt_nm", "1000000.5").message, "settings that cannot be: tape_doubt_nm \"1000000.5\" (0, 1 ... 1000000000)");
  for (const auto& [name, value] : std::vector<std::pair<const char*, const char*>>{{"shift_hours", "7.5"},
                                                                                    {"shift_first_hour", "6.5"},
                                                                                    {"promise_hours", "8760"},
                                                                                    {"tape_doubt_nm", "1000000000"},
                                                                                    {"document_mb", "0.5"}})
    EXPECT_EQ(set(name, value).sqlstate, "") << name;
  Reserve(bar, 1);
}

// One clock for all who ask: Berlin is an hour before UTC in winter, two in summer; 2026-10-25 has 25 hours there.
TEST_F(SawPull, ShiftsEndByTheClockOfTheShop) {
  EXPECT_EQ(Code([&] { Do(shop.owner, "set_rules", {R"({"settings": {"time_zone": "Berlin"}})"}); }), "HK026");
  Do(shop.owner, "set_rules", {R"({"settings": {"time_zone": "Europe/Berlin"}})"});
  for (const char* zone : {"UTC", "Asia/Tokyo", "America/St_Johns"}) {
    shop.admin.ExecuteScript(std::string("set timezone to '") + zone + "'");
    const auto until = [&](const std::string& now) {
      return shop.Word(
          "select to_char(guard.promise_until($1::timestamp at time zone 'Europe/Berlin') at time zone 'Europe/Berlin', 'DD HH24:MI') as w",
          {now});
    };
    EXPECT_EQ(until("2026-03-04 07:00"), "04 22:00") << zone;
    EXPECT_EQ(until("2026-10-25 07:00"), "25 22:00") << zone;
    EXPECT_EQ(until("2026-03-29 07:00"), "29 22:00") << zone;
    EXPECT_EQ(until("2026-10-24 23:30"), "25 14:00") << zone;
  }
}

}  // namespace
}  // namespace heatkeep
