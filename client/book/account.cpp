#include "client/book/account.h"

#include <grp.h>
#include <pwd.h>
#include <sys/fsuid.h>
#include <unistd.h>

#include <array>

#include "client/book/book_error.h"

namespace heatkeep {
namespace {

Account FromEntry(const passwd& entry) {
  Account account{entry.pw_uid, entry.pw_gid, {}, entry.pw_name};
  int count = 64;
  account.groups.resize(static_cast<std::size_t>(count));
  if (getgrouplist(entry.pw_name, entry.pw_gid, account.groups.data(), &count) < 0) {
    account.groups.resize(static_cast<std::size_t>(count));
    getgrouplist(entry.pw_name, entry.pw_gid, account.groups.data(), &count);
  }
  account.groups.resize(static_cast<std::size_t>(count));
  return account;
}

}  // namespace

Account OwnAccount() {
  std::array<char, 16384> buffer{};
  passwd entry{};
  passwd* found = nullptr;
  getpwuid_r(geteuid(), &entry, buffer.data(), buffer.size(), &found);
  if (!found)
    throw BookError(BookError::Kind::BadInput,
                    "the account number " + std::to_string(geteuid()) + " has no name on this machine; a private book needs one");
  return FromEntry(entry);
}

Account ServerAccount() {
  if (geteuid() != 0) return OwnAccount();
  std::array<char, 16384> buffer{};
  passwd entry{};
  passwd* found = nullptr;
  getpwnam_r("postgres", &entry, buffer.data(), buffer.size(), &found);
  if (!found)
    throw BookError(BookError::Kind::NoServer,
                    "there is no account `postgres` on this machine to run the database server as; install the "
                    "package postgresql (15 or newer), which makes it");
  return FromEntry(entry);
}

std::string NameOfUser(uid_t uid) {
  std::array<char, 16384> buffer{};
  passwd entry{};
  passwd* found = nullptr;
  getpwuid_r(uid, &entry, buffer.data(), buffer.size(), &found);
  return found ? found->pw_name : std::to_string(uid);
}

FileAccessAs::FileAccessAs(const Account& account)
    : uid_(static_cast<uid_t>(setfsuid(static_cast<uid_t>(-1)))), gid_(static_cast<gid_t>(setfsgid(static_cast<gid_t>(-1)))) {
  setfsgid(account.gid);
  setfsuid(account.uid);
}

FileAccessAs::~FileAccessAs() {
  setfsuid(uid_);
  setfsgid(gid_);
}

}  // namespace heatkeep
