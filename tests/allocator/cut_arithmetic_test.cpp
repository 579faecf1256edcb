// Checked against hand arithmetic of the trade (common practice, no source): acceptance cases of a shop with
// k = 2, trim 10 on mill ends, grip 60, keep 150.
#include <gtest/gtest.h>

#include "client/allocator/cut_arithmetic.h"
#include "tests/allocator/problem_maker.h"

namespace heatkeep::allocator::test {
namespace {

// How many cuts of one length a piece gives, by trying one more until it no longer fits.
int Most(const Piece& piece, const GroupRules& rules, Length length) {
  const Room room = RoomOf(piece, rules);
  int most = 0;
  for (int n = 1; n < 1000; ++n)
    if (Fits(room, (length + rules.kerf) * n, length)) most = n;
  return most;
}

Ending EndAfter(const Piece& piece, const GroupRules& rules, Length length, int n) {
  return EndingOf(RoomOf(piece, rules), (length + rules.kerf) * n, n);
}

TEST(CutArithmetic, SawnDropsGiveFourAndSevenOf240) {
  const GroupRules rules = Rules(2, 10, 60, 150);
  EXPECT_EQ(Most(Drop("D-0101", 1100), rules, Mm(240)), 4);
  EXPECT_EQ(Most(Drop("D-0102", 1900), rules, Mm(240)), 7);
  EXPECT_EQ(EndAfter(Drop("D-0102", 1900), rules, Mm(240), 7).left, Mm(206));
}

TEST(CutArithmetic, DropServingAllSevenFromOneHeatIsChosenAlone) {
  Problem problem;
  problem.rules = Rules(2, 10, 60, 150);
  problem.pieces = {Drop("D-0101", 1100), Drop("D-0102", 1900), Bar("B", 6000)};
  problem.pieces[1].heat = "M2208";
  problem.lines = {Cuts("1", 240, 7)};
  problem.lines[0].one_heat = "one";
  const Plan plan = Allocate(problem);
  ASSERT_EQ(plan.layouts.size(), 1u);
  EXPECT_EQ(plan.layouts[0].piece, 1);
  EXPECT_EQ(plan.layouts[0].left, Mm(206));
  EXPECT_EQ(plan.layouts[0].kerf, Mm(14));
  EXPECT_TRUE(plan.proved);
}

TEST(CutArithmetic, InchListLeaves17995ThousandthsToTheNanometre) {
  const auto thousandths = [](std::int64_t n) { return Length{n * 25'400}; };
  Piece bar = Bar("B", 1);
  bar.length = Length{12 * 12 * kNmPerInch};
  const GroupRules rules{thousandths(63), thousandths(500), thousandths(2000), {}};
  const Length cut{13'875 * 25'400};
  EXPECT_EQ(cut, Mm(352.425));
  EXPECT_EQ(EndAfter(bar, rules, cut, 9).left.nm, 457'073'000);
  EXPECT_EQ(Most(bar, rules, cut), 10) << "a tenth would fit";
  EXPECT_EQ(EndAfter(bar, rules, cut, 10).left, thousandths(4057));
}

struct ExactEnd {
  double drop;
  int wanted, cut;
  double kerf, left;
};

TEST(CutArithmetic, FiveExactEndsOfAHandFedSaw) {
  // sawn ends, grip 0, kerf 2, two of 250 from 504, 502, 503, one from 250, and 501 that gives only one
  for (const ExactEnd& e : {ExactEnd{504, 2, 2, 4, 0}, ExactEnd{502, 2, 2, 2, 0}, ExactEnd{503, 2, 2, 3, 0}, ExactEnd{250, 1, 1, 0, 0},
                            ExactEnd{501, 2, 1, 2, 249}}) {
    Problem problem;
    problem.rules = Rules(2, 10, 0, 150);
    problem.pieces = {Drop("D", e.drop)};
    problem.pieces[0].square_ends = 2;
    problem.lines = {Cuts("1", 250, e.wanted)};
    const Plan plan = Allocate(problem);
    ASSERT_EQ(plan.layouts.size(), 1u) << e.drop;
    EXPECT_EQ(plan.layouts[0].cuts[0].count, e.cut) << e.drop;
    EXPECT_EQ(plan.layouts[0].kerf, Mm(e.kerf)) << e.drop;
    EXPECT_EQ(plan.layouts[0].left, Mm(e.left)) << e.drop;
    EXPECT_EQ(plan.layouts[0].left_kind, e.left > 0 ? LeftKind::Drop : LeftKind::None);
    EXPECT_EQ(plan.value.unmet_pieces, e.wanted - e.cut);
  }
}

TEST(CutArithmetic, GripForbidsTheRunOffButNotTheUncutLastPiece) {
  Piece drop = Drop("D", 503);
  drop.square_ends = 2;
  const GroupRules rules = Rules(2, 10, 60, 150);
  EXPECT_EQ(Most(drop, rules, Mm(250)), 1);
  drop.length = Mm(502);
  EXPECT_EQ(Most(drop, rules, Mm(250)), 2);
  EXPECT_TRUE(EndAfter(drop, rules, Mm(250), 2).last_uncut);
  drop.doubt = Mm(1);
  EXPECT_EQ(Most(drop, rules, Mm(250)), 1) << "a doubtful length is not used up";
  drop.doubt = {};
  drop.square_ends = 1;
  EXPECT_EQ(Most(drop, rules, Mm(250)), 1) << "the far end is rough";
}

TEST(CutArithmetic, RoughFarEndKeepsATrimLengthWhenNothingIsGripped) {
  const GroupRules rules = Rules(2, 10, 0, 150);
  EXPECT_TRUE(Fits(RoomOf(Drop("D", 262), rules), Mm(252), Mm(250)));
  EXPECT_FALSE(Fits(RoomOf(Drop("D", 261.999999), rules), Mm(252), Mm(250)));
}

TEST(CutArithmetic, UncutLastPieceIsTheOneTheViceCanHold) {
  Problem problem;
  problem.rules = Rules(2, 0, 60, 150);
  problem.pieces = {Drop("D", 100 + 2 + 30)};
  problem.lines = {Cuts("1", 100, 1), Cuts("2", 30, 1)};
  const Plan plan = Allocate(problem);
  ASSERT_EQ(plan.value.unmet_pieces, 0);
  EXPECT_EQ(plan.layouts[0].cuts.back().length, Mm(100));
  EXPECT_EQ(plan.layouts[0].kerf, Mm(2));
}

TEST(CutArithmetic, WeakPapersLeaveFourShortAndNameTheShortestBar) {
  for (const auto& [doubt, said] : {std::pair{0.0, "1200 mm"}, std::pair{1.0, "1201 mm"}}) {
    Problem problem;
    problem.rules = Rules(2, 10, 60, 150);
    problem.pieces = {Bar("P", 6000), Bar("Q", 6000)};
    for (Piece& p : problem.pieces) {
      p.section = "R100";
      p.grade = "S355J2";
      p.doubt = Mm(doubt);
    }
    problem.pieces[0].papers = PaperType::Type31;
    problem.pieces[1].papers = PaperType::Type22;
    problem.lines = {Cuts("1", 280, 25)};
    problem.lines[0].section = "R100";
    problem.lines[0].grade = "S355J2";
    problem.lines[0].papers = PaperType::Type31;
    const Plan plan = Allocate(problem);
    ASSERT_EQ(plan.layouts.size(), 1u);
    EXPECT_EQ(plan.layouts[0].piece, 0);
    EXPECT_EQ(plan.layouts[0].cuts[0].count, 21);
    EXPECT_EQ(plan.layouts[0].left, Mm(66));
    EXPECT_EQ(plan.layouts[0].left_kind, LeftKind::Scrap);
    ASSERT_EQ(plan.shorts.size(), 1u);
    EXPECT_EQ(plan.shorts[0].missing, 4);
    EXPECT_NE(plan.shorts[0].why.find(said), std::string::npos) << plan.shorts[0].why;
    EXPECT_NE(plan.shorts[0].why.find("2.2"), std::string::npos) << plan.shorts[0].why;
    EXPECT_EQ(plan.proved_keys.front(), Key::Unmet);
  }
}

TEST(CutArithmetic, BundleGivesNineteenEachAndFiveRestsOf250) {
  Problem problem;
  problem.rules = Rules(2, 10, 120, 150);
  problem.pieces = {Bar("B", 6000, 5)};
  problem.lines = {Cuts("1", 300, 95)};
  const Plan plan = Allocate(problem);
  ASSERT_EQ(plan.layouts.size(), 1u);
  EXPECT_EQ(plan.layouts[0].repeat, 5);
  EXPECT_EQ(plan.layouts[0].cuts[0].count, 19);
  EXPECT_EQ(plan.layouts[0].left, Mm(250));
  EXPECT_EQ(plan.layouts[0].kerf, Mm(40));
  EXPECT_EQ(plan.layouts[0].trim, Mm(10));
}

TEST(CutArithmetic, SmallKerfChecksOfAThreeAndASixMetreBar) {
  Piece six = Bar("B", 6000), three = Bar("C", 3000);
  EXPECT_EQ(Most(six, Rules(2.5, 0, 0, 0), Mm(1000)), 5);
  EXPECT_EQ(EndAfter(six, Rules(2.5, 0, 0, 0), Mm(1000), 5).left, Mm(987.5));
  EXPECT_EQ(Most(six, Rules(0, 0, 0, 0), Mm(1000)), 6);
  EXPECT_EQ(EndAfter(six, Rules(0, 0, 0, 0), Mm(1000), 6).left, Mm(0));
  EXPECT_EQ(Most(three, Rules(3, 0, 0, 0), Mm(997)), 3);
  EXPECT_EQ(EndAfter(three, Rules(3, 0, 0, 0), Mm(997), 3).left, Mm(0));
}

TEST(CutArithmetic, CustomersOwnMetalServesOnlyHimAndIsWorthNothingHere) {
  Problem problem;
  problem.rules = Rules(2, 10, 60, 150);
  problem.pieces = {Drop("D", 3000), Bar("B", 4000)};
  problem.pieces[0].owner = "Osmund";
  problem.lines = {Cuts("1", 500, 5), Cuts("2", 400, 1)};
  problem.lines[0].owner = "Osmund";
  const Plan plan = Allocate(problem);
  ASSERT_EQ(plan.layouts.size(), 2u);
  EXPECT_EQ(plan.layouts[0].left, Mm(490));
  EXPECT_EQ(plan.layouts[1].left, Mm(3586));
  EXPECT_EQ(plan.value.new_length, Mm(4000));
  problem.pieces.pop_back();
  const Plan lacking = Allocate(problem);
  ASSERT_EQ(lacking.shorts.size(), 1u);
  EXPECT_EQ(lacking.shorts[0].why.find("own metal"), std::string::npos) << "another's metal is never spoken of";
}

}  // namespace
}  // namespace heatkeep::allocator::test
