// Which server processes of a cluster are really there, whatever its postmaster.pid says. The file alone is
// not enough: after a kill -9 or a power cut it names a process that is gone, or that is by now somebody
// else's.
#pragma once

#include <sys/types.h>

#include <filesystem>
#include <vector>

#include "client/book/account.h"

namespace heatkeep {

// All live processes named postgres that work in `data`; the postmaster among them, or only what a killed one
// left.
std::vector<pid_t> ServerProcesses(const std::filesystem::path& data, const Account& account);

// The postmaster among `processes`, by postmaster.pid; 0 when the file is missing or names none of them.
pid_t Postmaster(const std::filesystem::path& data, const Account& account, const std::vector<pid_t>& processes);

// To be called only when ServerProcesses is empty and the home is locked: makes a left-over postmaster.pid
// name a process that has ended, so that the server takes it for stale. The file is not removed: the server
// still checks the shared memory it names.
void DisownStalePidFile(const std::filesystem::path& data, const Account& account);

}  // namespace heatkeep
