// The plan by hand, and two plans side by side.
#include <gtest/gtest.h>

#include "client/allocator/compare.h"
#include "client/allocator/plain_choice.h"
#include "client/allocator/plan_of_layouts.h"
#include "tests/allocator/problem_maker.h"
#include "tests/allocator/random_problem.h"

namespace heatkeep::allocator::test {
namespace {

const Piece& PieceOf(const Problem& problem, const Layout& layout) { return problem.pieces.at(static_cast<std::size_t>(layout.piece)); }

// Worked by hand (common practice, no source): 500 goes to the shortest drop that holds it, 200 into what that leaves.
TEST(PlanByHand, TakesTheShortestDropThatFitsLongestCutsFirst) {
  Problem problem;
  problem.rules = Rules(2, 0, 60, 150);
  problem.pieces = {Bar("B", 6000), Drop("L", 2600), Drop("M", 800), Drop("S", 400)};
  problem.lines = {Cuts("1", 200, 1), Cuts("2", 500, 1), Cuts("3", 330, 1)};
  const Plan plan = PlanByHand(problem);
  ASSERT_EQ(plan.layouts.size(), 2u);
  EXPECT_EQ(PieceOf(problem, plan.layouts[0]).tag, "M");
  EXPECT_EQ(plan.layouts[0].left, Mm(800 - 502 - 202));
  EXPECT_EQ(PieceOf(problem, plan.layouts[1]).tag, "S");
  EXPECT_EQ(plan.value.unmet_pieces, 0);
  EXPECT_TRUE(plan.bound.figures.empty());
  EXPECT_FALSE(plan.proved);
}

TEST(PlanByHand, OpensTheShortestBarWhenNoDropFits) {
  Problem problem;
  problem.rules = Rules(2, 10, 60, 150);
  problem.pieces = {Bar("B12", 12000, std::nullopt), Bar("B6", 6000, std::nullopt), Drop("D", 300)};
  problem.lines = {Cuts("1", 700, 1)};
  const Plan plan = PlanByHand(problem);
  ASSERT_EQ(plan.layouts.size(), 1u);
  EXPECT_EQ(PieceOf(problem, plan.layouts[0]).tag, "B6");
}

// Seven of 240 from one heat: D-0101 holds four, D-0102 all seven (scenario by hand, common practice, no source).
TEST(PlanByHand, KeepsOneHeatTogether) {
  Problem problem;
  problem.rules = Rules(2, 10, 60, 150);
  problem.pieces = {Drop("D-0101", 1100), Drop("D-0102", 1900), Bar("B", 6000)};
  problem.pieces[1].heat = "M2208";
  problem.lines = {Cuts("1", 240, 7)};
  problem.lines[0].one_heat = "A";
  const Plan plan = PlanByHand(problem);
  ASSERT_EQ(plan.layouts.size(), 1u);
  EXPECT_EQ(PieceOf(problem, plan.layouts[0]).tag, "D-0102");
  EXPECT_EQ(plan.layouts[0].left, Mm(206));
}

TEST(PlanByHand, IsAGoodPlanOnEverySeededProblemAndNeverBetterThanTheSearch) {
  for (std::uint64_t seed = 1; seed <= 150; ++seed) {
    Problem problem = RandomProblem(seed, {});
    problem.limits.seconds = 2;
    const Plan plain = PlanByHand(problem);  // checks itself
    const Plan searched = Allocate(problem);
    EXPECT_GE(FiguresOf(problem, plain.value), FiguresOf(problem, searched.value)) << "seed " << seed;
  }
}

TEST(TwoPlans, DifferenceIsInMetresKilogramsAndMoney) {
  Problem problem;
  problem.rules = Rules(0, 0, 0, 100);
  problem.pieces = {Bar("B6", 6000), Bar("B4", 4000)};
  for (Piece& piece : problem.pieces) {
    piece.mass = {39'458'000'000'000};  // round 80 at 7850 kg/m3: 39.458 kg/m (d^2 x 0.0061654)
    piece.costs.per_metre = {6'313'000'000};
  }
  problem.lines = {Cuts("1", 1000, 1)};
  const Plan six = PlanOfLayouts(problem, {{0, 1, {}, {}, {{0, 1, Mm(1000)}}, Mm(5000), LeftKind::Drop}});
  const Plan four = PlanOfLayouts(problem, {{1, 1, {}, {}, {{0, 1, Mm(1000)}}, Mm(3000), LeftKind::Drop}});
  const Difference d = DifferenceOf(problem, six, problem, four);
  EXPECT_EQ(d.new_length, Mm(2000));
  ASSERT_TRUE(d.new_mass);
  EXPECT_EQ(d.new_mass->g, 78'916);
  ASSERT_TRUE(d.money);
  EXPECT_EQ(d.money->micro, six.value.money.micro - four.value.money.micro);
  EXPECT_EQ(DifferenceWords(d).substr(0, 31), "2.00 m more full bar, 78.9 kg, ");
  problem.pieces[0].mass = {};
  EXPECT_FALSE(DifferenceOf(problem, six, problem, four).new_mass) << "a mass that is not known is not guessed";
  problem.pieces[1].costs.per_metre = {};
  EXPECT_FALSE(DifferenceOf(problem, six, problem, four).money);
}

// Two drops by hand, equally long; the pull of the searched one is 1.50 dearer or cheaper.
constexpr FineMoney kLeastGain{200'000'000};

TEST(TwoPlans, PlainOneIsTakenOnlyWhenTheGainIsBelowTheSetting) {
  Problem problem;
  problem.rules = Rules(0, 0, 0, 100);
  problem.pieces = {Drop("A", 500), Drop("B", 500)};
  for (Piece& piece : problem.pieces) piece.costs.per_metre = {1'000'000'000};
  problem.pieces[0].costs.per_pull = {250'000'000};
  problem.pieces[1].costs.per_pull = {100'000'000};
  problem.lines = {Cuts("1", 200, 1)};
  const Plan dear = PlanOfLayouts(problem, {{0, 1, {}, {}, {{0, 1, Mm(200)}}, Mm(300), LeftKind::Drop}});
  const Plan cheap = PlanOfLayouts(problem, {{1, 1, {}, {}, {{0, 1, Mm(200)}}, Mm(300), LeftKind::Drop}});
  const Choice taken = ChooseBetween(problem, cheap, dear, kLeastGain);
  EXPECT_TRUE(taken.plain);
  EXPECT_EQ(taken.words, "the plan by hand is taken: it costs 1.50 more, less than 2.00; it takes the same metal");
  EXPECT_FALSE(ChooseBetween(problem, cheap, dear, {150'000'000}).plain);
  EXPECT_FALSE(ChooseBetween(problem, cheap, dear, {}).plain) << "never";
  EXPECT_EQ(ChooseBetween(problem, cheap, dear, {}).words, "against the plan by hand: 1.50 cheaper");
  problem.pieces[0].costs.per_metre = {};
  EXPECT_FALSE(ChooseBetween(problem, cheap, dear, kLeastGain).plain) << "no price is known";
}

TEST(TwoPlans, PlainOneIsNeverTakenWhenItOpensMoreBar) {
  Problem problem;
  problem.rules = Rules(0, 0, 0, 100);
  problem.pieces = {Drop("A", 500), Bar("B", 500)};
  for (Piece& piece : problem.pieces) piece.costs.per_metre = {1'000};
  problem.lines = {Cuts("1", 200, 1)};
  const Plan drop = PlanOfLayouts(problem, {{0, 1, {}, {}, {{0, 1, Mm(200)}}, Mm(300), LeftKind::Drop}});
  const Plan bar = PlanOfLayouts(problem, {{1, 1, {}, {}, {{0, 1, Mm(200)}}, Mm(300), LeftKind::Drop}});
  EXPECT_FALSE(ChooseBetween(problem, drop, bar, kLeastGain).plain);
  EXPECT_TRUE(ChooseBetween(problem, bar, drop, kLeastGain).plain);
}

}  // namespace
}  // namespace heatkeep::allocator::test
