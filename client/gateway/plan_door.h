// Planning in the book: what the allocator is asked, read from the views, and its plan promised in one deed.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <utility>
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
  bool bundled = false;
  Length kerf, trim, grip;
  Length widest;                     // section the saw takes
  int bars_at_a_time = 0;            // in a bundle at most; 0: not known
  allocator::FineMoney plain_below;  // setting cents_plain_choice, 200 where it is not set: allocator/compare.h
};

// Throws std::invalid_argument naming the cut list or saw that is not in the book.
BookProblem ReadProblem(Connection& connection, const PlanQuestion& question);

// "3.1" of a view; any other word is none.
allocator::PaperType PaperOf(const std::string& word);

// What was asked for of one section and grade, and on which day; days on one scale, `today` among them.
struct PastDemand {
  struct Row {
    std::string order, line;
    int day = 0;
    Length cut;
    int quantity = 1;
    allocator::PaperType papers = allocator::PaperType::None;
    std::string owner;  // empty: the shop's own
    bool one_heat = false;
  };
  std::map<std::pair<std::string, std::string>, std::vector<Row>> by_group;  // (section, grade)
  int first_day = 0, today = 0;
  std::int64_t cents_return = 0, cents_shelf_year = 0;  // settings cents_per_return (267) and cents_per_shelf_year (300)
};
PastDemand ReadPastDemand(Connection& connection);

struct TakenPiece {
  std::string tag, why;
};

// `otherwise` of a layout is its next-best pieces, at most three, best first (allocator/explain.h), in words.
// `reason`: why the plan is not as the search would have it; kept with the deed.
// Either the number of the promised plan, or the pieces that somebody took or changed meanwhile (then nothing is
// promised: read again and plan again).
struct CommitAnswer {
  std::optional<std::int64_t> plan;
  std::vector<TakenPiece> taken;
};

CommitAnswer CommitPlan(Connection& connection, const RequestNumber& request, const PlanQuestion& question, const BookProblem& asked,
                        const allocator::Plan& plan, const std::string& proof, const std::string& reason = {});

// "drops-first", "least-money", "fewest-bars", "least-metres".
std::string AimWord(allocator::Aim aim);
// Throws std::invalid_argument for any other word.
allocator::Aim AimNamed(const std::string& word);

}  // namespace heatkeep
