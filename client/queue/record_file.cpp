#include "client/queue/record_file.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstring>
#include <thread>

#include "client/queue/crc32.h"
#include "client/queue/file_bytes.h"

namespace heatkeep {
namespace {

constexpr std::string_view kHead = "HEATKQ1\n";
constexpr std::size_t kFrame = 8;
constexpr std::uint32_t kLongest = 16U << 20U;

}  // namespace

void RecordFile::Fail(const std::string& what) const { throw QueueError(path_.string() + ": " + what + ": " + std::strerror(errno)); }

void RecordFile::Sync(int fd, const std::string& what) const {
  if (fsync(fd) != 0) Fail(what + " cannot be made safe on the disk");
}

RecordFile::RecordFile(const std::filesystem::path& path, std::chrono::milliseconds patience) : path_(path) {
  fd_ = open(path.c_str(), O_RDWR | O_APPEND | O_CREAT | O_CLOEXEC, 0600);
  if (fd_ < 0) Fail("cannot be opened");
  try {
    const auto until = std::chrono::steady_clock::now() + patience;
    while (flock(fd_, LOCK_EX | LOCK_NB) != 0) {
      if (errno != EWOULDBLOCK) Fail("cannot be locked");
      if (std::chrono::steady_clock::now() >= until)
        throw QueueError(path.string() + ": another program works with it; try again when it has ended");
      std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
    ReadAll();
  } catch (...) {
    close(fd_);
    throw;
  }
}

RecordFile::~RecordFile() { close(fd_); }

void RecordFile::ReadAll() {
  std::string all;
  std::array<char, 65536> part{};
  for (off_t at = 0;;) {
    const ssize_t n = pread(fd_, part.data(), part.size(), at);
    if (n < 0) Fail("cannot be read");
    if (n == 0) break;
    all.append(part.data(), static_cast<std::size_t>(n));
    at += n;
  }
  if (all.size() < kHead.size() && std::string_view(kHead).starts_with(all)) {  // new, or the power went while it was made
    if (ftruncate(fd_, 0) != 0 || !WriteAll(fd_, kHead)) Fail("cannot be written");
    Sync(fd_, "it");
    if (!SyncFolderOf(path_)) Fail("its folder cannot be made safe on the disk");
    return;
  }
  if (!all.starts_with(kHead)) throw QueueError(path_.string() + ": this is no queue of a saw; expected one, or a new name");
  std::size_t at = kHead.size();
  while (at < all.size()) {
    const std::size_t left = all.size() - at;
    const std::uint32_t length = left < kFrame ? 0 : NumberAt(all, at);
    const bool short_one = left < kFrame || length > left - kFrame;
    const std::size_t end = short_one ? all.size() : at + kFrame + length;
    if (!short_one && Crc32(std::string_view(all).substr(at + kFrame, length)) == NumberAt(all, at + 4) && length > 0) {
      records_.emplace_back(all, at + kFrame, length);
      at = end;
      continue;
    }
    if (left >= kFrame && (length > kLongest || (!short_one && end < all.size())) && all.find_first_not_of('\0', at) != std::string::npos)
      throw QueueError(path_.string() + ": the record at byte " + std::to_string(at) + " is damaged and is not the last; " +
                       std::to_string(records_.size()) + " before it are whole; copy the file and have a person look at it");
    SetAside(at, all.substr(at));
    return;
  }
}

void RecordFile::SetAside(std::size_t offset, const std::string& bytes) {
  torn_ = {static_cast<std::int64_t>(offset), static_cast<std::int64_t>(bytes.size()), path_.string() + ".torn-" + std::to_string(offset)};
  for (int n = 2; std::filesystem::exists(torn_->kept); ++n)
    torn_->kept = path_.string() + ".torn-" + std::to_string(offset) + "-" + std::to_string(n);
  const int aside = open(torn_->kept.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
  if (aside < 0 || !WriteAll(aside, bytes)) Fail("its torn tail cannot be set aside");
  Sync(aside, "its torn tail");
  close(aside);
  if (ftruncate(fd_, static_cast<off_t>(offset)) != 0) Fail("its torn tail cannot be taken off");
  Sync(fd_, "it");
}

void RecordFile::Append(const std::string& bytes) {
  if (bytes.empty() || bytes.size() > kLongest)
    throw QueueError(path_.string() + ": a record of " + std::to_string(bytes.size()) + " bytes cannot be kept");
  const std::string whole = NumberBytes(static_cast<std::uint32_t>(bytes.size())) + NumberBytes(Crc32(bytes)) + bytes;
  if (!WriteAll(fd_, whole)) Fail("cannot be written");
  Sync(fd_, "a record");
  records_.push_back(bytes);
}

}  // namespace heatkeep
