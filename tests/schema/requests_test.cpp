// A request number does its deed once, answers the same ever after, and belongs to one login and one set of
// arguments.
#include <chrono>
#include <future>
#include <set>

#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct Requests : ShopTest {
  std::string number = NewRequest().text;
  Json body = {{"note", "N1"}, {"supplier", "Vandrek"}, {"lines", Json::array({LineJson({.count = 2}, "1")})}};

  Json Receive(Connection& who, const Json& what) { return Answer(who, "api.receive_delivery($1, $2)", {number, what.dump()}); }
  std::int64_t Pieces() { return shop.Number("select count(*) as n from book.piece"); }
};

// RFC 9562, appendix A.6 (from memory): the moment 0x017F22E279B0, rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F.
TEST(RequestNumber, IsTheTimeAndThenChance) {
  EXPECT_EQ(RequestAt(0x017F22E279B0, "0cc318c4dc0c0c07398f").text, "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
  EXPECT_EQ(RequestAt(0xffff'ffff'ffff, "ffffffffffffffffffff").text, "ffffffff-ffff-7fff-bfff-ffffffffffff");
  EXPECT_THROW(RequestAt(0, "0cc3"), std::invalid_argument);
  EXPECT_THROW(RequestAt(0, "0CC318C4DC0C0C07398F"), std::invalid_argument);
}

TEST(RequestNumber, OfALaterMomentIsGreaterAndNoTwoAreAlike) {
  const auto begun = std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::system_clock::now().time_since_epoch()).count();
  std::set<std::string> all;
  for (int n = 0; n < 1000; ++n) all.insert(NewRequest().text);
  EXPECT_EQ(all.size(), 1000U);
  EXPECT_GE(*all.begin(), RequestAt(static_cast<std::uint64_t>(begun), std::string(20, '0')).text);
  EXPECT_LT(*all.rbegin(), RequestAt(static_cast<std::uint64_t>(begun) + 60'000, std::string(20, '0')).text);
}

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

// What a session shows times in is not what was asked: the digest of the arguments is the same.
TEST_F(Requests, WithATimeIsTheSameRequestHoweverTheSessionShowsTimes) {
  shop.admin.ExecuteScript(
      R"(create or replace function guard.begin_deed(p_deed text, p_request uuid, p_args jsonb, p_true_at timestamptz default null,
      p_device text default null, p_reason text default null) returns jsonb language plpgsql as
    $$ begin raise exception using errcode = 'HK999', message = p_args::text; end $$)");
  const Result deeds =
      shop.admin.Execute(R"(select p.proname::text as deed, (select string_agg(case a when 'p_request' then 'gen_random_uuid()'
      when 'p_true_at' then $$timestamptz '2026-03-05 14:00:00+00'$$ when 'p' then $$'{}'$$ else 'null' end, ', ' order by n)
      from unnest(p.proargnames) with ordinality x (a, n)) as arguments
    from pg_proc p where pronamespace = 'api'::regnamespace and 'p_true_at' = any (proargnames) order by 1)");
  const auto asked = [&](const std::string& session, const Row& row) {
    shop.admin.ExecuteScript(session);
    return Refusal([&] { shop.admin.Execute("select api." + row.Text("deed") + "(" + row.Text("arguments") + ")"); }).message;
  };
  int count = 0;
  for (const Row row : deeds) {
    const std::string there = asked("set datestyle = 'ISO'; set timezone = 'UTC'", row);
    EXPECT_NE(there.find("2026-03-05T14:00:00"), std::string::npos) << row.Text("deed") << " does not ask with its time: " << there;
    EXPECT_EQ(asked("set datestyle = 'SQL, DMY'; set timezone = 'Asia/Kolkata'", row), there) << row.Text("deed");
    ++count;
  }
  EXPECT_GT(count, 20);
}

// "IST" is another time where PostgreSQL reads it: a minute ago would be in hours.
TEST_F(Requests, ATimeIsKeptAsItIsHoweverTheSessionShowsTimes) {
  const std::string tag = shop.ReceiveCertified({.count = 1}).at(0);
  shop.clerk.ExecuteScript("set datestyle = 'SQL, DMY'; set timezone = 'Asia/Kolkata'");
  Answer(shop.clerk, "api.put_away($1, $2, 'B1-1', now() - interval '1 minute')", {NewRequest().text, tag});
  EXPECT_EQ(shop.Number("select count(*) as n from book.happening where deed = 'put_away'"), 1);
  EXPECT_EQ(shop.Number(
                "select count(*) as n from book.happening where deed = 'put_away' and true_at between now() - interval '1 hour' and now()"),
            1);
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
