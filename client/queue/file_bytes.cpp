#include "client/queue/file_bytes.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>

namespace heatkeep {

std::string NumberBytes(std::uint32_t n) {
  std::string bytes;
  for (unsigned shift = 0; shift < 32; shift += 8) bytes += static_cast<char>((n >> shift) & 0xFFU);
  return bytes;
}

std::uint32_t NumberAt(std::string_view bytes, std::size_t at) {
  std::uint32_t n = 0;
  for (unsigned i = 0; i < 4; ++i) n |= static_cast<std::uint32_t>(static_cast<unsigned char>(bytes[at + i])) << (8 * i);
  return n;
}

bool WriteAll(int fd, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t n = write(fd, bytes.data(), bytes.size());
    if (n < 0 && errno == EINTR) continue;
    if (n <= 0) return false;
    bytes.remove_prefix(static_cast<std::size_t>(n));
  }
  return true;
}

bool SyncFolderOf(const std::filesystem::path& file) {
  const std::filesystem::path folder = file.has_parent_path() ? file.parent_path() : ".";
  const int dir = open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (dir < 0) return false;
  const bool safe = fsync(dir) == 0;
  const int why = errno;
  close(dir);
  errno = why;
  return safe;
}

}  // namespace heatkeep
