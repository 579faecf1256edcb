#include "client/command/work_watch.h"

#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <iostream>

#include "schema/terms/number_text.h"

namespace heatkeep::command {
namespace {

volatile std::sig_atomic_t interrupted = 0;

extern "C" void HeatkeepInterrupted(int) {
  interrupted = 1;
  std::signal(SIGINT, SIG_DFL);  // the second one ends the program
}

}  // namespace

WorkWatch::WorkWatch(std::ostream& err, bool always)
    : err_(err), terminal_(&err == &std::cerr && isatty(STDERR_FILENO) == 1), always_(always), begin_(std::chrono::steady_clock::now()) {
  interrupted = 0;
  std::signal(SIGINT, HeatkeepInterrupted);
}

WorkWatch::~WorkWatch() {
  std::signal(SIGINT, SIG_DFL);
  if (widest_ > 0) err_ << '\r' << std::string(widest_, ' ') << '\r' << std::flush;
}

bool WorkWatch::Interrupted() { return interrupted != 0; }

void WorkWatch::Check() {
  if (Interrupted()) throw Stopped();
}

void WorkWatch::Put(std::string line) {
  last_ = std::chrono::steady_clock::now();
  if (!terminal_) {
    err_ << line << std::endl;
    return;
  }
  widest_ = std::max(widest_, line.size());
  line.resize(widest_, ' ');
  err_ << '\r' << line << std::flush;
}

void WorkWatch::Say(const std::function<std::string(std::int64_t)>& words) {
  const auto now = std::chrono::steady_clock::now();
  if (!Shown() || now - last_ < std::chrono::milliseconds(terminal_ ? 100 : 1000)) return;
  Put(words(std::chrono::duration_cast<std::chrono::seconds>(now - begin_).count()));
}

void WorkWatch::Count(const std::string& done_to, std::size_t done, std::size_t all, bool about) {
  Check();
  if (!Shown()) return;
  const auto words = [&](std::int64_t seconds) {
    const auto number = [](std::size_t n) { return WriteWhole(static_cast<std::int64_t>(n), true); };
    const bool known = all > 0 && done <= all;
    return std::to_string(seconds) + " s: " + number(done) + (known ? (about ? " of about " : " of ") + number(all) : "") + " " + done_to +
        "; Ctrl-C stops";
  };
  if (counted_ != done_to || (done == all && !about)) last_ = {};
  counted_ = done_to;
  Say(words);
}

}  // namespace heatkeep::command
