#include "reports/whole_file.h"

#include <fcntl.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <stdexcept>

namespace heatkeep {
namespace {

std::runtime_error Refused(const std::string& path, const std::string& why) {
  return std::runtime_error(path + ": not written: " + why + "; expected a folder that is there, with room and leave to write");
}

void FlushToDisk(const std::string& path, const std::string& shown) {
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (file < 0) throw Refused(shown, std::strerror(errno));
  const int result = ::fsync(file);
  const int why = errno;
  ::close(file);
  if (result != 0) throw Refused(shown, std::strerror(why));
}

}  // namespace

void WriteWholeFile(const std::string& path, const std::function<void(const std::string&)>& write) {
  static std::atomic<unsigned> count{0};
  if (std::filesystem::is_directory(path)) throw std::runtime_error(path + ": not written: it is a folder; expected the name of a file");
  const std::string temporary = path + ".part-" + std::to_string(::getpid()) + "-" + std::to_string(count.fetch_add(1));
  try {
    write(temporary);
    FlushToDisk(temporary, path);
    if (std::rename(temporary.c_str(), path.c_str()) != 0) throw Refused(path, std::strerror(errno));
  } catch (...) {
    std::remove(temporary.c_str());
    throw;
  }
}

void WriteWholeBytes(const std::string& path, const char* bytes, std::size_t size) {
  WriteWholeFile(path, [&](const std::string& temporary) {
    errno = 0;
    std::ofstream out(temporary, std::ios::binary);
    out.write(bytes, static_cast<std::streamsize>(size));
    out.close();
    if (!out) throw Refused(path, errno != 0 ? std::strerror(errno) : "the disk did not take all of it");
  });
}

}  // namespace heatkeep
