// Days of an invented shop, told by their numbers: drop first, mixed units, customer's own, papers too weak,
// a bundle, two scanners. All figures were worked out by hand.
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct Scenarios : ShopTest {
  std::int64_t Unexplained(const std::string& heat) { return shop.Balance(heat, "unexplained"); }
};

// 7 x 240, one heat, 3.1: the drop of 1 900 holds them all and 206 are left: 1 680 + 14 + 206 = 1 900.
TEST_F(Scenarios, DropFirstAndOneHeat) {
  const std::string d102 = shop.ReceiveCertified({.length = 1900, .kind = "drop", .ends = 1}).at(0);
  shop.AddLine({.length = 240, .quantity = 7, .one_heat = "a"});
  shop.Fetch(d102, {{.count = 7, .length = 240}});
  const std::string d103 = shop.Record(d102, Good(7, 240), DropLeft(206)).at("drop_tag");
  EXPECT_EQ(shop.LengthOf(d103), Mm(206));
  EXPECT_EQ(shop.Word("select p.tag || ' ' || l.heat as w from book.piece d join book.piece p on p.piece_id "
                      "= d.parent_id join book.lot l on l.lot_id = d.lot_id"
                      " where d.tag = $1",
                      {d103}),
            d102 + " M2208");
  EXPECT_EQ(shop.Balance("M2208", "on site") + shop.Balance("M2208", "kerf") + shop.Balance("M2208", "on hand"), Mm(1900));
}

// Round 2 in x 12 ft, 9 x 13 7/8 in, kerf 0.063 in, trim 0.5 in, dead end 2 in: 457.073 mm are left, exactly,
// whether the list was typed in inches or as 352.425 mm. (1 in = 25.4 mm: international yard and pound
// agreement, 1959.)
TEST_F(Scenarios, InchesAndMillimetresComeToTheSameNanometres) {
  constexpr std::int64_t kInch = 25'400'000;
  const std::int64_t kerf = kInch * 63 / 1000, trim = kInch / 2, piece = kInch * 111 / 8, bar = 144 * kInch;
  EXPECT_EQ(piece, 352'425'000);
  const Json inch_saw{{"saws",
                       Json::array({{{"saw", "inch"},
                                     {"place", "SAW-3"},
                                     {"max_section_nm", Mm(260)},
                                     {"band", "27 x 0.9"},
                                     {"kerf_nm", kerf},
                                     {"trim_nm", trim},
                                     {"grip_nm", 2 * kInch}}})}};
  Do(shop.owner, "define_shop", {inch_saw.dump()});
  const Json two_inch{{"shape", "round"}, {"dim1_nm", 2 * kInch}, {"label", "round 2 in"}};
  Json line = LineJson({.heat = "S1", .grade = "1.4404", .papers_state = "none"}, "1");
  line["section"] = two_inch;
  line["length_nm"] = bar;
  const std::string tag =
      Do(shop.clerk, "receive_delivery",
         {Json({{"note", "N1"}, {"supplier", "Vandrek"}, {"lines", Json::array({line})}}).dump()})["lines"][0]["tags"][0];
  const Json wanted{{"order", "O1"}, {"line", "10"}, {"section", two_inch}, {"grade", "1.4404"}, {"length_nm", piece}, {"quantity", 9}};
  Do(shop.planner, "add_cut_list", {Json({{"name", "L"}, {"lines", Json::array({wanted})}}).dump()});
  Json plan = shop.PlanFor(tag, {}, "inch");
  Json& layout = plan["layouts"][0];
  layout["cuts"] = Json::array({{{"order", "O1"}, {"line", "10"}, {"count", 9}, {"length_nm", piece}}});
  layout["kerf_nm"] = 10 * kerf;
  layout["left_nm"] = 457'073'000;
  EXPECT_TRUE(Do(shop.planner, "commit_plan", {plan.dump()}).contains("plan"));
}

