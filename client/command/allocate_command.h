// Planning in the book. Exit: 0 every cut placed (or done), 3 some are short or too large for the saws (what can be cut is
// promised all the same), 1 the book refused, 2 bad input, 4 no book.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "client/command/with_book.h"

namespace heatkeep::command {

struct AllocateOptions {
  std::vector<std::string> cut_lists;
  std::vector<std::string> saws = {"1"};  // a line goes to the first of them that takes its section; a plan each
  bool bundled = false;
  std::string aim = "drops-first";
  double seconds = 10;
  int threads = 2;
  std::uint64_t seed = 1;
  bool dry = false;   // show the plan, promise nothing
  bool json = false;  // a list, one object a saw that has a plan
  bool why = false;   // the next-best pieces of every piece taken
  std::string buy;    // lengths a supplier sells (extras_words.h); empty: the usual mill lengths
  bool price_of_one_heat = false;
};

// heatkeep allocate CUTLIST... --saw 1 --saw 2: reads what is open and what may be taken, plans, promises all of a saw's plan in one
// deed; the plan by hand where the search gains less than the setting cents_plain_choice (extras_words.h); a plan of which nothing can be
// cut is not promised. A piece that somebody took meanwhile is named and the plan is made again, at most five times.
int RunAllocate(const BookCall& call, const AllocateOptions& options);

// heatkeep plan list | show N | cancel N.
int RunPlanList(const BookCall& call, bool json);
// `why`: what to take where a piece is not there, as it was when the plan was made.
int RunPlanShow(const BookCall& call, std::int64_t plan, bool json, bool why = false);
int RunPlanCancel(const BookCall& call, std::int64_t plan, const std::string& reason);

}  // namespace heatkeep::command
