// The clock of the server jumps: the order of what happened is that of its chain, never that of the clock, and what a promise or a true
// time says is judged by the clock as it stands then.
#include "tests/crash/ground.h"

namespace heatkeep {
namespace {

struct Clock : OnBadGround {
  std::int64_t Backwards() {
    return Number(
        "select count(*) as n from book.happening a join book.happening b on (b.chain, b.chain_id) = (a.chain, a.chain_id) and b.seq = a.seq + 1 where b.at < a.at");
  }
};

TEST_F(Clock, JumpsBackAndTheChainsAndPromisesStandAsTheyWere) {
  Refill(60);
  const std::int64_t promised = Number("select count(*) as n from api.promises where state = 'live'");
  ClockOff(-7200);
  HeatkeepProcess process(Words({"cut", "record", "--plan", plan}));
  EXPECT_EQ(process.Finish(), 0) << process.text();
  Remember(process);
  EXPECT_EQ(static_cast<std::int64_t>(said.size()), promised);
  EXPECT_GT(Backwards(), 0);  // the clock really went back under the chains
  Run({"book", "seal"});
  ExpectWhole();
  ClockOff(0);
  Refill(60);
  ExpectWhole();
  // and ahead: promises run out, and come back as promises where nobody took the metal
  ClockOff(10L * 86400);
  Run({"saw", "lapse"});
  EXPECT_EQ(Number("select count(*) as n from api.promises where state = 'live'"), 0);
  ClockOff(0);
  plan.clear();
  ExpectWhole();
}

// A saw off the network whose own clock is right, told to a server whose clock went back: refused, kept, and booked when the clock is
// right.
TEST_F(Clock, OfTheServerBehindTheSawsKeepsTheDeedsInTheQueue) {
  const std::string file = (folder / "saw-1.queue").string();
  Run({"saw", "block", "--device", "saw-1", "--site", "main", "--size", "100", "--queue", file});
  Refill(1);
  const std::string tag =
      cluster.Admin()
          .Execute("select tag from api.plan_layouts where plan_id = $1::bigint and state = 'promised' order by tag limit 1", {plan})
          .Only()
          .Text("tag");
  Run({"saw", "pull", tag, "--saw", "1", "--plan", plan, "--queue", file});
  Run({"saw", "cut", tag, "--saw", "1", "--kerf", "2", "--stroke", "good 2x400 " + Order() + "/10", "--left", "drop", "--place", "B1-1",
       "--queue", file});
  ClockOff(-7200);
  HeatkeepProcess refused(Words({"saw", "send", file}));
  EXPECT_EQ(refused.Finish(), 1) << refused.text();
  EXPECT_NE(refused.text().find("cannot have happened in the future"), std::string::npos) << refused.text();
  EXPECT_EQ(Number("select count(*) as n from book.offline_deed"), 0);
  ClockOff(0);
  Run({"saw", "send", file});
  EXPECT_EQ(Number("select count(*) as n from book.offline_deed where outcome = 'done'"), 2);
  EXPECT_EQ(Number("select count(*) as n from book.stroke join book.piece using (piece_id) where tag = $1", {tag}), 2);
  ExpectWhole();
}

}  // namespace
}  // namespace heatkeep
