#include "client/gateway/listener.h"

#include <poll.h>

#include <algorithm>
#include <memory>

namespace heatkeep {

namespace {

constexpr std::chrono::seconds kAskAnyway{10};  // whose deed told nobody is found so soon at the latest

}  // namespace

Listener::Listener(Connection connection) : connection_(std::move(connection)) {
  connection_.Execute("listen heatkeep");
  Fresh();
}

std::vector<std::string> Listener::Wait(std::chrono::milliseconds patience) {
  PGconn* const session = connection_.handle();
  pollfd ready{PQsocket(session), POLLIN, 0};
  if (ready.fd >= 0) poll(&ready, 1, static_cast<int>(patience.count()));
  if (PQconsumeInput(session) == 0 || PQstatus(session) != CONNECTION_OK) throw MakeDbError(session, nullptr);
  bool told = false;
  using Notice = std::unique_ptr<PGnotify, decltype(&PQfreemem)>;
  for (Notice notice(PQnotifies(session), PQfreemem); notice; notice.reset(PQnotifies(session))) told = true;
  return told || std::chrono::steady_clock::now() - asked_ >= kAskAnyway ? Fresh() : std::vector<std::string>{};
}

std::vector<std::string> Listener::Fresh() {
  asked_ = std::chrono::steady_clock::now();
  std::vector<std::string> deeds;
  std::set<std::string> lately;
  for (const Row row : connection_.Execute("select request_id::text as request, deed from api.deeds_lately")) {
    const std::string request = row.Text("request"), deed = row.Text("deed");
    if (!seen_.contains(request) && std::find(deeds.begin(), deeds.end(), deed) == deeds.end()) deeds.push_back(deed);
    lately.insert(request);
  }
  seen_ = std::move(lately);
  return deeds;
}

}  // namespace heatkeep
