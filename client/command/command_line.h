// The command line: `heatkeep WORDS...`. Reads the words, does what they say, answers the exit status.
#pragma once

#include <iosfwd>

#include "client/command/command_page.h"

namespace heatkeep::command {

// Answers one of AllExitStatuses.
int RunCommandLine(int argc, const char* const* argv, std::istream& in, std::ostream& out, std::ostream& err);

// Every command and option that RunCommandLine reads.
CommandPage AllCommands();

}  // namespace heatkeep::command
