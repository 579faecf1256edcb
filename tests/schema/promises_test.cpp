// A piece is promised to at most one live plan, and only when it may be used.
#include <future>

#include "client/gateway/readings.h"
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct Promises : ShopTest {
  void SetUp() override {
    tags = shop.ReceiveCertified({.count = 3});
    shop.AddLines({{.quantity = 100}, {.line = "20", .length = 500, .quantity = 50}});
  }
  std::string Why(const Json& answer) { return answer.at("taken").at(0).at("why"); }
  std::vector<std::string> tags;
};

TEST_F(Promises, ThePlannerWhoComesSecondIsToldWhichPieceWentAndToWhom) {
  ASSERT_EQ(shop.Promise(tags[0], {{.count = 14}}).value("layouts", 0), 1);
  const Json second = shop.Promise(tags[0], {{.count = 3, .length = 500, .line = "20"}});
  EXPECT_EQ(second.at("taken").at(0).at("tag"), tags[0]);
  EXPECT_EQ(Why(second), "promised to plan 1 by test_planner, order O1");
  EXPECT_EQ(shop.Number("select count(*) as n from book.promise where state = 'live'"), 1);
  EXPECT_EQ(shop.Number("select count(*) as n from api.refusals where deed = 'commit_plan' and code = 'HK409'"), 1);
}

TEST_F(Promises, APlanWithOneTakenPiecePromisesNoneOfTheOthers) {
  shop.Promise(tags[0], {{.count = 14}});
  Json plan = shop.PlanFor(tags[1], {{.count = 14}});
  plan["layouts"].push_back(shop.PlanFor(tags[0], {{.count = 14}})["layouts"][0]);
  EXPECT_EQ(Do(shop.planner, "commit_plan", {plan.dump()}).at("taken").size(), 1u);
  EXPECT_EQ(shop.Number("select count(*) as n from book.promise where state = 'live'"), 1);
}

// Both planners are let loose at the same moment, many times; exactly one gets the piece each time.
TEST_F(Promises, TwoPlannersAtOnceOnTwoConnectionsOneGetsItTheOtherIsTold) {
  Connection other = shop.book.As("all");
  for (int round = 0; round < 12; ++round) {
    const std::string plan = shop.PlanFor(tags[0], {{.count = 14}}).dump();
    std::promise<void> start;
    const std::shared_future<void> started = start.get_future().share();
    const auto commit = [&](Connection& who) {
      return std::async(std::launch::async, [&] {
        started.wait();
        return Do(who, "commit_plan", {plan});
      });
    };
    auto one = commit(shop.planner), two = commit(other);
    start.set_value();
    Json a = one.get(), b = two.get();
    ASSERT_NE(a.contains("plan"), b.contains("plan")) << a << b;
    const bool first_won = a.contains("plan");
    const Json& won = first_won ? a : b;
    EXPECT_EQ(Why(first_won ? b : a),
              "promised to plan " + won.at("plan").dump() + " by " + (first_won ? "test_planner" : "test_all") + ", order O1");
    Do(shop.planner, "cancel_plan", {won.at("plan").get<std::int64_t>(), "next round"});
  }
}

TEST_F(Promises, TheSecondPlannerWaitsForTheFirstOnesCommit) {
  Connection first = shop.book.As("planner");
  const std::string plan = shop.PlanFor(tags[0], {{.count = 14}}).dump();
  Transaction open(first);
  Do(first, "commit_plan", {plan});
  auto second = std::async(std::launch::async, [&] { return Do(shop.planner, "commit_plan", {plan}); });
  EXPECT_EQ(second.wait_for(std::chrono::milliseconds(300)), std::future_status::timeout);
  open.Commit();
  EXPECT_TRUE(second.get().contains("taken"));
}

TEST_F(Promises, ALineIsNotPlannedTwiceEvenFromDifferentPieces_HK409) {
  shop.AddLine({.line = "30", .quantity = 10});
  shop.Promise(tags[0], {{.count = 7, .line = "30"}});
  const DbError error = Refusal([&] { shop.Promise(tags[1], {{.count = 4, .line = "30"}}); });
  EXPECT_EQ(error.sqlstate, "HK409");
  EXPECT_EQ(error.kind, DbError::Kind::Stale);
  EXPECT_NE(error.message.find("1 more than are open"), std::string::npos) << error.message;
  EXPECT_TRUE(shop.Promise(tags[1], {{.count = 3, .line = "30"}}).contains("plan"));
}

