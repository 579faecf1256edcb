// Taking a backup: what pg_dump writes of the schemas book, guard and api, and what the book was in that very moment. People may go on
// working: both come from one snapshot of the database. Passwords are not in it; the persons and their roles are.
#pragma once

#include <filesystem>
#include <functional>
#include <string>

#include "client/book/backup_file.h"
#include "client/gateway/connection.h"

namespace heatkeep {

// `keeper`: a session that may act as the owner of the book. `progress` is told the bytes written so far, and may throw to stop
// the work: there is no file then. Throws BookError, DbError, std::system_error.
BackupFacts MakeBackup(Connection& keeper, const std::string& program, const std::filesystem::path& file,
                       const std::function<void(std::int64_t bytes)>& progress);

}  // namespace heatkeep
