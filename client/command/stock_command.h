// Looking at the rack, and what was recorded against a rule. Exit as the other commands on a book.
#pragma once

#include <cstdint>
#include <string>

#include "client/command/with_book.h"

namespace heatkeep::command {

// heatkeep stock [--grade G] [--section WORDS]: what is in the shop, with a count line.
int RunStock(const BookCall& call, const std::string& grade, const std::string& section, bool json);

// heatkeep conflict list | close N --decision WORDS [--free]: what the book recorded against a rule, for a person to decide.
int RunConflictList(const BookCall& call, bool json);
int RunConflictClose(const BookCall& call, std::int64_t conflict, const std::string& decision, bool free);

}  // namespace heatkeep::command
