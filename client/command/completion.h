// What a shell completes after `heatkeep`: commands, options, the words an option has a fixed set of, and files by their endings.
// Made from the tree of commands; asks no book.
#pragma once

#include <string>
#include <vector>

#include "client/command/command_page.h"

namespace heatkeep::command {

// For bash 4 and newer; to be read by it (`source`), or put where its completions are loaded from.
std::string BashCompletion(const CommandPage& root);

// For zsh; a file _heatkeep in its fpath.
std::string ZshCompletion(const CommandPage& root);

// The same after `heatkeep-desk`, which takes only options; no help of them has a " or a ].
std::string DeskBashCompletion(const std::vector<OptionPage>& options);
std::string DeskZshCompletion(const std::vector<OptionPage>& options);

}  // namespace heatkeep::command
