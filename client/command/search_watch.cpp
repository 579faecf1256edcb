#include "client/command/search_watch.h"

#include <chrono>

#include "client/planning/watched_search.h"

namespace heatkeep::command {

allocator::Plan Searched(const allocator::Problem& problem, std::ostream& err) {
  SearchWatch watch(err, problem.aim);
  return allocator::Allocate(problem, watch.Token(), watch.Shown());
}

SearchWatch::SearchWatch(std::ostream& err, allocator::Aim aim) : watch_(err), aim_(aim) {
  listener_ = std::jthread([stop = stop_](const std::stop_token& over) mutable {
    while (!over.stop_requested()) {
      if (WorkWatch::Interrupted()) {
        stop.request_stop();
        return;
      }
      std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
  });
}

allocator::Progress SearchWatch::Shown() {
  if (!watch_.Shown()) return {};
  return [this](const allocator::Value& value, const allocator::Bound& bound) {
    watch_.Say([&](std::int64_t seconds) {
      return std::to_string(seconds) + " s: " + planning::ProgressWords(aim_, value, bound) + "; Ctrl-C takes this";
    });
  };
}

}  // namespace heatkeep::command
