// A search that its caller watches and stops.
#pragma once

#include <functional>
#include <stop_token>
#include <string>

#include "client/planning/make_plan.h"

namespace heatkeep::planning {

// "opens 18.30 m, at least 17.90 m is needed", "costs 1240.00, ..."; what is short in front.
std::string ProgressWords(allocator::Aim aim, const allocator::Value& value, const allocator::Bound& bound);

// How the search ended, where that is worth a line: by the clock, or stopped by a person; else empty.
std::string EndedWords(const allocator::Plan& plan);

// `told` hears of it in those words now and then, from the searching threads, one call at a time. Stopped, it gives the best so far.
Searcher Watched(std::stop_token stop, std::function<void(const std::string& words)> told);

}  // namespace heatkeep::planning
