// heatkeep book verify --record FILE|DIGEST: is what a printed record stands on still in the book as it was? DIGEST: the 64
// characters from its foot. FILE: the record as JSON (then its words are checked too), as PDF, or the text of its paper.
// Exit: 0 unchanged, 1 changed, altered or unknown; else as the other commands on a book.
#pragma once

#include <string>

#include "client/command/with_book.h"

namespace heatkeep::command {

struct RecordCheckOptions {
  std::string record;
  bool json = false;
};
int RunRecordCheck(const BookCall& call, const RecordCheckOptions& options);

}  // namespace heatkeep::command
