#include "client/records/document_bytes.h"

#include <stdexcept>

#include "client/gateway/read_document.h"
#include "schema/terms/sha256.h"

namespace heatkeep {

std::string CheckedFile(Connection& connection, const std::string& document, const std::string& sha256) {
  std::string bytes = ReadFileBytes(connection, sha256);
  if (bytes.empty() || Sha256Hex(bytes) != sha256)
    throw std::runtime_error("document " + document + ": the file in the book is not the one that was filed (SHA-256 " + sha256 +
                             "); expected `heatkeep book verify`, and a copy from its issuer");
  return bytes;
}

}  // namespace heatkeep
