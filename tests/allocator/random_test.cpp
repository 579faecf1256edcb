// A thousand seeded problems: every plan stands its check, is worth what it says, is not below its bound and not
// worse than the plain choice by hand; and a plan spoilt in one place is refused.
#include <gtest/gtest.h>

#include "client/allocator/value.h"
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

Problem Quick(std::uint64_t seed, bool heats) {
  Problem problem = RandomProblem(seed, {18, 8, heats});
  problem.limits.iterations = 3;
  return problem;
}

TEST(RandomProblems, AThousandPlansStandTheirCheck) {
  for (std::uint64_t seed = 1; seed <= 1000; ++seed) {
    const Problem problem = Quick(seed, true);
    const Plan plan = Allocate(problem);
    ASSERT_EQ(CheckPlan(problem, plan), std::vector<std::string>{}) << "seed " << seed;
    ASSERT_EQ(plan.value, ValueOf(problem, plan.layouts)) << "seed " << seed;
    for (const auto& [key, figure] : plan.bound.figures) ASSERT_LE(figure, FigureOf(plan.value, key)) << "seed " << seed;
  }
}

TEST(RandomProblems, NoPlanIsWorseThanThePlainChoiceByHand) {
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    const Problem problem = Quick(seed, false);
    const Plan plan = Allocate(problem);
    ASSERT_LE(ScoreOf(problem, plan.value), PlainChoiceScore(problem)) << "seed " << seed;
  }
}

TEST(RandomProblems, ASpoiltPlanIsRefused) {
  int spoilt = 0;
  for (std::uint64_t seed = 1; seed <= 80; ++seed) {
    const Problem problem = Quick(seed, true);
    const Plan plan = Allocate(problem);
    if (plan.layouts.empty()) continue;
    const auto refused = [&](const char* what, const Problem& p, auto change) {
      Plan bad = plan;
      change(bad);
      ++spoilt;
      EXPECT_FALSE(CheckPlan(p, bad).empty()) << what << ", seed " << seed;
    };
    refused("one nanometre more is left", problem, [](Plan& p) { p.layouts[0].left.nm += 1; });
    refused("one nanometre of kerf is missing", problem, [](Plan& p) { p.layouts[0].kerf.nm -= 1; });
    refused("a cut is a nanometre long", problem, [](Plan& p) { p.layouts[0].cuts[0].length.nm += 1; });
    refused("one cut too many", problem, [](Plan& p) { p.layouts[0].cuts[0].count += 1; });
    refused("a layout is used once too often", problem, [](Plan& p) { p.layouts[0].repeat += 1; });
    refused("a layout is missing", problem, [](Plan& p) { p.layouts.pop_back(); });
    refused("lost worth is a micrometre off", problem, [](Plan& p) { p.value.lost_worth.nm += 1000; });
    refused("money is off", problem, [](Plan& p) { p.value.money.micro -= 1; });
    refused("a short is invented", problem, [](Plan& p) { p.shorts.push_back({0, 1, "so"}); });
    refused("a bound is above the value", problem, [&](Plan& p) {
      const Key key = KeysOf(problem.aim)[1];
      p.bound.figures[key] = FigureOf(p.value, key) + 1;
    });
    refused("proof is claimed without a bound", problem, [](Plan& p) {
      p.bound = {};
      p.proved_keys = {Key::Unmet};
    });
    Problem other = problem;
    other.pieces[static_cast<std::size_t>(plan.layouts[0].piece)].held = "held";
    refused("the piece is held", other, [](Plan&) {});
    other = problem;
    other.pieces[static_cast<std::size_t>(plan.layouts[0].piece)].owner = "Tarnbeck";
    refused("the metal is another's", other, [](Plan&) {});
    other = problem;
    other.pieces[static_cast<std::size_t>(plan.layouts[0].piece)].grade = "S355J2";
    refused("the grade is another", other, [](Plan&) {});
    other = problem;
    other.rules.grip += Mm(5000);
    other.exceptions.clear();
    if (plan.layouts[0].left.nm > 0) refused("the vice holds nothing", other, [](Plan&) {});
  }
  EXPECT_GT(spoilt, 800);
}

TEST(CheckPlan, RefusesTwoHeatsWhereOneIsAsked) {
  Problem problem;
  problem.pieces = {Drop("A", 500), Drop("B", 500)};
  problem.lines = {Cuts("1", 400, 2)};
  Plan plan = Allocate(problem);
  ASSERT_TRUE(CheckPlan(problem, plan).empty());
  problem.pieces[1].heat = "M2208";
  problem.lines[0].one_heat = "H";
  EXPECT_FALSE(CheckPlan(problem, plan).empty());
  problem.lines[0].one_heat.clear();
  problem.lines[0].max_heats = 1;
  EXPECT_FALSE(CheckPlan(problem, plan).empty());
  plan = Allocate(problem);
  EXPECT_EQ(plan.value.unmet_pieces, 1);
  EXPECT_EQ(plan.proved_keys.front(), Key::Unmet);
}

TEST(Allocate, TakesNoMetalOfARefusedHeatAndSaysWhy) {
  Problem problem;
  problem.pieces = {Drop("A", 500), Drop("B", 600)};
  problem.pieces[0].heat = "M2208";
  problem.pieces[1].heat = "47-0905";
  problem.lines = {Cuts("1", 400, 1)};
  problem.lines[0].refused_heats = {"M2208"};
  Plan plan = Allocate(problem);
  ASSERT_EQ(plan.layouts.size(), 1u);
  EXPECT_EQ(plan.layouts[0].piece, 1);
  problem.lines[0].refused_heats.push_back("47-0905");
  EXPECT_FALSE(CheckPlan(problem, plan).empty());
  plan = Allocate(problem);
  ASSERT_EQ(plan.shorts.size(), 1u);
  EXPECT_NE(plan.shorts[0].why.find("refused"), std::string::npos) << plan.shorts[0].why;
}

