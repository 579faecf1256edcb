#include "client/book/idle_watcher.h"

#include <algorithm>
#include <charconv>
#include <cstdlib>
#include <optional>
#include <string_view>
#include <thread>

#include "client/book/book_error.h"
#include "client/book/cluster_files.h"
#include "client/book/file_lock.h"
#include "client/book/private_cluster.h"

namespace heatkeep {
namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;
using std::chrono::steady_clock;

struct Use {
  std::int64_t sessions_now;  // without the watcher's own
  std::int64_t sessions_ever;
};

Use Look(Connection& admin) {
  const Result rows = admin.Execute(
      "select (select count(*) from pg_stat_activity where backend_type = 'client backend'"
      " and pid <> pg_backend_pid()) as now, (select coalesce(sum(sessions), 0)::bigint from "
      "pg_stat_database) as ever");
  const Row row = rows.Only();
  return {row.Int("now"), row.Int("ever")};
}

Connection OpenAdmin(const PrivateCluster& cluster) {
  return Connection::Open(cluster.Conninfo(kAdminLogin, "postgres") + " application_name='heatkeep watcher'");
}

// The server may have been started anew since the last look: then there is a session to be had again.
std::optional<Connection> Reopen(const PrivateCluster& cluster) {
  try {
    if (cluster.Running()) return OpenAdmin(cluster);
  } catch (const std::exception&) {
    // gone between the two: the same as not running
  }
  return std::nullopt;
}

// A program that only looks whether there is a watcher holds the lock for a moment: hence more than one try.
std::optional<FileLock> Alone(const std::filesystem::path& file) {
  for (int tries = 0; tries < 5; ++tries) {
    if (auto lock = FileLock::Try(file)) return lock;
    std::this_thread::sleep_for(milliseconds(50));
  }
  return std::nullopt;
}

bool StillIdle(void* admin) { return Look(*static_cast<Connection*>(admin)).sessions_now == 0; }

}  // namespace

seconds IdleLimit() {
  const char* text = std::getenv("HEATKEEP_IDLE_SECONDS");
  if (!text || !*text) return seconds(600);
  const std::string_view digits = text;
  int value = 0;
  const auto [end, code] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
  if (code != std::errc{} || end != digits.data() + digits.size() || value < 1 || value > 10'000'000)
    throw BookError(BookError::Kind::BadInput,
                    "HEATKEEP_IDLE_SECONDS is '" + std::string(text) + "'; expected a whole number of seconds from 1 to 10000000");
  return seconds(value);
}

void RunWatcher(const std::filesystem::path& home, seconds limit) {
  const auto alone = Alone(home / "watch.lock");
  if (!alone) return;
  PrivateCluster cluster({home, {}, {}});
  const auto pause = std::clamp(milliseconds(limit) / 4, milliseconds(100), milliseconds(5000));
  std::optional<Connection> admin = Reopen(cluster);
  auto used = steady_clock::now();
  std::int64_t seen = -1;
  while (admin) {
    try {
      const Use use = Look(*admin);
      const auto now = steady_clock::now();
      if (use.sessions_now > 0 || use.sessions_ever != seen) used = now;
      seen = use.sessions_ever;
      if (now - used >= limit && cluster.StopIf(StillIdle, &*admin)) return;
      std::this_thread::sleep_for(pause);
    } catch (const DbError&) {
      admin = Reopen(cluster);
      used = steady_clock::now();
    }
  }
}

}  // namespace heatkeep
