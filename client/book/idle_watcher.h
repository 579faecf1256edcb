// The small program that runs beside a private server and stops it when nobody has used it for a while.
#pragma once

#include <chrono>
#include <filesystem>

namespace heatkeep {

// HEATKEEP_IDLE_SECONDS, or 600. Throws BookError(BadInput) unless it is a whole number from 1 to 10,000,000.
std::chrono::seconds IdleLimit();

// Returns when the server of `home` is gone: stopped by this call once no session but its own had been there
// for `limit`, or by somebody else. Short sessions between two looks count as use. Returns at once when
// another watcher is there already.
void RunWatcher(const std::filesystem::path& home, std::chrono::seconds limit = IdleLimit());

}  // namespace heatkeep
