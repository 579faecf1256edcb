// Two at once, and transactions that look at an older book: the one that waits is held in its database call
// while the other's transaction stays open.
#include <future>
#include <thread>

#include "tests/schema/lock_watch.h"
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct AtOnce : ShopTest {
  void SetUp() override {
    tags = shop.ReceiveCertified({.count = 3});
    shop.AddLine({.quantity = 100});
  }
  // Runs `second` while a transaction on `who` with `first` done in it is open, and commits it once `second`
  // waits.
  template <typename First, typename Second>
  auto WhileOpen(Connection& who, First&& first, Second&& second) {
    Transaction open(who);
    first();
    auto waiting = std::async(std::launch::async, second);
    EXPECT_EQ(waiting.wait_for(std::chrono::milliseconds(300)), std::future_status::timeout) << "it did not wait";
    open.Commit();
    return waiting.get();
  }
  std::vector<std::string> tags;
};

TEST_F(AtOnce, AHoldWaitsForAPromiseUnderWayAndThenTakesItAway) {
  const Json held = WhileOpen(
      shop.planner, [&] { shop.Promise(tags[0], {{.count = 14}}); }, [&] { return shop.Hold("M2208"); });
  EXPECT_EQ(held.at("pieces"), 3);
  EXPECT_EQ(shop.Number("select count(*) as n from book.promise where state = 'live'"), 0);
}

TEST_F(AtOnce, APromiseWaitsForAHoldUnderWayAndIsThenTold) {
  const std::string plan = shop.PlanFor(tags[0], {{.count = 14}}).dump();
  const Json told = WhileOpen(
      shop.quality, [&] { shop.Hold("M2208"); }, [&] { return Do(shop.planner, "commit_plan", {plan}); });
  EXPECT_EQ(told.at("taken").at(0).at("why"), "held by test_quality: letter of the mill");
}

// While others share a lot, each who comes shares it too; one who stops a heat must not wait until nobody comes any more.
TEST_F(AtOnce, AHoldThatWaitsIsServedBeforeAPromiseThatComesLater) {
  const std::string plan = shop.PlanFor(tags[1], {{.count = 14}}).dump();
  std::future<Json> promised;
  const Json held = WhileOpen(
      shop.clerk,
      [&] {
        Do(shop.clerk, "put_away", {tags[0], "B1-1"});
      },
      [&] {
        promised = std::async(std::launch::async, [&] {
          Connection looker = shop.book.Admin();
          const char* waits = "select from pg_stat_activity where datname = current_database() and wait_event_type = 'Lock'";
          for (int look = 0; look < 100 && looker.Execute(waits).empty(); ++look) std::this_thread::sleep_for(std::chrono::milliseconds(5));
          return Do(shop.planner, "commit_plan", {plan});
        });
        return shop.Hold("M2208");
      });
  EXPECT_EQ(held.at("pieces"), 3);
  EXPECT_EQ(promised.get().at("taken").at(0).at("why"), "held by test_quality: letter of the mill");
}

// A receipt is corrected under a plan's eyes: the lot that the metal went to is locked in its order too, by doing the deed again.
TEST_F(AtOnce, ADeedThatWaitedForMetalWhichWentToAnotherLotIsDoneAgain) {
  WatchWrites(shop.admin);
  const std::string lot = LineJson({.heat = "M3000"}, "1").dump();
  const Json done = WhileOpen(
      shop.quality,
      [&] {
        Do(shop.quality, "correct_receipt", {tags[0], lot, "", "read again"});
      },
      [&] {
        return Do(shop.clerk, "put_away", {tags[0], "B1-1"});
      });
  EXPECT_EQ(done.at("place"), "B1-1");
  EXPECT_EQ(shop.Word("select heat as w from api.stock_on_hand where tag = $1", {tags[0]}), "M3000");
  EXPECT_EQ(shop.Number("select count(*) as n from book.happening where deed = 'put_away' and tbl = 'piece'"), 1) << "once";
}

TEST_F(AtOnce, APullWaitsForAHoldOfAPieceItCameFrom_HK040) {
  const std::string drop = shop.Record(tags[0], {Trim(), Good(1, 290)}, DropLeft(5696)).at("drop_tag");
  shop.Promise(drop, {{.count = 1}});
  const Json pulled = WhileOpen(
      shop.quality,
      [&] {
        Do(shop.quality, "place_hold", {"piece", tags[0], std::nullopt, "crack"});
      },
      [&] { return shop.Pull(drop); });
  EXPECT_EQ(pulled.at("refused"), "HK040");
}

