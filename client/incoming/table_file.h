// A table that somebody brings in: a CSV, XLSX or ODS file.
#pragma once

#include <string>

#include "client/intake/file_rows.h"

namespace heatkeep::incoming {

struct TableFile {
  std::string path;
  std::string sheet;  // of a spreadsheet; empty: the first that is shown

  intake::ReadingOptions How() const {
    intake::ReadingOptions how;
    how.sheet = sheet;
    return how;
  }

  // For the request number: the same file read from another sheet is another request.
  std::string Part(const std::string& part = {}) const { return sheet.empty() ? part : part + "\n" + sheet; }
};

}  // namespace heatkeep::incoming
