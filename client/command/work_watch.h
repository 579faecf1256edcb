// Long work that a person can watch and stop. While it lives, Ctrl-C only asks the work to stop; Ctrl-C again ends the program
// as ever. How far it is stands on one line of the standard error, where that is a terminal, and is wiped at the end; with
// `always` it is said anywhere, a line each time. One at a time in a process.
#pragma once

#include <chrono>
#include <functional>
#include <iosfwd>
#include <stdexcept>
#include <string>

namespace heatkeep::command {

// A person stopped the work.
struct Stopped : std::runtime_error {
  Stopped() : std::runtime_error("stopped; nothing more was written") {}
};

class WorkWatch {
 public:
  explicit WorkWatch(std::ostream& err, bool always = false);
  ~WorkWatch();
  WorkWatch(const WorkWatch&) = delete;
  WorkWatch& operator=(const WorkWatch&) = delete;

  bool Shown() const { return terminal_ || always_; }
  static bool Interrupted();
  static void Check();  // throws Stopped once Ctrl-C was pressed

  // Says `words` of so many seconds, at most ten times a second on a terminal, once a second elsewhere.
  void Say(const std::function<std::string(std::int64_t seconds)>& words);
  // Check, and "12 000 of about 30 000 rows read"; all 0: nobody knows. The first, and the last of a known number, are always said.
  void Count(const std::string& done_to, std::size_t done, std::size_t all, bool about = false);

 private:
  void Put(std::string line);

  std::ostream& err_;
  bool terminal_, always_;
  std::string counted_;  // what was counted last
  std::size_t widest_ = 0;
  std::chrono::steady_clock::time_point begin_, last_;
};

}  // namespace heatkeep::command
