// A plan of the book that is under way, read so that it can be mended (allocator/replan.h), and the mended one committed.
// All of it happens in one transaction of the caller's: read the plan, book what went wrong, read what is to be mended,
// commit. Undone as a whole where the answer names pieces that were taken.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "client/allocator/replan.h"
#include "client/gateway/plan_door.h"

namespace heatkeep {

// The plan as it was promised. Layouts of which strokes are booked are left out: they go on as they are.
struct PlanUnderWay {
  std::int64_t number = 0;
  std::string saw;
  BookProblem asked;                  // pieces: those the plan takes, as long as it took them; no lines yet
  std::vector<std::int64_t> numbers;  // layout numbers, one a piece
  std::vector<bool> at_saw;
  struct Want {
    std::string order, line;
    int count = 0;
    Length length;
  };
  std::vector<std::vector<Want>> cuts;
  std::vector<allocator::Layout> layouts;  // piece, trim, kerf and left
};
// Throws std::invalid_argument where there is no such plan, or it was cancelled.
PlanUnderWay ReadUnderWay(Connection& connection, std::int64_t plan, const allocator::Limits& limits);

// What the book says now against what the plan took.
struct ToMend {
  BookProblem asked;  // pieces of the plan first; then what is free; every line of the plan with all that is still to be cut
  allocator::Plan plan;
  std::vector<bool> fixed;
  std::vector<allocator::Change> changes;
};
ToMend ReadToMend(Connection& connection, const PlanUnderWay& before);

// `mended` is Replan's answer for `to_mend`. Empty: committed; else who took what.
struct MendAnswer {
  std::vector<TakenPiece> taken;
  int let_go = 0, promised = 0;  // layouts; what is in neither stays as it is
};
MendAnswer CommitMended(Connection& connection, const RequestNumber& request, const PlanUnderWay& before, const ToMend& to_mend,
                        const allocator::Replanned& mended, const std::string& proof, const std::string& reason);

}  // namespace heatkeep
