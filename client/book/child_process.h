// Other programs, started without a shell: no word of theirs is ever read as a command.
#pragma once

#include <sys/types.h>

#include <filesystem>
#include <string>
#include <vector>

#include "client/book/account.h"

namespace heatkeep {

struct ChildEnd {
  int status = 0;      // what it exited with; 128 + signal when it was killed; 127 when it could not be started
  std::string output;  // what it wrote on standard output and error
};

// Runs `argv` (first: the program's path) as `account` in /, with a bare C.UTF-8 environment, and waits for
// its end.
ChildEnd RunChild(const std::vector<std::string>& argv, const Account& account);

// A server that outlives this program: its own session, no descriptor of ours, what it writes appended to
// `log`.
class ServerChild {
 public:
  ServerChild(const std::vector<std::string>& argv, const Account& account, const std::filesystem::path& log);
  ~ServerChild();  // lets go of it; the server goes on
  ServerChild(const ServerChild&) = delete;
  ServerChild& operator=(const ServerChild&) = delete;

  bool Ended();  // true once the server has exited by itself

 private:
  pid_t keeper_ = -1;
  int let_go_ = -1;
  bool ended_ = false;
};

// Starts `argv` and forgets it: own session, nothing inherited, standard streams on /dev/null, this program's
// environment with HEATKEEP_HOME set to `home` and without libpq's own variables.
void StartDetached(const std::vector<std::string>& argv, const std::filesystem::path& home);

}  // namespace heatkeep
