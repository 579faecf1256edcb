// One program at a time: a lock on a file, given up when the object or the program ends. Not inherited by
// programs that are started meanwhile.
#pragma once

#include <chrono>
#include <filesystem>
#include <optional>

namespace heatkeep {

class FileLock {
 public:
  // Waits for it; throws BookError(Busy) after `patience`, BookError(NotYours) when the file cannot be
  // opened.
  static FileLock Wait(const std::filesystem::path& file, std::chrono::seconds patience);
  // Nothing when somebody else has it.
  static std::optional<FileLock> Try(const std::filesystem::path& file);

  FileLock(FileLock&& other) noexcept;
  FileLock& operator=(FileLock&&) = delete;
  ~FileLock();

 private:
  explicit FileLock(int fd) : fd_(fd) {}
  int fd_;
};

}  // namespace heatkeep
