// A search that a person can watch and stop. While it lives, Ctrl-C stops the search, which then gives the best plan so far
// (ended_by stopped); Ctrl-C again ends the program as ever. On a terminal the value and bound so far are shown on one line
// of the standard error, which is wiped at the end. One at a time in a process.
#pragma once

#include <atomic>
#include <chrono>
#include <iosfwd>
#include <stop_token>
#include <string>
#include <thread>

#include "client/allocator/allocate.h"

namespace heatkeep::command {

class SearchWatch {
 public:
  // Shown where `err` is the program's standard error and that is a terminal.
  SearchWatch(std::ostream& err, allocator::Aim aim);
  ~SearchWatch();
  SearchWatch(const SearchWatch&) = delete;
  SearchWatch& operator=(const SearchWatch&) = delete;

  std::stop_token Token() const { return stop_.get_token(); }
  allocator::Progress Shown();

 private:
  std::ostream& err_;
  allocator::Aim aim_;
  bool shown_;
  std::size_t widest_ = 0;
  std::chrono::steady_clock::time_point begin_, last_;
  std::stop_source stop_;
  std::jthread listener_;
};

// Allocate, watched.
allocator::Plan Searched(const allocator::Problem& problem, std::ostream& err);

}  // namespace heatkeep::command