// Customer's own 2 x 3 000: 5 x 500 of it leave 490, kept though the house keeps from 600, never for anybody
// else.
TEST_F(Scenarios, CustomersOwnMetalServesThatCustomerOnlyAndItsRestIsKept) {
  Do(shop.owner, "set_rules", {Json({{"keep", Json::array({{{"grade", "1.4404"}, {"keep_nm", Mm(600)}}})}}).dump()});
  const Bars theirs{.heat = "E1",
                    .grade = "1.4404",
                    .condition = "",
                    .length = 3000,
                    .count = 2,
                    .papers_state = "none",
                    .owner = "Ister",
                    .ends = 2,
                    .round = 50};
  const auto tags = shop.Receive(theirs);
  shop.AddLines({{.line = "own",
                  .length = 500,
                  .quantity = 5,
                  .customer = "Ister",
                  .papers = "none",
                  .grade = "1.4404",
                  .owner = "Ister",
                  .round = 50},
                 {.line = "other", .length = 400, .quantity = 1, .customer = "Drewe", .papers = "none", .grade = "1.4404", .round = 50}});
  EXPECT_EQ(Code([&] { shop.Promise(tags[1], {{.count = 1, .length = 400, .line = "other"}}); }), "HK042");
  shop.Fetch(tags[0], {{.count = 5, .length = 500, .line = "own"}});
  const std::string rest = shop.Record(tags[0], Good(5, 500, "own"), DropLeft(490)).at("drop_tag");
  EXPECT_EQ(shop.Word("select owner || ' ' || length_nm as w from api.stock_on_hand where tag = $1", {rest}), "Ister 490000000");
  EXPECT_EQ(Code([&] { shop.Promise(rest, {{.count = 1, .length = 400, .line = "other"}}); }), "HK042");
  EXPECT_EQ(shop.Number("select sum(mass_g)::bigint as n from api.stock_on_hand where owner = 'Ister'"),
            54821);  // 3 490 mm at 15.708 kg/m
  EXPECT_EQ(shop.Number("select sum(mass_g)::bigint as n from api.customer_property where owner = 'Ister'"), 54821);
  // the other customer's piece comes from our own bar, and only that is worth anything to us
  Do(shop.owner, "set_rules", {R"({"prices": [{"grade": "1.4404", "cents_per_tonne": 480000, "scrap_cents_per_tonne": 120000}]})"});
  EXPECT_EQ(shop.Number("select count(*) as n from api.stock_value"), 0);
  const std::string ours =
      shop.Receive({.heat = "E2", .grade = "1.4404", .condition = "", .length = 4000, .papers_state = "none", .round = 50}).at(0);
  EXPECT_EQ(shop.Number("select count(*) as n from api.candidates where owner <> 'ours' and tag = $1", {ours}), 0);
  shop.Fetch(ours, {{.count = 1, .length = 400, .line = "other"}});
  const std::string left = shop.Record(ours, {Trim(), Good(1, 400, "other")}, DropLeft(3586)).at("drop_tag");
  EXPECT_EQ(shop.LengthOf(left), Mm(3586));  // 4 000 - 12 - 402
  EXPECT_EQ(shop.Number("select sum(length_nm)::bigint as n from api.stock_value"), Mm(3586));
}

// 25 x 280 with 3.1: the 3.1 bar gives 21, the 2.2 bar gives none whatever is short.
TEST_F(Scenarios, PapersThatAreTooWeakAreNotTakenEvenForTheLastFour) {
  const Bars p{.heat = "T901", .round = 100}, q{.heat = "T902", .round = 100};
  const std::string strong = shop.Receive(p).at(0), weak = shop.Receive(q).at(0);
  shop.Certify("T901", p, "3.1");
  shop.Certify("T902", q, "2.2");
  shop.AddLine({.length = 280, .quantity = 25, .round = 100});
  EXPECT_EQ(Code([&] { shop.Promise(weak, {{.count = 4, .length = 280}}); }), "HK042");
  Json plan = shop.PlanFor(strong, {{.count = 21, .length = 280}});
  EXPECT_EQ(plan["layouts"][0]["left_nm"], Mm(66));
  EXPECT_EQ(plan["layouts"][0]["left"], "scrap");
  plan["shorts"] = Json::array({{{"order", "O1"}, {"line", "10"}, {"missing", 4}, {"why", "no more 3.1 metal"}}});
  EXPECT_TRUE(Do(shop.planner, "commit_plan", {plan.dump()}).contains("plan"));
  EXPECT_EQ(shop.Number("select missing as n from api.plan_shorts"), 4);
  EXPECT_EQ(Code([&] { shop.Promise(strong, {{.count = 22, .length = 280}}); }),
            "");  // answered as taken, not refused
  ASSERT_EQ(shop.Pull(strong).value("tag", ""), strong);
  shop.Record(strong, {Trim(), Good(21, 280)}, ScrapLeft());
  const Json part = shop.Ship("D1", 21);
  EXPECT_EQ(part.at("lines"), Json::array({{{"order", "O1"}, {"line", "10"}, {"mill", "Vandrek"}, {"heat", "T901"}, {"count", 21}}}));
  EXPECT_EQ(Code([&] { shop.Ship("D2", 4); }), "HK034");
}

