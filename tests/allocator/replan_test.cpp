// A plan mended at the saw. Lengths by hand arithmetic (common practice, no source).
#include <gtest/gtest.h>

#include <algorithm>

#include "client/allocator/plan_of_layouts.h"
#include "client/allocator/replan.h"
#include "client/allocator/value.h"
#include "tests/allocator/problem_maker.h"
#include "tests/allocator/random_problem.h"

namespace heatkeep::allocator::test {
namespace {

const Layout* On(const Problem& problem, const Plan& plan, const std::string& tag) {
  for (const Layout& layout : plan.layouts)
    if (problem.pieces[static_cast<std::size_t>(layout.piece)].tag == tag) return &layout;
  return nullptr;
}

Change Shorter(int piece, double mm) {
  Change change;
  change.what = Mishap::Shorter;
  change.piece = piece;
  change.measured = Mm(mm);
  return change;
}

// Four of 240, one heat, from D-0101 of 1100. Measured 1018: three from it, rest 1018 - 726 = 292; one from D-0107 of 420,
// rest 178.
Problem FourFromOneDrop() {
  Problem problem;
  problem.rules = Rules(2, 10, 60, 150);
  problem.pieces = {Drop("D-0101", 1100), Drop("D-0107", 420), Drop("D-0108", 400), Bar("B", 6000)};
  problem.pieces[2].heat = "M2208";
  problem.lines = {Cuts("1", 240, 4)};
  problem.lines[0].one_heat = "A";
  return problem;
}

TEST(Replan, ShorterThanWrittenKeepsThreeAndTakesTheFourthFromTheSameHeat) {
  const Problem problem = FourFromOneDrop();
  const Plan plan = PlanOfLayouts(problem, {MakeLayout(problem, 0, 1, {{0, 4}})});
  ASSERT_EQ(plan.layouts[0].left, Mm(132));
  for (const bool at_saw : {true, false}) {
    const Replanned r = Replan(problem, plan, {at_saw}, {Shorter(0, 1018)});
    ASSERT_EQ(r.plan.value.unmet_pieces, 0);
    ASSERT_EQ(r.plan.layouts.size(), 2u);
    ASSERT_NE(On(r.problem, r.plan, "D-0101"), nullptr);
    EXPECT_EQ(On(r.problem, r.plan, "D-0101")->cuts[0].count, 3);
    EXPECT_EQ(On(r.problem, r.plan, "D-0101")->left, Mm(292));
    EXPECT_EQ(On(r.problem, r.plan, "D-0101")->left_kind, LeftKind::Drop);
    ASSERT_NE(On(r.problem, r.plan, "D-0107"), nullptr) << "D-0108 is shorter, but of another heat";
    EXPECT_EQ(On(r.problem, r.plan, "D-0107")->left, Mm(178));
    EXPECT_EQ(
        r.words,
        (std::vector<std::string>{"D-0107 instead of D-0101 for 1 x 240 mm", "D-0101 leaves 292 mm, kept", "D-0107 leaves 178 mm, kept"}));
    EXPECT_EQ(r.kept, 0);
    EXPECT_EQ(r.planned_anew, 2);
  }
}

// 8 x 400 still open of a bar cut before: 3978 is left of it with a sawn end; two crops of 150 with their kerfs are lost,
// 3674 stays; one of the pieces cut before is rejected: 7 + 1 from 3674, rest 3674 - 8 x 402 = 458.
TEST(Replan, PipeInABarIsCroppedAndTheRejectedPieceIsCutAgain) {
  Problem problem;
  problem.rules = Rules(2, 10, 60, 150);
  problem.pieces = {Drop("P", 3978)};
  problem.lines = {Cuts("1", 400, 7)};
  const Plan plan = Allocate(problem);
  Change pipe;
  pipe.what = Mishap::Defect;
  pipe.piece = 0;
  pipe.from = Mm(0);
  pipe.to = Mm(304);
  Change again;
  again.what = Mishap::Rejected;
  again.line = 0;
  const Replanned r = Replan(problem, plan, {}, {pipe, again});
  ASSERT_EQ(r.plan.value.unmet_pieces, 0);
  ASSERT_EQ(r.plan.layouts.size(), 1u);
  EXPECT_EQ(r.plan.layouts[0].left, Mm(458));
  EXPECT_EQ(r.problem.lines[0].quantity, 8);
}

TEST(Replan, MissingPieceIsReplacedAndTheOthersStay) {
  Problem problem;
  problem.rules = Rules(2, 10, 60, 150);
  problem.pieces = {Drop("D1", 700), Drop("D2", 1000), Drop("D3", 720), Bar("B", 6000)};
  problem.lines = {Cuts("1", 600, 1), Cuts("2", 900, 1)};
  const Plan plan = Allocate(problem);
  ASSERT_NE(On(problem, plan, "D1"), nullptr);
  Change missing;
  missing.piece = 0;
  const Replanned r = Replan(problem, plan, {}, {missing});
  EXPECT_EQ(r.plan.value.unmet_pieces, 0);
  EXPECT_EQ(On(r.problem, r.plan, "D1"), nullptr);
  EXPECT_NE(On(r.problem, r.plan, "D3"), nullptr);
  EXPECT_EQ(r.kept, 1);
  EXPECT_EQ(r.planned_anew, 1);
  EXPECT_EQ(r.words.front(), "D3 instead of D1 for 1 x 600 mm");
}

TEST(Replan, RecutGoesIntoARestBeforeAFullBarIsOpened) {
  Problem problem;
  problem.rules = Rules(2, 10, 60, 150);
  problem.pieces = {Drop("D1", 1400), Bar("B", 6000)};
  problem.lines = {Cuts("1", 600, 1)};
  const Plan plan = Allocate(problem);
  Change again;
  again.what = Mishap::Rejected;
  const Replanned r = Replan(problem, plan, {}, {again});
  EXPECT_EQ(r.plan.value.unmet_pieces, 0);
  EXPECT_EQ(r.plan.value.bars_opened, 0);
  const Replanned at_saw = Replan(problem, plan, {true}, {again});
  EXPECT_EQ(at_saw.plan.value.bars_opened, 1) << "what is at the saw is not touched";
  EXPECT_EQ(at_saw.kept, 1);
}

TEST(Replan, SaysWhatIsShortAndRefusesWhatCannotBe) {
  Problem problem;
  problem.rules = Rules(2, 10, 60, 150);
  problem.pieces = {Drop("D1", 700)};
  problem.lines = {Cuts("1", 600, 1)};
  const Plan plan = Allocate(problem);
  Change missing;
  const Replanned r = Replan(problem, plan, {}, {missing});
  EXPECT_EQ(r.plan.value.unmet_pieces, 1);
  EXPECT_EQ(r.words.front(), "1 x 600 mm no longer from D1");
  EXPECT_EQ(r.words.back().substr(0, 35), "short: order O1 line 1, 1 missing: ");
  EXPECT_THROW(Replan(problem, plan, {}, {Shorter(7, 100)}), std::invalid_argument);
  EXPECT_THROW(Replan(problem, plan, {}, {Shorter(0, 0)}), std::invalid_argument);
  EXPECT_THROW(Replan(problem, plan, {}, {missing, missing}), std::invalid_argument) << "it is gone already";
}

TEST(Replan, EveryMendedPlanCanBeCutAndKeepsWhatIsAtTheSaw) {
  for (std::uint64_t seed = 1; seed <= 120; ++seed) {
    Problem problem = RandomProblem(seed, {16, 6, true});
    problem.limits.seconds = 1;
    problem.limits.iterations = 20;
    const Plan plan = Allocate(problem);
    if (plan.layouts.empty()) continue;
    std::vector<bool> fixed(plan.layouts.size(), false);
    fixed.front() = true;
    const Layout& hit = plan.layouts.back();
    const Piece& piece = problem.pieces[static_cast<std::size_t>(hit.piece)];
    Change change;
    change.piece = hit.piece;
    change.what = seed % 3 == 0 ? Mishap::Missing : seed % 3 == 1 ? Mishap::Shorter : Mishap::Defect;
    change.measured = {piece.length.nm * 2 / 3};
    change.from = {piece.length.nm / 3};
    change.to = {piece.length.nm / 2};
    Change again;
    again.what = Mishap::Rejected;
    again.line = plan.layouts.front().cuts.front().line;
    const Replanned r = Replan(problem, plan, fixed, {change, again});
    const auto faults = CheckPlan(r.problem, r.plan);
    EXPECT_TRUE(faults.empty()) << "seed " << seed << ": " << faults.front();
    if (plan.layouts.front().piece == hit.piece) continue;
    const bool stays = std::any_of(r.plan.layouts.begin(), r.plan.layouts.end(), [&](const Layout& layout) {
      return layout.piece == plan.layouts.front().piece && layout.left == plan.layouts.front().left &&
          layout.repeat >= plan.layouts.front().repeat;
    });
    EXPECT_TRUE(stays) << "seed " << seed;
  }
}

}  // namespace
}  // namespace heatkeep::allocator::test
