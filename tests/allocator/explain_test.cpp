// The next-best pieces and what they would cost more.
#include <gtest/gtest.h>

#include "client/allocator/explain.h"
#include "tests/allocator/problem_maker.h"

namespace heatkeep::allocator::test {
namespace {

// Money a metre from money a kilogram and 22.195 kg/m (round 60 at 7850 kg/m3).
FineMoney PerMetre60(double per_kg) { return {std::llround(per_kg * 22.195 * 1e8)}; }

Problem OneShortPiece() {
  Problem problem;
  problem.rules = Rules(2, 10, 60, 150);
  problem.pieces = {Drop("A", 2600), Drop("B", 172), Drop("C", 160)};
  for (Piece& piece : problem.pieces) {
    piece.costs.per_metre = PerMetre60(1.20);
    piece.costs.scrap_per_metre = PerMetre60(0.22);
    piece.costs.per_pull = {80'000'000};  // by hand
  }
  problem.pieces[0].costs.per_pull = {400'000'000};  // crane
  problem.lines = {Cuts("1", 95, 1)};
  return problem;
}

// 1 x 95 in round 60 from A 2600 (crane 4.00), B 172, C 160 (hand 0.80), 1.20 and scrap 0.22 a kilogram; common
// practice, no source. A shop whose own history gives a drop's worth as L x (4.883 + 21.751 x P x u) a metre works out
// C 2.56, B 2.77 (0.21 dearer), A 6.48. Here a drop's worth is price x L x (1 - exp(-L / 1 m)), nothing for its scrap
// above the keep length, so by hand: C 26.634 x 0.160 x 0.147856 - 4.8829 x 0.063 + 0.80 = 1.12,
// B 26.634 x 0.172 x 0.158021 - 4.8829 x 0.075 + 0.80 = 1.16, A 26.634 x (2.600 x 0.925726 - 2.503 x 0.918161) + 4.00 = 6.90.
// The order is the same, and so are the rests.
TEST(NextBest, ShortestDropIsTakenAndTheOthersAreNamedWithTheirPrice) {
  for (const Aim aim : {Aim::DropsFirst, Aim::LeastMoney}) {
    Problem problem = OneShortPiece();
    problem.aim = aim;
    const Plan plan = Allocate(problem);
    ASSERT_EQ(plan.layouts.size(), 1u);
    EXPECT_EQ(problem.pieces[static_cast<std::size_t>(plan.layouts[0].piece)].tag, "C");
    EXPECT_EQ(plan.layouts[0].left, Mm(63));
    EXPECT_EQ(plan.layouts[0].left_kind, LeftKind::Scrap);
    EXPECT_NEAR(static_cast<double>(plan.value.money.micro) / 1e8, 1.12, 0.005);
    const std::vector<Alternative> why = Explanation(problem, plan).Why(0);
    ASSERT_EQ(why.size(), 2u);
    EXPECT_EQ(problem.pieces[static_cast<std::size_t>(why[0].piece)].tag, "B");
    EXPECT_EQ(why[0].words, "leaves 75 mm scrap, 0.04 dearer");
    EXPECT_EQ(problem.pieces[static_cast<std::size_t>(why[1].piece)].tag, "A");
    EXPECT_EQ(why[1].words, "leaves a drop of 2503 mm, 5.77 dearer");
  }
}

TEST(NextBest, WithoutPricesTheWorthIsSaid) {
  Problem problem = OneShortPiece();
  for (Piece& piece : problem.pieces) piece.costs = {};
  problem.pieces.push_back(Bar("N", 6000));
  const Plan plan = Allocate(problem);
  const std::vector<Alternative> why = Explanation(problem, plan).Why(0);
  ASSERT_EQ(why.size(), 3u);
  EXPECT_EQ(problem.pieces[static_cast<std::size_t>(why[2].piece)].tag, "N") << "a full bar last";
  EXPECT_TRUE(why[2].opens_bar);
  EXPECT_FALSE(why[0].dearer);
  EXPECT_EQ(why[0].words, "leaves 75 mm scrap, loses 3.523 mm more in worth");
  EXPECT_EQ(why[2].words.substr(0, 56), "leaves a drop of 5891 mm, opens a full bar of 6000 mm, l");
  EXPECT_EQ(Explanation(problem, plan).Why(0, 1).size(), 1u);
}

TEST(NextBest, WhatIsCutAtRiskIsNamedSo) {
  Piece piece = Drop("B", 172);
  piece.place = "B1-1";
  EXPECT_EQ(SourceWords(piece), "B in B1-1, 172 mm");
  piece.risk = "cut at risk: papers awaited, do not ship";
  EXPECT_EQ(SourceWords(piece), "B in B1-1, 172 mm, cut at risk: papers awaited, do not ship");
}

TEST(NextBest, NeverNamesMetalOfAnotherOwnerNorHeldNorTooWeakNorTakenNorTooShort) {
  Problem problem = OneShortPiece();
  problem.pieces.resize(3);
  problem.pieces[0].owner = "Pallant";
  problem.pieces[1].held = "it is held";
  problem.pieces.push_back(Drop("W", 170));
  problem.pieces.push_back(Drop("T", 150));
  problem.pieces.push_back(Drop("G", 171));
  problem.pieces.back().grade = "C45E";
  for (Piece& piece : problem.pieces) piece.papers = PaperType::Type31;
  problem.pieces[3].papers = PaperType::Type22;
  problem.lines[0].papers = PaperType::Type31;
  const Plan plan = Allocate(problem);
  ASSERT_EQ(plan.layouts.size(), 1u);
  EXPECT_TRUE(Explanation(problem, plan).Why(0).empty());
  problem.lines[0].owner = "Pallant";
  const Plan own = Allocate(problem);
  ASSERT_EQ(own.layouts.size(), 1u);
  EXPECT_TRUE(Explanation(problem, own).Why(0).empty()) << "ours is no answer to a customer either";
}

TEST(NextBest, KeepsToTheHeatTheRestOfTheOrderComesFrom) {
  Problem problem;
  problem.rules = Rules(2, 10, 60, 150);
  problem.pieces = {Drop("D1", 400), Drop("D2", 410), Drop("D3", 420), Drop("D4", 405)};
  problem.pieces[3].heat = "M2208";
  problem.lines = {Cuts("1", 300, 2)};
  problem.lines[0].one_heat = "A";
  const Plan plan = Allocate(problem);
  ASSERT_EQ(plan.layouts.size(), 2u);
  const std::vector<Alternative> why = Explanation(problem, plan).Why(0);
  ASSERT_EQ(why.size(), 1u);
  EXPECT_EQ(problem.pieces[static_cast<std::size_t>(why[0].piece)].tag, "D3");
  problem.lines[0].quantity = 1;
  const Plan alone = Allocate(problem);
  const std::vector<Alternative> any = Explanation(problem, alone).Why(0);
  ASSERT_EQ(any.size(), 3u) << "all of the order moves, so another heat will do";
  EXPECT_EQ(problem.pieces[static_cast<std::size_t>(any[0].piece)].tag, "D4");
}

TEST(NextBest, SaysPlaceAndLengthOfASource) {
  Piece piece = Drop("A000123X", 1900);
  EXPECT_EQ(SourceWords(piece), "A000123X, 1900 mm");
  piece.place = "B3-2";
  EXPECT_EQ(SourceWords(piece), "A000123X in B3-2, 1900 mm");
}

}  // namespace
}  // namespace heatkeep::allocator::test
