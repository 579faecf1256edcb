#include "client/year/plain_plan.h"

#include <gtest/gtest.h>

#include "client/allocator/check_plan.h"
#include "client/year/dice.h"

namespace heatkeep::year {
namespace {

using namespace allocator;
using namespace literals;

Piece Metal(PieceKind kind, Length length, int count) {
  Piece piece;
  piece.kind = kind;
  piece.length = length;
  piece.count = count;
  piece.square_ends = kind == PieceKind::Drop ? 1 : 0;
  return piece;
}

Line Wanted(Length cut, int quantity) {
  Line line;
  line.nominal = cut;
  line.quantity = quantity;
  return line;
}

Problem Rack() {
  Problem problem;
  problem.rules = {2_mm, 5_mm, 80_mm, 300_mm};
  problem.pieces = {Metal(PieceKind::Bar, 6000_mm, 2), Metal(PieceKind::Bar, 3000_mm, 2), Metal(PieceKind::Drop, 900_mm, 1),
                    Metal(PieceKind::Drop, 700_mm, 1)};
  return problem;
}

TEST(PlainPlan, TakesTheShortestDropThatFits) {
  Problem problem = Rack();
  problem.lines = {Wanted(500_mm, 1)};
  const Plan plan = PlainPlan(problem);
  ASSERT_EQ(plan.layouts.size(), 1U);
  EXPECT_EQ(plan.layouts[0].piece, 3);
  EXPECT_EQ(plan.layouts[0].left, 198_mm);
  EXPECT_TRUE(CheckPlan(problem, plan).empty());
}

TEST(PlainPlan, FillsTheDropWithTheLongestThatStillFit) {
  Problem problem = Rack();
  problem.lines = {Wanted(40_mm, 5), Wanted(650_mm, 1), Wanted(100_mm, 2)};
  const Plan plan = PlainPlan(problem);
  ASSERT_EQ(plan.layouts.size(), 2U);
  EXPECT_EQ(plan.layouts[0].piece, 2);  // 900: 652 + 102 leave 146, of which 80 stays in the vice: one of 40
  ASSERT_EQ(plan.layouts[0].cuts.size(), 3U);
  EXPECT_EQ(plan.layouts[0].left, 900_mm - 652_mm - 102_mm - 42_mm);
  EXPECT_EQ(plan.layouts[1].piece, 3);
  EXPECT_TRUE(CheckPlan(problem, plan).empty());
}

TEST(PlainPlan, OpensTheShortestBarThatHoldsTheRest) {
  Problem problem = Rack();
  problem.lines = {Wanted(1000_mm, 2)};
  EXPECT_EQ(PlainPlan(problem).layouts.at(0).piece, 1);
  problem.lines = {Wanted(1000_mm, 4)};
  EXPECT_EQ(PlainPlan(problem).layouts.at(0).piece, 0);
}

TEST(NewBarPlan, LeavesTheDropsAlone) {
  Problem problem = Rack();
  problem.lines = {Wanted(500_mm, 1)};
  const Plan plan = NewBarPlan(problem);
  EXPECT_EQ(plan.layouts.at(0).piece, 1);
  EXPECT_EQ(plan.layouts.at(0).left_kind, LeftKind::Drop);
  EXPECT_TRUE(CheckPlan(problem, plan).empty());
}

TEST(PlainPlan, SaysWhatIsShort) {
  Problem problem = Rack();
  problem.lines = {Wanted(5000_mm, 3), Wanted(100_mm, 1), Wanted(7000_mm, 2)};
  const Plan plan = PlainPlan(problem);
  ASSERT_EQ(plan.shorts.size(), 2U);
  EXPECT_EQ(plan.shorts[0].missing, 1);
  EXPECT_EQ(plan.shorts[1].missing, 2);
  EXPECT_EQ(plan.status, Status::Short);
  EXPECT_TRUE(CheckPlan(problem, plan).empty());
}

TEST(PlansByHand, PassTheCheckOnAnyRack) {
  Dice dice(11);
  for (int round = 0; round < 300; ++round) {
    Problem problem = Rack();
    problem.rules.grip = {dice.Between(0, 1) * 80 * kNmPerMm};
    problem.rules.trim = {dice.Between(0, 1) * 5 * kNmPerMm};
    for (int d = dice.Between(0, 6); d > 0; --d) problem.pieces.push_back(Metal(PieceKind::Drop, {dice.Between(300, 2500) * kNmPerMm}, 1));
    for (int l = dice.Between(1, 6); l > 0; --l)
      problem.lines.push_back(Wanted({dice.Ratio(200, 25'000) * 100'000LL}, dice.Between(0, 15)));
    for (const Plan& plan : {PlainPlan(problem), NewBarPlan(problem)}) {
      const auto faults = CheckPlan(problem, plan);
      ASSERT_TRUE(faults.empty()) << "round " << round << ": " << faults.front();
    }
  }
}

}  // namespace
}  // namespace heatkeep::year
