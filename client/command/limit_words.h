// heatkeep grades limits|correct|withdraw|changed|look-again: what documents are judged by, put in and put right.
#pragma once

#include "client/command/deed_command.h"

namespace heatkeep::command {

void AddLimitWords(CLI::App& root, const Later& later);

}  // namespace heatkeep::command
