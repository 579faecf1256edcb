// A search that a person can watch and stop (work_watch.h). Ctrl-C stops the search, which then gives the best plan so far
// (ended_by stopped). On a terminal the value and bound so far are shown.
#pragma once

#include <iosfwd>
#include <stop_token>
#include <string>
#include <thread>

#include "client/allocator/allocate.h"
#include "client/command/work_watch.h"

namespace heatkeep::command {

class SearchWatch {
 public:
  SearchWatch(std::ostream& err, allocator::Aim aim);

  std::stop_token Token() const { return stop_.get_token(); }
  allocator::Progress Shown();

 private:
  WorkWatch watch_;
  allocator::Aim aim_;
  std::stop_source stop_;
  std::jthread listener_;
};

// Allocate, watched.
allocator::Plan Searched(const allocator::Problem& problem, std::ostream& err);

}  // namespace heatkeep::command
