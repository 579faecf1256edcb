// The private cluster as people meet it: made, stopped, started by several at once, as root and as an
// ordinary user.
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

#include "tests/book/probe.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

struct Cluster : testing::TestWithParam<std::string> {
  Probe probe{GetParam()};
};

// Inodes of the sockets a process has open.
std::set<std::string> SocketsOf(pid_t pid) {
  std::set<std::string> inodes;
  for (const auto& entry : fs::directory_iterator("/proc/" + std::to_string(pid) + "/fd")) {
    std::error_code gone;
    const std::string target = fs::read_symlink(entry.path(), gone);
    if (target.starts_with("socket:[")) inodes.insert(target.substr(8, target.size() - 9));
  }
  return inodes;
}

// Inodes of all TCP sockets of this machine: the tenth word of each line of /proc/net/tcp (proc(5)).
std::set<std::string> TcpSockets() {
  std::set<std::string> inodes;
  for (const char* file : {"/proc/net/tcp", "/proc/net/tcp6"}) {
    std::ifstream in(file);
    for (std::string line; std::getline(in, line);) {
      std::istringstream words(line);
      std::string word;
      for (int i = 0; i < 10; ++i) words >> word;
      inodes.insert(word);
    }
  }
  return inodes;
}

TEST_P(Cluster, IsMadeStoppedAndStartedAgainWithItsData) {
  const Said made = probe.Run("init");
  ASSERT_EQ(made.status, 0) << made.text;
  EXPECT_EQ(probe.Run("status").text, "running\n");
  ASSERT_EQ(probe.Run("write").status, 0);
  EXPECT_EQ(probe.Run("stop").text, "stopped\n");
  EXPECT_EQ(probe.Run("status").text, "not running\n");
  EXPECT_EQ(probe.Run("stop").text, "was not running\n");
  EXPECT_EQ(probe.Run("count").text, "1\n");
  EXPECT_EQ(probe.Run("status").text, "running\n");
}

TEST_P(Cluster, InitTwiceKeepsTheBook) {
  ASSERT_EQ(probe.Run("init").status, 0);
  ASSERT_EQ(probe.Run("write").status, 0);
  ASSERT_EQ(probe.Run("init").status, 0);
  EXPECT_EQ(probe.Run("count").text, "1\n");
}

TEST_P(Cluster, HasChecksumsAndDurabilityOnAndNoTcpPort) {
  const Probe real(GetParam(), false);
  ASSERT_EQ(real.Run("init").status, 0);
  EXPECT_EQ(real.Run("settings").text, "on on on UTF8 tcp=''\n");
  const std::set<std::string> own = SocketsOf(real.Postmaster()), tcp = TcpSockets();
  EXPECT_FALSE(own.empty());
  for (const std::string& inode : own) EXPECT_FALSE(tcp.contains(inode)) << "the server listens on TCP, inode " << inode;
}

TEST_P(Cluster, FilesAreClosedToOthersAndTheServerIsNeverRoot) {
  ASSERT_EQ(probe.Run("init").status, 0);
  struct stat info {};
  ASSERT_EQ(stat(probe.data().c_str(), &info), 0);
  EXPECT_EQ(info.st_mode & 0777, 0700U);
  EXPECT_NE(info.st_uid, 0U);
  ASSERT_EQ(stat(("/proc/" + std::to_string(probe.Postmaster())).c_str(), &info), 0);
  EXPECT_EQ(info.st_uid, probe.ServerUid());
}

TEST_P(Cluster, SocketPathIsShortWhateverTheHome) {
  ASSERT_EQ(probe.Run("init").status, 0);
  std::ifstream in(probe.home() / "socket");
  std::string folder;
  std::getline(in, folder);
  EXPECT_LE((folder + "/.s.PGSQL.5432").size(), 107U);  // PostgreSQL 15, measured: 107 starts, 108 does not
  struct stat info {};
  ASSERT_EQ(lstat(folder.c_str(), &info), 0);
  EXPECT_TRUE(S_ISDIR(info.st_mode));
  EXPECT_EQ(info.st_mode & 0022, 0U);
  EXPECT_EQ(probe.Run("stop").status, 0);
  EXPECT_FALSE(fs::exists(folder));
}

TEST_P(Cluster, SocketIsInTheRuntimeFolderOnlyWhereThatIsShortAndTheAccountsOwn) {
  if (geteuid() == 0 && GetParam().empty()) GTEST_SKIP() << "root's sockets are under /run, tried above";
  ASSERT_EQ(probe.Run("make").status, 0);
  const fs::path folder = probe.home().parent_path();
  const auto starts_under = [&](const fs::path& runtime) {
    EXPECT_EQ(probe.Run("stop").status, 0);
    EXPECT_EQ(probe.Run("ensure", "XDG_RUNTIME_DIR='" + runtime.string() + "'").status, 0);
    std::ifstream in(probe.home() / "socket");
    std::string line;
    std::getline(in, line);
    return fs::path(line).parent_path();
  };
  const fs::path good = folder / "run", open_to_all = folder / "open", odd = folder / "a,b";
  const fs::path deep = folder / std::string(80, 'd');
  for (const fs::path& made : {good, open_to_all, odd, deep}) {
    fs::create_directory(made);
    if (geteuid() == 0) { ASSERT_EQ(chown(made.c_str(), probe.ServerUid(), static_cast<gid_t>(-1)), 0) << made; }
    fs::permissions(made, static_cast<fs::perms>(made == open_to_all ? 0777 : 0700));
  }
  EXPECT_EQ(starts_under(good), good);
  for (const fs::path& wrong : {open_to_all, odd, deep, fs::path("/root"), folder / "missing", fs::path("relative")})
    EXPECT_EQ(starts_under(wrong), "/tmp") << wrong;
}

