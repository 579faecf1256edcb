// The server killed, its remains in the way, and the idle stop: whatever happened, the next program finds the
// book.
#include <gtest/gtest.h>
#include <signal.h>
#include <unistd.h>

#include <chrono>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <thread>

#include "tests/book/probe.h"

namespace heatkeep {
namespace {

using std::chrono::milliseconds;

bool Within(milliseconds patience, const auto& holds) {
  for (const auto until = std::chrono::steady_clock::now() + patience; std::chrono::steady_clock::now() < until;
       std::this_thread::sleep_for(milliseconds(50)))
    if (holds()) return true;
  return false;
}

struct Crash : testing::TestWithParam<std::string> {
  Crash() { EXPECT_EQ(probe.Run("init").status, 0); }
  Probe probe{GetParam()};
};

TEST_P(Crash, BookIsThereAfterThePostmasterIsKilled) {
  for (int kills = 1; kills <= 3; ++kills) {
    ASSERT_EQ(probe.Run("write").status, 0);
    ASSERT_EQ(kill(probe.Postmaster(), SIGKILL), 0);
    EXPECT_EQ(probe.Run("count").text, std::to_string(kills) + "\n");
  }
}

TEST_P(Crash, EightProgramsFindTheBookAfterTheKill) {
  ASSERT_EQ(kill(probe.Postmaster(), SIGKILL), 0);
  for (const Said& said : probe.RunAtOnce("write", 8)) EXPECT_EQ(said.status, 0) << said.text;
  EXPECT_EQ(probe.Run("count").text, "8\n");
}

TEST_P(Crash, PidFileThatNamesAStrangersProcessIsNotBelieved) {
  ASSERT_EQ(probe.Run("write").status, 0);
  const pid_t killed = probe.Postmaster();
  ASSERT_EQ(kill(killed, SIGKILL), 0);
  // A stranger under the server's own account: the case the server itself takes for a running one.
  const bool switch_account = geteuid() == 0;
  FILE* stranger = popen(("exec " + (switch_account ? "setpriv --reuid=" + probe.ServerAccountName() + " --clear-groups " : std::string()) +
                          "sh -c 'echo $$; exec sleep 60'")
                             .c_str(),
                         "r");
  pid_t pid = 0;
  ASSERT_EQ(fscanf(stranger, "%d", &pid), 1);
  std::ostringstream rest;
  {
    std::ifstream in(probe.data() / "postmaster.pid");
    std::string first;
    std::getline(in, first);
    rest << in.rdbuf();
  }
  std::ofstream(probe.data() / "postmaster.pid") << pid << '\n' << rest.str();
  const Said said = probe.Run("count");
  EXPECT_EQ(kill(pid, 0), 0) << "the stranger was harmed";
  kill(pid, SIGKILL);
  pclose(stranger);
  EXPECT_EQ(said.text, "1\n");
}

TEST_P(Crash, SocketSweptAwayIsMadeAnew) {
  std::ifstream in(probe.home() / "socket");
  std::string folder;
  std::getline(in, folder);
  ASSERT_GT(std::filesystem::remove_all(folder), 0U);
  EXPECT_EQ(probe.Run("count").text, "0\n");
}

TEST_P(Crash, RemainsStillAtWorkAreWaitedForAndNamed) {
  FILE* busy = probe.Begin("busy");
  std::this_thread::sleep_for(milliseconds(500));
  ASSERT_EQ(kill(probe.Postmaster(), SIGKILL), 0);
  const Said refused = probe.Run("count");
  EXPECT_EQ(refused.status, 1);
  ASSERT_NE(refused.text.find("old server processes"), std::string::npos) << refused.text;
  std::istringstream pids(refused.text.substr(refused.text.rfind("process ") + 8));
  for (pid_t pid = 0; pids >> pid;) kill(pid, SIGTERM);
  Probe::End(busy);
  EXPECT_EQ(probe.Run("count").text, "0\n");
}

TEST_P(Crash, IdleServerStopsAndAUsedOneDoesNot) {
  ASSERT_EQ(probe.Run("stop").status, 0);
  const std::string idle = "HEATKEEP_IDLE_SECONDS=2";
  for (const char* use : {"hold", "brief"}) {
    ASSERT_EQ(probe.Run(use, idle).status, 0);
    EXPECT_EQ(probe.Run("status").text, "running\n") << "stopped while in use by " << use;
  }
  // Looked for in the files: asking the server would be use.
  EXPECT_TRUE(Within(milliseconds(6000), [&] { return !std::filesystem::exists(probe.data() / "postmaster.pid"); }));
  EXPECT_TRUE(Within(milliseconds(2000), [&] {
    // The watcher ends with the server, and gives its lock up.
    const std::string taken = "flock -n " + (probe.home() / "watch.lock").string() + " true";
    FILE* taking = popen(taken.c_str(), "r");
    return pclose(taking) == 0;
  }));
  EXPECT_EQ(probe.Run("count", idle).text, "0\n");
}

TEST_P(Crash, CommittedRowsAreThereHowOftenTheServerIsStoppedUnderThem) {
  std::vector<FILE*> writers;
  for (int i = 0; i < 6; ++i) {
    writers.push_back(probe.Begin("write"));
    if (i % 2) probe.Run("stop");
  }
  int acknowledged = 0;
  for (FILE* writer : writers) acknowledged += Probe::End(writer).status == 0;
  const Said count = probe.Run("count");
  EXPECT_GE(std::stoi(count.text), acknowledged);
}

INSTANTIATE_TEST_SUITE_P(Accounts, Crash, testing::ValuesIn(AccountsToTry()),
                         [](const auto& account) { return account.param.empty() ? std::string("own") : account.param; });

}  // namespace
}  // namespace heatkeep
