#include "client/book/piped_child.h"

#include <fcntl.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <system_error>

namespace heatkeep {
namespace {

[[noreturn]] void Fail(const char* what) { throw std::system_error(errno, std::generic_category(), what); }

std::vector<char*> Pointers(std::vector<std::string>& texts) {
  std::vector<char*> pointers;
  for (std::string& text : texts) pointers.push_back(text.data());
  pointers.push_back(nullptr);
  return pointers;
}

// A pipe whose reader is gone answers with an error instead of ending this program.
class NoPipeSignal {
 public:
  NoPipeSignal() : before_(std::signal(SIGPIPE, SIG_IGN)) {}
  ~NoPipeSignal() { std::signal(SIGPIPE, before_); }
  NoPipeSignal(const NoPipeSignal&) = delete;
  NoPipeSignal& operator=(const NoPipeSignal&) = delete;

 private:
  void (*before_)(int);
};

}  // namespace

PipedChild::PipedChild(const std::vector<std::string>& argv, const std::vector<std::pair<std::string, std::string>>& environment,
                       Stream stream) {
  std::vector<std::string> words = argv, variables{"LC_ALL=C.UTF-8", "PATH=/usr/bin:/bin"};
  for (const char* kept : {"HOME", "TZ"})
    if (const char* value = std::getenv(kept)) variables.push_back(std::string(kept) + "=" + value);
  for (const auto& [name, value] : environment) variables.push_back(name + "=" + value);
  const auto word_pointers = Pointers(words), variable_pointers = Pointers(variables);
  std::array<int, 2> ends{};
  complaint_ = memfd_create("heatkeep", MFD_CLOEXEC);
  if (complaint_ < 0 || pipe2(ends.data(), O_CLOEXEC) != 0) Fail("no pipe to be had");
  const bool from_it = stream == Stream::FromIt;
  child_ = fork();
  if (child_ < 0) Fail("no process to be had");
  if (child_ == 0) {
    setpgid(0, 0);
    const int nothing = open("/dev/null", O_RDWR);
    if (dup2(from_it ? nothing : ends[0], 0) < 0 || dup2(from_it ? ends[1] : nothing, 1) < 0 || dup2(complaint_, 2) < 0) _exit(127);
    close_range(3, ~0U, 0);
    sigset_t none;
    sigemptyset(&none);
    sigprocmask(SIG_SETMASK, &none, nullptr);
    for (const int signal_number : {SIGPIPE, SIGCHLD, SIGINT, SIGQUIT, SIGHUP, SIGTERM}) signal(signal_number, SIG_DFL);
    execve(word_pointers[0], word_pointers.data(), variable_pointers.data());
    _exit(127);
  }
  close(ends[from_it ? 1 : 0]);
  pipe_ = ends[from_it ? 0 : 1];
}

PipedChild::~PipedChild() {
  if (child_ > 0) kill(child_, SIGTERM);
  End();
  close(complaint_);
}

std::size_t PipedChild::Read(char* into, std::size_t most) {
  for (;;) {
    const ssize_t got = read(pipe_, into, most);
    if (got >= 0) return static_cast<std::size_t>(got);
    if (errno != EINTR) Fail("the other program cannot be heard");
  }
}

bool PipedChild::Write(std::string_view bytes) {
  const NoPipeSignal quiet;
  while (!bytes.empty()) {
    const ssize_t wrote = write(pipe_, bytes.data(), bytes.size());
    if (wrote > 0) bytes.remove_prefix(static_cast<std::size_t>(wrote));
    else if (errno == EPIPE) return false;
    else if (errno != EINTR) Fail("the other program cannot be spoken to");
  }
  return true;
}

int PipedChild::End() {
  if (pipe_ >= 0) close(pipe_);
  pipe_ = -1;
  if (child_ <= 0) return 0;
  int status = 0;
  while (waitpid(child_, &status, 0) < 0 && errno == EINTR) {}
  child_ = -1;
  return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

std::string PipedChild::Complaint() const {
  struct stat info {};
  if (fstat(complaint_, &info) != 0) return "";
  std::string text(static_cast<std::size_t>(std::min<off_t>(info.st_size, 4000)), '\0');
  const ssize_t got = pread(complaint_, text.data(), text.size(), info.st_size - static_cast<off_t>(text.size()));
  text.resize(got < 0 ? 0 : static_cast<std::size_t>(got));
  while (!text.empty() && text.back() == '\n') text.pop_back();
  return text;
}

}  // namespace heatkeep
