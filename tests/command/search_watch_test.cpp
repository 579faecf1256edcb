// Watching and stopping a search.
#include "client/command/search_watch.h"

#include <gtest/gtest.h>

#include <csignal>
#include <sstream>

#include "client/allocator/check_plan.h"
#include "client/planning/watched_search.h"

namespace heatkeep::command {
namespace {

// 300 drops and 60 lines, all different: more than a second's work.
allocator::Problem Long() {
  allocator::Problem problem;
  problem.rules = {{2 * kNmPerMm}, {10 * kNmPerMm}, {60 * kNmPerMm}, {300 * kNmPerMm}};
  problem.limits.seconds = 60;
  problem.limits.iterations = 1'000'000;
  for (int i = 0; i < 300; ++i) {
    allocator::Piece p;
    p.tag = "D" + std::to_string(i);
    p.kind = i < 290 ? allocator::PieceKind::Drop : allocator::PieceKind::Bar;
    p.section = "round 80";
    p.grade = "42CrMo4";
    p.heat = "H" + std::to_string(i % 7);
    p.length = {i < 290 ? (400 + (i * 7919) % 1900) * kNmPerMm + i : (3000 + 500 * (i % 4)) * kNmPerMm};
    p.count = i < 290 ? 1 : 50;
    problem.pieces.push_back(p);
  }
  for (int i = 0; i < 60; ++i) {
    allocator::Line l;
    l.order = "O";
    l.line = std::to_string(i);
    l.section = "round 80";
    l.grade = "42CrMo4";
    l.nominal = {(150 + (i * 6101) % 900) * kNmPerMm + 100'000 * (i % 9)};
    l.quantity = 9 + i % 7;
    if (i % 5 == 0) l.max_heats = 2;
    problem.lines.push_back(l);
  }
  return problem;
}

TEST(SearchWatch, AnInterruptGivesTheBestPlanSoFar) {
  const allocator::Problem problem = Long();
  std::ostringstream err;
  SearchWatch watch(err, problem.aim);
  std::raise(SIGINT);
  const allocator::Plan plan = allocator::Allocate(problem, watch.Token(), watch.Shown());
  EXPECT_EQ(plan.ended_by, allocator::EndedBy::Stopped);
  EXPECT_EQ(allocator::CheckPlan(problem, plan), std::vector<std::string>{});
  EXPECT_EQ(plan.value.unmet_pieces, 0);
  EXPECT_EQ(err.str(), "") << "nothing is shown but on a terminal";
}

TEST(SearchWatch, SaysValueAndBoundInTheAimsUnit) {
  allocator::Value value;
  allocator::Bound bound;
  value.new_length = {18'300 * kNmPerMm};
  EXPECT_EQ(planning::ProgressWords(allocator::Aim::DropsFirst, value, bound), "opens 18.30 m");
  bound.figures[allocator::Key::NewLength] = 17'900 * kNmPerMm;
  EXPECT_EQ(planning::ProgressWords(allocator::Aim::DropsFirst, value, bound), "opens 18.30 m, at least 17.90 m is needed");
  value.unmet_pieces = 2;
  value.money = {124'000'000'000};
  bound.figures[allocator::Key::Money] = 120'000'000'000;
  EXPECT_EQ(planning::ProgressWords(allocator::Aim::LeastMoney, value, bound), "2 short, costs 1240.00, at least 1200.00 is needed");
  value.unmet_pieces = 0;
  value.bars_opened = 1;
  EXPECT_EQ(planning::ProgressWords(allocator::Aim::FewestBars, value, bound), "opens 1 bar");
}

}  // namespace
}  // namespace heatkeep::command
