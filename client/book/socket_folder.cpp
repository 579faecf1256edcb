#include "client/book/socket_folder.h"

#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <string>
#include <system_error>

namespace heatkeep {
namespace {

constexpr std::size_t kSocketPathLimit = 107;
const std::string kName = "/heatkeep-XXXXXX";
const std::string kSocket = "/.s.PGSQL.5432";

// Plain characters only: the path ends up in a setting that is a comma-separated list.
bool Usable(const std::string& folder) {
  const bool plain = std::all_of(folder.begin(), folder.end(), [](unsigned char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '/' || c == '-' || c == '_' || c == '.';
  });
  struct stat info {};
  return plain && folder.starts_with('/') && folder.size() + kName.size() + kSocket.size() <= kSocketPathLimit &&
      lstat(folder.c_str(), &info) == 0 && S_ISDIR(info.st_mode) && info.st_uid == geteuid() && (info.st_mode & 0022) == 0 &&
      access(folder.c_str(), W_OK | X_OK) == 0;
}

std::string Base() {
  if (geteuid() == 0) return Usable("/run") ? "/run" : "/tmp";
  const char* runtime = std::getenv("XDG_RUNTIME_DIR");
  return runtime && Usable(runtime) ? runtime : "/tmp";
}

}  // namespace

std::filesystem::path MakeSocketFolder(const Account& server) {
  std::string folder = Base() + kName;
  if (!mkdtemp(folder.data())) throw std::system_error(errno, std::generic_category(), folder + " cannot be made");
  if (geteuid() == 0 && (lchown(folder.c_str(), server.uid, server.gid) != 0 || chmod(folder.c_str(), 0711) != 0))
    throw std::system_error(errno, std::generic_category(), folder + " cannot be handed to " + server.name);
  return folder;
}

void RemoveSocketFolder(const std::filesystem::path& folder, const Account& server) {
  if (folder.empty() || !folder.filename().string().starts_with("heatkeep-")) return;
  {
    const FileAccessAs as(server);
    unlink((folder.string() + kSocket).c_str());
    unlink((folder.string() + kSocket + ".lock").c_str());
  }
  rmdir(folder.c_str());
}

}  // namespace heatkeep
