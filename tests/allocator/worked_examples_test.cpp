// Published cutting-stock examples. Optima were recomputed with a general integer programme over all patterns.
#include <gtest/gtest.h>

#include "tests/allocator/problem_maker.h"

namespace heatkeep::allocator::test {
namespace {

void ExpectBars(Problem problem, int bars) {
  problem.limits.seconds = 20;
  const Plan plan = Allocate(problem);
  EXPECT_EQ(plan.value.unmet_pieces, 0);
  EXPECT_EQ(plan.value.bars_opened, bars);
  EXPECT_EQ(plan.bound.figures.at(Key::BarsOpened), bars);
  EXPECT_TRUE(plan.proved);
}

// The 13-width master of 5600 in the public article on the cutting stock problem: optimum 73.
TEST(WorkedExamples, ThirteenWidthsFrom5600Take73) {
  ExpectBars(Textbook(5600,
                      {{1380, 22},
                       {1520, 25},
                       {1560, 12},
                       {1710, 14},
                       {1820, 18},
                       {1880, 18},
                       {1930, 20},
                       {2000, 10},
                       {2050, 12},
                       {2100, 14},
                       {2140, 16},
                       {2150, 18},
                       {2200, 20}}),
             73);
}

// Winston, "Woodco", as printed in lecture notes MIE376 no. 8: stock 17, optimum 19.
TEST(WorkedExamples, SeventeenFootBoardsTake19) { ExpectBars(Textbook(17, {{3, 25}, {5, 20}, {9, 15}}), 19); }

// Chvatal, Linear Programming, chapter 13: raw 100, optimum 453 (relaxation 452.25).
TEST(WorkedExamples, RawsOf100Take453) { ExpectBars(Textbook(100, {{45, 97}, {36, 610}, {31, 395}, {14, 211}}), 453); }

// The same chapter's numerical run (data from memory): raw 91, optimum 44.
TEST(WorkedExamples, RawsOf91Take44) { ExpectBars(Textbook(91, {{25.5, 78}, {22.5, 40}, {20, 30}, {15, 30}}), 44); }

// Gilmore and Gomory 1961 (data from memory): stock 5, 6, 9 at cost 6, 7, 10; optimum 170.
TEST(WorkedExamples, ThreeStockLengthsCost170) {
  Problem problem;
  problem.aim = Aim::LeastMoney;
  for (const auto& [length, cost] : {std::pair{5.0, 6}, std::pair{6.0, 7}, std::pair{9.0, 10}}) {
    Piece bar = Bar("S" + std::to_string(cost), length, std::nullopt);
    bar.costs.per_pull = {cost * 100'000'000LL};
    problem.pieces.push_back(bar);
  }
  problem.lines = {Cuts("1", 2, 20), Cuts("2", 3, 10), Cuts("3", 4, 20)};
  const Plan plan = Allocate(problem);
  EXPECT_EQ(plan.value.unmet_pieces, 0);
  EXPECT_EQ(plan.value.money.micro, 170 * 100'000'000LL);
  EXPECT_TRUE(plan.proved);
}

// Constructed, solved by full enumeration: the fewest new bars is one, and both remnants are used before it.
TEST(WorkedExamples, UsableLeftoversOpenOneNewBar) {
  for (const Aim aim : {Aim::DropsFirst, Aim::FewestBars}) {
    Problem problem;
    problem.aim = aim;
    problem.rules = Rules(2, 0, 0, 500);
    problem.pieces = {Drop("R1", 1750), Drop("R2", 2300), Bar("B1", 6000), Bar("B2", 6000)};
    problem.lines = {Cuts("1", 1200, 4), Cuts("2", 850, 3), Cuts("3", 640, 2)};
    const Plan plan = Allocate(problem);
    EXPECT_EQ(plan.value.unmet_pieces, 0);
    EXPECT_EQ(plan.value.bars_opened, 1);
    EXPECT_EQ(plan.value.new_length, Mm(6000));
    EXPECT_TRUE(plan.proved);
  }
}

}  // namespace
}  // namespace heatkeep::allocator::test
