// What the text of an option is read as. What is wrong with it is said with the option's name: people give several at once.
#pragma once

#include <string>

#include "schema/terms/bad_text.h"

namespace heatkeep::command {

// read(text). Throws BadText, "--kerf: what is wrong; expected ...".
template <class Read>
auto ReadOption(const std::string& option, const std::string& text, Read read) -> decltype(read(text)) {
  try {
    return read(text);
  } catch (const BadText& bad) { throw BadText(option + ": " + bad.Wrong(), bad.Expected()); }
}

}  // namespace heatkeep::command
