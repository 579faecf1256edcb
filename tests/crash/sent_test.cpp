// kill -9 while a saw sends what it did off the network: sent again, every deed is booked once, no metal twice.
#include <iostream>

#include "client/book/account.h"
#include "tests/crash/sawing_works.h"

namespace heatkeep {
namespace {

struct Sent : SawingWorks {
  // Pulls and cuts so many bars of the plan off the network; answers their tags.
  std::vector<std::string> Queue(int bars) {
    Connection session = cluster.Connect(OwnAccount().name);
    std::vector<std::string> tags;
    for (const Row row : session.Execute(
             "select tag from api.plan_layouts where plan_id = $1::bigint and state = 'promised' order by tag limit $2::int", {plan, bars}))
      tags.push_back(row.Text("tag"));
    for (const std::string& tag : tags) {
      Run({"saw", "pull", tag, "--saw", "1", "--plan", plan, "--queue", file});
      Run({"saw", "cut", tag, "--saw", "1", "--kerf", "2", "--stroke", "good 2x400 " + Order() + "/10", "--left", "drop", "--place", "B1-1",
           "--queue", file});
    }
    return tags;
  }
  std::string file = (folder / "saw-1.queue").string();
};

TEST_F(Sent, AKilledSenderBooksEveryDeedOnceWhenItSendsAgain) {
  Run({"saw", "block", "--device", "saw-1", "--site", "main", "--size", "5000", "--queue", file});
  int died = 0;
  std::int64_t deeds = 0;
  for (int round = 0; round < Rounds(8) && !HasFailure(); ++round) {
    Refill(5);
    const std::vector<std::string> tags = Queue(5);
    ASSERT_EQ(tags.size(), 5U);
    deeds += 10;
    for (int tries = 0; tries < 3; ++tries) {
      HeatkeepProcess sender(Words({"saw", "send", file}));
      if (Random(0, 1) == 1) sender.WaitForLines(static_cast<std::size_t>(Random(1, 5)), std::chrono::seconds(20));
      Sleep(Random(0, 60'000));
      sender.Kill();
      died += sender.Finish() != 0;
    }
    Run({"saw", "send", file});
    WaitUntilQuiet();
    for (const std::string& tag : tags) {
      EXPECT_EQ(Number("select count(*) as n from book.stroke join book.piece using (piece_id) where tag = $1", {tag}), 2) << tag;
      EXPECT_EQ(Number("select count(*) as n from book.piece d join book.piece p on p.piece_id = d.parent_id where p.tag = $1", {tag}), 1)
          << tag;
    }
    EXPECT_EQ(Number("select count(*) as n from book.offline_deed where outcome = 'done'"), deeds);
    EXPECT_EQ(Number("select coalesce(max(seq), 0) as n from book.offline_deed"), deeds);
  }
  std::cout << died << " senders were killed in the middle of " << deeds << " deeds\n";
  EXPECT_GE(died, 1);
  EXPECT_EQ(Number("select count(*) as n from book.conflict"), 0);
  ExpectWhole();
}

// The power goes while the queue writes down what was sent: torn anywhere in that, it is sent again, and booked once.
TEST_F(Sent, AQueueTornAfterItWasSentIsSentAgainAndBookedOnce) {
  Run({"saw", "block", "--device", "saw-1", "--site", "main", "--size", "5000", "--queue", file});
  std::int64_t deeds = 0;
  for (int round = 0; round < Rounds(2) && !HasFailure(); ++round) {
    Refill(3);
    const std::vector<std::string> tags = Queue(3);
    ASSERT_EQ(tags.size(), 3U);
    deeds += 6;
    const auto kept = static_cast<int>(std::filesystem::file_size(file));
    Run({"saw", "send", file});
    std::filesystem::resize_file(file, static_cast<std::uintmax_t>(Random(kept, static_cast<int>(std::filesystem::file_size(file)) - 1)));
    Run({"saw", "send", file});
    for (const std::string& tag : tags)
      EXPECT_EQ(Number("select count(*) as n from book.stroke join book.piece using (piece_id) where tag = $1", {tag}), 2) << tag;
    EXPECT_EQ(Number("select count(*) as n from book.offline_deed where outcome = 'done'"), deeds);
    EXPECT_EQ(Number("select coalesce(max(seq), 0) as n from book.offline_deed"), deeds);
  }
  EXPECT_EQ(Number("select count(*) as n from book.conflict"), 0);
  ExpectWhole();
}

}  // namespace
}  // namespace heatkeep
