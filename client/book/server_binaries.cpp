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

bool Complete(const fs::path& folder) {
  return access((folder / "initdb").c_str(), X_OK) == 0 && access((folder / "postgres").c_str(), X_OK) == 0;
}

std::vector<ServerBinaries> Packaged() {
  std::vector<ServerBinaries> found;
  std::error_code ignored;
  for (const auto& entry : fs::directory_iterator("/usr/lib/postgresql", ignored)) {
    const std::string name = entry.path().filename();
    int major = 0;
    const auto [end, code] = std::from_chars(name.data(), name.data() + name.size(), major);
    if (code == std::errc{} && end == name.data() + name.size() && Complete(entry.path() / "bin"))
      found.push_back({entry.path() / "bin", major});
  }
  return found;
}

// "postgres (PostgreSQL) 16.3 (...)" -> 16; 0 when it says something else.
int MajorOf(const fs::path& postgres) {
  const ChildEnd end = RunChild({postgres.string(), "--version"}, ServerAccount());
  const std::string mark = "(PostgreSQL) ";
  const auto at = end.output.find(mark);
  return at == std::string::npos ? 0 : std::atoi(end.output.c_str() + at + mark.size());
}

std::vector<ServerBinaries> OnPath() {
  std::vector<ServerBinaries> found;
  const char* path = std::getenv("PATH");
  std::istringstream folders(path ? path : "");
  for (std::string folder; std::getline(folders, folder, ':');)
    if (folder.starts_with('/') && Complete(folder))
      found.push_back({folder, MajorOf(fs::path(folder) / "postgres")});
  return found;
}

}  // namespace

ServerBinaries FindServerBinaries(std::optional<int> major) {
  std::optional<ServerBinaries> best;
  for (const auto& place : {Packaged, OnPath}) {
    for (const ServerBinaries& found : place()) {
      const bool fits = major ? found.major == *major : found.major >= kOldestServer;
      if (fits && (!best || found.major > best->major)) best = found;
    }
    if (best) return *best;
  }
  const std::string wanted = major ? std::to_string(*major) : std::to_string(kOldestServer);
  throw BookError(
      BookError::Kind::NoServer,
      major ? "this book was made with PostgreSQL " + wanted +
                  ", which is not installed any more; install "
                  "the package postgresql-" +
                  wanted
            : "no PostgreSQL server is installed; a private book needs the package postgresql, version " +
                  wanted + " or newer (looked in /usr/lib/postgresql and PATH)");
}

}  // namespace heatkeep
