// Planning in the book: what the allocator is asked, read from the views, and its plan promised in one deed.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"
#include "client/gateway/deeds.h"

namespace heatkeep {

struct PlanQuestion {
  std::vector<std::string> cut_lists;
  std::string saw;
  Length wider_than;  // only lines whose section is wider: what smaller saws take is left to them
  bool bundled = false;
  allocator::Aim aim = allocator::Aim::DropsFirst;
  allocator::Limits limits;
};

// The problem as the book stands now. Every piece is its own (count 1); `versions` tells what was looked at, so that
// a piece changed meanwhile is noticed. A heat is named "heat of mill": two mills can use the same number.
struct BookProblem {
  allocator::Problem problem;
  std::map<std::string, std::int64_t> versions;  // by tag
  std::vector<std::string> too_large;            // open lines, "order/line (section)", that this saw cannot take: not asked
  Length kerf, trim, grip;
  Length widest;  // section the saw takes
  allocator::FineMoney plain_below;  // setting cents_plain_choice, 200 where it is not set: allocator/compare.h
};

// Throws std::invalid_argument naming the cut list or saw that is not in the book.
BookProblem ReadProblem(Connection& connection, const PlanQuestion& question);

struct TakenPiece {
  std::string tag, why;
};

// `otherwise` of a layout is its next-best pieces, at most three, best first (allocator/explain.h), in words.
// Either the number of the promised plan, or the pieces that somebody took or changed meanwhile (then nothing is
// promised: read again and plan again).
struct CommitAnswer {
  std::optional<std::int64_t> plan;
  std::vector<TakenPiece> taken;
};

CommitAnswer CommitPlan(Connection& connection, const RequestNumber& request, const PlanQuestion& question,
                        const BookProblem& asked, const allocator::Plan& plan, const std::string& proof);

// "drops-first", "least-money", "fewest-bars", "least-metres".
std::string AimWord(allocator::Aim aim);

}  // namespace heatkeep
