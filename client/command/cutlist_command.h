// heatkeep cutlist add FILE and cutlist list. The file's columns: client/intake/cuts_file.h. A bad file names every bad
// line and changes nothing; the same file again adds nothing.
#pragma once

#include <string>

#include "client/command/with_book.h"
#include "client/incoming/table_file.h"

namespace heatkeep::command {

using incoming::TableFile;

// `name` empty: the file's name without its ending.
int RunCutListAdd(const BookCall& call, const TableFile& file, const std::string& name);
int RunCutListList(const BookCall& call, bool json);

}  // namespace heatkeep::command
