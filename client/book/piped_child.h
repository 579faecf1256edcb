// Another program that gives or takes a stream of bytes. No shell; its words are seen by everybody on the machine, its
// environment only by its own account: secrets go there.
#pragma once

#include <sys/types.h>

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace heatkeep {

class PipedChild {
 public:
  enum class Stream { FromIt, ToIt };

  // Runs as this program's own account, with a bare C.UTF-8 environment, HOME and `environment`; Ctrl-C does not reach it.
  // Throws std::system_error.
  PipedChild(const std::vector<std::string>& argv, const std::vector<std::pair<std::string, std::string>>& environment, Stream stream);
  ~PipedChild();  // ends it when it has not ended
  PipedChild(const PipedChild&) = delete;
  PipedChild& operator=(const PipedChild&) = delete;

  std::size_t Read(char* into, std::size_t most);  // 0: it has said all
  bool Write(std::string_view bytes);              // false: it takes no more

  // Waits for its end: what it exited with (128 + signal when it was killed, 127 when it could not be started).
  int End();
  std::string Complaint() const;  // what it wrote on its standard error, at most the last 4000 bytes of it

 private:
  pid_t child_ = -1;
  int pipe_ = -1, complaint_ = -1;
};

}  // namespace heatkeep
