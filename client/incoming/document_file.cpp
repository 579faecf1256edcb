#include "client/incoming/document_file.h"

#include <stdexcept>

#include "client/gateway/readings.h"
#include "client/incoming/base64.h"
#include "client/intake/file_bytes.h"

namespace heatkeep::incoming {

std::string DocumentFileBase64(Connection& connection, const std::string& path) {
  const double most = std::stod(ReadSetting(connection, "document_mb", "20")) * 1048576;
  const std::string bytes = intake::FileBytes(path, most < 1 ? 1 : static_cast<std::size_t>(most));
  if (bytes.empty()) throw std::runtime_error(path + ": the file is empty; expected a whole PDF, PNG, JPEG or TIFF file");
  return Base64(bytes);
}

}  // namespace heatkeep::incoming
