// A promise that is held against what a door did.
#pragma once

#include <stdexcept>
#include <string>

namespace heatkeep::fuzz {

inline void Require(bool holds, const std::string& promise) {
  if (!holds) throw std::logic_error("broken promise: " + promise);
}

}  // namespace heatkeep::fuzz
