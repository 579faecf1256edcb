// Where the PostgreSQL server programs are on this machine.
#pragma once

#include <filesystem>
#include <optional>

namespace heatkeep {

struct ServerBinaries {
  std::filesystem::path folder;  // holds initdb and postgres, or pg_dump and pg_restore
  int major = 0;
};

inline constexpr int kOldestServer = 15;

// The newest installed (under /usr/lib/postgresql/N/bin, else on PATH), at least kOldestServer; or exactly
// `major` when that is given, because a cluster only runs under the version that made it. Throws
// BookError(NoServer) saying what to install.
ServerBinaries FindServerBinaries(std::optional<int> major = std::nullopt);

// The folder of pg_dump and pg_restore with their version, the nearest to `server_major` that is installed and not older: an
// older one cannot read a newer server, and what a newer one writes or says an older server may not know. Throws
// BookError(NoServer) saying what to install.
ServerBinaries FindClientPrograms(int server_major);

}  // namespace heatkeep
