#include "client/book/schema_files.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <fstream>
#include <sstream>

#include "client/book/migrate_error.h"
#include "schema/terms/sha256.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void Bad(const std::string& message) { throw MigrateError(MigrateError::Kind::BadFiles, message); }

std::string ReadWhole(const fs::path& path, const std::string& where) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  if (!in || !(text << in.rdbuf()) || text.str().empty())
    Bad(where + ": " + path.string() + " cannot be read or is empty; expected a file of SQL");
  if (text.str().find('\0') != std::string::npos) Bad(path.string() + ": holds a zero byte; expected SQL as text");
  return text.str();
}

std::vector<SchemaFile> ReadList(const fs::path& folder) {
  const fs::path list = folder / "files";
  std::ifstream in(list);
  if (!in) Bad(list.string() + ": cannot be read; expected the list of the SQL files in order");
  std::vector<SchemaFile> files;
  int number = 0;
  for (std::string line; std::getline(in, line);) {
    const std::string where = list.string() + ":" + std::to_string(++number);
    std::istringstream words(line.substr(0, line.find('#')));
    std::string kind, path, more;
    if (!(words >> kind)) continue;
    const std::array known{"roles", "guard", "api", "grants"};
    if (std::find(known.begin(), known.end(), kind) == known.end())
      Bad(where + ": '" + kind + "' is no kind of file; expected roles, guard, api or grants");
    if (!(words >> path) || (words >> more)) Bad(where + ": expected a kind and one path");
    files.push_back({folder / path, kind, ReadWhole(folder / path, where)});
  }
  return files;
}

bool IsDigit(char c) { return c >= '0' && c <= '9'; }

Migration ReadMigration(const fs::path& path) {
  const std::string stem = path.stem();
  if (path.extension() != ".sql" || stem.size() < 6 || stem[4] != '_' || !std::all_of(stem.begin(), stem.begin() + 4, IsDigit))
    Bad(path.string() + ": not the name of a migration; expected NNNN_name.sql");
  Migration migration;
  migration.version = std::stoi(stem.substr(0, 4));
  migration.name = stem.substr(5);
  migration.file = {path, "migration", ReadWhole(path, path.parent_path().string())};
  migration.sha256 = Sha256Hex(migration.file.text);
  return migration;
}

}  // namespace

fs::path SchemaFolder() {
  if (const char* set = std::getenv("HEATKEEP_SCHEMA"); set && *set) return set;
  std::error_code ignored;
  const fs::path beside = fs::read_symlink("/proc/self/exe", ignored).parent_path();
  fs::path installed = (beside / "../share/heatkeep/schema").lexically_normal();
  if (fs::exists(installed / "files", ignored)) return installed;
  // a program that was never installed, a test of ours say: the build folder it lies in has a link to the sources
  for (fs::path folder = beside; folder.has_relative_path(); folder = folder.parent_path())
    if (fs::exists(folder / "CMakeCache.txt", ignored) && fs::exists(folder / "share/heatkeep/schema/files", ignored))
      return folder / "share/heatkeep/schema";
  Bad("the SQL files of the book are not where the program was installed (" + installed.string() +
      "); HEATKEEP_SCHEMA can name their folder");
}

SchemaFiles ReadSchemaFiles(const fs::path& folder) {
  SchemaFiles files;
  files.recreated = ReadList(folder);
  std::error_code none;
  for (const auto& entry : fs::directory_iterator(folder / "migrations", none)) files.migrations.push_back(ReadMigration(entry.path()));
  if (none) Bad((folder / "migrations").string() + ": cannot be read; expected the folder of the migrations");
  std::sort(files.migrations.begin(), files.migrations.end(), [](const Migration& a, const Migration& b) { return a.version < b.version; });
  int before = 0;
  for (const Migration& migration : files.migrations) {
    if (migration.version == before) Bad(migration.file.path.string() + ": this number is there twice; expected one file a number");
    before = migration.version;
  }
  return files;
}

}  // namespace heatkeep
