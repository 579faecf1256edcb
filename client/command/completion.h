// What a shell completes after `heatkeep`, or after another program of ours without commands: commands, options, the words an option has a
// fixed set of, and files by their endings. Made from the tree of commands; asks no book.
#pragma once

#include <string>

#include "client/command/command_page.h"

namespace heatkeep::command {

// For bash 4 and newer; to be read by it (`source`), or put where its completions are loaded from.
std::string BashCompletion(const CommandPage& root, const std::string& program = "heatkeep");

// For zsh; a file _PROGRAM in its fpath.
std::string ZshCompletion(const CommandPage& root, const std::string& program = "heatkeep");

// A script is written for heatkeep and its function _heatkeep; this is it under the names of `program`: heatkeep-desk, _heatkeep_desk.
std::string Renamed(std::string script, const std::string& program);

}  // namespace heatkeep::command
