#include "client/book/private_cluster.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <sys/statvfs.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <fstream>
#include <system_error>
#include <thread>

#include "client/book/book_error.h"
#include "client/book/child_process.h"
#include "client/book/cluster_files.h"
#include "client/book/file_lock.h"
#include "client/book/server_binaries.h"
#include "client/book/server_log.h"
#include "client/book/server_processes.h"
#include "client/book/socket_folder.h"
#include "client/gateway/conninfo.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;
using std::chrono::milliseconds;
using std::chrono::seconds;
using std::chrono::steady_clock;

constexpr seconds kLockPatience{120};
constexpr seconds kStartPatience{90};   // crash recovery of a big book takes its time
constexpr seconds kRetryPatience{6};    // after a kill -9 the remains need some seconds to go
constexpr seconds kSilencePatience{5};  // a server whose socket is gone never answers

void Nap() { std::this_thread::sleep_for(milliseconds(20)); }

void Chown(const fs::path& path, const Account& account) {
  if (lchown(path.c_str(), account.uid, account.gid) != 0)
    throw std::system_error(errno, std::generic_category(), path.string() + " cannot be handed to " + account.name);
}

void MakeFolder(const fs::path& path, mode_t mode) {
  if (mkdir(path.c_str(), mode) == 0) return;
  struct stat info {};
  if (errno != EEXIST || lstat(path.c_str(), &info) != 0 || !S_ISDIR(info.st_mode))
    throw std::system_error(errno, std::generic_category(), path.string() + " cannot be made");
}

void SyncFileSystem(const fs::path& folder) {
  const int fd = open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  const bool done = fd >= 0 && syncfs(fd) == 0;
  const int error = errno;
  if (fd >= 0) close(fd);
  if (!done) throw std::system_error(error, std::generic_category(), folder.string() + " cannot be put on disk");
}

}  // namespace

std::vector<std::string> WatcherCommand() {
  std::error_code failed;
  const fs::path self = fs::read_symlink("/proc/self/exe", failed);
  const fs::path beside = self.parent_path() / "heatkeep";
  const fs::path program = access(beside.c_str(), X_OK) == 0 ? beside : self;
  if (failed || program.filename() != "heatkeep") return {};
  return {program.string(), "book", "watch"};
}

PrivateCluster::PrivateCluster(ClusterOptions options) : options_(std::move(options)) {
  if (!options_.home.is_absolute())
    throw BookError(BookError::Kind::BadInput, "the book's home is '" + options_.home.string() + "'; expected a path that starts with /");
}

bool PrivateCluster::Exists() const {
  struct stat info {};
  return stat(data().c_str(), &info) == 0 && S_ISDIR(info.st_mode);
}

fs::path PrivateCluster::SocketFolder() const {
  std::ifstream in(home() / "socket");
  std::string folder;
  std::getline(in, folder);
  return folder;
}

bool PrivateCluster::Running() const {
  const std::string folder = SocketFolder();
  if (folder.empty()) return false;
  return PQping((ConninfoPair("host", folder) + " hostaddr='' port=5432 dbname=postgres connect_timeout=3 " +
                 ConninfoPair("user", kAdminLogin))
                    .c_str()) == PQPING_OK;
}

void PrivateCluster::RequireMine() const {
  struct stat info {};
  if (stat(home().c_str(), &info) != 0)
    throw BookError(BookError::Kind::NoBook, "there is no book in " + home().string() + " yet; `heatkeep book init` makes one");
  if (info.st_uid != geteuid())
    throw BookError(BookError::Kind::NotYours,
                    "the book in " + home().string() + " belongs to the account " + NameOfUser(info.st_uid) +
                        ": only that account can start or stop it");
}

void PrivateCluster::MakeFolders() const {
  std::error_code failed;
  fs::create_directories(home().parent_path(), failed);
  if (failed) throw std::system_error(failed, home().parent_path().string() + " cannot be made");
  // Others on this machine may look for the socket of a book that root keeps, and for nothing else.
  MakeFolder(home(), geteuid() == 0 ? 0755 : 0700);
  RequireMine();
  const Account server = ServerAccount();
  MakeFolder(home() / "log", 0700);
  if (geteuid() == 0) Chown(home() / "log", server);
  const FileAccessAs as(server);
  if (struct stat info{}; stat((home() / "log" / ".").c_str(), &info) != 0)
    throw BookError(BookError::Kind::BadInput,
                    "the account " + server.name + ", which runs the server, cannot reach " + home().string() +
                        "; expected a place whose folders it may pass");
}

