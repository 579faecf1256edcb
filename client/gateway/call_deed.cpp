#include "client/gateway/call_deed.h"

namespace heatkeep {

nlohmann::json CallDeed(Connection& connection, const std::string& call, const std::vector<Param>& params) {
  const std::string answer = connection.Execute("select api." + call + "::text as answer", params).Only().Text("answer");
  connection.TellOfDeed();
  return nlohmann::json::parse(answer);
}

}  // namespace heatkeep
