// Deeds lock in one order (schema/guard/lock_order.sql), so that no two can wait for each other for good. The server of the tests stops a
// deed that leaves it (HK014), in every test; here: that it does, that nothing locks past it, and pairs of deeds that once met.
#include <atomic>
#include <thread>

#include "tests/schema/every_stock_deed.h"
#include "tests/schema/lock_watch.h"

namespace heatkeep {
namespace {

struct LockOrder : ShopTest {};

TEST_F(LockOrder, IsLeftByNoFunctionThatLocksByItself) {
  EXPECT_EQ(
      shop.Word(
          R"sql(select string_agg(p.oid::regprocedure::text, ', ' order by 1) as w from pg_proc p join pg_namespace n on n.oid = pronamespace
      where nspname in ('api', 'guard') and proname !~ '^lock_' and prosrc ~* '\mfor\s+(no\s+key\s+)?(update|share|key\s+share)\M')sql"),
      "");
  // of these four only one at a time holds the table, and waits for nothing more
  EXPECT_EQ(
      shop.Word(R"sql(select string_agg(proname, ', ' order by proname) as w from pg_proc p join pg_namespace n on n.oid = pronamespace
      where nspname in ('api', 'guard') and proname !~ '^lock_' and prosrc ~* '\mlock\s+table\M')sql"),
      "judge_document, limits_stand, seal_book, take_tag_block");
}

TEST_F(LockOrder, IsWatchedInTheTests_HK014) {
  const auto in_turn = [&](const char* first, const char* second) {
    Transaction open(shop.admin);
    shop.admin.Execute("set local search_path = book, pg_catalog, pg_temp");  // as every deed has it
    shop.admin.Execute(std::string("select guard.") + first);
    return Code([&] { shop.admin.Execute(std::string("select guard.") + second); });
  };
  shop.Receive({.count = 2});
  shop.AddLine({});
  const std::string pieces = "lock_pieces(array(select piece_id from book.piece))",
                    lots = "lock_lots(array(select lot_id from book.lot), true)";
  EXPECT_EQ(in_turn("lock_lines(array(select cut_line_id from book.cut_line))", pieces.c_str()), "HK014");
  EXPECT_EQ(in_turn(pieces.c_str(), "lock_lines(array(select cut_line_id from book.cut_line))"), "");
  EXPECT_EQ(in_turn(pieces.c_str(), lots.c_str()), "HK014");  // shared first, then alone: two who share would wait for each other
  EXPECT_EQ(in_turn(lots.c_str(), pieces.c_str()), "");
  EXPECT_EQ(in_turn("lock_pieces(array(select max(piece_id) from book.piece))", "lock_pieces(array(select min(piece_id) from book.piece))"),
            "HK014");
  EXPECT_EQ(in_turn(pieces.c_str(), pieces.c_str()), "");
}

TEST_F(LockOrder, NothingIsWrittenUnderWhatIsNotLocked_HK014) {
  WatchWrites(shop.admin);
  const std::string tag = shop.Receive({})[0];
  EXPECT_EQ(shop.Raw("update book.piece set ends = 2 where tag = '" + tag + "'"), "HK014");
}

TEST(LockOrderOf, EveryStockDeed) {
  SmallShop shop;
  WatchWrites(shop.admin);
  DoEveryStockDeed(shop);
  EXPECT_EQ(shop.Broken(), std::vector<std::string>());
}

// Every place carries a limited load.
TEST(LockOrderOf, EveryStockDeedWherePlacesHaveALimit) {
  SmallShop shop;
  WatchWrites(shop.admin);
  shop.admin.ExecuteScript(
      "create function public.limit_it() returns trigger language plpgsql as $$ begin new.max_mass_g := 100000000; return new; end $$;"
      "create trigger limited before insert or update on book.place for each row execute function public.limit_it();"
      "set heatkeep.deed = 'define_shop'; update book.place set walk = walk; set heatkeep.deed = ''");
  DoEveryStockDeed(shop);
  EXPECT_EQ(shop.Number("select count(*) as n from book.place where max_mass_g is null"), 0);
  shop.admin.ExecuteScript("drop trigger limited on book.place");
  EXPECT_EQ(shop.Broken(), std::vector<std::string>());
}

// Two deeds and what undoes them, again and again at the same time; each may be refused in our codes. How many were done.
struct Pair {
  Pair() { shop.admin.ExecuteScript("alter database " + shop.book.database() + " set deadlock_timeout = '10ms'"); }
  SmallShop shop;
  std::atomic<int> done = 0;

