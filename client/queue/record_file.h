// A file that only grows, for what must not be lost when the power goes: records of any bytes, in order.
//
//   file     "HEATKQ1\n", then records
//   record   length of the bytes (32 bits, little end first), their CRC-32 (the same), the bytes
//
// Append returns when the record is on the disk (fsync of the file; of its folder too when it was made). A record that
// was being written when the power went is a torn tail: shorter than it says, or the very last with a wrong sum. It was
// never acknowledged. It is reported, and set aside in a file of its own (NAME.torn-OFFSET) before anything is appended;
// nothing is dropped silently. A record that is wrong and not the last means a damaged disk: the file is then left as it
// is, and nothing is appended or read beyond it until a person has looked.
//
// Open holds a lock on the file for as long as it lives; a second one waits at most `patience`.
#pragma once

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

namespace heatkeep {

struct QueueError : std::runtime_error {
  using std::runtime_error::runtime_error;
};

struct TornTail {
  std::int64_t offset = 0, bytes = 0;
  std::filesystem::path kept;  // where its bytes are now
};

class RecordFile {
 public:
  // Makes the file where there is none. Throws QueueError: cannot be opened or locked, is no such file, is damaged.
  explicit RecordFile(const std::filesystem::path& path, std::chrono::milliseconds patience = std::chrono::seconds(10));
  ~RecordFile();
  RecordFile(const RecordFile&) = delete;
  RecordFile& operator=(const RecordFile&) = delete;

  const std::vector<std::string>& records() const { return records_; }
  const std::optional<TornTail>& torn() const { return torn_; }  // found, and set aside, when it was opened

  // On the disk when it returns. Throws QueueError; the record is then not in the file, or a torn tail of it.
  void Append(const std::string& bytes);

 private:
  void ReadAll();
  void SetAside(std::size_t offset, const std::string& bytes);
  void Sync(int fd, const std::string& what) const;
  [[noreturn]] void Fail(const std::string& what) const;  // with errno

  std::filesystem::path path_;
  int fd_ = -1;
  std::vector<std::string> records_;
  std::optional<TornTail> torn_;
};

}  // namespace heatkeep
