// The program itself as a process, to be killed in the middle of its work.
#pragma once

#include <sys/types.h>

#include <chrono>
#include <string>
#include <vector>

namespace heatkeep {

class HeatkeepProcess {
 public:
  // Starts `heatkeep WORDS...`; output and errors come together, line by line. Throws std::system_error.
  explicit HeatkeepProcess(const std::vector<std::string>& words);
  ~HeatkeepProcess();  // killed if it still runs
  HeatkeepProcess(const HeatkeepProcess&) = delete;
  HeatkeepProcess& operator=(const HeatkeepProcess&) = delete;

  // Waits until so many whole lines were printed; false when it ended, or after `patience`.
  bool WaitForLines(std::size_t count, std::chrono::milliseconds patience);
  void Kill();  // kill -9
  // Reads what is left and waits for the end. The exit status, or 128 + the signal.
  int Finish();

  const std::string& text() const { return text_; }
  std::vector<std::string> Lines() const;  // whole lines only

 private:
  bool ReadSome(int patience_ms);  // false at the end, or when nothing came

  pid_t pid_ = -1;
  int out_ = -1;
  int status_ = -1;
  std::string text_;
};

}  // namespace heatkeep
