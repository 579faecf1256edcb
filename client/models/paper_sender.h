// Where a desk's papers go: a file of its own in a folder, or a printer of the system.
#pragma once

#include <QString>
#include <functional>
#include <string>

namespace heatkeep {

struct PaperWay {
  QString printer;  // empty: the file is left where it is
  QString file;     // a path that no other paper has, "FOLDER/KIND-20261126-101500-123.pdf"
  std::string where() const { return (printer.isEmpty() ? file : printer).toStdString(); }
};

// `folder` (empty: "papers" in the account's data folder) is made when it is not there. Throws std::runtime_error where it cannot be.
PaperWay WayFor(const QString& kind, const QString& printer, const QString& folder);

// Has the file written and, where there is a printer, sends it there and takes it away. Throws what `write` does, and std::runtime_error
// with what the printer's queue said.
void Send(const PaperWay& way, const std::function<void(const std::string& file)>& write);

}  // namespace heatkeep
