// What the wish for one heat costs. Figures by hand (common practice, no source).
#include <gtest/gtest.h>

#include "client/allocator/one_heat_price.h"
#include "tests/allocator/problem_maker.h"

namespace heatkeep::allocator::test {
namespace {

// 4 x 240: two drops of two heats hold two each; one heat needs the bar.
Problem TwoDropsTwoHeats() {
  Problem problem;
  problem.rules = Rules(2, 10, 60, 150);
  problem.pieces = {Drop("D1", 600), Drop("D2", 600), Bar("B", 1800)};
  problem.pieces[1].heat = "M2208";
  problem.lines = {Cuts("1", 240, 4)};
  problem.lines[0].one_heat = "A";
  return problem;
}

TEST(PriceOfOneHeat, IsTheBarThatTwoHeatsWouldNotOpen) {
  const Problem problem = TwoDropsTwoHeats();
  const Plan plan = Allocate(problem);
  EXPECT_EQ(plan.value.new_length, Mm(1800));
  const auto price = PriceOfOneHeat(problem, plan);
  ASSERT_TRUE(price);
  EXPECT_EQ(price->difference.new_length, Mm(1800));
  EXPECT_EQ(price->difference.unmet_pieces, 0);
  EXPECT_EQ(price->heats, 2);
  EXPECT_EQ(price->words, "one heat costs more than 2 heats: 1.80 m more full bar, 1 more bar opened");
}

TEST(PriceOfOneHeat, MayBeNothing) {
  Problem problem = TwoDropsTwoHeats();
  problem.lines[0].quantity = 2;
  const Plan plan = Allocate(problem);
  const auto price = PriceOfOneHeat(problem, plan);
  ASSERT_TRUE(price);
  EXPECT_EQ(price->words, "one heat costs nothing more");
  problem.lines[0].one_heat.clear();
  EXPECT_FALSE(PriceOfOneHeat(problem, Allocate(problem))) << "nobody asked for one heat";
}

TEST(PriceOfOneHeat, CountsWhatIsShortForItsSake) {
  Problem problem = TwoDropsTwoHeats();
  problem.pieces.pop_back();
  const auto price = PriceOfOneHeat(problem, Allocate(problem));
  ASSERT_TRUE(price);
  EXPECT_EQ(price->difference.unmet_pieces, 2);
  EXPECT_EQ(price->words,
            "one heat costs more than 2 heats: 2 more cuts short, metal as good as 0.27 m of full bar less used up, 1 fewer piece pulled");
}

}  // namespace
}  // namespace heatkeep::allocator::test