void PrivateCluster::Init() {
  MakeFolders();
  {
    const FileLock lock = FileLock::Wait(home() / "lock", kLockPatience);
    if (!Exists()) {
      const Account server = ServerAccount();
      const ServerBinaries binaries = FindServerBinaries();
      const fs::path fresh = home() / "cluster.new";
      fs::remove_all(fresh);
      MakeFolder(fresh, 0700);
      if (geteuid() == 0) Chown(fresh, server);
      std::vector<std::string> words{(binaries.folder / "initdb").string(),
                                     "-D",
                                     fresh.string(),
                                     "-U",
                                     kAdminLogin,
                                     "-E",
                                     "UTF8",
                                     "--locale=C.UTF-8",
                                     "-k",
                                     "-A",
                                     "peer",
                                     "--no-sync"};
      const ChildEnd end = RunChild(words, server);
      if (end.status != 0)
        throw BookError(BookError::Kind::CannotStart,
                        "the book's files cannot be made in " + home().string() + DiskFullNote(home()) + "\n" + end.output);
      WriteClusterFiles(fresh, options_.settings, OwnAccount(), server);
      SyncFileSystem(fresh);  // one sweep instead of a thousand files one by one
      fs::rename(fresh, data());
    }
    StartLocked();
  }
  EnsureWatcher();
  Connection admin = Connect(kAdminLogin, "postgres");
  try {
    if (admin.Execute("select 1 from pg_database where datname = $1", {kBookDatabase}).empty())
      admin.ExecuteScript(std::string("create database ") + kBookDatabase);
  } catch (const DbError& error) {
    if (error.sqlstate != "42P04" && error.sqlstate != "23505") throw;  // another program was faster
  }
}

void PrivateCluster::EnsureRunning() {
  if (!Running()) {
    if (!Exists())
      throw BookError(BookError::Kind::NoBook, "there is no book in " + home().string() + " yet; `heatkeep book init` makes one");
    RequireMine();
    const FileLock lock = FileLock::Wait(home() / "lock", kLockPatience);
    StartLocked();
  }
  EnsureWatcher();
}

void PrivateCluster::StartLocked() {
  const Account server = ServerAccount();
  const auto begin = steady_clock::now();
  std::optional<steady_clock::time_point> silent_since;
  for (;;) {
    if (Running()) return;
    const auto now = steady_clock::now();
    const auto processes = ServerProcesses(data(), server);
    if (processes.empty()) {
      DisownStalePidFile(data(), server);
      try {
        StartServer();
        return;
      } catch (const BookError& error) {
        if (error.kind != BookError::Kind::CannotStart || steady_clock::now() - begin > kRetryPatience || !LogSaysTryAgain(error.what()))
          throw;
        std::this_thread::sleep_for(milliseconds(300));
        continue;
      }
    }
    const pid_t postmaster = Postmaster(data(), server, processes);
    if (now - begin > kStartPatience || (postmaster == 0 && now - begin > kRetryPatience)) {
      std::string pids;
      for (const pid_t pid : processes) pids += " " + std::to_string(pid);
      throw BookError(BookError::Kind::Busy,
                      "old server processes of this book have not ended yet and would harm a new one; wait for them or "
                      "end them, then try again: process" +
                          pids);
    }
    // It runs but its socket was swept away: nobody can reach it any more, so it is made to start afresh.
    const bool reachable = fs::exists(SocketFolder() / ".s.PGSQL.5432");
    if (postmaster != 0 && !reachable) {
      if (!silent_since) silent_since = now;
      if (now - *silent_since > kSilencePatience) kill(postmaster, SIGINT);
    }
    Nap();
  }
}

void PrivateCluster::StartServer() {
  const Account server = ServerAccount();
  const std::string version = ReadFileAs(data() / "PG_VERSION", server);
  int major = 0;
  if (std::from_chars(version.data(), version.data() + version.size(), major).ec != std::errc{})
    throw BookError(BookError::Kind::CannotStart,
                    (data() / "PG_VERSION").string() + " says no version; expected the number of the PostgreSQL that made this book");
  const ServerBinaries binaries = FindServerBinaries(major);
  RemoveSocketFolder(SocketFolder(), server);
  const fs::path folder = MakeSocketFolder(server);
  try {
    ReplaceFile(home() / "socket", folder.string() + '\n', 0644, OwnAccount());
  } catch (...) {  // no room on the disk
    RemoveSocketFolder(folder, server);
    throw;
  }
  TrimLog(log(), server);
  const auto log_start = LogSize(log(), server);
  ServerChild child({(binaries.folder / "postgres").string(), "-D", data().string(), "-c", "unix_socket_directories=" + folder.string()},
                    server, log());
  const auto until = steady_clock::now() + kStartPatience;
  milliseconds pause{20};
  while (!child.Ended() && steady_clock::now() < until) {
    if (Running()) return;
    std::this_thread::sleep_for(pause);
    pause = std::min(pause * 5 / 4,
                     milliseconds(250));  // a recovery may take long, and each look is a line in the log
  }
  const bool ended = child.Ended();
  if (ended) RemoveSocketFolder(folder, server);
  throw BookError(BookError::Kind::CannotStart,
                  std::string("the book's database server ") + (ended ? "does not start" : "is still not ready") + DiskFullNote(home()) +
                      "; its log " + log().string() + " says:\n" + LogTail(log(), server, log_start));
}

