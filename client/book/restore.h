// Giving a backup back, into an empty place only: a home where there is no book, or a database on a server with nothing in it. What
// was given back is compared with what the backup says the book was, happening by happening (its digest), brought up to date, and
// verified. Where anything is wrong before that, nothing is left behind.
#pragma once

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

#include "client/book/backup_file.h"
#include "client/book/book_location.h"
#include "client/book/migrate.h"
#include "client/gateway/readings.h"

namespace heatkeep {

// `what` is done, so far and in all (bytes); 0 of 0 where nobody knows. May throw to stop the work.
using RestoreProgress = std::function<void(const std::string& what, std::int64_t done, std::int64_t all)>;

struct RestoreReport {
  MigrateReport migrated;
  std::vector<CheckRow> checks;  // of the book as it now is; one that is wrong was wrong in the book that was backed up
};

// Reads it all. Throws BookError(BadInput) when it is not as it was written.
void CheckBackup(BackupReader& backup, const RestoreProgress& progress);

// Into the empty database of `keeper`, who must own it and have CREATEROLE, or be a superuser. Persons become logins without a
// password where there is none of that name, and get their roles. Throws BookError, MigrateError, DbError, std::system_error.
RestoreReport RestoreOnServer(Connection& keeper, BackupReader& backup, const RestoreProgress& progress);

// Into a book of one's own at `home`, which comes into being whole: it is made in HOME.restoring and given its name at the end. Its
// maker may log in as every person.
RestoreReport RestoreOwn(const std::filesystem::path& home, BackupReader& backup, const RestoreProgress& progress);

}  // namespace heatkeep
