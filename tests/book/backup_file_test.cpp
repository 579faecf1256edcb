// The file of a backup: an ordinary tar archive, whole or refused in words.
#include "client/book/backup_file.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <fstream>
#include <sstream>

#include "client/book/book_error.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

struct BackupFile : testing::Test {
  BackupFile() {
    std::string made = (fs::temp_directory_path() / "heatkeep-backup-XXXXXX").string();
    folder = mkdtemp(made.data());
  }
  ~BackupFile() override { fs::remove_all(folder); }
  static BackupFacts Facts() {
    return {.made_at = "2026-03-02T08:00:00Z",
            .program = "0.1.0",
            .schema = 21,
            .server = 150014,
            .happenings = 4711,
            .digest = std::string(64, 'a'),
            .dump_bytes = 0,
            .dump_sha256 = {},
            .persons = {{"mara", {"clerk"}}, {"ines", {"quality", "owner"}}}};
  }
  std::string Bytes(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
  }
  fs::path Write(const std::string& name, const std::string& dump, const BackupFacts& facts = Facts()) {
    BackupWriter writer(folder / name);
    for (std::size_t at = 0; at < dump.size(); at += 1000) writer.Append(std::string_view(dump).substr(at, 1000));
    writer.Finish(facts);
    return folder / name;
  }
  fs::path With(const std::string& name, const std::string& bytes) {
    std::ofstream(folder / name, std::ios::binary) << bytes;
    return folder / name;
  }
  // What the file is refused with when it is read to its end.
  std::string Refused(const fs::path& file) {
    try {
      BackupReader reader(file);
      while (!reader.Next().empty()) {}
    } catch (const BookError& error) {
      EXPECT_EQ(error.kind, BookError::Kind::BadInput);
      return error.what();
    }
    return "";
  }
  fs::path folder;
};

TEST_F(BackupFile, IsReadBackAsItWasWritten) {
  for (const std::string& dump : {std::string(), std::string("x"), std::string(512, 'y'), std::string(123'457, '\0')}) {
    const fs::path file = Write("b" + std::to_string(dump.size()), dump);
    BackupReader reader(file);
    std::string read;
    for (std::string_view bytes; !(bytes = reader.Next()).empty();) read += bytes;
    EXPECT_EQ(read, dump);
    EXPECT_EQ(reader.facts().happenings, 4711);
    EXPECT_EQ(reader.facts().persons.at(1).roles, (std::vector<std::string>{"quality", "owner"}));
    EXPECT_EQ(reader.facts().dump_sha256, Sha256Hex(dump));
    struct stat info {};
    ASSERT_EQ(stat(file.c_str(), &info), 0);
    EXPECT_EQ(info.st_mode & 0777, 0600u);
  }
}

// The other reader of the format: GNU tar.
TEST_F(BackupFile, IsOpenedByAnOrdinaryTar) {
  const fs::path file = Write("b.tar", std::string(3000, 'q'));
  ASSERT_EQ(std::system(("tar -C " + folder.string() + " -xf " + file.string()).c_str()), 0);
  EXPECT_EQ(Bytes(folder / "book.dump"), std::string(3000, 'q'));
  EXPECT_NE(Bytes(folder / "manifest.txt").find("person: ines quality owner\n"), std::string::npos);
}

TEST_F(BackupFile, CutOffAnywhereIsRefused) {
  const std::string whole = Bytes(Write("whole", std::string(5000, 'z')));
  const std::size_t end = whole.find("end: of manifest");
  for (std::size_t length = 0; length < end; length += 97) {
    const std::string wrong = Refused(With("cut", whole.substr(0, length)));
    EXPECT_NE(wrong.find("cut"), std::string::npos) << length << ": " << wrong;
  }
}

TEST_F(BackupFile, WithOneByteChangedAnywhereIsRefused) {
  const std::string whole = Bytes(Write("whole", std::string(1500, 'z')));
  const std::size_t manifest = 512 + 1536 + 512, said = ManifestText(Facts()).size();
  for (std::size_t at = 0; at < manifest + said; ++at) {
    // the dump in steps; not what fills its last block, which nobody reads
    if (at >= 512 && at < 512 + 1500 && at % 29 != 0) continue;
    if (at >= 512 + 1500 && at < 512 + 1536) continue;
    std::string bent = whole;
    bent[at] = static_cast<char>(bent[at] ^ 1);
    const std::string wrong = Refused(With("bent", bent));
    if (wrong.empty()) { EXPECT_GT(at, manifest) << "byte " << at; }
  }
}

TEST_F(BackupFile, OfAnotherKindIsRefused) {
  EXPECT_NE(Refused(folder / "nothing"), "");
  EXPECT_NE(Refused(folder), "");
  EXPECT_NE(Refused(With("text", std::string(4000, 't'))).find("no backup"), std::string::npos);
  BackupFacts wrong = Facts();
  wrong.persons[0].name = "Mara'; drop";
  EXPECT_NE(Refused(Write("name", "d", wrong)).find("cannot be a person's name"), std::string::npos);
  wrong = Facts();
  wrong.persons[0].roles[0] = "superuser";
  EXPECT_NE(Refused(Write("role", "d", wrong)).find("expected clerk, planner"), std::string::npos);
  EXPECT_THROW(ReadManifest("heatkeep backup: 2\n"), BookError);
}

TEST_F(BackupFile, ThatIsThereIsNotOverwrittenAndOneNotFinishedIsNotThere) {
  const fs::path file = Write("once", "d");
  EXPECT_THROW(BackupWriter again(file), BookError);
  {
    BackupWriter never(folder / "never");
    never.Append("half");
    EXPECT_THROW(BackupWriter twice(folder / "never"), BookError) << "two at once";
  }
  EXPECT_FALSE(fs::exists(folder / "never"));
  EXPECT_FALSE(fs::exists(folder / "never.part"));
}

// 8 GiB is where a length no longer fits the octal digits of a header: a sparse dump of that size.
TEST_F(BackupFile, OfMoreThanEightGibibytesHasAHeaderThatReadsBack) {
  const fs::path file = Write("big", "d");
  std::string header = Bytes(file).substr(0, 512);
  const std::int64_t huge = (std::int64_t{1} << 33) + 512;
  // the header of such a length, made as the writer makes it, read as the reader reads it: the file is cut, and says so
  header[124] = '\x80';
  for (std::size_t i = 125; i < 136; ++i) header[i] = '\0';
  for (std::size_t i = 135, n = static_cast<std::size_t>(huge); n > 0; --i, n /= 256) header[i] = static_cast<char>(n % 256);
  unsigned sum = 8 * ' ';
  for (std::size_t i = 0; i < 512; ++i)
    if (i < 148 || i >= 156) sum += static_cast<unsigned char>(header[i]);
  std::ostringstream octal;
  octal << std::oct << sum;
  header.replace(148, 8, std::string(6 - octal.str().size(), '0') + octal.str() + '\0' + ' ');
  EXPECT_NE(Refused(With("huge", header + std::string(2000, 'd'))).find("cut off"), std::string::npos);
}

}  // namespace
}  // namespace heatkeep
