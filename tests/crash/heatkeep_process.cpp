#include "tests/crash/heatkeep_process.h"

#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <sstream>
#include <system_error>

namespace heatkeep {

HeatkeepProcess::HeatkeepProcess(const std::vector<std::string>& words) {
  std::array<int, 2> ends{};
  if (pipe2(ends.data(), O_CLOEXEC) != 0) throw std::system_error(errno, std::generic_category(), "pipe");
  std::vector<std::string> all{HEATKEEP_PROGRAM};
  all.insert(all.end(), words.begin(), words.end());
  std::vector<char*> argv;
  for (std::string& word : all) argv.push_back(word.data());
  argv.push_back(nullptr);
  pid_ = fork();
  if (pid_ == 0) {
    dup2(ends[1], 1);
    dup2(ends[1], 2);
    execv(argv[0], argv.data());
    _exit(127);
  }
  close(ends[1]);
  out_ = ends[0];
  if (pid_ < 0) throw std::system_error(errno, std::generic_category(), "fork");
}

HeatkeepProcess::~HeatkeepProcess() {
  if (status_ < 0) {
    Kill();
    Finish();
  }
  close(out_);
}

bool HeatkeepProcess::ReadSome(int patience_ms) {
  pollfd waiting{out_, POLLIN, 0};
  if (poll(&waiting, 1, patience_ms) <= 0) return false;
  std::array<char, 4096> block{};
  const ssize_t got = read(out_, block.data(), block.size());
  if (got <= 0) return false;
  text_.append(block.data(), static_cast<std::size_t>(got));
  return true;
}

bool HeatkeepProcess::WaitForLines(std::size_t count, std::chrono::milliseconds patience) {
  const auto until = std::chrono::steady_clock::now() + patience;
  while (Lines().size() < count) {
    const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(until - std::chrono::steady_clock::now());
    if (left.count() <= 0 || !ReadSome(static_cast<int>(left.count()))) return false;
  }
  return true;
}

void HeatkeepProcess::Kill() { kill(pid_, SIGKILL); }

// The end of the process, not of the pipe: a server it started may have inherited the pipe.
int HeatkeepProcess::Finish() {
  int raw = 0;
  while (waitpid(pid_, &raw, WNOHANG) == 0) ReadSome(20);
  while (ReadSome(0)) {}
  status_ = WIFEXITED(raw) ? WEXITSTATUS(raw) : 128 + WTERMSIG(raw);
  return status_;
}

std::vector<std::string> HeatkeepProcess::Lines() const {
  std::vector<std::string> lines;
  std::istringstream in(text_.substr(0, text_.rfind('\n') + 1));
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

}  // namespace heatkeep
