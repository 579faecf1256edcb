// Hears of deeds that others do: a session of its own that asks for those of the last minutes (api.deeds_lately).
#pragma once

#include <chrono>
#include <set>
#include <string>
#include <vector>

#include "client/gateway/connection.h"

namespace heatkeep {

class Listener {
 public:
  // Takes the session over. Throws DbError.
  explicit Listener(Connection connection);

  // Waits so long, then answers the names of the deeds done since the last call, each once; empty where there was none.
  // Throws DbError(Unreachable) when the session is lost.
  std::vector<std::string> Wait(std::chrono::milliseconds patience);

 private:
  std::vector<std::string> Fresh();

  Connection connection_;
  std::set<std::string> seen_;  // request numbers
};

}  // namespace heatkeep
