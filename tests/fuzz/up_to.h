// Several texts in one input: each but the first after a mark.
#pragma once

#include <string_view>

namespace heatkeep::fuzz {

// What comes before the mark, taken off `rest` with the mark; all of it when there is none.
inline std::string_view UpTo(std::string_view& rest, std::string_view mark) {
  const std::size_t at = rest.find(mark);
  const std::string_view head = rest.substr(0, at);
  rest = at == std::string_view::npos ? std::string_view() : rest.substr(at + mark.size());
  return head;
}

}  // namespace heatkeep::fuzz
