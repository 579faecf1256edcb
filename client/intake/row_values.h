// The rows of each kind of file as texts, every value as it was understood: for showing people before anything is done.
#pragma once

#include <string>
#include <vector>

#include "client/intake/certificates_file.h"
#include "client/intake/cuts_file.h"
#include "client/intake/delivery_file.h"
#include "client/intake/grades_file.h"
#include "client/intake/opening_file.h"
#include "client/intake/stock_file.h"

namespace heatkeep::intake {

// Column and value with its unit: {"length", "352.425 mm"}, {"count", "unlimited"}. An empty value is an empty text.
struct ReadValue {
  std::string column, text;
  bool operator==(const ReadValue&) const = default;
};

std::vector<ReadValue> ValuesOf(const StockFileRow& row);
std::vector<ReadValue> ValuesOf(const CutsFileRow& row);
std::vector<ReadValue> ValuesOf(const DeliveryFileRow& row);
std::vector<ReadValue> ValuesOf(const OpeningFileRow& row);
std::vector<ReadValue> ValuesOf(const CertificatesFileRow& row);
std::vector<ReadValue> ValuesOf(const Grade& grade);

}  // namespace heatkeep::intake
