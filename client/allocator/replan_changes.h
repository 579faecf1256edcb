// What a mishap does to a problem and to the plan under way, before anything is planned anew. Part of replan.h.
#pragma once

#include <map>
#include <vector>

#include "client/allocator/replan.h"

namespace heatkeep::allocator {

// One piece of the plan, repeats taken apart.
struct Pulled {
  int piece = 0;            // index into the problem as it is now
  std::map<int, int> cuts;  // line -> count; what it still gives
  bool fixed = false;
  int before = -1;           // index into Problem::pieces of the problem before, whose tag it had; -1: it is new
  std::map<int, int> first;  // what the plan wanted of it
};

struct Disturbed {
  Problem problem;
  std::vector<Pulled> pulled;  // those that give something still, or gave something before
};

// Applies the changes. Of a piece that holds less than planned as few cuts go as will do, the shortest before others.
Disturbed Disturb(const Problem& problem, const Plan& plan, const std::vector<bool>& fixed, const std::vector<Change>& changes);

// Do these cuts fit the piece?
bool StillHolds(const Problem& problem, int piece, const std::map<int, int>& cuts);

}  // namespace heatkeep::allocator
