#include "client/gateway/listener.h"

#include <poll.h>

#include <algorithm>

namespace heatkeep {

Listener::Listener(Connection connection) : connection_(std::move(connection)) { Fresh(); }

std::vector<std::string> Listener::Wait(std::chrono::milliseconds patience) {
  pollfd lost{PQsocket(connection_.handle()), POLLIN, 0};  // nothing comes unasked but the end of the session
  if (lost.fd >= 0) poll(&lost, 1, static_cast<int>(patience.count()));
  return Fresh();
}

std::vector<std::string> Listener::Fresh() {
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
