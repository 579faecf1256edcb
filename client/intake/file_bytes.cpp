#include "client/intake/file_bytes.h"

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <stdexcept>

namespace heatkeep::intake {

std::string FileBytes(const std::string& path, std::size_t most) {
  const auto refuse = [&path](const std::string& wrong, const std::string& expected) {
    throw std::runtime_error(path + ": " + wrong + "; expected " + expected);
  };
  std::error_code error;
  const auto status = std::filesystem::status(path, error);
  if (!std::filesystem::exists(status)) refuse("there is no such file", "the path of a file");
  if (std::filesystem::is_directory(status)) refuse("this is a folder", "the path of a file");
  const std::string over = "more than " + (most % 1048576 == 0 ? std::to_string(most / 1048576) + " MiB" : std::to_string(most) + " bytes");
  if (std::filesystem::is_regular_file(status)) {
    const auto size = std::filesystem::file_size(path, error);
    if (!error && size > most) refuse(over, "a smaller file");
  }
  errno = 0;
  std::ifstream in(path, std::ios::binary);
  if (!in) refuse(std::string("cannot be opened (") + std::strerror(errno) + ")", "a file that may be read");
  std::string bytes;
  std::string block(std::size_t{1} << 16, '\0');
  while (in.read(block.data(), static_cast<std::streamsize>(block.size())), in.gcount() > 0) {
    bytes.append(block, 0, static_cast<std::size_t>(in.gcount()));
    if (bytes.size() > most) refuse(over, "a smaller file");
  }
  if (in.bad()) refuse("cannot be read to its end", "a file that may be read");
  return bytes;
}

}  // namespace heatkeep::intake
