#include "client/gateway/listener.h"

#include <poll.h>

#include <algorithm>
#include <memory>

namespace heatkeep {

Listener::Listener(Connection connection) : connection_(std::move(connection)) { connection_.Execute("listen heatkeep"); }

std::vector<std::string> Listener::Wait(std::chrono::milliseconds patience) {
  PGconn* const session = connection_.handle();
  pollfd ready{PQsocket(session), POLLIN, 0};
  if (ready.fd >= 0) poll(&ready, 1, static_cast<int>(patience.count()));
  if (PQconsumeInput(session) == 0 || PQstatus(session) != CONNECTION_OK) throw MakeDbError(session, nullptr);
  std::vector<std::string> deeds;
  using Notice = std::unique_ptr<PGnotify, decltype(&PQfreemem)>;
  for (Notice notice(PQnotifies(session), PQfreemem); notice; notice.reset(PQnotifies(session)))
    if (std::find(deeds.begin(), deeds.end(), notice->extra) == deeds.end()) deeds.emplace_back(notice->extra);
  return deeds;
}

}  // namespace heatkeep
