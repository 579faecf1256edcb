// heatkeep-files(5): what stands in the files that the program reads and writes. Its tables are the readers' own columns; the keys of its
// JSON files are compared with what is read and written by tests/command/files_page_test.cpp.
#pragma once

#include <string>

#include "client/command/roff.h"

namespace heatkeep::command {

std::string FilesManPage(const ManEdition& edition);

}  // namespace heatkeep::command
