// Looking at the rack, and what may not be used. Exit as the other commands on a book.
#pragma once

#include <cstdint>
#include <string>

#include "client/command/with_book.h"

namespace heatkeep::command {

// heatkeep stock [--grade G] [--section WORDS]: what is in the shop, with a count line.
int RunStock(const BookCall& call, const std::string& grade, const std::string& section, bool json);

// heatkeep hold heat|piece REF --reason ...; hold lift N --evidence ...
int RunHold(const BookCall& call, const std::string& scope, const std::string& ref, const std::string& mill, const std::string& reason);
int RunLift(const BookCall& call, std::int64_t hold, const std::string& evidence);

// heatkeep conflict list | close N --decision WORDS [--free]: what the book recorded against a rule, for a person to decide.
int RunConflictList(const BookCall& call, bool json);
int RunConflictClose(const BookCall& call, std::int64_t conflict, const std::string& decision, bool free);

// heatkeep quarantine TAG --reason ...; heatkeep release TAG --evidence ...; heatkeep putaway TAG PLACE
int RunQuarantine(const BookCall& call, const std::string& tag, const std::string& reason);
int RunRelease(const BookCall& call, const std::string& tag, const std::string& evidence);
int RunPutAway(const BookCall& call, const std::string& tag, const std::string& place);

}  // namespace heatkeep::command
