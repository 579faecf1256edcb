// Loaded into a server before everything else: no file of it grows while the file `full` lies in the folder HEATKEEP_BAD_GROUND (holding
// "data": its log of writes still may), and its clock is off by the seconds in the file `clock`. What is there already can be written over,
// as on a disk that is really full. Works for whoever runs the tests.
#include <dlfcn.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <sys/time.h>
#include <sys/uio.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <string>

namespace {

template <typename Function>
Function Real(const char* name) {
  return reinterpret_cast<Function>(dlsym(RTLD_NEXT, name));
}

// What the file of that name holds; empty where there is none.
std::string Ground(const char* name) {
  const char* folder = std::getenv("HEATKEEP_BAD_GROUND");
  if (!folder) return {};
  const int fd = open((std::string(folder) + "/" + name).c_str(), O_RDONLY | O_CLOEXEC);
  if (fd < 0) return {};
  char text[64];
  const ssize_t n = read(fd, text, sizeof text);
  close(fd);
  return {text, static_cast<std::size_t>(n < 0 ? 0 : n)};
}

bool NoRoom(int fd, off_t end) {
  const std::string full = Ground("full");
  if (full.empty()) return false;
  char path[512];
  const ssize_t n = readlink(("/proc/self/fd/" + std::to_string(fd)).c_str(), path, sizeof path);
  const std::string file(path, static_cast<std::size_t>(n < 0 ? 0 : n));
  if (file.find("/cluster/") == std::string::npos || (full == "data" && file.find("/pg_wal/") != std::string::npos)) return false;
  struct stat info {};
  return fstat(fd, &info) == 0 && end > info.st_size;
}

template <typename Write>
ssize_t IfThereIsRoom(int fd, off_t end, Write write_it) {
  if (!NoRoom(fd, end)) return write_it();
  errno = ENOSPC;
  return -1;
}

off_t EndOf(const iovec* parts, int count, off_t at) {
  for (int i = 0; i < count; ++i) at += static_cast<off_t>(parts[i].iov_len);
  return at;
}

long Off() { return std::atol(Ground("clock").c_str()); }

}  // namespace

extern "C" {

ssize_t pwrite(int fd, const void* bytes, std::size_t size, off_t at) {
  static const auto real = Real<ssize_t (*)(int, const void*, std::size_t, off_t)>("pwrite");
  return IfThereIsRoom(fd, at + static_cast<off_t>(size), [&] { return real(fd, bytes, size, at); });
}

ssize_t pwrite64(int fd, const void* bytes, std::size_t size, off64_t at) {
  static const auto real = Real<ssize_t (*)(int, const void*, std::size_t, off64_t)>("pwrite64");
  return IfThereIsRoom(fd, at + static_cast<off_t>(size), [&] { return real(fd, bytes, size, at); });
}

ssize_t pwritev(int fd, const iovec* parts, int count, off_t at) {
  static const auto real = Real<ssize_t (*)(int, const iovec*, int, off_t)>("pwritev");
  return IfThereIsRoom(fd, EndOf(parts, count, at), [&] { return real(fd, parts, count, at); });
}

ssize_t pwritev64(int fd, const iovec* parts, int count, off64_t at) {
  static const auto real = Real<ssize_t (*)(int, const iovec*, int, off64_t)>("pwritev64");
  return IfThereIsRoom(fd, EndOf(parts, count, at), [&] { return real(fd, parts, count, at); });
}

int gettimeofday(timeval* now, void* zone) noexcept {
  static const auto real = Real<int (*)(timeval*, void*)>("gettimeofday");
  const int answer = real(now, zone);
  if (now) now->tv_sec += Off();
  return answer;
}

int clock_gettime(clockid_t which, timespec* now) noexcept {
  static const auto real = Real<int (*)(clockid_t, timespec*)>("clock_gettime");
  const int answer = real(which, now);
  if (which == CLOCK_REALTIME) now->tv_sec += Off();
  return answer;
}

}  // extern "C"
