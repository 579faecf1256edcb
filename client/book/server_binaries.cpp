#include "client/book/server_binaries.h"

#include <unistd.h>

#include <charconv>
#include <cstdlib>
#include <sstream>
#include <string>
#include <vector>

#include "client/book/account.h"
#include "client/book/book_error.h"
#include "client/book/child_process.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

// Both of two programs, of which the second tells the version.
struct Pair {
  const char *first, *second;
};
constexpr Pair kServer{"initdb", "postgres"};
constexpr Pair kClient{"pg_restore", "pg_dump"};

bool Complete(const fs::path& folder, const Pair& pair) {
  return access((folder / pair.first).c_str(), X_OK) == 0 && access((folder / pair.second).c_str(), X_OK) == 0;
}

std::vector<ServerBinaries> Packaged(const Pair& pair) {
  std::vector<ServerBinaries> found;
  std::error_code ignored;
  for (const auto& entry : fs::directory_iterator("/usr/lib/postgresql", ignored)) {
    const std::string name = entry.path().filename();
    int major = 0;
    const auto [end, code] = std::from_chars(name.data(), name.data() + name.size(), major);
    if (code == std::errc{} && end == name.data() + name.size() && Complete(entry.path() / "bin", pair))
      found.push_back({entry.path() / "bin", major});
  }
  return found;
}

// "postgres (PostgreSQL) 16.3 (...)" -> 16; 0 when it says something else.
int MajorOf(const fs::path& postgres) {
  const ChildEnd end = RunChild({postgres.string(), "--version"}, ServerAccount());
  const std::string mark = "(PostgreSQL) ";
  const auto at = end.output.find(mark);
  int version = 0;
  if (at != std::string::npos) std::from_chars(end.output.data() + at + mark.size(), end.output.data() + end.output.size(), version);
  return version;
}

std::vector<ServerBinaries> OnPath(const Pair& pair) {
  std::vector<ServerBinaries> found;
  const char* path = std::getenv("PATH");
  std::istringstream folders(path ? path : "");
  for (std::string folder; std::getline(folders, folder, ':');)
    if (folder.starts_with('/') && Complete(folder, pair)) found.push_back({folder, MajorOf(fs::path(folder) / pair.second)});
  return found;
}

// The best that is not older than `wanted`, of the packages first.
std::optional<ServerBinaries> Best(const Pair& pair, int wanted, bool (*better)(int major, int than)) {
  std::optional<ServerBinaries> best;
  for (const auto& place : {Packaged, OnPath}) {
    for (const ServerBinaries& found : place(pair))
      if (found.major >= wanted && (!best || better(found.major, best->major))) best = found;
    if (best) return best;
  }
  return best;
}

bool Newer(int major, int than) { return major > than; }
bool Older(int major, int than) { return major < than; }

}  // namespace

ServerBinaries FindServerBinaries(std::optional<int> major) {
  const auto best = major ? Best(kServer, *major, Older) : Best(kServer, kOldestServer, Newer);
  if (best && best->major == major.value_or(best->major)) return *best;
  const std::string wanted = major ? std::to_string(*major) : std::to_string(kOldestServer);
  throw BookError(BookError::Kind::NoServer,
                  major ? "this book was made with PostgreSQL " + wanted +
                          ", which is not installed any more; install "
                          "the package postgresql-" +
                          wanted
                        : "no PostgreSQL server is installed; a private book needs the package postgresql, version " + wanted +
                          " or newer (looked in /usr/lib/postgresql and PATH)");
}

ServerBinaries FindClientPrograms(int server_major) {
  if (const auto nearest = Best(kClient, server_major, Older)) return *nearest;
  const std::string wanted = std::to_string(server_major);
  throw BookError(BookError::Kind::NoServer,
                  "pg_dump and pg_restore of PostgreSQL " + wanted +
                      " or newer are not installed; expected the package postgresql-client-" + wanted +
                      " (looked in /usr/lib/postgresql and PATH)");
}

}  // namespace heatkeep
