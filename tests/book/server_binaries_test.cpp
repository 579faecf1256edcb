// The server's programs are found, and their lack is said in words a person can act on.
#include "client/book/server_binaries.h"

#include <gtest/gtest.h>
#include <unistd.h>

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

}  // namespace
}  // namespace heatkeep
