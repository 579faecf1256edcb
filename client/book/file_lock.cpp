#include "client/book/file_lock.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>
#include <thread>
#include <utility>

#include "client/book/book_error.h"

namespace heatkeep {

std::optional<FileLock> FileLock::Try(const std::filesystem::path& file) {
  const int fd = open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0600);
  if (fd < 0)
    throw BookError(
        BookError::Kind::NotYours,
        file.string() + " cannot be opened: " + std::generic_category().message(errno) + "; expected a folder this account may write in");
  if (flock(fd, LOCK_EX | LOCK_NB) == 0) return FileLock(fd);
  close(fd);
  return std::nullopt;
}

FileLock FileLock::Wait(const std::filesystem::path& file, std::chrono::seconds patience) {
  const auto until = std::chrono::steady_clock::now() + patience;
  do {
    if (auto lock = Try(file)) return std::move(*lock);
    std::this_thread::sleep_for(std::chrono::milliseconds(20));
  } while (std::chrono::steady_clock::now() < until);
  throw BookError(BookError::Kind::Busy,
                  "another program is starting or stopping the book and does not finish (" + file.string() + " is held)");
}

FileLock::FileLock(FileLock&& other) noexcept : fd_(std::exchange(other.fd_, -1)) {}

FileLock::~FileLock() {
  if (fd_ >= 0) close(fd_);
}

}  // namespace heatkeep
