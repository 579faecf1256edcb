// Bringing a book up to date: all of it in ONE transaction, or none of it.
//
//   1 one at a time (an advisory lock)          5 schemas guard and api dropped, with all that hangs on them
//   2 the roles file                            6 the new migrations, each recorded with its SHA-256
//   3 as heatkeep_book, with a lock timeout     7 guard and api made anew; as the login again: grants
//   4 checksums of what has run compared        8 what the tables keep compared across 5 and across 7
//
// A private book is brought up to date by heatkeep_admin; on a server the login must own the database and
// have CREATEROLE, or be a superuser. Schema book and its table book.migration are made here.
#pragma once

#include <string>
#include <vector>

#include "client/book/schema_files.h"
#include "client/gateway/connection.h"

namespace heatkeep {

struct MigrateReport {
  int before = 0;                       // version the book was at; 0 = empty
  int after = 0;                        // version it is at now, or would be at
  std::vector<std::string> migrations;  // file names run now, or that would be
};

// Throws MigrateError, or DbError when the connection is lost; the book is then as it was.
MigrateReport Migrate(Connection& connection, const SchemaFiles& files);

// The same comparison with the files, changing nothing. Throws the same refusals.
MigrateReport CheckMigrations(Connection& connection, const SchemaFiles& files);

// Makes the roles of the server where they are missing, and lets this login act as heatkeep_book and heatkeep_book make schemas
// in this database. Throws as Migrate.
void MakeOwnerReady(Connection& connection, const SchemaFiles& files);

}  // namespace heatkeep
