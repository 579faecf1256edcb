#include "client/year/keep_length.h"

#include <gtest/gtest.h>

#include "tests/year/invented_past.h"

namespace heatkeep::year {
namespace {

using namespace literals;

constexpr KeepGrid kGrid{{80 * kNmPerMm}, {1500 * kNmPerMm}, {10 * kNmPerMm}};

TEST(KeepLength, IsWhereKeepingBeginsToPay) {
  const Past past = SteadyPast(50_mm, 20, 10);
  const Length keep = KeepLength({}, past, CrMo80(), kGrid);
  EXPECT_GT(keep, 112_mm);  // shorter ones give nothing
  for (Length l = kGrid.least; l <= kGrid.most; l += kGrid.step)
    EXPECT_EQ(WorthOf(RackDrop{l, {}, {}}, past, CrMo80()).keep, l >= keep) << l.nm;
}

TEST(KeepLength, IsShorterForDearerMetalAndLongerOnAFullRack) {
  Past past = SteadyPast(50_mm, 20, 30);
  const Length plain = KeepLength({}, past, CrMo80(), kGrid);
  WorthRules dear = CrMo80();
  dear.replace_per_metre = CentsFine(19302);
  EXPECT_LT(KeepLength({}, past, dear, kGrid), plain);
  for (int i = 0; i < 10; ++i) past.rack.push_back({120_mm, {}, {}});
  EXPECT_GT(KeepLength({}, past, CrMo80(), kGrid), plain);
}

TEST(KeepLength, IsBeyondTheGridWhenNothingPays) { EXPECT_EQ(KeepLength({}, SteadyPast(2000_mm, 1, 30), CrMo80(), kGrid), 1510_mm); }

TEST(KeepLength, StaysWhenTheNewOneIsNear) {
  const Past past = SteadyPast(50_mm, 20, 10);
  const Length fresh = KeepLength({}, past, CrMo80(), kGrid);
  EXPECT_EQ(KeepLength({}, past, CrMo80(), kGrid, fresh + 20_mm), fresh + 20_mm);
  EXPECT_EQ(KeepLength({}, past, CrMo80(), kGrid, fresh - 20_mm), fresh - 20_mm);
  EXPECT_EQ(KeepLength({}, past, CrMo80(), kGrid, fresh + 100_mm), fresh);
  EXPECT_EQ(KeepLength({}, past, CrMo80(), kGrid, fresh - 60_mm), fresh);
}

TEST(KeepLength, RefusesAGridInNoOrder) {
  const Past past = SteadyPast(50_mm, 20, 10);
  EXPECT_THROW(KeepLength({}, past, CrMo80(), {10_mm, 5_mm, 1_mm}), std::invalid_argument);
  EXPECT_THROW(KeepLength({}, past, CrMo80(), {10_mm, 50_mm, 0_mm}), std::invalid_argument);
}

}  // namespace
}  // namespace heatkeep::year
