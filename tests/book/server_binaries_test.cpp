// The server's programs are found, and their lack is said in words a person can act on.
#include "client/book/server_binaries.h"

#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "client/book/book_error.h"

namespace heatkeep {
namespace {

TEST(ServerBinaries, NewestIsFoundAndComplete) {
  const ServerBinaries found = FindServerBinaries();
  EXPECT_GE(found.major, kOldestServer);
  EXPECT_EQ(access((found.folder / "postgres").c_str(), X_OK), 0);
  EXPECT_EQ(access((found.folder / "initdb").c_str(), X_OK), 0);
  EXPECT_EQ(FindServerBinaries(found.major).folder, found.folder);
}

TEST(ServerBinaries, MissingVersionNamesThePackage) {
  try {
    FindServerBinaries(99);
    ADD_FAILURE() << "version 99 was found";
  } catch (const BookError& error) {
    EXPECT_EQ(error.kind, BookError::Kind::NoServer);
    EXPECT_NE(std::string(error.what()).find("postgresql-99"), std::string::npos) << error.what();
  }
}

// A dump of a newer one cannot be given back to an older server.
TEST(ClientPrograms, TheNearestNotOlderThanTheServerAreTaken) {
  namespace fs = std::filesystem;
  std::string base = (fs::temp_directory_path() / "heatkeep-programs-XXXXXX").string();
  ASSERT_NE(mkdtemp(base.data()), nullptr);
  ASSERT_EQ(chmod(base.c_str(), 0755), 0);
  std::string path;
  for (const char* major : {"99", "97", "95", "98"}) {
    const fs::path folder = fs::path(base) / major;
    fs::create_directory(folder);
    for (const char* name : {"pg_dump", "pg_restore"}) {
      std::ofstream(folder / name) << "#!/bin/sh\necho '" << name << " (PostgreSQL) " << major << ".3 (a copy)'\n";
      ASSERT_EQ(chmod((folder / name).c_str(), 0755), 0);
    }
    path += folder.string() + ":";
  }
  const std::string before = std::getenv("PATH");
  setenv("PATH", (path + before).c_str(), 1);
  const ServerBinaries found = FindClientPrograms(96);
  const ServerBinaries own = FindClientPrograms(FindServerBinaries().major);
  setenv("PATH", before.c_str(), 1);
  EXPECT_EQ(found.major, 97);
  EXPECT_EQ(found.folder, fs::path(base) / "97");
  EXPECT_EQ(own.major, FindServerBinaries().major);
  EXPECT_THROW(FindClientPrograms(96), BookError);
  fs::remove_all(base);
}

}  // namespace
}  // namespace heatkeep
