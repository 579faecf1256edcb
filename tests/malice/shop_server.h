// A shop's server as an administrator sets it up: reached over TCP on this machine, TLS with a certificate of a throw-away authority,
// passwords by SCRAM only, everything it is told written to its log. Made for one test program, gone at its end.
#pragma once

#include <filesystem>
#include <memory>
#include <string>

#include "client/book/child_process.h"

namespace heatkeep {

class ShopServer {
 public:
  ShopServer();  // about two seconds
  ~ShopServer();
  ShopServer(const ShopServer&) = delete;
  ShopServer& operator=(const ShopServer&) = delete;

  // What stands in hba for the database `plain`: asks for the password itself, as nobody should.
  static constexpr const char* kKeeper = "keeper";
  static constexpr const char* kKeeperPassword = "Zw1schen-Kessel-und-Saege";
  static constexpr const char* kMaraPassword = "blau 'Kran' \\ 44 \u00fc";

  // host=localhost port=... dbname=... sslmode=verify-full sslrootcert=ours; no password and no user.
  std::string Conninfo(const std::string& database) const;
  std::string port() const { return std::to_string(port_); }
  std::filesystem::path folder() const { return folder_; }
  std::filesystem::path Authority() const { return folder_ / "ca.crt"; }  // signed the server's certificate, for localhost
  std::filesystem::path OtherAuthority() const { return folder_ / "other.crt"; }
  std::string Log() const;

 private:
  std::filesystem::path folder_, data_;
  int port_ = 0;
  std::unique_ptr<ServerChild> server_;
};

}  // namespace heatkeep
