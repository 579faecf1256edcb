#include "tests/crash/cutting_proxy.h"

#include <netinet/in.h>
#include <poll.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <system_error>
#include <vector>

namespace heatkeep {
namespace {

[[noreturn]] void Fail(const char* what) { throw std::system_error(errno, std::generic_category(), what); }

bool SendAll(int to, const char* bytes, std::size_t size) {
  while (size > 0) {
    const ssize_t n = send(to, bytes, size, MSG_NOSIGNAL);
    if (n <= 0) return false;
    bytes += n;
    size -= static_cast<std::size_t>(n);
  }
  return true;
}

int ConnectTo(const std::filesystem::path& socket_file) {
  const int fd = socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
  sockaddr_un address{};
  address.sun_family = AF_UNIX;
  socket_file.string().copy(address.sun_path, sizeof address.sun_path - 1);
  if (fd < 0 || connect(fd, reinterpret_cast<const sockaddr*>(&address), sizeof address) != 0) {
    if (fd >= 0) close(fd);
    return -1;
  }
  return fd;
}

}  // namespace

CuttingProxy::CuttingProxy(std::filesystem::path socket_file) : socket_(std::move(socket_file)) {
  listening_ = socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
  sockaddr_in address{};
  address.sin_family = AF_INET;
  address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  socklen_t size = sizeof address;
  if (listening_ < 0 || bind(listening_, reinterpret_cast<const sockaddr*>(&address), size) != 0 || listen(listening_, 8) != 0 ||
      getsockname(listening_, reinterpret_cast<sockaddr*>(&address), &size) != 0)
    Fail("the proxy cannot listen");
  port_ = ntohs(address.sin_port);
  thread_ = std::thread([this] { Serve(); });
}

CuttingProxy::~CuttingProxy() {
  stop_ = true;
  thread_.join();
  close(listening_);
}

void CuttingProxy::Serve() {
  std::vector<std::thread> wires;
  while (!stop_) {
    pollfd waiting{listening_, POLLIN, 0};
    if (poll(&waiting, 1, 50) <= 0) continue;
    const int client = accept4(listening_, nullptr, nullptr, SOCK_CLOEXEC);
    if (client >= 0) wires.emplace_back([this, client] { Pass(client); });
  }
  for (std::thread& wire : wires) wire.join();
}

void CuttingProxy::Pass(int client) {
  const int server = ConnectTo(socket_);
  std::array<char, 65536> block{};
  Cut cut = Cut::Never;  // of the request that is with the server
  bool open = server >= 0;
  while (open && !stop_) {
    std::array<pollfd, 2> ends{{{client, POLLIN, 0}, {server, POLLIN, 0}}};
    if (poll(ends.data(), ends.size(), 50) <= 0) continue;
    if (ends[0].revents != 0) {
      const ssize_t n = recv(client, block.data(), block.size(), 0);
      if (cut == Cut::Never) cut = next_.exchange(Cut::Never);
      open = n > 0 && cut != Cut::BeforeTheRequest && SendAll(server, block.data(), static_cast<std::size_t>(n));
    }
    if (open && ends[1].revents != 0) {
      const ssize_t n = recv(server, block.data(), block.size(), 0);
      const std::size_t part = n <= 0 ? 0
          : cut == Cut::Never         ? static_cast<std::size_t>(n)
          : cut == Cut::InTheAnswer   ? static_cast<std::size_t>(n) / 2
                                      : 0;
      open = n > 0 && SendAll(client, block.data(), part) && cut == Cut::Never;
    }
  }
  for (const int end : {client, server})
    if (end >= 0) close(end);
}

}  // namespace heatkeep
