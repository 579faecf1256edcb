// A file kept whole: the last one that was written to its end is there, and one that is not whole is told and never used.
#include "client/queue/kept_file.h"

#include <gtest/gtest.h>
#include <stdlib.h>

#include <fstream>

#include "client/queue/record_file.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

struct KeptFile : testing::Test {
  KeptFile() {
    std::string made = (fs::temp_directory_path() / "heatkeep-whole-XXXXXX").string();
    folder = mkdtemp(made.data());
    path = folder / "saw-2.queue.sheets";
  }
  ~KeptFile() override { fs::remove_all(folder); }
  std::string Bytes() const {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
  }
  void Write(const std::string& bytes) const { std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes; }
  std::string Refused() const {
    try {
      ReadKeptFile(path, "sheets");
    } catch (const QueueError& error) { return error.what(); }
    return "was not refused";
  }
  fs::path folder, path;
};

TEST_F(KeptFile, GivesBackWhatWasWrittenLast) {
  EXPECT_EQ(ReadKeptFile(path, "sheets"), std::nullopt);
  WriteKeptFile(path, "sheets", "one");
  WriteKeptFile(path, "sheets", std::string("two\0\n", 5));
  EXPECT_EQ(ReadKeptFile(path, "sheets"), std::string("two\0\n", 5));
  EXPECT_FALSE(fs::exists(path.string() + ".new"));
  RemoveKeptFile(path);
  RemoveKeptFile(path);
  EXPECT_EQ(ReadKeptFile(path, "sheets"), std::nullopt);
}

TEST_F(KeptFile, ThatWasHalfWrittenWhenThePowerWentLeavesTheOneBefore) {
  WriteKeptFile(path, "sheets", "the one before");
  std::ofstream(path.string() + ".new") << "HEATKW1 she";
  EXPECT_EQ(ReadKeptFile(path, "sheets"), "the one before");
  WriteKeptFile(path, "sheets", "the next one");
  EXPECT_EQ(ReadKeptFile(path, "sheets"), "the next one");
}

TEST_F(KeptFile, CutShortAnywhereOrLongerThanItSaysIsRefused) {
  WriteKeptFile(path, "sheets", "all of it");
  const std::string whole = Bytes();
  for (std::size_t length = 0; length < whole.size(); ++length) {
    Write(whole.substr(0, length));
    EXPECT_THROW(ReadKeptFile(path, "sheets"), QueueError) << length;
  }
  Write(whole + "x");
  EXPECT_NE(Refused().find("cut short"), std::string::npos) << Refused();
}

TEST_F(KeptFile, WithAnyByteChangedIsRefused) {
  WriteKeptFile(path, "sheets", "all of it");
  const std::string whole = Bytes();
  for (std::size_t at = 0; at < whole.size(); ++at) {
    std::string other = whole;
    other[at] = static_cast<char>(other[at] ^ 0x20);
    Write(other);
    EXPECT_THROW(ReadKeptFile(path, "sheets"), QueueError) << at;
  }
}

TEST_F(KeptFile, OfAnotherKindOrForeignIsRefusedWithWhatIsExpected) {
  WriteKeptFile(path, "deed", "{}");
  EXPECT_NE(Refused().find("expected a file of kept sheets, and this is none"), std::string::npos) << Refused();
  Write("tag;grade\n");
  EXPECT_NE(Refused().find("expected a file of kept sheets"), std::string::npos);
}

}  // namespace
}  // namespace heatkeep
