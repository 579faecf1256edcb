// The certificate package of an order or a delivery note: made from the book and the mills' files, written, and kept as a row.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "client/gateway/connection.h"
#include "reports/certificate_package.h"

namespace heatkeep {

struct PackageFile {
  std::string subject;               // "order 26-1184"
  std::vector<std::string> against;  // every reason why it was not made; empty: it is written and kept
  int pages = 0;
  std::size_t documents = 0;
  std::string sha256 = {};
  nlohmann::json package = {};  // its number in the book
  bool kept_before = false;     // the same package was made before
};

// `asked` is the body of api.package_of (schema/api/packages.sql); `to` ends in .pdf, else std::invalid_argument. The file stands under
// its name only once the book has it, and the book only once the disk took it. Throws DbError; std::runtime_error with the path.
PackageFile WritePackage(Connection& connection, nlohmann::json asked, const std::string& to, PaperSize size = PaperSize::A4);

}  // namespace heatkeep
