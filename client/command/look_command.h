// heatkeep look FILE --as stock|cuts|delivery|opening|certificates|grades: what the file would be understood as. Nothing
// is done with it. Exit 0 when every line is good, 2 when something is wrong.
#pragma once

#include <cstddef>
#include <iosfwd>
#include <string>

#include "client/incoming/table_file.h"

namespace heatkeep::command {

using incoming::TableFile;

struct LookOptions {
  TableFile file;
  std::string as;        // a word of intake::TableKindWords
  std::size_t rows = 5;  // shown
  bool json = false;
};

int RunLook(const LookOptions& options, std::ostream& out, std::ostream& err);

}  // namespace heatkeep::command
