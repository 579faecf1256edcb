// What the server wrote, for a person who wants to know why it does not start.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

#include "client/book/account.h"

namespace heatkeep {

std::uintmax_t LogSize(const std::filesystem::path& log, const Account& server);  // 0 when there is none

// The last lines (at most 12) written after byte `from`.
std::string LogTail(const std::filesystem::path& log, const Account& server, std::uintmax_t from);

// Puts a log of more than 10 MB aside as server.log.old, over the one before.
void TrimLog(const std::filesystem::path& log, const Account& server);

// True when the words are those of a server that finds remains of a killed one, which go by themselves.
bool LogSaysTryAgain(std::string_view words);

// " (the disk is full: N MB free in FOLDER)" when there is next to no room, else nothing.
std::string DiskFullNote(const std::filesystem::path& folder);

}  // namespace heatkeep
