// Plans that lose metal: what was let go for a plan that could not be mended is promised again, and whoever stops a promised
// piece is told which plan lacks it.
#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

struct Lacking : ShopTest {
  void SetUp() override {
    tags = shop.ReceiveCertified({.count = 3});
    shop.AddLine({.quantity = 30});
  }
  std::vector<std::string> tags;
};

TEST_F(Lacking, WhereTheOtherPieceIsTakenThePlanStandsAsItWasThoughTheAnswerIsCommitted) {
  shop.Promise(tags[0], {{.count = 10}});
  shop.Promise(tags[1], {{.count = 10}});
  Json body = shop.PlanFor(tags[1], {{.count = 10}});
  body.update({{"plan", 1}, {"reason", "the bar is bent"}, {"drop", {1}}});
  const Json no = Do(shop.planner, "replan", {body.dump()});
  EXPECT_EQ(no.at("taken").at(0).at("tag"), tags[1]) << no;
  EXPECT_EQ(shop.Word("select string_agg(plan_id || ' ' || layout_no || ' ' || state, ', ' order by plan_id) as w from api.plan_layouts"),
            "1 1 promised, 2 1 promised");
  EXPECT_EQ(shop.Word("select string_agg(tag || ' ' || state, ', ' order by tag) as w from api.promises"),
            tags[0] + " live, " + tags[1] + " live");
  EXPECT_EQ(shop.Number("select count(*) as n from api.refusals where deed = 'replan' and code = 'HK409'"), 1);
  EXPECT_EQ(shop.Pull(tags[0]).value("tag", ""), tags[0]);
}

// A cut that was begun, with nothing off yet, goes on as the piece was planned anew; once something is off, the layout stays.
TEST_F(Lacking, ACutThatHasTakenNothingYetGoesOnAsPlannedAnew) {
  shop.AddLine({.line = "20", .length = 500, .quantity = 4});
  shop.Fetch(tags[0], {{.count = 10}});
  shop.Record(tags[0], Json::array(), nullptr, {{"measured_nm", Mm(5990)}, {"reason", "the tape"}});
  const auto anew = [&](int drop, const std::vector<Cuts>& cuts) {
    Json body = shop.PlanFor(tags[0], cuts);
    body.update({{"plan", 1}, {"reason", "another order first"}, {"drop", {drop}}});
    return Do(shop.planner, "replan", {body.dump()});
  };
  EXPECT_EQ(anew(1, {{.count = 4, .length = 500, .line = "20"}}).value("layouts", 0), 1);
  shop.Record(tags[0], {Trim(), Good(4, 500, "20")}, DropLeft(3970));
  EXPECT_EQ(shop.Number("select count(*) as n from api.open_pieces"), 0);
  EXPECT_EQ(shop.Number("select open as n from api.cut_lines where line_no = '10'"), 30);
  EXPECT_EQ(shop.Number("select open as n from api.cut_lines where line_no = '20'"), 0);
}

TEST_F(Lacking, APartForStockTakenWithoutAKerfIsACutTooAndItsLayoutStays_HK043) {
  shop.Fetch(tags[0], {{.count = 10}});
  shop.Record(tags[0], Json{{"class", "stock"}, {"length_nm", Mm(100)}, {"kerf_nm", 0}, {"place", "B1-1"}});
  Json body = shop.PlanFor(tags[0], {{.count = 4}});
  body.update({{"plan", 1}, {"reason", "another order first"}, {"drop", {1}}});
  EXPECT_EQ(Code([&] { Do(shop.planner, "replan", {body.dump()}); }), "HK043");
}

TEST_F(Lacking, WhoStopsAPromisedPieceIsToldWhichPlanLacksItAndHowItIsMended) {
  const auto lacks = [](int plan, const std::string& what) {
    return Json::array({"plan " + std::to_string(plan) + " lacks " + what + ": heatkeep replan " + std::to_string(plan)});
  };
  for (const std::string& tag : tags) shop.Promise(tag, {{.count = 5}});
  EXPECT_EQ(Do(shop.clerk, "quarantine", {tags[0], "rust at one end"}).at("plans"), lacks(1, tags[0]));
  EXPECT_EQ(
      DoBody(shop.clerk, "record_damage", {{"tag", tags[1]}, {"kind", "bent"}, {"usable", false}, {"words", "20 mm out"}}).at("plans"),
      lacks(2, tags[1]));
  EXPECT_EQ(shop.Hold("M2208").at("plans"), lacks(3, tags[2]));
  EXPECT_EQ(Do(shop.clerk, "quarantine", {tags[0], "rust at both ends"}).at("plans"), nullptr) << "nothing is promised of it any more";
}

}  // namespace
}  // namespace heatkeep
