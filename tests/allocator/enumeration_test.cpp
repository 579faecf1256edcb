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

}  // namespace
}  // namespace heatkeep::allocator::test
