// kill -9 in the middle of sawing, of the program and of the server: every cut is whole or absent, what was said is
// booked, and the program run again finishes the plan.
#include <signal.h>

#include <fstream>
#include <iostream>

#include "client/book/account.h"
#include "client/book/server_processes.h"
#include "tests/crash/sawing_works.h"

namespace heatkeep {
namespace {

struct Killed : SawingWorks {
  // Starts `cut record`, and returns somewhere in the middle of it.
  void IntoTheMiddle(HeatkeepProcess& process) {
    if (const int lines = Random(0, 5); lines > 0) {
      process.WaitForLines(static_cast<std::size_t>(lines), std::chrono::seconds(20));
      Sleep(Random(0, 12'000));
    } else {
      Sleep(Random(0, 150'000));
    }
  }

  std::vector<pid_t> Servers() const { return ServerProcesses(cluster.data(), ServerAccount()); }

  static std::string TitleOf(pid_t pid) {
    std::ifstream in("/proc/" + std::to_string(pid) + "/cmdline");
    std::string title;
    std::getline(in, title, '\0');
    return title;
  }

  // The postmaster alone, a session's process alone, or all at once. How many were killed.
  int KillServer(int how) {
    const std::vector<pid_t> all = Servers();
    const pid_t postmaster = Postmaster(cluster.data(), ServerAccount(), all);
    int killed = 0;
    for (const pid_t pid : all) {
      const bool session = TitleOf(pid).find(" heatkeep [local]") != std::string::npos;
      if (how == 0 ? pid == postmaster : how == 1 ? session : true) killed += kill(pid, SIGKILL) == 0;
    }
    return killed;
  }

  void FinishThePlan() {
    Run({"cut", "record", "--plan", plan});
    EXPECT_EQ(ToCut(), 0);
    EXPECT_EQ(Number("select count(*) as n from book.plan where state <> 'done'"), 0);
    ExpectWhole();
  }
};

TEST_F(Killed, TheProgramLeavesEveryCutWholeOrAbsent) {
  int died = 0;
  for (int round = 0; round < Rounds(20) && !HasFailure(); ++round) {
    Refill(12);
    HeatkeepProcess process(Words({"cut", "record", "--plan", plan}));
    IntoTheMiddle(process);
    process.Kill();
    died += process.Finish() == 128 + SIGKILL;
    Remember(process);
    ExpectWhole();
  }
  std::cout << died << " programs were killed, " << said.size() << " cuts had been said\n";
  EXPECT_GE(died, 1);
  FinishThePlan();
}

TEST_F(Killed, TheServerKeepsWhatItAcknowledged) {
  int lost = 0;
  for (int round = 0; round < Rounds(9) && !HasFailure(); ++round) {
    Refill(12);
    HeatkeepProcess process(Words({"cut", "record", "--plan", plan}));
    IntoTheMiddle(process);
    KillServer(round % 3);
    const int status = process.Finish();
    // 0 when it was done first, or the server was back before the program asked for it; 4 when the book was lost under it
    EXPECT_TRUE(status == 0 || status == 4) << status << process.text();
    lost += status == 4;
    Remember(process);
    ExpectWhole();
  }
  std::cout << lost << " programs lost their server, " << said.size() << " cuts had been said\n";
  EXPECT_GE(lost, 1);
  FinishThePlan();
}

TEST_F(Killed, TheProgramAndItsServerAtOnceLeaveEveryCutWholeOrAbsent) {
  int died = 0;
  for (int round = 0; round < Rounds(4) && !HasFailure(); ++round) {
    Refill(12);
    HeatkeepProcess process(Words({"cut", "record", "--plan", plan}));
    IntoTheMiddle(process);
    if (round % 2 == 0) process.Kill();
    KillServer(2);
    process.Kill();
    died += process.Finish() == 128 + SIGKILL;
    Remember(process);
    ExpectWhole();
  }
  std::cout << died << " programs were killed with their server, " << said.size() << " cuts had been said\n";
  EXPECT_GE(died, 1);
  FinishThePlan();
}

}  // namespace
}  // namespace heatkeep
