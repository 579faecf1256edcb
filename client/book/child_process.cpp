#include "client/book/child_process.h"

#include <fcntl.h>
#include <grp.h>
#include <poll.h>
#include <sys/prctl.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <string_view>
#include <system_error>

extern char** environ;

namespace heatkeep {
namespace {

std::vector<char*> Pointers(std::vector<std::string>& texts) {
  std::vector<char*> pointers;
  for (std::string& text : texts) pointers.push_back(text.data());
  pointers.push_back(nullptr);
  return pointers;
}

std::vector<std::string> BareEnvironment() {
  std::vector<std::string> environment{"LC_ALL=C.UTF-8", "PATH=/usr/bin:/bin"};
  if (const char* zone = std::getenv("TZ")) environment.push_back(std::string("TZ=") + zone);
  return environment;
}

std::array<int, 2> Pipe() {
  std::array<int, 2> ends{};
  if (pipe2(ends.data(), O_CLOEXEC) != 0) throw std::system_error(errno, std::generic_category(), "no pipe to be had");
  return ends;
}

pid_t Fork() {
  const pid_t child = fork();
  if (child < 0) throw std::system_error(errno, std::generic_category(), "no process to be had");
  return child;
}

int WaitFor(pid_t child) {
  int status = 0;
  while (waitpid(child, &status, 0) < 0 && errno == EINTR) {}
  return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

// From here on, between fork and exec: only calls that are safe there.

void Become(const Account& account) {
  if (geteuid() != 0 || account.uid == 0) return;
  if (setgroups(account.groups.size(), account.groups.data()) != 0 || setresgid(account.gid, account.gid, account.gid) != 0 ||
      setresuid(account.uid, account.uid, account.uid) != 0)
    _exit(127);
}

[[noreturn]] void Exec(int in, int out, char* const* argv, char* const* environment) {
  if (dup2(in, 0) < 0 || dup2(out, 1) < 0 || dup2(out, 2) < 0 || chdir("/") != 0) _exit(127);
  close_range(3, ~0U, 0);
  sigset_t none;
  sigemptyset(&none);
  sigprocmask(SIG_SETMASK, &none, nullptr);
  for (const int signal_number : {SIGPIPE, SIGCHLD, SIGINT, SIGQUIT, SIGHUP, SIGTERM}) signal(signal_number, SIG_DFL);
  execve(argv[0], argv, environment);
  _exit(127);
}

// Stays between us and the server, so that the server is nobody's child once it runs: leaves with 1 when the
// server ends, with 0 when told to let go.
[[noreturn]] void Keep(pid_t server, int let_go) {
  for (;;) {
    if (waitpid(server, nullptr, WNOHANG) != 0) _exit(1);
    pollfd waiting{let_go, POLLIN, 0};
    if (poll(&waiting, 1, 20) > 0) _exit(0);
  }
}

}  // namespace

ChildEnd RunChild(const std::vector<std::string>& argv, const Account& account) {
  std::vector<std::string> words = argv;
  std::vector<std::string> environment = BareEnvironment();
  const auto word_pointers = Pointers(words);
  const auto environment_pointers = Pointers(environment);
  const auto ends = Pipe();
  const pid_t child = Fork();
  if (child == 0) {
    Become(account);
    prctl(PR_SET_PDEATHSIG, SIGKILL);  // it does not go on making files that the next program makes anew
    Exec(open("/dev/null", O_RDONLY), ends[1], word_pointers.data(), environment_pointers.data());
  }
  close(ends[1]);
  ChildEnd end;
  std::array<char, 4096> buffer{};
  for (ssize_t got = 0; (got = read(ends[0], buffer.data(), buffer.size())) > 0 || (got < 0 && errno == EINTR);)
    if (got > 0) end.output.append(buffer.data(), static_cast<std::size_t>(got));
  close(ends[0]);
  end.status = WaitFor(child);
  return end;
}

ServerChild::ServerChild(const std::vector<std::string>& argv, const Account& account, const std::filesystem::path& log) {
  std::vector<std::string> words = argv;
  std::vector<std::string> environment = BareEnvironment();
  const auto word_pointers = Pointers(words);
  const auto environment_pointers = Pointers(environment);
  const auto ends = Pipe();
  keeper_ = Fork();
  if (keeper_ == 0) {
    close(ends[1]);
    setsid();
    const pid_t server = fork();
    if (server < 0) _exit(1);
    if (server > 0) Keep(server, ends[0]);
    setsid();
    Become(account);
    umask(0077);
    const int out = open(log.c_str(), O_WRONLY | O_CREAT | O_APPEND | O_NOFOLLOW, 0600);
    Exec(open("/dev/null", O_RDONLY), out, word_pointers.data(), environment_pointers.data());
  }
  close(ends[0]);
  let_go_ = ends[1];
}

bool ServerChild::Ended() {
  if (!ended_ && keeper_ > 0 && waitpid(keeper_, nullptr, WNOHANG) == keeper_) {
    ended_ = true;
    keeper_ = -1;
  }
  return ended_;
}

ServerChild::~ServerChild() {
  close(let_go_);
  if (keeper_ > 0) WaitFor(keeper_);
}

void StartDetached(const std::vector<std::string>& argv, const std::filesystem::path& home) {
  std::vector<std::string> words = argv;
  std::vector<std::string> environment{"HEATKEEP_HOME=" + home.string()};
  for (char** entry = environ; *entry; ++entry)
    if (const std::string_view text = *entry; !text.starts_with("HEATKEEP_HOME=") && !text.starts_with("PG"))
      environment.emplace_back(*entry);
  const auto word_pointers = Pointers(words);
  const auto environment_pointers = Pointers(environment);
  const pid_t child = Fork();
  if (child == 0) {
    setsid();
    if (fork() != 0) _exit(0);
    const int nothing = open("/dev/null", O_RDWR);
    Exec(nothing, nothing, word_pointers.data(), environment_pointers.data());
  }
  WaitFor(child);
}

}  // namespace heatkeep
