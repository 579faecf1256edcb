// A plan mended at the saw. Exit: 0 every cut has its metal, 3 some are short (the rest is promised all the same), 1 the book
// refused, 2 bad input, 4 no book.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "client/command/with_book.h"

namespace heatkeep::command {

struct ReplanOptions {
  std::int64_t plan = 0;
  std::vector<std::string> measured;    // "TAG=1018mm": it is so long
  std::string measured_with;            // the tape or readout; empty: not said
  std::vector<std::string> missing;     // tags: not in their place
  std::vector<std::string> bad;         // tags: not to be cut; quarantined, needs a reason
  std::vector<std::string> unreadable;  // tags: their marks cannot be read; quarantined
  std::string reason;
  double seconds = 1;
  bool dry = false;  // show what would change; books nothing
  bool json = false;
};

// heatkeep replan PLAN --measured TAG=1018mm: books what went wrong, keeps what is at the saw and what still fits, and plans
// the rest anew, all in one transaction; says what changed. Without a mishap it brings the plan up to what the book says now:
// pieces measured, held or gone since, rejects to be cut again. A piece of which something is cut already is finished first.
int RunReplan(const BookCall& call, const ReplanOptions& options);

}  // namespace heatkeep::command