  template <typename Turn>
  void Often(const std::string& who, Turn turn) {
    Connection session = shop.book.As(who);
    for (int i = 0; i < 40; ++i) {
      try {
        turn(session, i);
        ++done;
      } catch (const DbError& error) {
        if (!error.sqlstate.starts_with("HK") || error.sqlstate == "HK014") ADD_FAILURE() << error.sqlstate << ' ' << error.message;
      }
    }
  }
  template <typename One, typename Other>
  void AtOnce(const std::string& who, One one, const std::string& other_who, Other other) {
    std::jthread thread([&] { Often(other_who, other); });
    Often(who, one);
    thread.join();
    EXPECT_EQ(DeadlocksIn(shop.admin), 0);
    EXPECT_GE(done, 40);
    EXPECT_EQ(shop.Broken(), std::vector<std::string>());
  }
};

TEST(LockOrderOf, AHoldOfAPieceAndAPlanOfIt) {
  Pair pair;
  const std::vector<std::string> tags = pair.shop.Receive({.length = 3000, .count = 4, .papers_state = "none"});
  pair.shop.AddLine({.quantity = 100000, .papers = "none"});
  std::vector<Json> layouts;
  Json plan = pair.shop.PlanFor(tags[0], {{.count = 1}});
  for (const std::string& tag : tags) layouts.push_back(pair.shop.PlanFor(tag, {{.count = 1}})["layouts"][0]);
  pair.AtOnce(
      "planner",
      [&](Connection& session, int i) {
        Json mine = plan;
        const auto one = static_cast<std::size_t>(i % 4), other = static_cast<std::size_t>((i + 1 + i / 4 % 3) % 4);
        mine["layouts"] = {layouts[one], layouts[other]};
        const Json answer = Do(session, "commit_plan", {mine.dump()});
        if (answer.contains("plan")) Do(session, "cancel_plan", {answer["plan"].get<std::int64_t>(), "changed"});
      },
      "quality",
      [&](Connection& session, int i) {
        const Json held =
            Do(session, "place_hold", {i % 2 ? "piece" : "lot", tags[static_cast<std::size_t>(i % 4)], std::nullopt, "looked at"});
        Do(session, "lift_hold", {held["hold_id"].get<std::int64_t>(), "nothing found"});
      });
}

// Two lorries with the same new heats and sections in opposite order.
TEST(LockOrderOf, TwoReceiptsOfTheSameNewHeats) {
  Pair pair;
  const auto lorry = [&](const char* name, bool backwards) {
    return [name, backwards](Connection& session, int i) {
      Json body{{"note", name + std::to_string(i)}, {"supplier", "Vandrek"}, {"lines", Json::array()}};
      for (int n = 0; n < 4; ++n) {
        const int k = backwards ? 3 - n : n;
        body["lines"].push_back(LineJson({.heat = "N" + std::to_string(i) + std::to_string(k), .papers_state = "none", .round = 20 + i + k},
                                         std::to_string(n)));
      }
      Do(session, "receive_delivery", {body.dump()});
    };
  };
  pair.AtOnce("clerk", lorry("A", false), "all", lorry("B", true));
  EXPECT_EQ(pair.done, 80);
}

// Two lorries into the same two places of limited load, in opposite order.
TEST(LockOrderOf, TwoReceiptsIntoTheSamePlaces) {
  Pair pair;
  DoBody(pair.shop.owner, "define_shop",
         {{"places",
           {{{"place", "L1"}, {"site", "main"}, {"kind", "rack"}, {"max_mass_g", 900'000'000}},
            {{"place", "L2"}, {"site", "main"}, {"kind", "rack"}, {"max_mass_g", 900'000'000}}}}});
  const auto lorry = [&](const char* name, const char* first, const char* second) {
    return [=](Connection& session, int i) {
      Json body{{"note", name + std::to_string(i)}, {"supplier", "Vandrek"}, {"lines", Json::array()}};
      for (const char* place : {first, second})
        body["lines"].push_back(LineJson({.heat = name + std::string(place), .place = place, .papers_state = "none"}, place));
      Do(session, "receive_delivery", {body.dump()});
    };
  };
  pair.AtOnce("clerk", lorry("A", "L1", "L2"), "all", lorry("B", "L2", "L1"));
  EXPECT_EQ(pair.done, 80);
}

// The gateway tries a deed again that the database gave up: what a person sees is its answer.
TEST(LockOrderOf, AStatementThatWasGivenUpIsTriedAgain) {
  SmallShop shop;
  shop.admin.ExecuteScript(
      "create table public.lamp (n integer primary key, lit integer); insert into public.lamp values (1, 0), (2, 0); create sequence public.tries;"
      "create function public.light() returns bigint language plpgsql as $$ begin perform nextval('public.tries');"
      "  update public.lamp set lit = lit + 1 where n = 2; perform pg_sleep(0.2); update public.lamp set lit = lit + 1 where n = 1; return 1; end $$");
  Connection patient = shop.book.Admin(), victim = shop.book.Admin();
  patient.ExecuteScript("set deadlock_timeout = '1min'");
  victim.ExecuteScript("set deadlock_timeout = '50ms'");
  Transaction open(patient);
  patient.ExecuteScript("update public.lamp set lit = lit + 1 where n = 1");
  std::thread other([&] { EXPECT_EQ(victim.Execute("select public.light() as n").Only().Int("n"), 1); });
  std::this_thread::sleep_for(std::chrono::milliseconds(100));
  patient.ExecuteScript("update public.lamp set lit = lit + 1 where n = 2");
  open.Commit();
  other.join();
  EXPECT_EQ(shop.Number("select sum(lit)::bigint as n from public.lamp"), 4);
  EXPECT_GE(shop.Number("select last_value as n from public.tries"), 2);
}

}  // namespace
}  // namespace heatkeep