TEST_F(AtOnce, APullWaitsForAQuarantineOfAPieceItCameFrom_HK040) {
  const std::string drop = shop.Record(tags[0], {Trim(), Good(1, 290)}, DropLeft(5696)).at("drop_tag");
  shop.Promise(drop, {{.count = 1}});
  const Json pulled = WhileOpen(
      shop.clerk,
      [&] {
        Do(shop.clerk, "quarantine", {tags[0], "bent"});
      },
      [&] { return shop.Pull(drop); });
  EXPECT_EQ(pulled.at("refused"), "HK040");
}

TEST_F(AtOnce, AStrokeUnderWayIsSeenByTheHoldAndTheNextOneIsToldToStop) {
  shop.Fetch(tags[0], {{.count = 14}});
  const Json held = WhileOpen(
      shop.saw,
      [&] {
        shop.Record(tags[0], {Trim(), Good(1, 290)});
      },
      [&] { return shop.Hold("M2208"); });
  EXPECT_EQ(held.at("at_saw"), Json::array({tags[0]}));
  EXPECT_FALSE(shop.Record(tags[0], Good(1, 290)).at("stop").is_null());
}

TEST_F(AtOnce, ACancelledPlanKeepsItsPromiseOfAPieceThatIsJustPulled) {
  const std::int64_t plan = shop.Promise(tags[0], {{.count = 14}}).at("plan");
  const Json done = WhileOpen(
      shop.saw, [&] { shop.Pull(tags[0]); },
      [&] {
        return Do(shop.planner, "cancel_plan", {plan, "withdrawn"});
      });
  EXPECT_EQ(done.at("released"), 0);
  EXPECT_EQ(shop.Word("select state::text as w from book.promise"), "live");
  shop.Record(tags[0], {Trim(), Good(14, 290)}, DropLeft(1900));
  EXPECT_EQ(shop.Word("select state as w from api.plans"), "done");
}

TEST_F(AtOnce, TwoClerksWhoReceiveTheSameNewHeatBookOneLot) {
  Connection other = shop.book.As("clerk");
  const Json body{{"note", "N99"}, {"supplier", "Vandrek"}, {"lines", Json::array({LineJson({.heat = "K3317"}, "1")})}};
  WhileOpen(
      shop.clerk, [&] { shop.Receive({.heat = "K3317"}); }, [&] { return Do(other, "receive_delivery", {body.dump()}); });
  EXPECT_EQ(shop.Number("select count(*) as n from book.lot where heat = 'K3317'"), 1);
  EXPECT_EQ(shop.Number("select count(*) as n from book.piece join book.lot using (lot_id) where heat = 'K3317'"), 2);
}

TEST_F(AtOnce, ALineIsNotPromisedTwiceByTwoPlansFromDifferentPieces_HK409) {
  shop.AddLine({.line = "20", .quantity = 10});
  Connection other = shop.book.As("planner");
  const std::string second = shop.PlanFor(tags[1], {{.count = 7, .line = "20"}}).dump();
  const std::string code = WhileOpen(
      shop.planner, [&] { shop.Promise(tags[0], {{.count = 7, .line = "20"}}); },
      [&] { return Code([&] { Do(other, "commit_plan", {second}); }); });
  EXPECT_EQ(code, "HK409");
}

TEST_F(AtOnce, TheSamePieceIsNotCutTwiceAtTwoSaws) {
  Connection other = shop.book.As("saw");
  const Json body{{"tag", tags[0]}, {"saw", "2"}, {"strokes", {Trim(), Good(10, 290)}}, {"finish", true}, {"left", DropLeft(3068)}};
  const std::string code = WhileOpen(
      shop.saw,
      [&] {
        shop.Record(tags[0], {Trim(), Good(14, 290)}, DropLeft(1900));
      },
      [&] { return Code([&] { Do(other, "record_cut", {body.dump()}); }); });
  EXPECT_EQ(code, "HK043");
  EXPECT_EQ(shop.Number("select count(*) as n from book.stroke"), 15);
}