// Five bars of one heat in a bundle whose dead end is 120: 19 each of 95 x 300, 20 strokes and not 100, five rests of 250 with five tags.
TEST_F(Scenarios, ABundleIsPlannedWithItsOwnDeadEndAndCutInTwentyStrokes) {
  const auto tags = shop.ReceiveCertified({.heat = "C30", .grade = "C45E", .count = 5, .round = 30});
  const std::string other = shop.ReceiveCertified({.heat = "C31", .grade = "C45E", .round = 30}).at(0);
  shop.AddLines({{.length = 300, .quantity = 95, .grade = "C45E", .one_heat = "H", .round = 30},
                 {.line = "20", .length = 300, .quantity = 19, .grade = "C45E", .round = 30}});
  Json plan = shop.PlanFor(tags[0], {{.count = 19, .length = 300}});
  for (std::size_t i = 1; i < 5; ++i) plan["layouts"].push_back(shop.PlanFor(tags[i], {{.count = 19, .length = 300}})["layouts"][0]);
  EXPECT_EQ(plan["layouts"][4]["left_nm"], Mm(250));
  plan["bundled"] = true;
  EXPECT_EQ(Code([&] { Do(shop.planner, "commit_plan", {plan.dump()}); }),
            "HK409");  // 60 is the grip of a single bar
  plan["grip_nm"] = Mm(120);
  ASSERT_EQ(Do(shop.planner, "commit_plan", {plan.dump()}).at("layouts"), 5);
  ASSERT_TRUE(shop.Promise(other, {{.count = 19, .length = 300, .line = "20"}}).contains("plan"));
  Json six{{"saw", "1"}, {"tags", tags}};
  six["tags"].push_back(other);
  EXPECT_TRUE(Do(shop.saw, "make_up_bundle", {six.dump()}).value("words", "").starts_with("order O1 line 10 limits its heats: "));
  ASSERT_EQ(Do(shop.saw, "make_up_bundle", {Json{{"saw", "1"}, {"tags", tags}}.dump()}).at("bars"), 5);
  Json body{{"saw", "1"}, {"finish", true}, {"bars", Json::array()}};
  for (const std::string& tag : tags) body["bars"].push_back({{"tag", tag}, {"strokes", {Trim(), Good(19, 300)}}, {"left", DropLeft(250)}});
  const Json done = Do(shop.saw, "record_bundle", {body.dump()});
  EXPECT_EQ(done.at("strokes"), 20);
  EXPECT_EQ(done.at("good"), 95);
  EXPECT_EQ(done.at("drop_tags").size(), 5U);
  EXPECT_EQ(shop.Number("select count(distinct tag) as n from book.piece where kind = 'drop' and length_nm = $1::bigint", {Mm(250)}), 5);
  EXPECT_EQ(shop.Balance("C30", "on site"), Mm(28500));
  EXPECT_EQ(shop.Balance("C30", "trim"), Mm(50));
  EXPECT_EQ(shop.Balance("C30", "kerf"), Mm(200));
  EXPECT_EQ(shop.Balance("C30", "on hand"), Mm(1250));
  EXPECT_EQ(shop.Balance("C30", "received"), Mm(30000));
}

}  // namespace
}  // namespace heatkeep
