// Bundles, and the same plan with fewer set-ups.
#include <gtest/gtest.h>

#include "client/allocator/bundles.h"
#include "client/allocator/fewer_layouts.h"
#include "client/allocator/plan_of_layouts.h"
#include "client/allocator/value.h"
#include "tests/allocator/problem_maker.h"
#include "tests/allocator/random_problem.h"

namespace heatkeep::allocator::test {
namespace {

// 95 x 300 from five bars of 6000 of one heat, bundle grip 120: 19 each, five rests of 250 (common practice, no source).
Problem FiveBars() {
  Problem problem;
  problem.rules = Rules(2, 10, 120, 150);
  for (int i = 1; i <= 5; ++i) problem.pieces.push_back(Bar("B" + std::to_string(i), 6000));
  problem.lines = {Cuts("1", 300, 95)};
  return problem;
}

TEST(Bundles, FiveEqualBarsCutAlikeAreOneBundle) {
  const Problem problem = FiveBars();
  const Plan plan = Allocate(problem);
  ASSERT_EQ(plan.value.unmet_pieces, 0);
  const std::vector<Bundle> bundles = BundlesOf(problem, plan);
  ASSERT_EQ(bundles.size(), 1u);
  EXPECT_EQ(bundles[0].bars, 5);
  EXPECT_EQ(bundles[0].layouts.size(), 5u);
  for (const Layout& layout : plan.layouts) EXPECT_EQ(layout.left, Mm(250));
}

TEST(Bundles, OneStockRowWithACountIsOneLayoutRepeated) {
  Problem problem = FiveBars();
  problem.pieces = {Bar("B", 6000, 5)};
  const Plan plan = Allocate(problem);
  ASSERT_EQ(plan.layouts.size(), 1u);
  EXPECT_EQ(plan.layouts[0].repeat, 5);
  const std::vector<Bundle> bundles = BundlesOf(problem, plan);
  ASSERT_EQ(bundles.size(), 1u);
  EXPECT_EQ(bundles[0].bars, 5);
}

TEST(Bundles, AreOfNoMoreBarsThanTheSawTakes) {
  const Problem problem = FiveBars();
  const std::vector<Bundle> bundles = BundlesOf(problem, Allocate(problem), 2);
  ASSERT_EQ(bundles.size(), 3u);
  EXPECT_EQ(bundles[0].bars, 2);
  EXPECT_EQ(bundles[1].bars, 2);
  EXPECT_EQ(bundles[2].bars, 1);
}

TEST(Bundles, AnotherHeatIsAnotherBundleOnlyWhereHeatsCount) {
  Problem problem = FiveBars();
  problem.pieces[4].heat = "M2208";
  const Plan free = Allocate(problem);
  ASSERT_EQ(BundlesOf(problem, free).size(), 1u);
  problem.lines[0].max_heats = 2;
  const Plan two = Allocate(problem);
  ASSERT_EQ(two.value.unmet_pieces, 0);
  EXPECT_EQ(BundlesOf(problem, two).size(), 2u);
}

// By hand: 400 + 400, 400 + 300 and 300 + 300 become 400 + 300 three times.
TEST(FewerLayouts, SwapsCutsBetweenEqualPieces) {
  Problem problem;
  problem.rules = Rules(0, 0, 0, 2000);  // every rest is scrap: worth is the same however it falls
  for (int i = 1; i <= 3; ++i) problem.pieces.push_back(Drop("D" + std::to_string(i), 1000));
  for (Piece& piece : problem.pieces) piece.square_ends = 2;
  problem.lines = {Cuts("1", 400, 3), Cuts("2", 300, 3)};
  const auto layout = [&](int piece, std::vector<std::pair<int, int>> cuts) { return MakeLayout(problem, piece, 1, std::move(cuts)); };
  const Plan many = PlanOfLayouts(problem, {layout(0, {{0, 2}}), layout(1, {{0, 1}, {1, 1}}), layout(2, {{1, 2}})});
  ASSERT_EQ(many.value.layouts, 3);
  const Plan fewer = WithFewerLayouts(problem, many);
  EXPECT_EQ(fewer.value.layouts, 1);
  EXPECT_EQ(fewer.value.lost_worth, many.value.lost_worth);
  EXPECT_EQ(fewer.value.pieces_pulled, 3);
  EXPECT_TRUE(CheckPlan(problem, fewer).empty());
}

TEST(FewerLayouts, IsNeverWorseOnAnySeededPlan) {
  int better = 0;
  for (std::uint64_t seed = 1; seed <= 150; ++seed) {
    Problem problem = RandomProblem(seed, {20, 6, true});
    problem.limits.seconds = 0.2;
    problem.limits.iterations = 5;
    const Plan plan = Allocate(problem);
    const Plan fewer = WithFewerLayouts(problem, plan);
    const auto faults = CheckPlan(problem, fewer);
    EXPECT_TRUE(faults.empty()) << "seed " << seed << ": " << faults.front();
    EXPECT_LE(FiguresOf(problem, fewer.value), FiguresOf(problem, plan.value)) << "seed " << seed;
    EXPECT_EQ(fewer.value.unmet_by_priority, plan.value.unmet_by_priority);
    EXPECT_GE(fewer.proved_keys.size(), plan.proved_keys.size());
    if (fewer.value.layouts < plan.value.layouts) ++better;
  }
  RecordProperty("plans with fewer layouts", better);
}

}  // namespace
}  // namespace heatkeep::allocator::test
