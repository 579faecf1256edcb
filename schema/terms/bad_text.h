// BadText: a text somebody typed or a file holds cannot be read as what it should be.
// what() reads "what is wrong; expected what would be right": a caller puts "file:line: " in front.
#pragma once

#include <stdexcept>
#include <string>
#include <string_view>

namespace heatkeep {

class BadText : public std::invalid_argument {
 public:
  BadText(const std::string& wrong, const std::string& expected)
      : std::invalid_argument(wrong + "; expected " + expected), wrong_(wrong), expected_(expected) {}

  const std::string& Wrong() const { return wrong_; }
  const std::string& Expected() const { return expected_; }

 private:
  std::string wrong_, expected_;
};

// The text in double quotes for a message: at most 40 bytes (cut between characters), controls shown as '?'.
std::string Quoted(std::string_view text);

}  // namespace heatkeep
