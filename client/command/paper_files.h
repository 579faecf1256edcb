// Where a paper goes: files by their endings, or text on the output; and what every print is told.
#pragma once

#include <CLI/CLI.hpp>
#include <functional>
#include <map>
#include <string>
#include <vector>

#include "client/command/with_book.h"
#include "client/command/work_watch.h"
#include "reports/paper.h"

namespace heatkeep::command {

struct PaperOptions {
  std::vector<std::string> files;  // where to; none: on the output
  bool letter = false;             // Letter instead of A4
  bool inch = false;               // the saw reads inches
  bool json = false;               // JSON on the output, also where files are written
  bool progress = false;           // say how far it is, also where nobody sits at a terminal
};

// --to, --json, --letter, --progress; `endings` of the files it writes: "pdf|json".
void AddPaperOptions(CLI::App& app, PaperOptions& options, const std::string& endings);

// `watch` is told how far a print is, and lives as long; null: nobody is.
PrintOptions PrintFor(Connection& connection, const PaperOptions& options, WorkWatch* watch = nullptr);

using PaperWriters = std::map<std::string, std::function<void(const std::string& path)>>;  // by ending, ".pdf"

// Writes what `text` says, and a line end.
std::function<void(const std::string& path)> TextWriter(std::function<std::string()> text);

// Throws std::invalid_argument for a file whose ending no writer has; nothing is written then.
void CheckEndings(const std::vector<std::string>& files, const PaperWriters& writers);

// Writes every file by its ending; with none, or with --json, what `text` says (JSON) goes to the output. Answers 0.
int WritePapers(const BookCall& call, const PaperOptions& options, const PaperWriters& writers, const std::function<std::string()>& text);

}  // namespace heatkeep::command
