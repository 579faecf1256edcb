#include "tests/stations/lossy_wire.h"

#include <poll.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>

#include <array>
#include <cstring>
#include <stdexcept>

namespace heatkeep {
namespace {

constexpr int kLookAgain = 20;  // ms

sockaddr_un At(const std::string& path) {
  sockaddr_un address{};
  address.sun_family = AF_UNIX;
  if (path.size() >= sizeof address.sun_path) throw std::runtime_error("too long for a socket: " + path);
  std::memcpy(address.sun_path, path.c_str(), path.size() + 1);
  return address;
}

}  // namespace

LossyWire::LossyWire(const std::string& server, const std::string& folder, int port)
    : server_(server), path_(folder + "/.s.PGSQL." + std::to_string(port)) {
  listening_ = socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
  const sockaddr_un address = At(path_);
  if (listening_ < 0 || bind(listening_, reinterpret_cast<const sockaddr*>(&address), sizeof address) != 0 || listen(listening_, 16) != 0)
    throw std::runtime_error("no socket at " + path_ + ": " + std::strerror(errno));
  thread_ = std::jthread([this](const std::stop_token& stop) { Run(stop); });
}

LossyWire::~LossyWire() {
  thread_.request_stop();
  thread_.join();
  Break();
  close(listening_);
  unlink(path_.c_str());
}

void LossyWire::Accept() {
  const int desk = accept4(listening_, nullptr, nullptr, SOCK_CLOEXEC);
  if (desk < 0) return;
  const int server = socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
  const sockaddr_un address = At(server_);
  if (losing_ != Losing::Nothing || connect(server, reinterpret_cast<const sockaddr*>(&address), sizeof address) != 0) {
    close(desk);
    close(server);
    return;
  }
  pairs_.push_back({desk, server});
}

bool LossyWire::Pass(int from, int to, bool lose) {
  std::array<char, 16384> bytes{};
  const ssize_t n = read(from, bytes.data(), bytes.size());
  if (n <= 0) return false;
  for (ssize_t at = 0; !lose && at < n;) {
    const ssize_t written = send(to, bytes.data() + at, static_cast<std::size_t>(n - at), MSG_NOSIGNAL);
    if (written <= 0) return false;
    at += written;
  }
  return true;
}

void LossyWire::Break() {
  for (const Pair& pair : pairs_) {
    close(pair.desk);
    close(pair.server);
  }
  pairs_.clear();
}

void LossyWire::Run(const std::stop_token& stop) {
  while (!stop.stop_requested()) {
    if (losing_ == Losing::All) Break();
    std::vector<pollfd> all{{listening_, POLLIN, 0}};
    for (const Pair& pair : pairs_) {
      all.push_back({pair.desk, POLLIN, 0});
      all.push_back({pair.server, POLLIN, 0});
    }
    if (poll(all.data(), all.size(), kLookAgain) <= 0) continue;
    std::vector<Pair> still;
    for (std::size_t i = 0; i < pairs_.size(); ++i) {
      const Pair pair = pairs_[i];
      bool whole = losing_ != Losing::All;
      if (whole && all[1 + 2 * i].revents != 0) whole = Pass(pair.desk, pair.server, losing_ == Losing::Questions);
      if (whole && all[2 + 2 * i].revents != 0) whole = Pass(pair.server, pair.desk, losing_ == Losing::Answers);
      if (whole) {
        still.push_back(pair);
      } else {
        close(pair.desk);
        close(pair.server);
      }
    }
    pairs_ = std::move(still);
    if (all[0].revents != 0) Accept();
  }
}

}  // namespace heatkeep