TEST_F(Promises, APieceThatChangedSinceThePlanWasMadeIsNamed) {
  const Json plan = shop.PlanFor(tags[0], {{.count = 14}});
  Do(shop.clerk, "put_away", {tags[0], "GATE"});
  EXPECT_EQ(Why(Do(shop.planner, "commit_plan", {plan.dump()})), "it was changed since the plan was made");
}

TEST_F(Promises, APlanThatDoesNotSayWhichStateOfThePieceItSawIsToldTheSame) {
  Json plan = shop.PlanFor(tags[0], {{.count = 14}});
  plan["layouts"][0].erase("version");
  EXPECT_EQ(Why(Do(shop.planner, "commit_plan", {plan.dump()})), "it was changed since the plan was made");
}

TEST_F(Promises, KerfTrimOrGripOtherThanTheSaws_HK409) {
  for (const char* key : {"kerf_nm", "trim_nm", "grip_nm"}) {
    Json plan = shop.PlanFor(tags[0], {{.count = 14}});
    plan[key] = plan[key].get<std::int64_t>() + 1;
    EXPECT_EQ(Code([&] { Do(shop.planner, "commit_plan", {plan.dump()}); }), "HK409") << key;
  }
}

TEST_F(Promises, ALayoutThatIsNotCutToTheNanometre_HK042) {
  for (const char* key : {"trim_nm", "kerf_nm", "left_nm"}) {
    Json plan = shop.PlanFor(tags[0], {{.count = 14}});
    Json& value = plan["layouts"][0][key];
    value = value.get<std::int64_t>() + 1;
    EXPECT_EQ(Code([&] { Do(shop.planner, "commit_plan", {plan.dump()}); }), "HK042") << key;
  }
  EXPECT_EQ(Code([&] { shop.Promise(tags[0], {{.count = 21}}); }), "HK042");
  Json called_scrap = shop.PlanFor(tags[0], {{.count = 14}});
  called_scrap["layouts"][0]["left"] = "scrap";
  EXPECT_EQ(Code([&] { Do(shop.planner, "commit_plan", {called_scrap.dump()}); }), "HK042");
}

TEST_F(Promises, FromMetalThatMayNotServe_HK042) {
  shop.AddLines({{.line = "c45", .quantity = 9, .grade = "C45E"},
                 {.line = "own", .quantity = 9, .customer = "Ister", .owner = "Ister"},
                 {.line = "a", .quantity = 9, .condition = "+A"},
                 {.line = "32", .quantity = 9, .papers = "3.2"},
                 {.line = "70", .quantity = 9, .round = 70}});
  for (const char* line : {"c45", "own", "a", "32", "70"})
    EXPECT_EQ(Code([&] { shop.Promise(tags[0], {{.count = 1, .line = line}}); }), "HK042") << line;
  Do(shop.quality, "allow_grade", {"C45E", "42CrMo4", "letter of the customer"});
  EXPECT_TRUE(shop.Promise(tags[0], {{.count = 1, .line = "c45"}}).contains("plan"));
  shop.AddLine({.line = "x2", .quantity = 9, .grade = "42CrMo4"});
}

TEST_F(Promises, OneHeatMeansOneHeatForTheLineAndForAllThatShareItsName_HK042) {
  const std::string other = shop.ReceiveCertified({.heat = "K3317"}).at(0);
  shop.AddLines({{.line = "h1", .quantity = 9, .one_heat = "a"}, {.line = "h2", .quantity = 9, .one_heat = "a"}});
  const auto both = [&](const std::string& one, const std::string& two) {
    Json plan = shop.PlanFor(tags[0], {{.count = 1, .line = one}});
    plan["layouts"].push_back(shop.PlanFor(other, {{.count = 1, .line = two}})["layouts"][0]);
    return Code([&] { Do(shop.planner, "commit_plan", {plan.dump()}); });
  };
  EXPECT_EQ(both("h1", "h1"), "HK042");
  EXPECT_EQ(both("h1", "h2"), "HK042");
  EXPECT_EQ(both("10", "h2"), "");
}

