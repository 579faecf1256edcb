// A queue on a saw's disk: what was acknowledged is there, what was torn is reported and kept, wherever the power went.
#include "client/queue/record_file.h"

#include <gtest/gtest.h>
#include <stdlib.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fstream>

#include "client/queue/crc32.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

struct Queue : testing::Test {
  Queue() {
    std::string made = (fs::temp_directory_path() / "heatkeep-queue-XXXXXX").string();
    folder = mkdtemp(made.data());
    path = folder / "saw-2.queue";
  }
  ~Queue() override { fs::remove_all(folder); }
  std::string Bytes(const fs::path& file) const {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
  }
  void Write(const std::string& bytes) const { std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes; }
  std::string Three() const {
    RecordFile file(path);
    for (const char* text : {"one", "two\n{\"half\": 1}", "three"}) file.Append(text);
    return Bytes(path);
  }
  fs::path folder, path;
};

// "123456789" -> CBF43926: the check value of the catalogued CRC-32/ISO-HDLC (from memory).
TEST(Crc, OfTheNineDigits) {
  EXPECT_EQ(Crc32("123456789"), 0xCBF43926U);
  EXPECT_EQ(Crc32(""), 0U);
}

TEST_F(Queue, GivesBackWhatWasAppendedInOrder) {
  Three();
  RecordFile file(path);
  EXPECT_EQ(file.records(), (std::vector<std::string>{"one", "two\n{\"half\": 1}", "three"}));
  EXPECT_FALSE(file.torn());
}

// The power goes at every byte of the third record: the first two are there, the rest is set aside and said.
TEST_F(Queue, ATailTornAtAnyByteIsReportedAndKeptAndTheRestIsWhole) {
  const std::string whole = Three();
  const std::size_t third = whole.size() - 8 - 5;
  for (std::size_t cut = third + 1; cut < whole.size(); ++cut) {
    Write(whole.substr(0, cut));
    RecordFile file(path);
    EXPECT_EQ(file.records().size(), 2U) << cut;
    ASSERT_TRUE(file.torn()) << cut;
    EXPECT_EQ(file.torn()->offset, static_cast<std::int64_t>(third));
    EXPECT_EQ(Bytes(file.torn()->kept), whole.substr(third, cut - third));
    file.Append("again");
    EXPECT_EQ(file.records().back(), "again");
  }
  RecordFile file(path);
  EXPECT_EQ(file.records(), (std::vector<std::string>{"one", "two\n{\"half\": 1}", "again"}));
  EXPECT_FALSE(file.torn());
}

TEST_F(Queue, ALastRecordWhoseBytesNeverReachedTheDiskIsATornTailToo) {
  std::string whole = Three();
  whole.replace(whole.size() - 5, 5, 5, '\0');
  Write(whole);
  RecordFile file(path);
  EXPECT_EQ(file.records().size(), 2U);
  EXPECT_TRUE(file.torn());
}

TEST_F(Queue, ADamagedRecordThatIsNotTheLastStopsEverythingAndChangesNothing) {
  std::string whole = Three();
  whole[whole.find("one")] = 'x';
  Write(whole);
  try {
    RecordFile file(path);
    ADD_FAILURE() << "it was opened";
  } catch (const QueueError& error) {
    EXPECT_NE(std::string(error.what()).find("the record at byte 8 is damaged and is not the last; 0 before it are whole"),
              std::string::npos)
        << error.what();
  }
  EXPECT_EQ(Bytes(path), whole);
}

TEST_F(Queue, AnotherFileIsNotTakenForOne) {
  Write("tag;grade;section\n");
  EXPECT_THROW(RecordFile file(path), QueueError);
  EXPECT_THROW(RecordFile file(folder / "none" / "q"), QueueError);
  Write("HEAT");  // the power went while it was made
  EXPECT_TRUE(RecordFile(path).records().empty());
}

TEST_F(Queue, TwoProgramsDoNotWriteAtOnce) {
  RecordFile first(path);
  EXPECT_THROW(RecordFile(path, std::chrono::milliseconds(50)), QueueError);
}

// kill -9 while one record after the other is appended: what was acknowledged is there.
TEST_F(Queue, AKilledWriterLosesNothingThatItWasToldIsKept) {
  for (int round = 0; round < 10; ++round) {
    int ends[2];
    ASSERT_EQ(pipe(ends), 0);
    const pid_t child = fork();
    if (child == 0) {
      RecordFile file(path);
      for (int n = 0;; ++n) {
        file.Append(std::string(static_cast<std::size_t>(50 + n), 'r'));
        if (write(ends[1], "k", 1) != 1) _exit(1);
      }
    }
    close(ends[1]);
    std::size_t acknowledged = 0;
    char byte = 0;
    while (acknowledged < 5 && read(ends[0], &byte, 1) == 1) ++acknowledged;
    usleep(static_cast<useconds_t>(round * 150));
    kill(child, SIGKILL);
    while (read(ends[0], &byte, 1) == 1) ++acknowledged;
    waitpid(child, nullptr, 0);
    close(ends[0]);
    static std::size_t before = 0;
    RecordFile file(path);
    EXPECT_GE(file.records().size(), before + acknowledged);
    before = file.records().size();
  }
}

}  // namespace
}  // namespace heatkeep
