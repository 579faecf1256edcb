// The words of what goes on paper: heatkeep report, recall and label print.
#pragma once

#include "client/command/deed_command.h"

namespace heatkeep::command {

void AddReports(CLI::App& root, const Later& later);
void AddRecall(CLI::App& root, const Later& later);
void AddLabelPrint(CLI::App& root, const Later& later);

}  // namespace heatkeep::command
