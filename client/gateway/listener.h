// Hears of deeds that others do: a session of its own that waits for the book's notices (channel "heatkeep", schema/guard/deed.sql).
#pragma once

#include <chrono>
#include <string>
#include <vector>

#include "client/gateway/connection.h"

namespace heatkeep {

class Listener {
 public:
  // Takes the session over. Throws DbError.
  explicit Listener(Connection connection);

  // The names of the deeds done since the last call, each once, in their order; empty when `patience` passed without one.
  // Throws DbError(Unreachable) when the session is lost.
  std::vector<std::string> Wait(std::chrono::milliseconds patience);

 private:
  Connection connection_;
};

}  // namespace heatkeep
