// heatkeep label print: the labels that wait, of places, or of cut pieces, as a PDF for the printer. Exit as the other commands on a book.
#pragma once

#include <string>
#include <vector>

#include "client/command/with_book.h"

namespace heatkeep::command {

struct LabelOptions {
  std::string to;                   // the PDF
  std::vector<std::string> tags;    // only these; none: all that wait
  std::vector<std::string> places;  // labels of these places instead; "all": of every place
  std::vector<std::string> orders;  // labels of the cut pieces of these orders instead
  std::string paper, code;          // empty: the shop's settings label_paper and label_code
  int dpi = 0, start = 1;           // 0: the shop's label_dpi
  std::string grid, margins, gaps;  // of a sheet
  bool cut_lines = false, json = false;
};

// Writes the file and marks nothing printed: that is `label printed`, when they are out and legible. A tag without a label that waits is
// refused (another label of the same piece is asked for at the piece), and then nothing is written.
int RunLabelPrint(const BookCall& call, const LabelOptions& options);

}  // namespace heatkeep::command
