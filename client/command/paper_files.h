// Where a paper goes: files by their endings, or text on the output; and what every print is told.
#pragma once

#include <functional>
#include <map>
#include <string>
#include <vector>

#include "client/command/with_book.h"
#include "reports/paper.h"

namespace heatkeep::command {

struct PaperOptions {
  std::vector<std::string> files;  // where to; none: on the output
  bool letter = false;             // Letter instead of A4
  bool inch = false;               // the saw reads inches
};

PrintOptions PrintFor(Connection& connection, const PaperOptions& options);

using PaperWriters = std::map<std::string, std::function<void(const std::string& path)>>;  // by ending, ".pdf"

// Writes what `text` says, and a line end.
std::function<void(const std::string& path)> TextWriter(std::function<std::string()> text);

// Throws std::invalid_argument for a file whose ending no writer has; nothing is written then.
void CheckEndings(const std::vector<std::string>& files, const PaperWriters& writers);

// Writes every file by its ending; with none, what `text` says goes to the output. Answers 0.
int WritePapers(const BookCall& call, const PaperOptions& options, const PaperWriters& writers, const std::function<std::string()>& text);

}  // namespace heatkeep::command
