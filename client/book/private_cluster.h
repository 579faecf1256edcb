// A book of one's own: a PostgreSQL cluster in the person's home folder, made, started and stopped by the
// program.
//
//   HOME/cluster   the database files, owned by the account the server runs as (mode 0700)
//   HOME/log       what the server writes
//   HOME/lock      held while the cluster is made, started or stopped
//   HOME/socket    the folder of the running server's socket; made afresh, unguessable, at each start
//
// Only a Unix socket, no TCP port; data checksums on. Every session checks that the server at the other end
// runs as the account that owns the files. Safe to call from several programs at once. Calls throw BookError,
// DbError or std::system_error; nothing is half-made afterwards: what stands in HOME/cluster is a whole
// cluster.
#pragma once

#include <chrono>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "client/book/account.h"
#include "client/gateway/connection.h"

namespace heatkeep {

inline constexpr const char* kBookDatabase = "heatkeep";

struct ClusterOptions {
  std::filesystem::path home;         // absolute
  std::vector<std::string> watcher;   // program and words started beside the server to stop it when idle; empty: none
  std::vector<std::string> settings;  // further lines for heatkeep.conf, used by Init
};

// The command line's own `book watch`, found beside this program.
std::vector<std::string> WatcherCommand();

class PrivateCluster {
 public:
  explicit PrivateCluster(ClusterOptions options);

  bool Exists() const;   // Init has been done
  bool Running() const;  // a server answers

  // Makes the cluster and in it the empty database `heatkeep`, and starts the server. Does nothing that is
  // done already.
  void Init();

  // Returns when a server answers: the running one, or one started now. After a crash of server or machine it
  // recovers first. Also sees to it that a watcher is there.
  void EnsureRunning();

  // Stops it, cutting off whoever is connected; what was committed is kept. False when none was running.
  bool Stop();

  // Of the running server; throws BookError(CannotStart) when none is.
  std::string Conninfo(const std::string& person, const std::string& database = kBookDatabase) const;

  // EnsureRunning, then a session; waits out a server that is just going down or coming up.
  Connection Connect(const std::string& person, const std::string& database = kBookDatabase);
  Connection Admin(const std::string& database = kBookDatabase);

  // Lets the maker of the book, and the account of that name if there is one, log in as each of `persons`.
  // Holds from the return on.
  void Admit(const std::vector<std::string>& persons);

  std::filesystem::path home() const { return options_.home; }
  std::filesystem::path data() const { return options_.home / "cluster"; }
  std::filesystem::path log() const { return options_.home / "log" / "server.log"; }

  // For the watcher: stops the server if `still_idle` says so once the home is locked.
  bool StopIf(bool (*still_idle)(void*), void* argument);

 private:
  std::filesystem::path SocketFolder() const;
  void RequireMine() const;
  void MakeFolders() const;
  void StartLocked();
  void StartServer();
  bool StopLocked();
  void EnsureWatcher() const;

  ClusterOptions options_;
};

}  // namespace heatkeep