TEST_F(Promises, NoMoreHeatsThanTheLineAllows_HK042) {
  shop.AddLines({{.line = "m1", .quantity = 9, .max_heats = 1}, {.line = "m2", .quantity = 9, .max_heats = 2}});
  const std::string other = shop.ReceiveCertified({.heat = "K3317"}).at(0);
  const auto both = [&](const std::string& line) {
    Json plan = shop.PlanFor(tags[0], {{.count = 1, .line = line}});
    plan["layouts"].push_back(shop.PlanFor(other, {{.count = 1, .line = line}})["layouts"][0]);
    return Code([&] { Do(shop.planner, "commit_plan", {plan.dump()}); });
  };
  EXPECT_EQ(both("m1"), "HK042");
  EXPECT_EQ(both("m2"), "");
}

TEST_F(Promises, LapseAfterTheirTimeAndThenAnotherPlanMayHaveThePiece) {
  shop.Promise(tags[0], {{.count = 14}});
  ASSERT_EQ(shop.Raw("update book.promise set expires_at = now() - interval '1 s'", "commit_plan"), "");
  EXPECT_EQ(shop.Number("select count(*) as n from api.candidates where tag = $1", {tags[0]}), 1);
  EXPECT_TRUE(shop.Promise(tags[0], {{.count = 3, .length = 500, .line = "20"}}).contains("plan"));
  EXPECT_EQ(shop.Word("select string_agg(state::text, ',' order by promise_id) as w from book.promise"), "lapsed,live");
}

TEST_F(Promises, ACancelledPlanLetsItsPiecesGo_AndCannotBeCancelledTwice_HK027) {
  const std::int64_t plan = shop.Promise(tags[0], {{.count = 14}}).at("plan");
  EXPECT_EQ(Do(shop.planner, "cancel_plan", {plan, "order withdrawn"}).at("released"), 1);
  EXPECT_EQ(Code([&] { Do(shop.planner, "cancel_plan", {plan, "again"}); }), "HK027");
  EXPECT_TRUE(shop.Promise(tags[0], {{.count = 14}}).contains("plan"));
}

TEST_F(Promises, ASawThatCannotTakeTheSection_HK042) {
  const std::string big = shop.ReceiveCertified({.heat = "T1", .round = 300}).at(0);
  shop.AddLine({.line = "big", .round = 300});
  EXPECT_EQ(Code([&] { shop.Promise(big, {{.count = 1, .line = "big"}}); }), "HK042");
  EXPECT_TRUE(shop.Promise(big, {{.count = 1, .line = "big"}}, "2").contains("plan"));
}

// What was promised fell with a hold, and the piece was cut all the same: nothing of the plan is left to be planned anew.
TEST_F(Promises, APlanWhoseMetalIsAllGoneIsDone) {
  const std::int64_t plan = shop.Promise(tags[0], {{.count = 14}}).at("plan");
  const auto state = [&] { return shop.Word("select state as w from api.plans where plan_id = $1", {plan}); };
  shop.Hold("M2208");
  EXPECT_EQ(state(), "live") << "it lacks its piece";
  shop.Record(tags[0], {Trim(), Good(14, 290)}, DropLeft(1900));
  EXPECT_EQ(state(), "done");
}

TEST_F(Promises, ACancelledPlanStaysForTheBarAtTheSawWhichItNames) {
  shop.Fetch(tags[0], {{.count = 14}});
  const Json answer = Do(shop.planner, "cancel_plan", {1, "order withdrawn"});
  EXPECT_EQ(answer.at("released"), 0);
  EXPECT_EQ(answer.at("at_saw"), Json::array({tags[0]}));
  EXPECT_EQ(shop.Word("select state as w from api.plans"), "live");
}

TEST_F(Promises, ACancelledLineIsNoLineOfItsListAnyMore) {
  shop.AddLines({{.line = "30", .quantity = 3, .order = "O9"}, {.line = "40", .quantity = 2, .order = "O9"}});
  Do(shop.planner, "change_order", {Json({{"order", "O9"}, {"line", "30"}, {"quantity", 0}, {"reason", "mail of today"}}).dump()});
  const std::vector<CutListRow> lists = ReadCutLists(shop.planner);
  EXPECT_EQ(lists.back().lines, 1);
  EXPECT_EQ(lists.back().pieces, 2);
}

}  // namespace
}  // namespace heatkeep
