// A wire between a desk and its book that can lose what goes over it: all of one direction, or the whole connection. A thread of its own
// passes bytes between a Unix socket in `folder` and the server's.
#pragma once

#include <atomic>
#include <string>
#include <thread>
#include <vector>

namespace heatkeep {

class LossyWire {
 public:
  // `server`: the path of the server's own socket.
  LossyWire(const std::string& server, const std::string& folder, int port);
  ~LossyWire();
  LossyWire(const LossyWire&) = delete;
  LossyWire& operator=(const LossyWire&) = delete;

  // From now on: what the server answers gets lost; or what the desk asks. Until Mend.
  void LoseAnswers() { losing_ = Losing::Answers; }
  void LoseQuestions() { losing_ = Losing::Questions; }
  // Every connection breaks, and no new one is had.
  void Cut() { losing_ = Losing::All; }
  void Mend() { losing_ = Losing::Nothing; }

 private:
  enum class Losing { Nothing, Answers, Questions, All };
  struct Pair {
    int desk = -1, server = -1;
  };
  void Run(const std::stop_token& stop);
  void Accept();
  bool Pass(int from, int to, bool lose);
  void Break();

  std::string server_, path_;
  int listening_ = -1;
  std::atomic<Losing> losing_ = Losing::Nothing;
  std::vector<Pair> pairs_;
  std::jthread thread_;
};

}  // namespace heatkeep
