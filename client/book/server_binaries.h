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

}  // namespace heatkeep
