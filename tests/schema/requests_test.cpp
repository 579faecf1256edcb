// A request number does its deed once, answers the same ever after, and belongs to one login and one set of
// arguments.
#include <future>

#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct Requests : ShopTest {
  std::string number = NewRequest().text;
  Json body = {{"note", "N1"}, {"supplier", "Vandrek"}, {"lines", Json::array({LineJson({.count = 2}, "1")})}};

  Json Receive(Connection& who, const Json& what) { return Answer(who, "api.receive_delivery($1, $2)", {number, what.dump()}); }
  std::int64_t Pieces() { return shop.Number("select count(*) as n from book.piece"); }
};

TEST_F(Requests, TheSameNumberTwiceDoesItOnceAndAnswersTheSame) {
  const Json first = Receive(shop.clerk, body);
  Json again = Receive(shop.clerk, body);
  EXPECT_EQ(again.at("again"), true);
  again.erase("again");
  EXPECT_EQ(again, first);
  EXPECT_EQ(Pieces(), 2);
}

TEST_F(Requests, WithOtherArgumentsOrAnotherDeedOrByAnotherLogin_HK012) {
  Receive(shop.clerk, body);
  Json other = body;
  other["lines"][0]["count"] = 3;
  EXPECT_EQ(Code([&] { Receive(shop.clerk, other); }), "HK012");
  EXPECT_EQ(Code([&] { Answer(shop.clerk, "api.quarantine($1, 'A', 'r')", {number}); }), "HK012");
  Connection all = shop.book.As("all");
  EXPECT_EQ(Code([&] { Receive(all, body); }), "HK012");
  EXPECT_EQ(Pieces(), 2);
}

TEST_F(Requests, WithoutANumber_HK010) {
  EXPECT_EQ(Code([&] { Answer(shop.clerk, "api.receive_delivery(null, $1)", {body.dump()}); }), "HK010");
}

TEST_F(Requests, ARefusedDeedLeavesItsNumberFree) {
  Json wrong = body;
  wrong["supplier"] = "Nobody";
  EXPECT_EQ(Code([&] { Receive(shop.clerk, wrong); }), "HK020");
  EXPECT_FALSE(Receive(shop.clerk, body).contains("again"));
}

TEST_F(Requests, AConcurrentTwinWaitsForTheFirstOnesAnswer) {
  Connection twin = shop.book.As("clerk");
  Transaction open(shop.clerk);
  const Json first = Receive(shop.clerk, body);
  auto second = std::async(std::launch::async, [&] { return Receive(twin, body); });
  EXPECT_EQ(second.wait_for(std::chrono::milliseconds(300)), std::future_status::timeout);
  open.Commit();
  const Json answer = second.get();
  EXPECT_EQ(answer.at("lines"), first.at("lines"));
  EXPECT_EQ(answer.at("again"), true);
  EXPECT_EQ(Pieces(), 2);
}

TEST_F(Requests, ATwinWhoseFirstRolledBackDoesTheDeedItself) {
  Connection twin = shop.book.As("clerk");
  std::future<Json> second;
  {
    Transaction never(shop.clerk);
    Receive(shop.clerk, body);
    second = std::async(std::launch::async, [&] { return Receive(twin, body); });
    EXPECT_EQ(second.wait_for(std::chrono::milliseconds(300)), std::future_status::timeout);
  }
  EXPECT_FALSE(second.get().contains("again"));
  EXPECT_EQ(Pieces(), 2);
}

TEST_F(Requests, ManyTwinsAtOnceAreOneDeed) {
  std::vector<std::future<Json>> all;
  for (int i = 0; i < 6; ++i)
    all.push_back(std::async(std::launch::async, [&] {
      Connection clerk = shop.book.As("clerk");
      return Receive(clerk, body);
    }));
  int first = 0;
  for (auto& one : all) first += one.get().contains("again") ? 0 : 1;
  EXPECT_EQ(first, 1);
  EXPECT_EQ(Pieces(), 2);
}

TEST_F(Requests, ARetryAfterTheConnectionWasKilledBeforeAndAfterTheCommitDoesItOnce) {
  const auto kill = [&](Connection& victim) {
    const std::int64_t pid = victim.Execute("select pg_backend_pid() as n").Only().Int("n");
    return [this, pid] { shop.admin.Execute("select pg_terminate_backend($1::int, 5000)", {pid}); };
  };
  {
    Connection victim = shop.book.As("clerk");
    const auto end = kill(victim);
    Transaction open(victim);
    Receive(victim, body);
    end();
    EXPECT_EQ(Refusal([&] { open.Commit(); }).kind, DbError::Kind::Unreachable);
  }
  EXPECT_EQ(Pieces(), 0);
  Connection victim = shop.book.As("clerk");
  const auto end = kill(victim);
  const Json answer = Receive(victim, body);
  end();
  EXPECT_EQ(Receive(shop.clerk, body).at("lines"), answer.at("lines"));
  EXPECT_EQ(Pieces(), 2);
}

TEST_F(Requests, ARememberedRefusalAnswersTheSameAgainAndIsLoggedOnce) {
  const auto pull = [&] { return Answer(shop.saw, "api.pull($1, 'A000001X', '1')", {number}); };
  const Json first = pull(), again = pull();
  EXPECT_EQ(first.at("refused"), "HK024");
  EXPECT_EQ(again.at("words"), first.at("words"));
  EXPECT_EQ(shop.Number("select count(*) as n from book.refusal"), 1);
}

}  // namespace
}  // namespace heatkeep
