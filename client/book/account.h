// Accounts of the operating system: who runs this program, and who runs the database server for it.
#pragma once

#include <sys/types.h>

#include <string>
#include <vector>

namespace heatkeep {

struct Account {
  uid_t uid = 0;
  gid_t gid = 0;
  std::vector<gid_t> groups;
  std::string name;
};

// Throws BookError(BadInput) when this process runs under a number that has no name.
Account OwnAccount();

// Who the server runs as: the account itself, but for root the unprivileged account `postgres`, because the
// server refuses to run as root. Throws BookError(NoServer) when there is no such account.
Account ServerAccount();

// The name of `uid`, or its digits when it has none.
std::string NameOfUser(uid_t uid);

// While it lives, this thread touches files and /proc as `account` would, no more and no less; other threads
// are not affected. So root follows no link laid out by the server's account, and sees its processes even in
// a container without the right to trace.
class FileAccessAs {
 public:
  explicit FileAccessAs(const Account& account);
  ~FileAccessAs();
  FileAccessAs(const FileAccessAs&) = delete;
  FileAccessAs& operator=(const FileAccessAs&) = delete;

 private:
  uid_t uid_;
  gid_t gid_;
};

}  // namespace heatkeep
