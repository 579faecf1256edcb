#include "client/command/search_watch.h"

#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <iostream>

#include "client/planning/watched_search.h"

namespace heatkeep::command {
namespace {

volatile std::sig_atomic_t interrupted = 0;

extern "C" void HeatkeepInterrupted(int) {
  interrupted = 1;
  std::signal(SIGINT, SIG_DFL);  // the second one ends the program
}

}  // namespace

allocator::Plan Searched(const allocator::Problem& problem, std::ostream& err) {
  SearchWatch watch(err, problem.aim);
  return allocator::Allocate(problem, watch.Token(), watch.Shown());
}

SearchWatch::SearchWatch(std::ostream& err, allocator::Aim aim)
    : err_(err), aim_(aim), shown_(&err == &std::cerr && isatty(STDERR_FILENO) == 1), begin_(std::chrono::steady_clock::now()) {
  interrupted = 0;
  std::signal(SIGINT, HeatkeepInterrupted);
  listener_ = std::jthread([stop = stop_](const std::stop_token& over) mutable {
    while (!over.stop_requested()) {
      if (interrupted != 0) {
        stop.request_stop();
        return;
      }
      std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
  });
}

SearchWatch::~SearchWatch() {
  std::signal(SIGINT, SIG_DFL);
  if (widest_ > 0) err_ << '\r' << std::string(widest_, ' ') << '\r' << std::flush;
}

allocator::Progress SearchWatch::Shown() {
  if (!shown_) return {};
  return [this](const allocator::Value& value, const allocator::Bound& bound) {
    const auto now = std::chrono::steady_clock::now();
    if (now - last_ < std::chrono::milliseconds(100)) return;
    last_ = now;
    std::string line = std::to_string(std::chrono::duration_cast<std::chrono::seconds>(now - begin_).count()) + " s: " +
                       planning::ProgressWords(aim_, value, bound) + "; Ctrl-C takes this";
    widest_ = std::max(widest_, line.size());
    line.resize(widest_, ' ');
    err_ << '\r' << line << std::flush;
  };
}

}  // namespace heatkeep::command
