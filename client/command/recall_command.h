// heatkeep recall heat H --to recall.pdf --letters FOLDER: the list of where everything of it is now, the places to visit, and a
// letter a customer. With --drill it is timed and read only, says DRILL on every page and keeps no record.
#pragma once

#include <string>

#include "client/command/paper_files.h"
#include "reports/recall_report.h"

namespace heatkeep::command {

struct RecallOptions {
  std::string scope, ref, mill;  // as holds are asked for
  PaperOptions paper;
  std::string letters;  // a folder for the letters; empty: none
  std::string language = "en";
  LetterWords words;
  bool drill = false, json = false;
};
int RunRecall(const BookCall& call, const RecallOptions& options);

}  // namespace heatkeep::command
