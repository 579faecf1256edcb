// The words of `heatkeep certificate`.
#pragma once

#include "client/command/deed_command.h"

namespace heatkeep::command {

void AddCertificateWords(CLI::App& root, const Later& later);

}  // namespace heatkeep::command
