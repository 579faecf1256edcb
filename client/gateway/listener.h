// Hears of deeds that others do: a session of its own that listens (channel "heatkeep", Connection::TellOfDeed) and, when it was told
// something or was told nothing for a while, asks for the deeds of the last minutes (api.deeds_lately).
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

  // The names of the deeds done since the last call, each once; empty when `patience` passed and nothing was heard.
  // Throws DbError(Unreachable) when the session is lost.
  std::vector<std::string> Wait(std::chrono::milliseconds patience);

 private:
  std::vector<std::string> Fresh();

  Connection connection_;
  std::set<std::string> seen_;  // request numbers
  std::chrono::steady_clock::time_point asked_;
};

}  // namespace heatkeep
