// The command line: `heatkeep WORDS...`. Reads the words, does what they say, answers the exit status.
#pragma once

#include <iosfwd>
#include <string>
#include <vector>

#include "client/command/command_page.h"

namespace heatkeep::command {

// Answers one of AllExitStatuses.
int RunCommandLine(int argc, const char* const* argv, std::istream& in, std::ostream& out, std::ostream& err);

// Every command and option that RunCommandLine reads.
CommandPage AllCommands();

// What RunCommandLine would say against these words (without the program's name), before anything is done; empty where they are understood.
std::string WrongWords(const std::vector<std::string>& words);

}  // namespace heatkeep::command
