// A plan under way, mended: something at the rack or the saw is not as the plan took it.
//
// What is at the saw or done stays; of the rest what still fits stays; only what went missing is planned anew, by
// Allocate, on the metal that is still free. Where that leaves cuts short, or opens a full bar, the rests of the pieces
// that stay are tried first, and where cuts are still short, everything not yet at the saw is planned anew.
// One heat and at most n heats count over what stays and what is new. Of a line that may draw on more heats than one the
// new cuts keep to the heats there are, or to as many new ones as the line has left: never wrong, now and then short
// where a cleverer choice was not.
// A defect zone parts a piece in two, each planned as a piece of its own with the sawn end the crop gives it; the
// zone's edges take in the kerfs of the crops.
#pragma once

#include <string>
#include <vector>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator {

enum class Mishap { Missing, Shorter, Defect, Rejected };

// One thing that is not as planned. Of a piece with count > 1 one of them is meant: the one at the saw, if one is, else
// one the plan does not use, if one is to spare.
struct Change {
  Mishap what = Mishap::Missing;
  int piece = 0;    // Missing, Shorter, Defect: index into Problem::pieces
  Length measured;  // Shorter: its length as measured (it may be longer too)
  Length doubt;     // Shorter: how much shorter than measured it may be
  Length from, to;  // Defect: the zone, from the end that is cut first
  int line = 0;     // Rejected: pieces of this line are to be cut again
  int count = 1;    // Rejected: so many
};

struct Replanned {
  Problem problem;                 // as it is now: pieces measured, parted or gone, quantities with the recuts
  Plan plan;                       // the whole plan now, of `problem`; passes CheckPlan
  int kept = 0, planned_anew = 0;  // pieces of the old plan that are cut as they were; pieces that are new or cut otherwise
  std::vector<std::string> words;  // "D-0107 instead of D-0101 for 1 x 240 mm", "D-0101 leaves 292 mm, kept"
};

// `plan` is a plan of `problem`; `fixed` says by layout what is at the saw or done (nothing: none is). Limits: the
// searches take at most problem.limits.seconds together. Throws std::invalid_argument, naming the piece or line, for a
// change that cannot be.
Replanned Replan(const Problem& problem, const Plan& plan, const std::vector<bool>& fixed, const std::vector<Change>& changes);

}  // namespace heatkeep::allocator
