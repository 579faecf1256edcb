// Bars cut together: made up at the saw, and booked as one deed with one set of strokes. The figures are the trade's own worked example
// (common practice, no source): 6 000 with trim 10 + 2 and a dead end of 120 for bundles holds (6 000 - 12 - 120) / 302 = 19 of 300, rest
// 250. The area of n equal rounds is n pi d^2 / 4 (geometry).
#include <set>

#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct BundleSawing : ShopTest {
  void SetUp() override { Do(shop.owner, "set_saw", {Json{{"saw", "1"}, {"bundle_bars", 5}}.dump()}); }

  // `count` bars of the heat, planned for bundles: 19 x 300 of the line from each.
  std::vector<std::string> Planned(int count, const std::string& heat = "C30", const std::string& line = "10",
                                   const std::string& one_heat = "") {
    const auto tags = shop.ReceiveCertified({.heat = heat, .count = count, .round = 30});
    shop.AddLine({.line = line, .length = 300, .quantity = 19 * count, .one_heat = one_heat, .round = 30});
    Promise(tags, line);
    return tags;
  }
  void Promise(const std::vector<std::string>& tags, const std::string& line) {
    Json plan = shop.PlanFor(tags[0], {{.count = 19, .length = 300, .line = line}});
    for (std::size_t i = 1; i < tags.size(); ++i)
      plan["layouts"].push_back(shop.PlanFor(tags[i], {{.count = 19, .length = 300, .line = line}})["layouts"][0]);
    plan["bundled"] = true;
    plan["grip_nm"] = Mm(120);
    ASSERT_TRUE(Do(shop.planner, "commit_plan", {plan.dump()}).contains("plan"));
  }
  Json MakeUp(const std::vector<std::string>& tags, Json more = Json::object()) {
    more.update({{"saw", "1"}, {"tags", tags}});
    return Do(shop.saw, "make_up_bundle", {more.dump()});
  }
  static Json Bar(const std::string& tag, const Json& strokes, const Json& left) {
    return {{"tag", tag}, {"strokes", strokes}, {"left", left}};
  }
  static Json AsPlanned(const std::string& tag) { return Bar(tag, {Trim(), Good(19, 300)}, DropLeft(250)); }
  static Json Body(const Json& bars, bool finish = true) { return {{"saw", "1"}, {"finish", finish}, {"bars", bars}}; }
  Json Record(const Json& body) { return Do(shop.saw, "record_bundle", {body.dump()}); }
  static Json AllAsPlanned(const std::vector<std::string>& tags) {
    Json bars = Json::array();
    for (const std::string& tag : tags) bars.push_back(AsPlanned(tag));
    return Body(bars);
  }
  std::string State(const std::string& tag) { return shop.Word("select state::text as w from book.piece where tag = $1", {tag}); }
  std::int64_t Conflicts() { return shop.Number("select count(*) as n from book.conflict"); }
};

