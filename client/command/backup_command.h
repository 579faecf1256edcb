// heatkeep book backup TO, heatkeep book restore FROM: a book in one file, and back (client/book/backup_file.h, restore.h).
//
// Exit as the other commands on a book; restore gives 1 where the book that came back is whole but was not in order.
#pragma once

#include <string>

#include "client/command/with_book.h"

namespace heatkeep::command {

struct BackupOptions {
  std::string file;
  bool json = false;
  bool check = false;  // restore: only read the file and say what is in it
};

int RunBackup(const BookCall& call, const BackupOptions& options);
int RunRestore(const BookCall& call, const BackupOptions& options);

}  // namespace heatkeep::command
