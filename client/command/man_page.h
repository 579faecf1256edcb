// A manual page of section 1 from a CommandPage: NAME, SYNOPSIS, DESCRIPTION, COMMANDS, OPTIONS, EXAMPLES, EXIT STATUS, SEE ALSO, as
// man(7) has them. Nothing is written here that the help does not say, but for what holds for the whole program.
#pragma once

#include <string>
#include <vector>

#include "client/command/command_page.h"
#include "client/command/roff.h"

namespace heatkeep::command {

// "heatkeep-book-init"; of the program "heatkeep".
std::string ManName(const CommandPage& page);

// `root` is the program, of which `page` is a command, or the same.
std::string ManPage(const CommandPage& page, const CommandPage& root, const ManEdition& edition);

// The desk's, from its own options.
std::string DeskManPage(const std::vector<OptionPage>& options, const ManEdition& edition);

}  // namespace heatkeep::command
