// Where a desk's papers go: a file of its own in a folder, and a printer of the system.
#pragma once

#include <QString>

namespace heatkeep {

// A path that no other paper has, "KIND-20261126-101500-123.pdf", in `folder` (empty: "papers" in the account's data folder), made when
// it is not there. Throws std::runtime_error where it cannot be made.
QString PaperFile(const QString& kind, const QString& folder);

// Throws std::runtime_error with what the printer's queue said.
void SendToPrinter(const QString& printer, const QString& file);

}  // namespace heatkeep
