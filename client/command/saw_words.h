// `heatkeep saw ...`: the saws, what they cut and how worn their bands are, every deed at a saw, and work off the network.
#pragma once

#include <CLI/CLI.hpp>
#include <functional>
#include <string>

#include "client/command/with_book.h"

namespace heatkeep::command {

// Adds the commands; the one that was asked for puts itself into `work`. Both live as long as the parsing.
void AddSaw(CLI::App& root, const std::function<BookCall()>& call, std::function<int()>& work);

}  // namespace heatkeep::command
