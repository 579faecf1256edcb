// A wire to the book that can be cut: listens on a TCP port of this machine and passes everything on to the server's socket.
#pragma once

#include <atomic>
#include <filesystem>
#include <string>
#include <thread>

namespace heatkeep {

class CuttingProxy {
 public:
  enum class Cut { Never, BeforeTheRequest, BeforeTheAnswer, InTheAnswer };

  // `socket`: the file of the server's socket. Throws std::system_error.
  explicit CuttingProxy(std::filesystem::path socket);
  ~CuttingProxy();
  CuttingProxy(const CuttingProxy&) = delete;
  CuttingProxy& operator=(const CuttingProxy&) = delete;

  // The next request that comes is cut so, once: before the server sees it, after the server has answered, or with half the answer.
  void CutNext(Cut how) { next_ = how; }
  int port() const { return port_; }

 private:
  void Serve();
  void Pass(int client);

  std::filesystem::path socket_;
  int listening_ = -1, port_ = 0;
  std::atomic<Cut> next_ = Cut::Never;
  std::atomic<bool> stop_ = false;
  std::thread thread_;
};

}  // namespace heatkeep