// Twelve heats, three lines that each want one of them: more choices than could all be tried out.
TEST(Allocate, OneHeatLinesAmongManyHeatsAreProved) {
  Problem problem;
  for (int i = 0; i < 36; ++i) {
    Piece drop = Drop("D" + std::to_string(i), 700 + 37 * (i % 9));
    drop.heat = "H" + std::to_string(i % 12);
    problem.pieces.push_back(drop);
  }
  Piece bar = Bar("B", 6000, 9);
  bar.heat = "HB";
  problem.pieces.push_back(bar);
  problem.lines = {Cuts("1", 650, 3), Cuts("2", 310, 7), Cuts("3", 420, 4), Cuts("4", 505, 11)};
  for (int i = 0; i < 3; ++i) problem.lines[static_cast<std::size_t>(i)].one_heat = "unit " + std::to_string(i);
  const Plan plan = Allocate(problem);
  EXPECT_EQ(plan.value.unmet_pieces, 0);
  EXPECT_TRUE(plan.proved);
}

TEST(Allocate, RefusesNonsenseNamingIt) {
  Problem problem;
  problem.pieces = {Drop("D-1", 0)};
  EXPECT_THROW(Allocate(problem), std::invalid_argument);
  problem.pieces = {Drop("D-1", 100)};
  problem.lines = {Cuts("7", -3, 1)};
  try {
    Allocate(problem);
    ADD_FAILURE() << "a negative length passed";
  } catch (const std::invalid_argument& e) { EXPECT_NE(std::string(e.what()).find("O1/7"), std::string::npos); }
}

TEST(Allocate, NothingAskedIsAnEmptyProvedPlan) {
  const Plan plan = Allocate(Problem{});
  EXPECT_TRUE(plan.layouts.empty());
  EXPECT_TRUE(plan.proved);
  EXPECT_EQ(plan.status, Status::Proved);
}

TEST(Allocate, SameSeedGivesTheSamePlanOnOneAndTwoThreads) {
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    Problem problem = Quick(seed, true);
    for (int i = 0; i < 8; ++i) {  // more groups, so that there is something to share out
      Piece p = Bar("X" + std::to_string(i), 3000, 4);
      p.section = "S" + std::to_string(i);
      Line l = Cuts("X" + std::to_string(i), 170 + 13 * i, 40);
      l.section = p.section;
      problem.pieces.push_back(p);
      problem.lines.push_back(l);
    }
    const Plan one = Allocate(problem);
    problem.limits.threads = 2;
    const Plan two = Allocate(problem);
    ASSERT_EQ(one.value, two.value);
    ASSERT_EQ(one.layouts.size(), two.layouts.size());
    for (std::size_t i = 0; i < one.layouts.size(); ++i) {
      EXPECT_EQ(one.layouts[i].piece, two.layouts[i].piece);
      EXPECT_EQ(one.layouts[i].repeat, two.layouts[i].repeat);
      EXPECT_EQ(one.layouts[i].left, two.layouts[i].left);
    }
  }
}

TEST(Allocate, AStopGivesTheBestSoFar) {
  std::stop_source stop;
  stop.request_stop();
  const Problem problem = Quick(7, false);
  const Plan plan = Allocate(problem, stop.get_token());
  EXPECT_TRUE(CheckPlan(problem, plan).empty());
}

TEST(Allocate, ProgressTellsValuesAndBoundsThatMeetInTheEnd) {
  Problem problem = Textbook(100, {{45, 97}, {36, 610}, {31, 395}, {14, 211}});
  problem.limits.seconds = 20;
  int told = 0;
  std::int64_t value = 0, bound = -1;
  const Plan plan = Allocate(problem, {}, [&](const Value& v, const Bound& b) {
    ++told;
    value = v.bars_opened;
    if (const auto it = b.figures.find(Key::BarsOpened); it != b.figures.end()) {
      bound = it->second;
      EXPECT_LE(bound, value);
    }
  });
  EXPECT_GT(told, 1);
  EXPECT_EQ(value, plan.value.bars_opened);
  EXPECT_EQ(bound, 453);  // Chvatal, Linear Programming, chapter 13
}

TEST(Allocate, EarlierDueLinesGetTheMetalFirst) {
  Problem problem;
  problem.pieces = {Drop("A", 500)};
  problem.lines = {Cuts("late", 400, 1), Cuts("early", 400, 1)};
  problem.lines[0].due = "2027-06-01";
  problem.lines[1].due = "2027-02-01";
  const Plan plan = Allocate(problem);
  ASSERT_EQ(plan.shorts.size(), 1u);
  EXPECT_EQ(plan.shorts[0].line, 0);
}

TEST(Allocate, AHigherPriorityIsServedBeforeMoreCutsOfALower) {
  Problem problem;
  problem.pieces = {Drop("A", 1000)};
  problem.lines = {Cuts("many", 100, 9), Cuts("one", 950, 1)};
  problem.lines[0].priority = 2;
  problem.lines[1].priority = 1;
  const Plan plan = Allocate(problem);
  EXPECT_EQ(plan.value.unmet_by_priority, (std::map<int, int>{{2, 9}}));
  EXPECT_EQ(plan.proved_keys.front(), Key::Unmet);
}

}  // namespace
}  // namespace heatkeep::allocator::test
