// "1 piece", "2 pieces": how many of something, in an answer for people.
#pragma once

#include <string>

namespace heatkeep {

// `noun` in its singular; it takes an s.
template <class Number>
std::string Counted(Number count, const std::string& noun) {
  return std::to_string(count) + " " + noun + (count == 1 ? "" : "s");
}

}  // namespace heatkeep
