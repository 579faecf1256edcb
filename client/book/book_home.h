// Where a person's own book lives on this machine.
#pragma once

#include <filesystem>

namespace heatkeep {

// HEATKEEP_HOME if set; else /var/lib/heatkeep for root; else heatkeep under XDG_DATA_HOME (default
// ~/.local/share). Absolute; need not exist. Throws BookError(BadInput) when none of these is known or a
// given one is not absolute.
std::filesystem::path HomeFolder();

}  // namespace heatkeep
