// One thread with one session of the book, which does one work after the other.
#pragma once

#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>

#include "client/gateway/connection.h"

namespace heatkeep {

class Lane {
 public:
  using Work = std::function<void(Connection&)>;
  using Fail = std::function<void(const DbError&)>;

  // `open` is called on the lane's thread when a session is needed.
  explicit Lane(std::function<Connection()> open);
  // Waits for the work under way; what was not begun is dropped.
  ~Lane();

  // `fail` is called on the lane's thread when the session cannot be had or `work` throws. A session that was lost is opened again
  // for the next work.
  void Run(Work work, Fail fail);

 private:
  void Loop(const std::stop_token& stop);
  void Do(const Work& work, const Fail& fail);

  std::function<Connection()> open_;
  std::optional<Connection> session_;
  std::mutex mutex_;
  std::condition_variable_any waiting_;
  std::deque<std::pair<Work, Fail>> works_;
  std::jthread thread_;
};

}  // namespace heatkeep