bool PrivateCluster::Stop() {
  if (!Exists()) return false;
  return StopIf([](void*) { return true; }, nullptr);
}

bool PrivateCluster::StopIf(bool (*still_idle)(void*), void* argument) {
  RequireMine();
  const FileLock lock = FileLock::Wait(home() / "lock", kLockPatience);
  return still_idle(argument) && StopLocked();
}

bool PrivateCluster::StopLocked() {
  const Account server = ServerAccount();
  const auto processes = ServerProcesses(data(), server);
  const pid_t postmaster = Postmaster(data(), server, processes);
  if (postmaster == 0) return false;
  kill(postmaster, SIGINT);  // the server's "fast" stop
  const auto from = steady_clock::now();
  const auto until = from + kStartPatience;
  bool at_once = false;
  while (!ServerProcesses(data(), server).empty()) {
    // A fast stop in the middle of crash recovery can hang; an immediate one loses nothing, the next start recovers.
    if (!at_once && steady_clock::now() > from + std::chrono::seconds(10)) {
      kill(postmaster, SIGQUIT);
      at_once = true;
    }
    if (steady_clock::now() > until)
      throw BookError(BookError::Kind::Busy, "the book's server was told to stop and has not, process " + std::to_string(postmaster));
    Nap();
  }
  RemoveSocketFolder(SocketFolder(), server);
  unlink((home() / "socket").c_str());
  return true;
}

std::string PrivateCluster::Conninfo(const std::string& person, const std::string& database) const {
  const std::string folder = SocketFolder();
  struct stat info {};
  if (folder.empty() || stat(data().c_str(), &info) != 0)
    throw BookError(BookError::Kind::CannotStart, "the book in " + home().string() + " is not running");
  return ConninfoPair("host", folder) + " hostaddr='' port='5432' " + ConninfoPair("dbname", database) + ' ' +
      ConninfoPair("user", person) + ' ' + ConninfoPair("requirepeer", NameOfUser(info.st_uid));
}

Connection PrivateCluster::Connect(const std::string& person, const std::string& database) {
  const auto until = steady_clock::now() + kRetryPatience;
  for (;;) {
    EnsureRunning();
    try {
      return Connection::Open(Conninfo(person, database));
    } catch (const DbError&) {
      // Going down between the look and the call is worth another try; a login that is refused is not.
      if (Running() || steady_clock::now() > until) throw;
    }
  }
}

Connection PrivateCluster::Admin(const std::string& database) { return Connect(kAdminLogin, database); }

void PrivateCluster::Admit(const std::vector<std::string>& persons) {
  RequireMine();
  const Account server = ServerAccount();
  const std::string maker = OwnAccount().name;
  const FileLock lock = FileLock::Wait(home() / "lock", kLockPatience);
  bool changed = false;
  for (const std::string& person : persons) {
    changed = AddIdentity(data(), maker, person, server) || changed;
    changed = AddIdentity(data(), person, person, server) || changed;
  }
  if (!changed || !Running()) return;
  const std::string conninfo = Conninfo(kAdminLogin, "postgres");
  const auto read_at = [&](const char* sql) { return Connection::Open(conninfo).Execute(sql).Only().Text("at"); };
  const std::string before = read_at("select pg_conf_load_time()::text as at, pg_reload_conf()");
  // The server reads its files again in its own time; every new session knows when it last did.
  const auto until = steady_clock::now() + kRetryPatience;
  while (read_at("select pg_conf_load_time()::text as at") == before && steady_clock::now() < until) Nap();
}

void PrivateCluster::EnsureWatcher() const {
  struct stat info {};
  if (options_.watcher.empty() || stat(home().c_str(), &info) != 0 || info.st_uid != geteuid()) return;
  if (FileLock::Try(home() / "watch.lock")) StartDetached(options_.watcher, home());
}

}  // namespace heatkeep
