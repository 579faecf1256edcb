// The SQL files a book is made from, read and checked before any of them runs.
//
//   FOLDER/migrations/NNNN_name.sql   one file a number, from 0001; each runs once in a book's life
//   FOLDER/files                      the re-creatable ones in order, `kind path` a line; # begins a comment.
//                                     kinds: roles, guard, api, grants
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace heatkeep {

struct SchemaFile {
  std::filesystem::path path;
  std::string kind;  // "roles", "guard", "api", "grants"; for a migration "migration"
  std::string text;
};

struct Migration {
  int version = 0;
  std::string name;    // the file's name without number and .sql
  std::string sha256;  // of the file's bytes
  SchemaFile file;
};

struct SchemaFiles {
  std::vector<SchemaFile> recreated;
  std::vector<Migration> migrations;  // by version
};

// HEATKEEP_SCHEMA if set; else share/heatkeep/schema beside this program's bin; else that of the build folder
// it lies in, which links to the sources. Throws MigrateError(BadFiles) when there is none.
std::filesystem::path SchemaFolder();

// Throws MigrateError(BadFiles), `file:line: what is wrong; what is expected`.
SchemaFiles ReadSchemaFiles(const std::filesystem::path& folder);

}  // namespace heatkeep
