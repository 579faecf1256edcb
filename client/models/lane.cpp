#include "client/models/lane.h"

namespace heatkeep {

Lane::Lane(std::function<Connection()> open) : open_(std::move(open)), thread_([this](const std::stop_token& stop) { Loop(stop); }) {}

Lane::~Lane() {
  thread_.request_stop();
  thread_.join();
}

void Lane::Run(Work work, Fail fail) {
  const std::lock_guard lock(mutex_);
  works_.emplace_back(std::move(work), std::move(fail));
  waiting_.notify_one();
}

void Lane::Loop(const std::stop_token& stop) {
  while (!stop.stop_requested()) {
    std::unique_lock lock(mutex_);
    if (!waiting_.wait(lock, stop, [this] { return !works_.empty(); })) return;
    const auto [work, fail] = std::move(works_.front());
    works_.pop_front();
    lock.unlock();
    Do(work, fail);
  }
}

void Lane::Do(const Work& work, const Fail& fail) {
  try {
    if (!session_ || !session_->Alive()) {
      session_.reset();
      session_.emplace(open_());
    }
    work(*session_);
  } catch (const DbError& error) {
    if (error.kind == DbError::Kind::Unreachable) session_.reset();
    fail(error);
  } catch (const std::exception& error) { fail(DbError(DbError::Kind::Bug, "", error.what())); }
}

}  // namespace heatkeep
