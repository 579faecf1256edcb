#include "reports/whole_file.h"

#include <gtest/gtest.h>

#include <fstream>
#include <stdexcept>

#include "tests/reports/read_back.h"

namespace heatkeep {
namespace {

std::string ErrorOf(const std::function<void()>& act) {
  try {
    act();
  } catch (const std::runtime_error& error) { return error.what(); }
  return "";
}

TEST(WholeFile, ReplacesAnOlderFileInOneStep) {
  OwnFolder folder;
  WriteWholeBytes(folder / "a.txt", "old", 3);
  WriteWholeBytes(folder / "a.txt", "newer", 5);
  EXPECT_EQ(WholeFile(folder / "a.txt"), "newer");
  EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder.path()), {}), 1);
}

TEST(WholeFile, AWriterThatFailsLeavesTheOlderFileAndNoTemporary) {
  OwnFolder folder;
  WriteWholeBytes(folder / "a.txt", "old", 3);
  const std::string error = ErrorOf([&] {
    WriteWholeFile(folder / "a.txt", [](const std::string& temporary) {
      std::ofstream(temporary) << "half";
      throw std::runtime_error("the writer gave up");
    });
  });
  EXPECT_EQ(error, "the writer gave up");
  EXPECT_EQ(WholeFile(folder / "a.txt"), "old");
  EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder.path()), {}), 1);
}

TEST(WholeFile, ErrorsNameThePathAndTheReason) {
  OwnFolder folder;
  const std::string missing = ErrorOf([&] { WriteWholeBytes(folder / "none/a.txt", "x", 1); });
  EXPECT_NE(missing.find("none/a.txt"), std::string::npos) << missing;
  EXPECT_NE(missing.find("No such file"), std::string::npos) << missing;
  const std::string is_folder = ErrorOf([&] { WriteWholeBytes(folder.path().string(), "x", 1); });
  EXPECT_NE(is_folder.find("it is a folder"), std::string::npos) << is_folder;
}

}  // namespace
}  // namespace heatkeep
