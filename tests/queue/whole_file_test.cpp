// A file kept whole: the last one that was written to its end is there, and one that is not whole is told and never used.
#include "client/queue/whole_file.h"

#include <gtest/gtest.h>
#include <stdlib.h>

#include <fstream>

#include "client/queue/record_file.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

struct WholeFile : testing::Test {
  WholeFile() {
    std::string made = (fs::temp_directory_path() / "heatkeep-whole-XXXXXX").string();
    folder = mkdtemp(made.data());
    path = folder / "saw-2.queue.sheets";
  }
  ~WholeFile() override { fs::remove_all(folder); }
  std::string Bytes() const {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
  }
  void Write(const std::string& bytes) const { std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes; }
  std::string Refused() const {
    try {
      ReadWholeFile(path, "sheets");
    } catch (const QueueError& error) { return error.what(); }
    return "was not refused";
  }
  fs::path folder, path;
};

TEST_F(WholeFile, GivesBackWhatWasWrittenLast) {
  EXPECT_EQ(ReadWholeFile(path, "sheets"), std::nullopt);
  WriteWholeFile(path, "sheets", "one");
  WriteWholeFile(path, "sheets", std::string("two\0\n", 5));
  EXPECT_EQ(ReadWholeFile(path, "sheets"), std::string("two\0\n", 5));
  EXPECT_FALSE(fs::exists(path.string() + ".new"));
  RemoveWholeFile(path);
  RemoveWholeFile(path);
  EXPECT_EQ(ReadWholeFile(path, "sheets"), std::nullopt);
}

TEST_F(WholeFile, ThatWasHalfWrittenWhenThePowerWentLeavesTheOneBefore) {
  WriteWholeFile(path, "sheets", "the one before");
  std::ofstream(path.string() + ".new") << "HEATKW1 she";
  EXPECT_EQ(ReadWholeFile(path, "sheets"), "the one before");
  WriteWholeFile(path, "sheets", "the next one");
  EXPECT_EQ(ReadWholeFile(path, "sheets"), "the next one");
}

TEST_F(WholeFile, CutShortAnywhereOrLongerThanItSaysIsRefused) {
  WriteWholeFile(path, "sheets", "all of it");
  const std::string whole = Bytes();
  for (std::size_t length = 0; length < whole.size(); ++length) {
    Write(whole.substr(0, length));
    EXPECT_THROW(ReadWholeFile(path, "sheets"), QueueError) << length;
  }
  Write(whole + "x");
  EXPECT_NE(Refused().find("cut short"), std::string::npos) << Refused();
}

TEST_F(WholeFile, WithAnyByteChangedIsRefused) {
  WriteWholeFile(path, "sheets", "all of it");
  const std::string whole = Bytes();
  for (std::size_t at = 0; at < whole.size(); ++at) {
    std::string other = whole;
    other[at] = static_cast<char>(other[at] ^ 0x20);
    Write(other);
    EXPECT_THROW(ReadWholeFile(path, "sheets"), QueueError) << at;
  }
}

TEST_F(WholeFile, OfAnotherKindOrForeignIsRefusedWithWhatIsExpected) {
  WriteWholeFile(path, "deed", "{}");
  EXPECT_NE(Refused().find("expected a file of kept sheets, and this is none"), std::string::npos) << Refused();
  Write("tag;grade\n");
  EXPECT_NE(Refused().find("expected a file of kept sheets"), std::string::npos);
}

}  // namespace
}  // namespace heatkeep
