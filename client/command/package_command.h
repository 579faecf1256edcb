// heatkeep certificate package: one PDF of an order's or a delivery note's papers.
#pragma once

#include <string>

#include "client/command/with_book.h"

namespace heatkeep::command {

struct PackageOptions {
  std::string order, note;       // one of them, or both
  std::string to;                // .pdf
  std::string shop;              // who delivers, as the cover says it
  std::string rule, additional;  // rule empty: as it was passed on before, else EN 10204
  bool without_files = false, letter = false;
};

// 0 written and kept in the book; 1 refused, with every reason; nothing is written then.
int RunCertificatePackage(const BookCall& call, const PackageOptions& options);

}  // namespace heatkeep::command
