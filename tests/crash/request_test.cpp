// The connection lost between a request and its answer: the same request number again books once.
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <fstream>
#include <iostream>

#include "client/book/account.h"
#include "client/gateway/deeds.h"
#include "tests/crash/cutting_proxy.h"
#include "tests/crash/sawing_works.h"

namespace heatkeep {
namespace {

struct Request : SawingWorks {
  Connection Session() { return cluster.Connect(OwnAccount().name); }

  // A bar of the plan, at the saw.
  std::string Pulled(Connection& session) {
    const std::string tag =
        session.Execute("select tag from api.plan_layouts where plan_id = $1::bigint and state = 'promised' order by tag limit 1", {plan})
            .Only()
            .Text("tag");
    EXPECT_EQ(Deeds(session).Pull(NewRequest(), tag, "1", std::stoll(plan), "").value("tag", ""), tag);
    return tag;
  }

  Json CutOf(const std::string& tag) const {
    return {
        {"tag", tag},
        {"saw", "1"},
        {"finish", true},
        {"strokes",
         Json::array(
             {{{"class", "good"}, {"order", Order()}, {"line", "10"}, {"count", 2}, {"length_nm", 400'000'000}, {"kerf_nm", 2'000'000}}})},
        {"left", {{"fate", "drop"}, {"place", "B1-1"}}}};
  }

  std::int64_t StrokesOf(const std::string& tag) {
    return Number("select count(*) as n from book.stroke join book.piece using (piece_id) where tag = $1 and class = 'good'", {tag});
  }

  // A process of its own sends the deed; `kill` is called with it and its server process at some moment after. Ready
  // says when it is connected.
  template <typename Kill>
  void SendAndLose(const RequestNumber& request, const Json& body, Kill kill_one) {
    std::array<int, 2> ready{};
    ASSERT_EQ(pipe(ready.data()), 0);
    const pid_t child = fork();
    if (child == 0) {
      try {
        Connection session = Session();
        const auto server = static_cast<pid_t>(session.Execute("select pg_backend_pid() as pid").Only().Int("pid"));
        if (write(ready[1], &server, sizeof server) != sizeof server) _exit(1);
        Deeds(session).RecordCut(request, body);
      } catch (const std::exception&) { _exit(1); }
      _exit(0);
    }
    pid_t server = 0;
    ASSERT_EQ(read(ready[0], &server, sizeof server), static_cast<ssize_t>(sizeof server));
    kill_one(child, server);
    int status = 0;
    waitpid(child, &status, 0);
    for (const int end : ready) close(end);
    lost += !(WIFEXITED(status) && WEXITSTATUS(status) == 0);
  }

  template <typename Kill>
  void ManyRounds(int rounds, Kill kill_one) {
    for (int round = 0; round < rounds && !HasFailure(); ++round) {
      Refill(2);
      const RequestNumber request = NewRequest();
      std::string tag;
      {
        Connection session = Session();
        tag = Pulled(session);
      }
      const Json body = CutOf(tag);
      SendAndLose(request, body, kill_one);
      Connection session = Session();
      // A server process may still be at the first one: the second then waits for it on the number.
      const Json answer = Deeds(session).RecordCut(request, body);
      booked_before += answer.contains("again");
      EXPECT_EQ(answer["good"], 2);
      EXPECT_EQ(StrokesOf(tag), 2);
      EXPECT_EQ(Deeds(session).RecordCut(request, body)["drop_tag"], answer["drop_tag"]);
      EXPECT_EQ(Number("select count(*) as n from book.piece where tag = $1", {answer["drop_tag"].get<std::string>()}), 1);
    }
    std::cout << lost << " of " << rounds << " answers were lost, " << booked_before << " had been booked all the same\n";
    EXPECT_GE(lost, 1);
    ExpectWhole();
  }

  int lost = 0, booked_before = 0;
};

TEST_F(Request, OfAKilledProgramBooksOnceWhenItIsRepeated) {
  ManyRounds(Rounds(20), [this](pid_t program, pid_t) {
    Sleep(Random(0, 40'000));
    kill(program, SIGKILL);
  });
}

TEST_F(Request, OfAKilledServerProcessBooksOnceWhenItIsRepeated) {
  ManyRounds(Rounds(6), [this](pid_t, pid_t server) {
    Sleep(Random(0, 40'000));
    kill(server, SIGKILL);
    WaitUntilQuiet();
  });
}

// The network is cut before the request has arrived, after it was done, or in the middle of its answer.
TEST_F(Request, WhoseAnswerTheNetworkLostBooksOnceWhenItIsRepeated) {
  std::ifstream in(std::filesystem::path(home) / "socket");
  std::string sockets;
  std::getline(in, sockets);
  CuttingProxy proxy(sockets + "/.s.PGSQL.5432");
  const std::string wire = "host=127.0.0.1 port=" + std::to_string(proxy.port()) +
      " dbname=heatkeep sslmode=disable gssencmode=disable user=" + OwnAccount().name;
  for (int round = 0; round < Rounds(9) && !HasFailure(); ++round) {
    Refill(2);
    Connection session = Connection::Open(wire);
    const std::string tag = Pulled(session);
    const Json body = CutOf(tag);
    const RequestNumber request = NewRequest();
    const auto how = static_cast<CuttingProxy::Cut>(1 + round % 3);
    proxy.CutNext(how);
    try {
      Deeds(session).RecordCut(request, body);
      ADD_FAILURE() << "the wire was not cut";
    } catch (const DbError& error) { EXPECT_EQ(error.kind, DbError::Kind::Unreachable) << error.message; }
    Connection again = Connection::Open(wire);
    const Json answer = Deeds(again).RecordCut(request, body);
    EXPECT_EQ(answer.contains("again"), how != CuttingProxy::Cut::BeforeTheRequest) << round;
    booked_before += answer.contains("again");
    EXPECT_EQ(answer["good"], 2);
    EXPECT_EQ(StrokesOf(tag), 2);
    EXPECT_EQ(Number("select count(*) as n from book.piece where tag = $1", {answer["drop_tag"].get<std::string>()}), 1);
  }
  std::cout << booked_before << " of " << Rounds(9) << " had been booked when the wire was cut\n";
  ExpectWhole();
}

}  // namespace
}  // namespace heatkeep
