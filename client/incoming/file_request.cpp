#include "client/incoming/file_request.h"

#include "schema/terms/sha256.h"

namespace heatkeep::incoming {

RequestNumber RequestOfFile(Connection& connection, const std::string& deed, const std::string& part, const std::string& bytes) {
  std::string all = deed;
  for (const std::string& text : {connection.User(), part, bytes}) all += '\0' + text;
  return RequestFromDigest(Sha256Hex(all));
}

}  // namespace heatkeep::incoming
