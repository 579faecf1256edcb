#include "client/book/server_processes.h"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <charconv>
#include <fstream>
#include <sstream>
#include <string>

#include "client/book/cluster_files.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

std::string FirstLine(const fs::path& file) {
  std::ifstream in(file);
  std::string line;
  std::getline(in, line);
  return line;
}

bool Number(const std::string& text, pid_t& value) {
  const auto [end, code] = std::from_chars(text.data(), text.data() + text.size(), value);
  return code == std::errc{} && end == text.data() + text.size();
}

pid_t EndedProcess() {
  const pid_t child = fork();
  if (child == 0) _exit(0);
  if (child > 0) waitpid(child, nullptr, 0);
  return child;
}

}  // namespace

std::vector<pid_t> ServerProcesses(const fs::path& data, const Account& account) {
  const FileAccessAs as(account);
  std::vector<pid_t> found;
  std::error_code ignored;
  const fs::path real = fs::canonical(data, ignored);
  if (real.empty()) return found;
  for (const auto& entry : fs::directory_iterator("/proc", ignored)) {
    pid_t pid = 0;
    if (!Number(entry.path().filename(), pid) || FirstLine(entry.path() / "comm") != "postgres") continue;
    // A process that has ended but was not fetched by its parent yet has no working folder any more.
    std::error_code gone;
    if (fs::read_symlink(entry.path() / "cwd", gone) == real && !gone) found.push_back(pid);
  }
  return found;
}

pid_t Postmaster(const fs::path& data, const Account& account, const std::vector<pid_t>& processes) {
  const FileAccessAs as(account);
  pid_t pid = 0;
  if (!Number(FirstLine(data / "postmaster.pid"), pid)) return 0;
  return std::find(processes.begin(), processes.end(), pid) == processes.end() ? 0 : pid;
}

void DisownStalePidFile(const fs::path& data, const Account& account) {
  std::ostringstream text;
  {
    const FileAccessAs as(account);
    std::ifstream in(data / "postmaster.pid");
    if (!in) return;
    std::string first;
    std::getline(in, first);
    text << EndedProcess() << '\n' << in.rdbuf();
  }
  ReplaceFile(data / "postmaster.pid", text.str(), 0600, account);
}

}  // namespace heatkeep
