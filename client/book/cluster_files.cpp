#include "client/book/cluster_files.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <fstream>
#include <sstream>
#include <system_error>

#include "client/book/book_error.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void Fail(const fs::path& file) {
  throw std::system_error(errno, std::generic_category(), file.string() + " cannot be written");
}

void WriteAll(int fd, const std::string& text, const fs::path& file) {
  for (std::size_t done = 0; done < text.size();) {
    const ssize_t wrote = write(fd, text.data() + done, text.size() - done);
    if (wrote < 0 && errno != EINTR) Fail(file);
    if (wrote > 0) done += static_cast<std::size_t>(wrote);
  }
  if (fsync(fd) != 0) Fail(file);
}

void SyncFolder(const fs::path& folder) {
  const int fd = open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (fd < 0) Fail(folder);
  fsync(fd);
  close(fd);
}

std::string IdentityLine(const std::string& os_user, const std::string& person) {
  for (const std::string* name : {&os_user, &person})
    if (name->empty() || name->starts_with('/') || name->find_first_of("\"\\\n\r\t ,") != std::string::npos)
      throw BookError(BookError::Kind::BadInput, "'" + *name + "' cannot be the name of an account in a book");
  return "heatkeep \"" + os_user + "\" \"" + person + "\"\n";
}

}  // namespace

void ReplaceFile(const fs::path& file, const std::string& text, unsigned mode, const Account& account) {
  const FileAccessAs as(account);
  const fs::path fresh = file.string() + ".new";
  unlink(fresh.c_str());
  const int fd = open(fresh.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, mode);
  if (fd < 0) Fail(fresh);
  try {
    WriteAll(fd, text, fresh);
  } catch (...) {
    close(fd);
    unlink(fresh.c_str());
    throw;
  }
  close(fd);
  if (rename(fresh.c_str(), file.c_str()) != 0) Fail(file);
  SyncFolder(file.parent_path());
}

std::string ReadFileAs(const fs::path& file, const Account& account) {
  const FileAccessAs as(account);
  std::ifstream in(file, std::ios::binary);
  if (!in) throw std::system_error(errno, std::generic_category(), file.string() + " cannot be read");
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

void WriteClusterFiles(const fs::path& data, const std::vector<std::string>& settings, const Account& maker, const Account& server) {
  std::string conf =
      "# A book of one's own: reached through its socket only, and nothing acknowledged is lost.\n"
      "listen_addresses = ''\n"
      "port = 5432\n"
      "unix_socket_permissions = 0777\n"
      "password_encryption = 'scram-sha-256'\n"
      "fsync = on\n"
      "full_page_writes = on\n"
      "synchronous_commit = on\n"
      "max_connections = 100\n"
      "cluster_name = 'heatkeep'\n"
      "log_line_prefix = '%m [%p] %u '\n";
  for (const std::string& line : settings) conf += line + '\n';
  ReplaceFile(data / "heatkeep.conf", conf, 0600, server);
  const std::string standard = ReadFileAs(data / "postgresql.conf", server);
  ReplaceFile(data / "postgresql.conf", standard + "\ninclude 'heatkeep.conf'\n", 0600, server);
  ReplaceFile(data / "pg_hba.conf", "local all all peer map=heatkeep\n", 0600, server);
  ReplaceFile(data / "pg_ident.conf", IdentityLine(maker.name, kAdminLogin), 0600, server);
}

bool AddIdentity(const fs::path& data, const std::string& os_user, const std::string& person, const Account& server) {
  const std::string line = IdentityLine(os_user, person);
  std::string text = ReadFileAs(data / "pg_ident.conf", server);
  if (text.starts_with(line) || text.find('\n' + line) != std::string::npos) return false;
  if (!text.empty() && text.back() != '\n') text += '\n';
  ReplaceFile(data / "pg_ident.conf", text + line, 0600, server);
  return true;
}

}  // namespace heatkeep
