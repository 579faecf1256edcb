#include "tests/malice/shop_server.h"

#include <arpa/inet.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <stdexcept>
#include <thread>

#include "client/book/account.h"
#include "client/book/cluster_files.h"
#include "client/book/server_binaries.h"
#include "client/book/server_processes.h"
#include "client/gateway/connection.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

void Run(const std::vector<std::string>& argv, const Account& account) {
  const ChildEnd end = RunChild(argv, account);
  if (end.status != 0) throw std::runtime_error(argv[0] + " " + argv[1] + ": " + end.output);
}

// A port that nobody has just now.
int FreePort() {
  const int fd = socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
  sockaddr_in address{};
  address.sin_family = AF_INET;
  address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  socklen_t size = sizeof address;
  auto* any = reinterpret_cast<sockaddr*>(&address);
  if (fd < 0 || bind(fd, any, size) != 0 || getsockname(fd, any, &size) != 0) throw std::runtime_error("no port to be had");
  close(fd);
  return ntohs(address.sin_port);
}

// An authority of its own, and with it the certificate of a server called localhost.
void MakeCertificates(const fs::path& folder, const Account& server) {
  const auto in = [&](const char* name) { return (folder / name).string(); };
  for (const char* name : {"ca", "other"})
    Run({"/usr/bin/openssl", "req", "-x509", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:prime256v1", "-nodes", "-days", "2", "-subj",
         std::string("/CN=throw-away ") + name, "-keyout", in(name) + ".key", "-out", in(name) + ".crt"},
        server);
  Run({"/usr/bin/openssl", "req", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:prime256v1", "-nodes", "-subj", "/CN=localhost",
       "-keyout", in("server.key"), "-out", in("server.csr")},
      server);
  ReplaceFile(folder / "names", "subjectAltName=DNS:localhost\n", 0600, server);
  Run({"/usr/bin/openssl", "x509", "-req", "-in", in("server.csr"), "-CA", in("ca.crt"), "-CAkey", in("ca.key"), "-CAcreateserial", "-days",
       "2", "-extfile", in("names"), "-out", in("server.crt")},
      server);
}

}  // namespace

ShopServer::ShopServer() : port_(FreePort()) {
  std::string made = (fs::temp_directory_path() / "heatkeep-shop-XXXXXX").string();
  if (!mkdtemp(made.data()) || chmod(made.c_str(), 0755) != 0) throw std::runtime_error(made + " cannot be made");
  folder_ = made;
  data_ = folder_ / "data";
  const Account server = ServerAccount();
  if (chown(made.c_str(), server.uid, server.gid) != 0) throw std::runtime_error(made + " cannot be handed over");
  MakeCertificates(folder_, server);
  ReplaceFile(folder_ / "first", std::string(kKeeperPassword) + "\n", 0600, server);
  const fs::path binaries = FindServerBinaries().folder;
  Run({(binaries / "initdb").string(), "-D", data_.string(), "-U", kKeeper, "-E", "UTF8", "--locale=C.UTF-8", "-k", "-A", "scram-sha-256",
       "--pwfile=" + (folder_ / "first").string(), "--no-sync"},
      server);
  ReplaceFile(data_ / "shop.conf",
              "listen_addresses = 'localhost'\nport = " + port() + "\nunix_socket_directories = '" + folder_.string() +
                  "'\nfsync = off\nssl = on\nssl_cert_file = '" + (folder_ / "server.crt").string() + "'\nssl_key_file = '" +
                  (folder_ / "server.key").string() +
                  "'\npassword_encryption = 'scram-sha-256'\nlog_connections = on\nlog_statement = 'all'\nlog_min_duration_statement = 0\n",
              0600, server);
  ReplaceFile(data_ / "postgresql.conf", ReadFileAs(data_ / "postgresql.conf", server) + "\ninclude 'shop.conf'\n", 0600, server);
  ReplaceFile(data_ / "pg_hba.conf",
              "local   all    keeper               scram-sha-256\n"
              "hostssl plain  all    127.0.0.1/32  password\n"
              "hostssl plain  all    ::1/128       password\n"
              "hostssl all    all    127.0.0.1/32  scram-sha-256\n"
              "hostssl all    all    ::1/128       scram-sha-256\n",
              0600, server);
  server_ = std::make_unique<ServerChild>(std::vector<std::string>{(binaries / "postgres").string(), "-D", data_.string()}, server,
                                          folder_ / "log");
  for (int i = 0; PQping(("host=" + folder_.string() + " port=" + port() + " user=keeper dbname=postgres").c_str()) != PQPING_OK; ++i) {
    if (i > 600 || server_->Ended()) throw std::runtime_error("the shop's server does not start: " + Log());
    std::this_thread::sleep_for(std::chrono::milliseconds(50));
  }
}

ShopServer::~ShopServer() {
  const Account server = ServerAccount();
  if (const pid_t postmaster = Postmaster(data_, server, ServerProcesses(data_, server))) kill(postmaster, SIGINT);
  for (int i = 0; i < 600 && !ServerProcesses(data_, server).empty(); ++i) std::this_thread::sleep_for(std::chrono::milliseconds(50));
  std::error_code ignored;
  fs::remove_all(folder_, ignored);
}

std::string ShopServer::Conninfo(const std::string& database) const {
  return "host=localhost port=" + port() + " dbname=" + database + " sslmode=verify-full sslrootcert=" + Authority().string();
}

std::string ShopServer::Log() const { return ReadFileAs(folder_ / "log", ServerAccount()); }

}  // namespace heatkeep