TEST_P(Cluster, EightProgramsMakeOneBookAtOnce) {
  for (const Said& said : probe.RunAtOnce("ensure", 2)) EXPECT_EQ(said.status, 1) << "there is no book yet";
  ASSERT_EQ(probe.Run("init").status, 0);
  ASSERT_EQ(probe.Run("stop").status, 0);
  for (const Said& said : probe.RunAtOnce("write", 8)) EXPECT_EQ(said.status, 0) << said.text;
  EXPECT_EQ(probe.Run("count").text, "8\n");
}

TEST_P(Cluster, EightProgramsInitAtOnce) {
  // Only one can make the table of the probe; all must find one whole cluster.
  for (const Said& said : probe.RunAtOnce("make", 8)) EXPECT_EQ(said.status, 0) << said.text;
  ASSERT_EQ(probe.Run("init").status, 0);
  EXPECT_EQ(probe.Run("count").text, "0\n");
}

INSTANTIATE_TEST_SUITE_P(Accounts, Cluster, testing::ValuesIn(AccountsToTry()),
                         [](const auto& account) { return account.param.empty() ? std::string("own") : account.param; });

TEST_P(Cluster, ServerThatDoesNotStartSaysWhy) {
  ASSERT_EQ(probe.Run("init").status, 0);
  ASSERT_EQ(probe.Run("stop").status, 0);
  std::ofstream(probe.data() / "heatkeep.conf", std::ios::app) << "max_connections = 'plenty'\n";
  const Said said = probe.Run("ensure");
  EXPECT_EQ(said.status, 1);
  EXPECT_NE(said.text.find("does not start"), std::string::npos) << said.text;
  EXPECT_NE(said.text.find("invalid value for parameter \"max_connections\""), std::string::npos) << said.text;
}

// A home of one account, tried by another: needs root, who can be both.
struct TwoAccounts : testing::Test {
  void SetUp() override {
    if (geteuid() != 0) GTEST_SKIP() << "needs two accounts: run as root to try this";
  }
  static Said RunAs(const std::string& prefix, const Probe& book, const std::string& word) {
    const std::string program = (book.home().parent_path() / "probe").string();
    return Probe::End(popen(
        (prefix + " env -i PATH=/usr/bin:/bin HEATKEEP_HOME=" + book.home().string() + " " + program + " " + word + " 2>&1").c_str(), "r"));
  }
  const std::string as_nobody = "setpriv --reuid=nobody --regid=nogroup --clear-groups";
};

TEST_F(TwoAccounts, AnotherNeitherStartsNorEntersTheBook) {
  const Probe theirs("nobody");
  ASSERT_EQ(theirs.Run("init").status, 0);
  Said said = RunAs("", theirs, "count");
  EXPECT_EQ(said.status, 1);
  EXPECT_NE(said.text.find("Peer authentication failed"), std::string::npos) << said.text;
  ASSERT_EQ(theirs.Run("stop").status, 0);
  said = RunAs("", theirs, "ensure");
  EXPECT_EQ(said.status, 1);
  EXPECT_NE(said.text.find("belongs to the account nobody"), std::string::npos) << said.text;
}

TEST_F(TwoAccounts, PersonOfARootsBookLogsInUnderTheOwnAccountOnly) {
  const Probe roots("");
  ASSERT_EQ(roots.Run("init").status, 0);
  EXPECT_EQ(RunAs(as_nobody, roots, "as=nobody").status, 1) << "not a person yet";
  ASSERT_EQ(roots.Run("admit=nobody").status, 0);
  ASSERT_EQ(roots.Run("admit=other").status, 0);
  const Said said = RunAs(as_nobody, roots, "as=nobody");
  EXPECT_EQ(said.text, "nobody\n");
  EXPECT_EQ(RunAs(as_nobody, roots, "as=other").status, 1);
  EXPECT_EQ(RunAs(as_nobody, roots, "as=heatkeep_admin").status, 1);
  EXPECT_EQ(roots.Run("as=other").text, "other\n") << "the maker may be every person";
}

TEST_F(TwoAccounts, ServerOfAnotherAccountBehindTheSocketIsNotBelieved) {
  const Probe roots(""), forger("nobody");
  ASSERT_EQ(roots.Run("init").status, 0);
  ASSERT_EQ(forger.Run("init").status, 0);
  // The forger's socket where the book's own is looked for.
  fs::copy_file(roots.home() / "socket", roots.home() / "true");
  fs::copy_file(forger.home() / "socket", roots.home() / "socket", fs::copy_options::overwrite_existing);
  const Said said = RunAs("", roots, "as=heatkeep_admin");
  EXPECT_EQ(said.status, 1);
  EXPECT_NE(said.text.find("requirepeer specifies"), std::string::npos) << said.text;
  fs::rename(roots.home() / "true", roots.home() / "socket");  // so that it can be stopped
}

}  // namespace
}  // namespace heatkeep
