// Two pieces at a time cut anew.
#include "client/allocator/recut.h"

#include <gtest/gtest.h>

#include "tests/allocator/problem_maker.h"
#include "tests/allocator/random_problem.h"

namespace heatkeep::allocator::test {
namespace {

std::vector<Solution> RecutOf(const Component& c, std::size_t key, const Solution& start) {
  std::vector<Solution> offered;
  Chance chance(1);
  Recut(c, key, start, 0, 200'000, chance, SearchControl{}, [&](Solution s) { offered.push_back(std::move(s)); });
  return offered;
}

// By hand: 3000 + 3050 twice opens 6100 twice; 3000 twice and 3050 twice fill 6000 and 6100 to the end.
TEST(Recut, GathersRoomOnOneBarUntilAShorterOneDoes) {
  Problem problem;
  problem.pieces = {Bar("short", 6000, std::nullopt), Bar("long", 6100, std::nullopt)};
  problem.lines = {Cuts("1", 3050, 2), Cuts("2", 3000, 2)};
  const std::vector<Component> components = ComponentsOf(problem);
  ASSERT_EQ(components.size(), 1u);
  const Component& c = components[0];
  Pattern p;
  p.source = c.sources[0].length > c.sources[1].length ? 0 : 1;
  p.cuts = {{0, 1}, {1, 1}};
  ASSERT_TRUE(Complete(c, p));
  Solution start;
  start.patterns = {{p, 2}};
  Score(c, start);
  ASSERT_EQ(c.keys[0], Key::NewLength);
  ASSERT_EQ(start.score[1], Mm(12200).nm);
  const auto offered = RecutOf(c, 1, start);
  ASSERT_EQ(offered.size(), 1u);
  EXPECT_EQ(offered[0].score[1], Mm(12100).nm);
  EXPECT_EQ(offered[0].score[0], 0);
}

TEST(Recut, OffersOnlyPlansThatAreBetterAndUseNoMoreThanThereIs) {
  int better = 0;
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    const Problem problem = RandomProblem(seed, {12, 6, false});
    for (const Component& c : ComponentsOf(problem)) {
      if (!c.units.empty() || c.setups_cost || c.heats_cost) continue;
      const Solution start = QuickPlan(c, PlainChoice());
      for (std::size_t key = c.priorities.size(); key < c.priorities.size() + c.keys.size(); ++key)
        for (const Solution& s : RecutOf(c, key, start)) {
          ++better;
          const auto to = static_cast<std::ptrdiff_t>(key) + 1;
          EXPECT_LT(std::vector<std::int64_t>(s.score.begin(), s.score.begin() + to),
                    std::vector<std::int64_t>(start.score.begin(), start.score.begin() + to))
              << seed;
          EXPECT_EQ(s.unmet, start.unmet) << seed;
          std::vector<std::int64_t> used(c.sources.size(), 0);
          for (auto [p, times] : s.patterns) {
            EXPECT_TRUE(Complete(c, p)) << seed;
            used[static_cast<std::size_t>(p.source)] += times;
          }
          for (std::size_t n = 0; n < used.size(); ++n) EXPECT_LE(used[n], c.sources[n].count) << seed;
        }
    }
  }
  EXPECT_GT(better, 20);
}

}  // namespace
}  // namespace heatkeep::allocator::test
