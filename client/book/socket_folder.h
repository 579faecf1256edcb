// The folder of a server's Unix socket: short enough for one (107 bytes in all), and nobody else's.
#pragma once

#include <filesystem>

#include "client/book/account.h"

namespace heatkeep {

// A new folder with an unguessable name: for root under /run, else under XDG_RUNTIME_DIR if that is the
// account's own; /tmp where these will not do. Owned by `server`; others may pass through it only when root
// keeps the book. Throws std::system_error.
std::filesystem::path MakeSocketFolder(const Account& server);

// Removes it with what a killed server left in it, and nothing else. Only when no server uses it any more.
void RemoveSocketFolder(const std::filesystem::path& folder, const Account& server);

}  // namespace heatkeep
