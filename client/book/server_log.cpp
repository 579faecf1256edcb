#include "client/book/server_log.h"

#include <deque>
#include <fstream>
#include <system_error>

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kLines = 12;
constexpr std::uintmax_t kTrimFrom = 10'000'000;
constexpr std::uintmax_t kNextToNoRoom = 48'000'000;  // three segments of the write-ahead log

}  // namespace

std::uintmax_t LogSize(const fs::path& log, const Account& server) {
  const FileAccessAs as(server);
  std::error_code none;
  const auto size = fs::file_size(log, none);
  return none ? 0 : size;
}

std::string LogTail(const fs::path& log, const Account& server, std::uintmax_t from) {
  const FileAccessAs as(server);
  std::ifstream in(log);
  in.seekg(static_cast<std::streamoff>(from));
  std::deque<std::string> lines;
  for (std::string line; std::getline(in, line);) {
    lines.push_back("  " + line + "\n");
    if (lines.size() > kLines) lines.pop_front();
  }
  std::string text;
  for (const std::string& line : lines) text += line;
  return text.empty() ? "  (nothing)\n" : text;
}

void TrimLog(const fs::path& log, const Account& server) {
  if (LogSize(log, server) < kTrimFrom) return;
  const FileAccessAs as(server);
  std::error_code ignored;  // a log too long is no reason not to start
  fs::rename(log, log.string() + ".old", ignored);
}

bool LogSaysTryAgain(std::string_view words) {
  for (const std::string_view sign : {"lock file", "shared memory block"})
    if (words.find(sign) != std::string_view::npos) return true;
  return false;
}

std::string DiskFullNote(const fs::path& folder) {
  std::error_code unknown;
  const auto space = fs::space(folder, unknown);
  if (unknown || space.available >= kNextToNoRoom) return "";
  return " (the disk is full: " + std::to_string(space.available / 1'000'000) + " MB free in " + folder.string() +
      "; make room and try again)";
}

}  // namespace heatkeep