// A transaction that keeps looking at the book as it was could not see a hold placed since: no deed is done
// in one.
// B1-3 carries 100 kg; a round 80 of 1 500 mm weighs 59 kg.
TEST_F(AtOnce, TwoWhoPutMetalInOnePlaceDoNotOverloadItTogether_HK033) {
  const auto heavy = shop.Receive({.length = 1500, .count = 2, .place = "GATE"});
  const std::string code = WhileOpen(
      shop.clerk,
      [&] {
        Do(shop.clerk, "put_away", {heavy[0], "B1-3"});
      },
      [&] {
        Connection other = shop.book.As("saw");
        return Code([&] { Do(other, "put_away", {heavy[1], "B1-3"}); });
      });
  EXPECT_EQ(code, "HK033");
  EXPECT_EQ(shop.Number("select count(*) as n from api.stock_on_hand where place = 'B1-3'"), 1);
}

TEST_F(AtOnce, NoDeedIsDoneInATransactionThatLooksAtAnOlderBook_HK013) {
  const Json plan = shop.PlanFor(tags[0], {{.count = 14}});
  for (const char* level : {"repeatable read", "serializable"}) {
    Transaction old(shop.planner);
    shop.planner.ExecuteScript(std::string("set transaction isolation level ") + level);
    shop.planner.Execute("select count(*) from api.candidates");
    Connection all = shop.book.As("all");
    const std::int64_t hold = Do(all, "place_hold", {"heat", "M2208", std::nullopt, "letter"}).at("hold_id");
    EXPECT_EQ(Code([&] { Do(shop.planner, "commit_plan", {plan.dump()}); }), "HK013") << level;
    Do(all, "lift_hold", {hold, "again"});
  }
}

TEST_F(AtOnce, TwoPlansForLinesThatShareOneHeatGiveThemOneHeat_HK042) {
  shop.AddLines({{.line = "h1", .quantity = 9, .one_heat = "g"}, {.line = "h2", .quantity = 9, .one_heat = "g"}});
  Connection other = shop.book.As("planner");
  const std::string k22 = shop.ReceiveCertified({.heat = "K22"}).at(0), second = shop.PlanFor(k22, {{.count = 1, .line = "h2"}}).dump();
  const std::string code = WhileOpen(
      shop.planner, [&] { shop.Promise(tags[0], {{.count = 1, .line = "h1"}}); },
      [&] { return Code([&] { Do(other, "commit_plan", {second}); }); });
  EXPECT_EQ(code, "HK042");
}

TEST_F(AtOnce, ARejectIsCutAgainOnce_HK041) {
  const Json reject{{"class", "reject"},    {"order", "O1"},    {"line", "10"},
                    {"length_nm", Mm(285)}, {"kerf_nm", Mm(2)}, {"fault", "out of square"}};
  const Json number = shop.Record(tags[0], {Trim(), reject}, DropLeft(5701)).at("rejects").at(0);
  Connection other = shop.book.As("planner");
  const auto recut = [&](Connection& who, const std::string& tag) { Do(who, "recut", {Json({{"reject", number}, {"tag", tag}}).dump()}); };
  const std::string code = WhileOpen(
      shop.planner, [&] { recut(shop.planner, tags[1]); }, [&] { return Code([&] { recut(other, tags[2]); }); });
  EXPECT_EQ(code, "HK041");
  EXPECT_EQ(shop.Number("select count(*) as n from api.rejects"), 1);
}

// A promise that ran out is still good while nobody else has its line: whoever is just taking that is waited for.
TEST_F(AtOnce, APullOfAPromiseThatRanOutWaitsForOneThatTakesItsLine_HK042) {
  shop.AddLine({.line = "20", .quantity = 3});
  const Json three{{"order", "O1"}, {"line", "20"}, {"count", 3}};
  const auto reserve = [&](const std::string& tag) {
    Do(shop.planner, "reserve", {[&] {
         Json body = three;
         body["tag"] = tag;
         return body.dump();
       }()});
  };
  reserve(tags[0]);
  shop.Promise(tags[1], {{.count = 1}});
  ASSERT_EQ(shop.Raw("update book.promise set expires_at = now() - interval '1 s'", "commit_plan"), "");
  const Json pulled = WhileOpen(
      shop.planner, [&] { reserve(tags[2]); }, [&] { return shop.Pull(tags[0]); });
  EXPECT_EQ(pulled.value("refused", ""), "HK042");
  EXPECT_NE(pulled.value("words", "").find("and its order was planned anew since"), std::string::npos) << pulled;
  EXPECT_EQ(shop.Number("select planned as n from api.cut_lines where line_no = '20'"), 3);
  EXPECT_EQ(shop.Pull(tags[1]).value("tag", ""), tags[1]) << "nobody took its line";
}

}  // namespace
}  // namespace heatkeep
