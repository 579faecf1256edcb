// What a record handed in says of itself: the digests printed on it, and of its JSON also what it says and stands on.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace heatkeep::command {

inline constexpr std::size_t kDigestDigits = 64;

// One record to ask about: more than one digest where a text holds several (the book's own stands beside the record's).
struct Said {
  std::vector<std::string> digests;
  std::optional<std::string> content, ends;
};

// Runs of 64 hexadecimal digits, each once, in small letters.
std::vector<std::string> DigestsIn(const std::string& text);

// A record's JSON as `heatkeep report trace` writes it. Throws std::invalid_argument "file: what is wrong; expected ...".
Said SaidByJson(const std::string& file, const std::string& bytes);

}  // namespace heatkeep::command
