// Where the PostgreSQL server programs are on this machine.
#pragma once

#include <filesystem>
#include <optional>

namespace heatkeep {

struct ServerBinaries {
  std::filesystem::path folder;  // holds initdb and postgres
  int major = 0;
};

inline constexpr int kOldestServer = 15;

// The newest installed (under /usr/lib/postgresql/N/bin, else on PATH), at least kOldestServer; or exactly
// `major` when that is given, because a cluster only runs under the version that made it. Throws
// BookError(NoServer) saying what to install.
ServerBinaries FindServerBinaries(std::optional<int> major = std::nullopt);

// The folder of pg_dump and pg_restore, the newest installed and not older than `server_major`: an older one cannot read a
// newer server. Throws BookError(NoServer) saying what to install.
std::filesystem::path FindClientPrograms(int server_major);

}  // namespace heatkeep
