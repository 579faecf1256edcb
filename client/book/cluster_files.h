// The files a private cluster is set up by.
//
// heatkeep.conf, included at the end of postgresql.conf: no TCP port, everything on disk before it is
// acknowledged. pg_hba.conf, one line: everybody comes through the local socket, and is who the operating
// system says (peer, through the map `heatkeep`). pg_ident.conf: which account may be which login; the maker
// of the book may be heatkeep_admin and every person, another account only the persons it was admitted as.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "client/book/account.h"

namespace heatkeep {

inline constexpr const char* kAdminLogin = "heatkeep_admin";

// Writes `text` beside `file` and renames it over it, on disk before it returns: afterwards there is the old
// file or the new one. Acts and owns as `account`. Throws std::system_error.
void ReplaceFile(const std::filesystem::path& file, const std::string& text, unsigned mode, const Account& account);

// The whole of `file`, read as `account`; throws std::system_error.
std::string ReadFileAs(const std::filesystem::path& file, const Account& account);

// Sets up a cluster fresh from initdb in `data`. `settings` are further lines for heatkeep.conf.
void WriteClusterFiles(const std::filesystem::path& data, const std::vector<std::string>& settings, const Account& maker,
                       const Account& server);

// Lets the account `os_user` log in as `person`. Returns false when it could already; the server must be told
// to read the file again otherwise.
bool AddIdentity(const std::filesystem::path& data, const std::string& os_user, const std::string& person, const Account& server);

}  // namespace heatkeep