TEST_F(BundleSawing, FiveBarsAreOneDeedOfTwentyStrokesWithFiveTagsAndAnExactBalance) {
  const auto tags = Planned(5);
  ASSERT_EQ(MakeUp(tags).at("bars"), 5);
  const Row band = shop.saw.Execute("select cuts, area_um2::bigint as area from api.saw_bands where saw = '1'").Only();
  const Json done = Record(AllAsPlanned(tags));
  EXPECT_EQ(done.at("strokes"), 20);
  EXPECT_EQ(done.at("good"), 95);
  EXPECT_EQ(std::set<std::string>(done.at("drop_tags").begin(), done.at("drop_tags").end()).size(), 5U);
  EXPECT_EQ(shop.Balance("C30", "on site"), Mm(28'500));
  EXPECT_EQ(shop.Balance("C30", "trim"), Mm(50));
  EXPECT_EQ(shop.Balance("C30", "kerf"), Mm(200));
  EXPECT_EQ(shop.Balance("C30", "on hand"), Mm(1'250));
  EXPECT_EQ(shop.Balance("C30", "received"), Mm(30'000));
  for (const Json& tag : done.at("drop_tags")) EXPECT_EQ(shop.LengthOf(tag), Mm(250));
  // the band went 20 times through five rounds of 30: 100 x 706.858 mm2
  const Row after = shop.saw.Execute("select cuts, area_um2::bigint as area from api.saw_bands where saw = '1'").Only();
  EXPECT_EQ(after.Int("cuts") - band.Int("cuts"), 20);
  EXPECT_NEAR(static_cast<double>(after.Int("area") - band.Int("area")) / 1e6, 70'685.8, 0.1);
  const Row bundle = shop.saw.Execute("select * from api.saw_bundles").Only();
  EXPECT_EQ(bundle.Int("bars"), 5);
  EXPECT_EQ(bundle.Int("strokes"), 20);
  EXPECT_EQ(bundle.Int("cuts"), 100);
  EXPECT_EQ(Conflicts(), 0);
  EXPECT_EQ(shop.Word("select state::text as w from book.plan"), "done");
}

TEST_F(BundleSawing, TheHistoryOfABarAndTheTraceOfItsHeatSayWithHowManyItWasCut) {
  const auto tags = Planned(3);
  MakeUp(tags);
  Record(AllAsPlanned(tags));
  EXPECT_EQ(shop.Word("select together as w from api.piece_history where tag = $1 and deed = 'make_up_bundle' and about = 'saw_bundle_bar'",
                      {tags[1]}),
            "bundle 1");
  EXPECT_EQ(shop.Number("select count(distinct together) as n from api.piece_history where tag = $1 and deed = 'record_bundle'", {tags[1]}),
            20);
  EXPECT_EQ(shop.Word("select where_now as w from api.trace('heat', 'C30') where name = $1", {tags[1]}), "cut up in a bundle of 3 bars");
  EXPECT_EQ(shop.Number("select count(*) as n from api.plan_layouts where bars = 3 and bundle_no = 1 and made_up"), 3);
}

TEST_F(BundleSawing, MoreBarsThanTheSawTakesAreRefusedWhole_HK042) {
  const auto tags = Planned(6);
  const Json no = MakeUp(tags);
  EXPECT_EQ(no.at("refused"), "HK042");
  EXPECT_EQ(no.at("words"), "saw 1 takes 5 bars at a time, not 6: make up bundles of 5 or fewer");
  for (const std::string& tag : tags) EXPECT_EQ(State(tag), "on rack");
  // the plan itself means bundles of five and one
  EXPECT_EQ(
      shop.Word(
          "select string_agg(n || ' x ' || bars, ', ' order by bars) as w from (select bars, count(*) as n from api.plan_layouts group by 1) x"),
      "1 x 1, 5 x 5");
}

TEST_F(BundleSawing, ABarOfAnotherHeatIsRefusedForAnOrderOfOneHeatAndOneLackingTheWishGoes_HK042) {
  const auto tags = Planned(2, "C30", "10", "H1");
  const auto others = Planned(1, "C31", "20");
  const Json no = MakeUp({tags[0], tags[1], others[0]});
  EXPECT_EQ(no.at("refused"), "HK042");
  EXPECT_EQ(no.at("words"),
            "order O1 line 10 limits its heats: " + tags[0] + " is of heat C30, " + others[0] +
                " of heat C31; make up a bundle of each heat, or cut " + others[0] + " by itself");
  EXPECT_EQ(State(tags[0]), "on rack");
  EXPECT_EQ(shop.Number("select count(*) as n from api.plan_layouts where plan_id = 1 and bars = 2"), 2);
  ASSERT_TRUE(MakeUp(tags).contains("bundle"));
  Record(AllAsPlanned(tags));
  const auto more = Planned(1, "C32", "30"), and_more = Planned(1, "C33", "40");
  EXPECT_TRUE(MakeUp({more[0], and_more[0]}).contains("bundle")) << "no line of theirs limits its heats";
}

TEST_F(BundleSawing, OtherSectionsLengthsLayoutsAndASmallRestDoNotGoTogether_HK042) {
  const auto tags = Planned(2);
  const auto wide = shop.ReceiveCertified({.heat = "C40", .round = 35}),
             shorter = shop.ReceiveCertified({.heat = "C30", .length = 5990, .doubt = 4, .round = 30});
  shop.AddLines({{.line = "50", .length = 300, .quantity = 19, .round = 35},
                 {.line = "60", .length = 300, .quantity = 19, .round = 30},
                 {.line = "70", .length = 295, .quantity = 38, .round = 30}});
  const auto refused = [&](const std::string& tag) { return MakeUp({tags[0], tag}).value("words", ""); };
  EXPECT_TRUE(refused(wide[0]).ends_with("is not promised to any plan")) << refused(wide[0]);
  Promise(wide, "50");
  EXPECT_EQ(refused(wide[0]),
            tags[0] + " and " + wide[0] + " are not of one section, grade, condition and owner: cut them one after the other");
  Promise(shorter, "60");
  EXPECT_EQ(refused(shorter[0]),
            shorter[0] + " measures 5990 mm (in doubt by 4) and " + tags[0] +
                " 6000 mm (by 0): they are not of one length; cut them one after the other");
  const auto two = shop.ReceiveCertified({.heat = "C30", .count = 2, .round = 30});
  ASSERT_TRUE(shop.Promise(two[0], {{.count = 19, .length = 295, .line = "70"}}).contains("plan"));
  EXPECT_TRUE(refused(two[0]).starts_with(two[0] + " is cut otherwise than " + tags[0])) << refused(two[0]);
  // 6 000 - 12 - 20 x 295 = 88: the 60 of a single bar hold it, the 120 of a bundle do not
  shop.AddLine({.line = "80", .length = 293, .quantity = 20, .round = 30});
  ASSERT_TRUE(shop.Promise(two[1], {{.count = 20, .length = 293, .line = "80"}}).contains("plan"));
  EXPECT_EQ(
      refused(two[1]),
      "only 88 mm are sure to stay of " + two[1] + ", and saw 1 holds bundles by 120 mm: cut it by itself, or plan again for bundles");
}

TEST_F(BundleSawing, BarsWhoseLengthsMayBeOneGoTogether) {
  const auto tags = Planned(1);
  const auto other = shop.ReceiveCertified({.heat = "C30", .length = 6003, .doubt = 3, .round = 30});
  shop.AddLine({.line = "20", .length = 300, .quantity = 19, .round = 30});
  Promise(other, "20");
  EXPECT_TRUE(MakeUp({tags[0], other[0]}).contains("bundle"));
}

TEST_F(BundleSawing, OneBarHeldAndNoneIsFetched_HK040) {
  const auto tags = Planned(3);
  Do(shop.quality, "place_hold", {"piece", tags[2], std::nullopt, "a crack seen"});
  const Json no = MakeUp(tags);
  EXPECT_EQ(no.at("refused"), "HK040");
  EXPECT_EQ(State(tags[0]), "on rack");
  EXPECT_EQ(shop.Number("select count(*) as n from api.saw_bundles"), 0);
  EXPECT_EQ(shop.Number("select count(*) as n from api.refusals where deed = 'make_up_bundle'"), 1);
  EXPECT_EQ(MakeUp({tags[0], "A0000000"}).at("refused"), "HK024");
  EXPECT_EQ(Code([&] { MakeUp({tags[0], tags[0]}); }), "HK026");
  EXPECT_EQ(Code([&] { MakeUp({tags[0]}); }), "HK026");
}

TEST_F(BundleSawing, BarsFetchedOneByOneAreMadeUpAndOneBegunIsNot) {
  const auto tags = Planned(3);
  shop.Pull(tags[0]);
  EXPECT_EQ(MakeUp({tags[0], tags[1]}).at("bars"), 2);
  shop.Pull(tags[2]);
  shop.Record(tags[2], {Trim()});
  EXPECT_EQ(MakeUp(tags).value("words", ""), tags[2] + " has been begun: it is finished by itself");
}

TEST_F(BundleSawing, EveryBarMayDifferAndAStrokeStillCountsOnce) {
  const auto tags = Planned(3);
  MakeUp(tags);
  Json reject = Fault("reject", 298, "out of square");
  reject.update({{"order", "O1"}, {"line", "10"}});
  // the first as planned; the second short by 302: one piece less; the third with a reject in its fifth stroke and another rest
  Json shorter = Bar(tags[1], {Trim(), Good(18, 300)}, DropLeft(250));
  shorter.update({{"measured_nm", Mm(5698)}, {"reason", "the bar is short"}});
  const Json done = Record(Body({AsPlanned(tags[0]), shorter, Bar(tags[2], {Trim(), Good(3, 300), reject, Good(15, 300)}, DropLeft(251))}));
  EXPECT_EQ(done.at("strokes"), 20);
  EXPECT_EQ(done.at("good"), 19 + 18 + 18);
  EXPECT_EQ(shop.Balance("C30", "reject"), Mm(298));
  EXPECT_EQ(shop.Balance("C30", "unexplained"), Mm(302 + 1));  // the short bar, and 251 where 252 are left by arithmetic
  EXPECT_EQ(shop.Balance("C30", "on hand"), Mm(250 + 250 + 251));
  EXPECT_EQ(shop.Number("select count(*) as n from book.stroke where saw_stroke = 5"), 3);
  EXPECT_EQ(shop.Number("select count(*) as n from book.stroke where saw_stroke = 20"), 2);
  const Row band = shop.saw.Execute("select cuts, out_of_square, area_um2::bigint as area from api.saw_bands where saw = '1'").Only();
  EXPECT_EQ(band.Int("cuts"), 20);
  EXPECT_EQ(band.Int("out_of_square"), 1);
  EXPECT_NEAR(static_cast<double>(band.Int("area")) / 1e6, 59 * 706.858, 0.1);
}

TEST_F(BundleSawing, StrokeByStrokeTheSawsStrokesAreNumberedOn) {
  const auto tags = Planned(2);
  MakeUp(tags);
  const auto all = [&](const Json& strokes, bool finish) {
    Json bars = Json::array();
    for (const std::string& tag : tags) {
      bars.push_back({{"tag", tag}, {"strokes", strokes}});
      if (finish) bars.back()["left"] = DropLeft(250);
    }
    return Record(Body(bars, finish));
  };
  EXPECT_EQ(all({Trim(), Good(7, 300)}, false).at("strokes"), 8);
  EXPECT_EQ(all(Json::array({Good(12, 300)}), true).at("strokes"), 12);
  EXPECT_EQ(shop.Number("select max(saw_stroke) as n from book.stroke"), 20);
  EXPECT_EQ(shop.Number("select strokes as n from api.saw_bundles"), 20);
}

TEST_F(BundleSawing, WhatOneBarCannotHaveIsRefusedForAll_HK034) {
  const auto tags = Planned(2);
  MakeUp(tags);
  EXPECT_EQ(Code([&] { Record(Body({AsPlanned(tags[0]), Bar(tags[1], {Trim(), Good(20, 300)}, DropLeft(250))})); }), "HK034");
  EXPECT_EQ(shop.Number("select count(*) as n from book.stroke"), 0);
  EXPECT_EQ(State(tags[0]), "at saw");
}

TEST_F(BundleSawing, WhatWasReallyCutIsRecordedThoughABarWasHeldMeanwhile) {
  const auto tags = Planned(2);
  MakeUp(tags);
  Do(shop.quality, "place_hold", {"piece", tags[1], std::nullopt, "letter of the mill"});
  const Json done = Record(AllAsPlanned(tags));
  EXPECT_EQ(done.at("strokes"), 20);
  EXPECT_TRUE(done.at("stop").get<std::string>().starts_with(tags[1] + ": ")) << done;
  EXPECT_EQ(shop.Number("select count(*) as n from book.stroke where held"), 20);
  EXPECT_EQ(shop.Word("select string_agg(distinct kind, ', ') as w from book.conflict"), "cut while held");
  EXPECT_EQ(shop.Balance("C30", "on site"), Mm(2 * 5700));
}

TEST_F(BundleSawing, BarsCutTogetherAgainstTheRuleAreBookedAndTheLeadIsTold) {
  const auto tags = Planned(1, "C30", "10", "H1");
  const auto others = Planned(1, "C31", "20");
  Json other = AsPlanned(others[0]);
  other["strokes"][1]["line"] = "20";
  EXPECT_EQ(Record(Body({AsPlanned(tags[0]), other})).at("strokes"), 20);
  EXPECT_TRUE(shop.Word("select words as w from book.conflict where kind = 'cut together against a rule'")
                  .starts_with("2 bars were cut together at saw 1: order O1 line 10 limits its heats"))
      << "a conflict";
  EXPECT_EQ(shop.Balance("C31", "on site"), Mm(5700));
}

TEST_F(BundleSawing, OffTheNetworkABundleIsOneDeedAndBookedOnce) {
  Do(shop.saw, "take_tag_block", {"saw-1", "main", 20});
  const auto tags = Planned(2);
  const auto send = [&](std::int64_t seq, const char* deed, const Json& body) {
    return Do(shop.saw, "send_offline",
              {Json{{"device", "saw-1"},
                    {"seq", seq},
                    {"deed", deed},
                    {"request", NewRequest().text},
                    {"true_at", "2026-03-04T10:02:05Z"},
                    {"body", body}}
                   .dump()});
  };
  EXPECT_EQ(send(1, "make_up_bundle", {{"saw", "1"}, {"tags", tags}}).at("outcome"), "done");
  const Json cut = AllAsPlanned(tags);
  EXPECT_EQ(send(2, "record_bundle", cut).at("answer").at("strokes"), 20);
  const Json again = send(3, "record_bundle", cut);
  EXPECT_EQ(again.at("outcome"), "conflict");
  EXPECT_TRUE(again.at("words").get<std::string>().ends_with("nothing of it is left to cut")) << again;
  EXPECT_EQ(shop.Word("select string_agg(seq || ' ' || tag, ', ' order by seq) as w from api.offline_deeds"),
            "1 " + tags[0] + ", 2 " + tags[0] + ", 3 " + tags[0]);
  EXPECT_EQ(shop.Balance("C30", "on site"), Mm(2 * 5700));
}

}  // namespace
}  // namespace heatkeep
