// The command line: `heatkeep WORDS...`. Reads the words, does what they say, answers the exit status.
#pragma once

#include <iosfwd>

namespace heatkeep::command {

// 0 done · 1 the book refused or something was found wrong · 2 the words or a file are wrong · 3 some cuts cannot be
// served, or SQL files and book do not fit · 4 the book cannot be reached.
int RunCommandLine(int argc, const char* const* argv, std::istream& in, std::ostream& out, std::ostream& err);

}  // namespace heatkeep::command
