// A standby of the book takes the place of a server that is lost. Told to wait for it (synchronous_standby_names), everything acknowledged
// is there; not told so, what had not arrived yet is missing, and what a saw's queue holds of it is sent again.
#include <signal.h>

#include <fstream>

#include "client/book/account.h"
#include "client/book/child_process.h"
#include "client/book/cluster_files.h"
#include "client/book/persons.h"
#include "client/book/server_binaries.h"
#include "client/book/server_processes.h"
#include "tests/crash/sawing_works.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

struct Standby : SawingWorks {
  Standby() : second(folder / "second"), standby({second, {}, {}}) {
    const Account server = ServerAccount();
    const fs::path data = cluster.data();
    AddIdentity(data, server.name, kAdminLogin, server);
    ReplaceFile(data / "pg_hba.conf", ReadFileAs(data / "pg_hba.conf", server) + "local replication all peer map=heatkeep\n", 0600, server);
    cluster.Admin().Execute("select pg_reload_conf()");
    const std::string sockets = SocketFolder();
    fs::create_directories(second / "log");
    if (geteuid() == 0)
      for (const fs::path& path : {second, second / "log"})
        if (chown(path.c_str(), path == second ? 0 : server.uid, server.gid) != 0) throw std::runtime_error("chown");
    fs::permissions(second, fs::perms::owner_all | fs::perms::group_all | fs::perms::others_read | fs::perms::others_exec);
    for (int tries = 0;; ++tries) {  // the new lines are read in their own time
      const ChildEnd end = RunChild({(FindServerBinaries({}).folder / "pg_basebackup").string(), "-h", sockets, "-U", kAdminLogin, "-D",
                                     standby.data().string(), "-c", "fast", "-X", "stream"},
                                    server);
      if (end.status == 0) break;
      if (tries == 20) throw std::runtime_error("no base backup: " + end.output);
      Sleep(100'000);
    }
    const std::string conf = ReadFileAs(standby.data() / "postgresql.auto.conf", server);
    ReplaceFile(standby.data() / "postgresql.auto.conf",
                conf + "primary_conninfo = 'host=" + sockets + " user=" + kAdminLogin + " application_name=standby'\n", 0600, server);
    ReplaceFile(standby.data() / "standby.signal", "", 0600, server);
    fs::copy_file(fs::path(home) / "ready", second / "ready");
    standby.EnsureRunning();
    Until("select count(*) as n from pg_stat_replication where state = 'streaming'", 1);
  }
  ~Standby() override { standby.Stop(); }

  std::string SocketFolder() const {
    std::ifstream in(fs::path(home) / "socket");
    std::string line;
    std::getline(in, line);
    return line;
  }
  void Until(const std::string& sql, std::int64_t n) {
    for (int tries = 0; Number(sql) != n; ++tries) {
      if (tries > 200) throw std::runtime_error("never: " + sql);
      Sleep(50'000);
    }
  }
  void WaitForTheStandby() {
    Connection admin = cluster.Admin();
    admin.ExecuteScript("alter system set synchronous_standby_names = 'standby'");
    admin.Execute("select pg_reload_conf()");
    Until("select count(*) as n from pg_stat_replication where sync_state = 'sync'", 1);
  }
  // The server is lost for good; from here on the standby is the book.
  void LoseAndPromote() {
    for (const pid_t pid : ServerProcesses(cluster.data(), ServerAccount())) kill(pid, SIGKILL);
    while (!ServerProcesses(cluster.data(), ServerAccount()).empty()) Sleep(20'000);
    const std::string server_account = ServerAccount().name;
    EXPECT_TRUE(standby.Admin().Execute("select pg_promote() as done").Only().Bool("done"));
    standby.Admin().ExecuteScript("alter system reset synchronous_standby_names");
    standby.Admin().Execute("select pg_reload_conf()");
    home = second;
    cluster = standby;
  }

  fs::path second;
  PrivateCluster standby;
};

TEST_F(Standby, ThatIsWaitedForHasEverythingAcknowledgedWhenItIsPromoted) {
  WaitForTheStandby();
  Refill(30);
  HeatkeepProcess process(Words({"cut", "record", "--plan", plan}));
  ASSERT_TRUE(process.WaitForLines(static_cast<std::size_t>(Random(5, 25)), std::chrono::seconds(30)));
  LoseAndPromote();
  process.Finish();
  Remember(process);
  EXPECT_GE(said.size(), 5U);
  ExpectWhole();
  Run({"cut", "record", "--plan", plan});
  EXPECT_EQ(ToCut(), 0);
  ExpectWhole();
}

TEST_F(Standby, ThatIsNotWaitedForLacksTheLastAndTheQueueSendsThatAgain) {
  const std::string file = (folder / "saw-1.queue").string();
  Run({"saw", "block", "--device", "saw-1", "--site", "main", "--size", "100", "--queue", file});
  Refill(6);
  Connection session = cluster.Connect(OwnAccount().name);
  std::vector<std::string> tags;
  for (const Row row :
       session.Execute("select tag from api.plan_layouts where plan_id = $1::bigint and state = 'promised' order by tag limit 6", {plan}))
    tags.push_back(row.Text("tag"));
  const auto keep = [&](const std::string& tag) {
    Run({"saw", "pull", tag, "--saw", "1", "--plan", plan, "--queue", file});
    Run({"saw", "cut", tag, "--saw", "1", "--kerf", "2", "--stroke", "good 2x400 " + Order() + "/10", "--left", "drop", "--place", "B1-1",
         "--queue", file});
  };
  keep(tags[0]);
  keep(tags[1]);
  Run({"saw", "send", file});
  const auto caught_up = "select count(*) as n from pg_stat_replication where replay_lsn >= pg_current_wal_lsn()";
  Until(caught_up, 1);
  {  // the wire between them is cut: from here on nothing arrives
    Connection other = standby.Admin();
    other.ExecuteScript("alter system set primary_conninfo = ''");
    other.Execute("select pg_reload_conf()");
  }
  Until("select count(*) as n from pg_stat_replication", 0);
  keep(tags[2]);
  keep(tags[3]);
  Run({"saw", "send", file});  // acknowledged by the server that will be lost
  EXPECT_EQ(Number("select count(*) as n from book.offline_deed"), 8);
  keep(tags[4]);
  LoseAndPromote();
  EXPECT_EQ(Number("select count(*) as n from book.offline_deed"), 4);
  Run({"saw", "send", file});
  EXPECT_EQ(Number("select count(*) as n from book.offline_deed where outcome = 'done'"), 10);
  for (std::size_t i = 0; i < 5; ++i)
    EXPECT_EQ(Number("select count(*) as n from book.stroke join book.piece using (piece_id) where tag = $1", {tags[i]}), 2) << tags[i];
  EXPECT_EQ(Number("select count(*) as n from book.conflict"), 0);
  ExpectWhole();
}

}  // namespace
}  // namespace heatkeep
