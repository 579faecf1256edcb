// Small problems against full enumeration, in every key of every aim.
#include <gtest/gtest.h>

#include "tests/allocator/enumerate.h"
#include "tests/allocator/problem_maker.h"
#include "tests/allocator/random_problem.h"

namespace heatkeep::allocator::test {
namespace {

std::vector<long long> ScoreOf(const Problem& problem, const Value& v) {
  std::vector<long long> score(10, 0);
  for (const auto& [priority, n] : v.unmet_by_priority) score[static_cast<std::size_t>(priority)] = n;
  for (Key key : KeysOf(problem.aim))
    if (key != Key::Unmet) score.push_back(FigureOf(v, key));
  return score;
}

void Compare(std::uint64_t first, std::uint64_t last, const Shape& shape) {
  int proved = 0;
  for (std::uint64_t seed = first; seed < last; ++seed) {
    const Problem problem = RandomProblem(seed, shape);
    long long copies = 0;
    for (const Piece& p : problem.pieces) copies += p.count.value_or(shape.most_cuts);
    const Plan plan = Allocate(problem);
    ASSERT_EQ(ScoreOf(problem, plan.value), BestByEnumeration(problem)) << "seed " << seed;
    proved += plan.proved ? 1 : 0;
  }
  EXPECT_GE(proved, static_cast<int>(last - first) * 9 / 10);
}

TEST(Enumeration, TinyProblemsOfAllAimsComeOutBest) { Compare(1, 401, {5, 4, false}); }
TEST(Enumeration, TinyProblemsWithHeatRulesComeOutBest) { Compare(1001, 1301, {5, 4, true}); }
TEST(Enumeration, SmallProblemsComeOutBest) { Compare(2001, 2061, {7, 3, true}); }
TEST(Enumeration, EightCutsFromTwoKindsComeOutBest) { Compare(3001, 3041, {8, 2, true}); }

// Without the exact search: what the relaxation proves is true, and its bounds are not above the best there is.
void CompareBounds(std::uint64_t first, std::uint64_t last, const Shape& shape) {
  int proved = 0, bounded = 0;
  for (std::uint64_t seed = first; seed < last; ++seed) {
    Problem problem = RandomProblem(seed, shape);
    problem.limits.iterations = 9;
    const Plan plan = Allocate(problem);
    const std::vector<long long> best = BestByEnumeration(problem);
    const std::vector<long long> score = ScoreOf(problem, plan.value);
    ASSERT_TRUE(plan.bound.unmet_by_priority.has_value());
    std::vector<long long> unmet(10, 0);
    for (const auto& [priority, n] : *plan.bound.unmet_by_priority) unmet[static_cast<std::size_t>(priority)] = n;
    ASSERT_LE(unmet, std::vector<long long>(best.begin(), best.begin() + 10)) << "seed " << seed;
    const std::vector<Key> keys = KeysOf(problem.aim);
    for (std::size_t k = 0; k < keys.size(); ++k) {
      if (k > 0) {
        const auto bound = plan.bound.figures.find(keys[k]);
        if (bound == plan.bound.figures.end()) break;
        ++bounded;
        ASSERT_LE(bound->second, best[9 + k]) << "seed " << seed << ", " << NameOf(keys[k]);
      }
      if (k >= plan.proved_keys.size()) break;
      ++proved;
      ASSERT_TRUE(std::equal(best.begin(), best.begin() + 10 + static_cast<std::ptrdiff_t>(k), score.begin()))
          << "seed " << seed << ", " << NameOf(keys[k]);
    }
  }
  EXPECT_GT(proved, static_cast<int>(last - first));
  EXPECT_GT(bounded, static_cast<int>(last - first));
}

TEST(Enumeration, BoundsOfTheRelaxationAreNeverAboveTheBest) { CompareBounds(5001, 5701, {5, 4, false}); }
TEST(Enumeration, BoundsHoldWithHeatRulesToo) { CompareBounds(6001, 6301, {5, 4, true}); }
TEST(Enumeration, BoundsOfSmallProblemsHold) { CompareBounds(7001, 7061, {6, 3, true}); }

}  // namespace
}  // namespace heatkeep::allocator::test
