#include "client/queue/kept_file.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <fstream>
#include <iterator>

#include "client/queue/crc32.h"
#include "client/queue/file_bytes.h"
#include "client/queue/record_file.h"

namespace heatkeep {
namespace {

constexpr std::size_t kFrame = 8;

[[noreturn]] void Fail(const std::filesystem::path& path, const std::string& what) {
  throw QueueError(path.string() + ": " + what + ": " + std::strerror(errno));
}

std::string HeadOf(std::string_view kind) { return "HEATKW1 " + std::string(kind) + "\n"; }

}  // namespace

void WriteKeptFile(const std::filesystem::path& path, std::string_view kind, std::string_view bytes) {
  const std::filesystem::path fresh = path.string() + ".new";
  const int fd = open(fresh.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600);
  if (fd < 0) Fail(fresh, "cannot be opened");
  const std::string head = HeadOf(kind) + NumberBytes(static_cast<std::uint32_t>(bytes.size())) + NumberBytes(Crc32(bytes));
  const bool written = WriteAll(fd, head) && WriteAll(fd, bytes) && fsync(fd) == 0;
  const int why = errno;
  close(fd);
  errno = why;
  if (!written) Fail(fresh, "cannot be written");
  if (rename(fresh.c_str(), path.c_str()) != 0 || !SyncFolderOf(path)) Fail(path, "cannot be put in its place");
}

std::optional<std::string> ReadKeptFile(const std::filesystem::path& path, std::string_view kind) {
  std::error_code none;
  if (!std::filesystem::exists(path, none) && !none) return std::nullopt;
  std::ifstream in(path, std::ios::binary);
  const std::string all{std::istreambuf_iterator<char>(in), {}};
  if (!in) Fail(path, "cannot be read");
  const std::string head = HeadOf(kind);
  const std::string wants = ": expected a file of kept " + std::string(kind);
  if (!all.starts_with(head)) throw QueueError(path.string() + wants + ", and this is none");
  if (all.size() < head.size() + kFrame || all.size() - head.size() - kFrame != NumberAt(all, head.size()))
    throw QueueError(path.string() + wants + " that is whole, and this one is cut short");
  std::string bytes = all.substr(head.size() + kFrame);
  if (Crc32(bytes) != NumberAt(all, head.size() + 4)) throw QueueError(path.string() + wants + " that is whole, and this one is damaged");
  return bytes;
}

void RemoveKeptFile(const std::filesystem::path& path) {
  if (unlink(path.c_str()) != 0 && errno != ENOENT) Fail(path, "cannot be removed");
}

}  // namespace heatkeep
