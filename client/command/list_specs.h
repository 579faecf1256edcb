// What each list shows: its view, columns, words and how its rows are put together.
#pragma once

#include <vector>

#include "client/command/list_command.h"

namespace heatkeep::command {

const std::vector<ListSpec>& AllLists();

}  // namespace heatkeep::command
