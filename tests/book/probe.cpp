#include "tests/book/probe.h"

#include <pwd.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdio>
#include <fstream>
#include <system_error>

namespace heatkeep {

namespace fs = std::filesystem;

std::vector<std::string> AccountsToTry() { return geteuid() == 0 ? std::vector<std::string>{"", "nobody"} : std::vector<std::string>{""}; }

Probe::Probe(const std::string& account, bool hasty) : account_(account), hasty_(hasty) {
  std::string folder = (fs::temp_directory_path() / "heatkeep-probe-XXXXXX").string();
  if (!mkdtemp(folder.data())) throw std::system_error(errno, std::generic_category(), folder);
  folder_ = folder;
  fs::copy_file(CLUSTER_PROBE, folder_ / "probe");
  if (geteuid() != 0) return;
  fs::permissions(folder_, static_cast<fs::perms>(0755));
  const passwd* user = account.empty() ? nullptr : getpwnam(account.c_str());
  if (user && chown(folder.c_str(), user->pw_uid, user->pw_gid) != 0) throw std::system_error(errno, std::generic_category(), folder);
}

Probe::~Probe() {
  Run("stop");
  std::error_code ignored;
  fs::remove_all(folder_, ignored);
}

FILE* Probe::Begin(const std::string& word, const std::string& environment) const {
  std::string command =
      "exec env -i PATH=/usr/bin:/bin HEATKEEP_HOME='" + home().string() + "' " + environment + (hasty_ ? " PROBE_HASTY=1 " : " ");
  if (!account_.empty()) command += "setpriv --reuid=" + account_ + " --regid=$(id -g " + account_ + ") --clear-groups ";
  command += "'" + (folder_ / "probe").string() + "' " + word + " 2>&1";
  FILE* begun = popen(command.c_str(), "r");
  if (!begun) throw std::system_error(errno, std::generic_category(), "popen");
  return begun;
}

Said Probe::End(FILE* begun) {
  Said said;
  std::array<char, 4096> buffer{};
  while (const std::size_t got = fread(buffer.data(), 1, buffer.size(), begun)) said.text.append(buffer.data(), got);
  const int status = pclose(begun);
  said.status = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
  return said;
}

Said Probe::Run(const std::string& word, const std::string& environment) const { return End(Begin(word, environment)); }

std::vector<Said> Probe::RunAtOnce(const std::string& word, int times) const {
  std::vector<FILE*> begun;
  for (int i = 0; i < times; ++i) begun.push_back(Begin(word));
  std::vector<Said> said;
  for (FILE* one : begun) said.push_back(End(one));
  return said;
}

pid_t Probe::Postmaster() const {
  std::ifstream in(data() / "postmaster.pid");
  pid_t pid = 0;
  in >> pid;
  return pid;
}

uid_t Probe::ServerUid() const {
  struct stat info {};
  if (stat(data().c_str(), &info) != 0) throw std::system_error(errno, std::generic_category(), data().string());
  return info.st_uid;
}

std::string Probe::ServerAccountName() const { return getpwuid(ServerUid())->pw_name; }

}  // namespace heatkeep
