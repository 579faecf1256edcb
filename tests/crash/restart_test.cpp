// The server is killed and started anew under a desk that is open: its link hears of it, opens its sessions again by itself, hears the
// deeds of others again, and a deed whose answer was lost is asked again and done once.
#include <signal.h>

#include <QCoreApplication>

#include "client/book/account.h"
#include "client/book/server_processes.h"
#include "client/gateway/deeds.h"
#include "client/models/book_link.h"
#include "client/models/sure_deed.h"
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
  // A deed that any number of times under one number is done once.
  SureDeed::Work Measured(const std::string& tag, Length length) {
    return [request = NewRequest(), tag, length](Connection& book) {
      return Deeds(book).CorrectLength(request, tag, length, std::nullopt, "measured again");
    };
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
  link.Start();
  ASSERT_TRUE(WaitFor([&] { return ready == 1; }));
  SureDeed deed(link);
  int answers = 0, refusals = 0;
  for (int round = 1; round <= 3; ++round) {
    if (round % 2 == 0) Run({"book", "stop"});  // the keeper restarts it
    else KillTheServer();
    // at once, before the link has heard of it: the answer is missing
    const bool asked = deed.Do(
        Measured(tag, {1'000'000'000 - round * 1'000}), [&](const nlohmann::json&) { ++answers; },
        [&](const DbError& error) {
          ++refusals;
          ADD_FAILURE() << error.message;
        });
    ASSERT_TRUE(asked);
    ASSERT_TRUE(WaitFor([&] { return answers == round && link.ready(); })) << "round " << round;
    EXPECT_EQ(Number("select length_nm as n from book.piece where tag = $1", {tag}), 1'000'000'000 - round * 1'000);
    EXPECT_EQ(Number("select count(*) as n from book.metal_out join book.piece using (piece_id) where tag = $1", {tag}), round);
  }
  EXPECT_EQ(refusals, 0);
  EXPECT_GE(away, 1);
  EXPECT_GE(ready, 2);
  changed = 0;
  Run({"book", "seal"});
  EXPECT_TRUE(WaitFor([&] { return changed > 0; }));  // it hears others again
  plan.clear();
}

}  // namespace
}  // namespace heatkeep
