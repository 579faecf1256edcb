// What to buy for what is short. Lengths by hand arithmetic (common practice, no source).
#include <gtest/gtest.h>

#include "client/allocator/purchase.h"
#include "tests/allocator/problem_maker.h"

namespace heatkeep::allocator::test {
namespace {

// 25 x 280 from one bar of 6000: floor((6000 - 12 - 60) / 282) = 21; four are short, the shortest bar is 1200.
Problem FourShort() {
  Problem problem;
  problem.rules = Rules(2, 10, 60, 150);
  problem.pieces = {Bar("P", 6000)};
  problem.lines = {Cuts("1", 280, 25)};
  return problem;
}

TEST(Purchase, BuysTheLeastLengthOfWhatIsSold) {
  const Problem problem = FourShort();
  const Plan plan = Allocate(problem);
  ASSERT_EQ(plan.value.unmet_pieces, 4);
  const Purchase p = WhatToBuy(problem, plan, MillLengths());
  ASSERT_EQ(p.bars.size(), 1u);
  EXPECT_EQ(p.bars[0].length, Mm(3000));
  EXPECT_EQ(p.bars[0].count, 1);
  EXPECT_EQ(p.length, Mm(3000));
  EXPECT_FALSE(p.money);
  ASSERT_EQ(p.left.size(), 1u);
  EXPECT_EQ(p.left[0].length, Mm(3000 - 12 - 4 * 282));
  EXPECT_EQ(p.left[0].kind, LeftKind::Drop);
  EXPECT_TRUE(p.proved);
  EXPECT_TRUE(p.not_served.empty());
  EXPECT_EQ(p.words, "buy 1 x 3000 mm R80 42CrMo4: 3.00 m; left over 1860 mm; none is shorter (proved)");
}

TEST(Purchase, ExactlyTheShortestBarIsEnoughAndANanometreLessIsNot) {
  const Problem problem = FourShort();
  const Plan plan = Allocate(problem);
  const Purchase enough = WhatToBuy(problem, plan, {{Mm(1200), {}}});
  ASSERT_EQ(enough.bars.size(), 1u);
  EXPECT_EQ(enough.bars[0].count, 1);
  const Purchase two = WhatToBuy(problem, plan, {{{Mm(1200).nm - 1}, {}}});
  ASSERT_EQ(two.bars.size(), 1u);
  EXPECT_EQ(two.bars[0].count, 2);
}

TEST(Purchase, WithPricesTheCheapestNotTheShortest) {
  const Problem problem = FourShort();
  const Plan plan = Allocate(problem);
  const Purchase p = WhatToBuy(problem, plan, {{Mm(3000), FineMoney{19'000'000'000}}, {Mm(6000), FineMoney{15'000'000'000}}});
  ASSERT_EQ(p.bars.size(), 1u);
  EXPECT_EQ(p.bars[0].length, Mm(6000));
  ASSERT_TRUE(p.money);
  EXPECT_EQ(p.money->micro, 15'000'000'000);
  EXPECT_NE(p.words.find("150.00"), std::string::npos) << p.words;
}

TEST(Purchase, AllowsForADoubtfulLengthAndSaysWhatIsTooLong) {
  Problem problem = FourShort();
  problem.pieces[0].doubt = Mm(1);
  problem.lines.push_back(Cuts("2", 12000, 1));
  const Plan plan = Allocate(problem);
  const Purchase p = WhatToBuy(problem, plan, {{Mm(1200), {}}, {Mm(1201), {}}});
  ASSERT_EQ(p.bars.size(), 1u);
  EXPECT_EQ(p.bars[0].length, Mm(1201));
  ASSERT_EQ(p.not_served.size(), 1u);
  EXPECT_EQ(p.not_served[0].line, 1);
  EXPECT_EQ(p.not_served[0].why, "order O1 line 2: no length offered is long enough");
}

TEST(Purchase, KeepsPapersAndTheHeatAndBuysNothingOfACustomers) {
  Problem problem = FourShort();
  problem.pieces[0].papers = PaperType::Type31;
  problem.lines[0].papers = PaperType::Type31;
  problem.lines[0].one_heat = "A";
  Line own = Cuts("2", 300, 1);
  own.owner = "Pallant";
  problem.lines.push_back(own);
  const Plan plan = Allocate(problem);
  const Purchase p = WhatToBuy(problem, plan, MillLengths());
  ASSERT_EQ(p.bars.size(), 1u);
  EXPECT_EQ(p.bars[0].heat, "K3317") << "21 of the order come from it";
  EXPECT_EQ(p.bars[0].papers, PaperType::Type31);
  ASSERT_EQ(p.not_served.size(), 1u);
  EXPECT_EQ(p.not_served[0].line, 1);
}

TEST(Purchase, NothingShortBuysNothingAndBadOffersAreRefused) {
  Problem problem = FourShort();
  problem.lines[0].quantity = 21;
  const Plan plan = Allocate(problem);
  const Purchase p = WhatToBuy(problem, plan, MillLengths());
  EXPECT_TRUE(p.bars.empty());
  EXPECT_EQ(p.words, "");
  EXPECT_THROW(WhatToBuy(problem, plan, {}), std::invalid_argument);
  EXPECT_THROW(WhatToBuy(problem, plan, {{Mm(0), {}}}), std::invalid_argument);
  EXPECT_THROW(WhatToBuy(problem, plan, {{Mm(3000), FineMoney{1}}, {Mm(6000), {}}}), std::invalid_argument);
}

}  // namespace
}  // namespace heatkeep::allocator::test
