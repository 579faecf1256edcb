// The server is killed and started anew under a desk that is open: its link hears of it, opens its sessions again by itself, hears the
// deeds of others again, and a deed whose answer was lost is asked again and done once.
#include <signal.h>

#include <QCoreApplication>

#include "client/book/account.h"
#include "client/book/server_processes.h"
#include "client/models/book_link.h"
#include "client/models/kept_deed.h"
#include "client/models/qt_words.h"
#include "tests/crash/sawing_works.h"

namespace heatkeep {
namespace {

struct Restart : SawingWorks {
  bool WaitFor(const std::function<bool()>& done) {
    const auto until = std::chrono::steady_clock::now() + std::chrono::seconds(30);
    while (!done() && std::chrono::steady_clock::now() < until) QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    return done();
  }
  void KillTheServer() {
    for (const pid_t pid : ServerProcesses(cluster.data(), ServerAccount())) kill(pid, SIGKILL);
  }
  std::int64_t Moves(const std::string& tag) {
    return Number(
        "select count(*) as n from book.happening join book.piece on row_id = piece_id where tbl = 'piece' and sets ? 'place_id' and tag = $1",
        {tag});
  }

  int words = 0;
  char name[8] = "restart";
  char* arguments[2] = {name, nullptr};
  QCoreApplication application{words, arguments};
};

TEST_F(Restart, UnderAnOpenDeskIsHeardOfAndTheDeskGoesOnByItself) {
  Refill(1);
  const std::string tag = cluster.Admin().Execute("select tag from api.plan_layouts order by tag limit 1").Only().Text("tag");
  BookLink link([this] { return cluster.Connect(OwnAccount().name); });
  int ready = 0, away = 0, changed = 0;
  QObject::connect(&link, &BookLink::Ready, [&] { ++ready; });
  QObject::connect(&link, &BookLink::Away, [&](const QString&) { ++away; });
  QObject::connect(&link, &BookLink::Changed, [&](const QStringList&) { ++changed; });
  DeskSettings settings;
  settings.kept_folder = Q((folder / "kept").string());
  KeptDeed deed(link, settings, "restart");
  int answers = 0, refusals = 0;
  QObject::connect(&deed, &KeptDeed::Answered, [&] { ++answers; });
  QObject::connect(&deed, &KeptDeed::Refused, [&](const AskedDeed&, const DbError& error) {
    ++refusals;
    ADD_FAILURE() << error.message;
  });
  link.Start();
  const std::int64_t moves = Moves(tag);
  ASSERT_TRUE(WaitFor([&] { return ready == 1; }));
  for (int round = 1; round <= 3; ++round) {
    if (round % 2 == 0) Run({"book", "stop"});  // the keeper restarts it
    else KillTheServer();
    // at once, before the link has heard of it: the answer is missing
    const std::string place = round % 2 == 0 ? "B1-1" : "GATE";
    ASSERT_TRUE(deed.Do({"put_away", {{{"tag", tag}, {"place", place}}}})) << "round " << round;
    ASSERT_TRUE(WaitFor([&] { return answers == round && link.ready(); })) << "round " << round;
    EXPECT_EQ(Number("select count(*) as n from book.piece join book.place using (place_id) where tag = $1 and name = $2", {tag, place}),
              1);
    EXPECT_EQ(Moves(tag), moves + round) << "done once";
  }
  EXPECT_EQ(refusals, 0);
  EXPECT_GE(away, 1);
  EXPECT_GE(ready, 2);
  changed = 0;
  Run({"book", "seal"});
  EXPECT_TRUE(WaitFor([&] { return changed > 0; }));  // it hears others again
  plan.clear();
}

// A disk that was pulled out, say. The server cannot be started then, which is another error than one that does not answer.
TEST_F(Restart, OfABookWhoseFolderIsGoneIsWaitedForUntilItIsThereAgain) {
  Refill(1);
  const std::string tag = cluster.Admin().Execute("select tag from api.plan_layouts order by tag limit 1").Only().Text("tag");
  const std::int64_t moves = Moves(tag);
  BookLink link([this] { return cluster.Connect(OwnAccount().name); });
  int ready = 0;
  QStringList away;
  QObject::connect(&link, &BookLink::Ready, [&] { ++ready; });
  QObject::connect(&link, &BookLink::Away, [&](const QString& why) { away.append(why); });
  DeskSettings settings;
  settings.kept_folder = Q((folder / "kept").string());
  KeptDeed deed(link, settings, "restart");
  int answers = 0;
  QObject::connect(&deed, &KeptDeed::Answered, [&] { ++answers; });
  QObject::connect(&deed, &KeptDeed::Refused, [&](const AskedDeed&, const DbError& error) { ADD_FAILURE() << error.message; });
  link.Start();
  ASSERT_TRUE(WaitFor([&] { return ready == 1; }));
  KillTheServer();
  while (!ServerProcesses(cluster.data(), ServerAccount()).empty()) WaitFor([] { return true; });
  const std::filesystem::path elsewhere = cluster.data().string() + ".elsewhere";
  std::filesystem::rename(cluster.data(), elsewhere);
  ASSERT_TRUE(deed.Do({"put_away", {{{"tag", tag}, {"place", "GATE"}}}})) << "asked before the link has heard of it";
  EXPECT_TRUE(WaitFor([&] { return !away.isEmpty() && away.back().contains("there is no book"); })) << away.join("; ").toStdString();
  EXPECT_FALSE(link.ready());
  EXPECT_EQ(answers, 0);
  std::filesystem::rename(elsewhere, cluster.data());
  ASSERT_TRUE(WaitFor([&] { return answers == 1 && link.ready(); }));
  EXPECT_EQ(Moves(tag), moves + 1) << "done once";
  plan.clear();
}

}  // namespace
}  // namespace heatkeep
