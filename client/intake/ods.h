// The cells of an OpenDocument spreadsheet (OASIS OpenDocument 1.3, part 3).
#pragma once

#include <string>

#include "client/intake/table.h"
#include "client/intake/zip_parts.h"

namespace heatkeep::intake {

// Does the package say it is an OpenDocument spreadsheet? Throws BadText: another OpenDocument, a locked one.
bool IsOds(ZipParts& zip);

// Fills table.facts, rows and warnings. Throws BadText.
void ReadOds(ZipParts& zip, const std::string& name, const std::string& sheet, Table& table);

}  // namespace heatkeep::intake
