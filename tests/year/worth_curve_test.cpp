#include "client/year/worth_curve.h"

#include <gtest/gtest.h>

#include "client/allocator/value.h"
#include "tests/year/invented_past.h"

namespace heatkeep::year {
namespace {

using namespace literals;

FineMoney Scrap(Length l) { return allocator::Priced(CrMo80().scrap_per_metre, l); }
FineMoney New(Length l) { return allocator::Priced(CrMo80().replace_per_metre, l); }

TEST(WorthCurve, WithoutAPastIsScrapValue) {
  EXPECT_EQ(WorthCurve().Racked(500_mm).micro, 0);
  const WorthCurve curve({}, SteadyPast(2000_mm, 1, 30), CrMo80(), 1000_mm);
  EXPECT_EQ(curve.Racked(500_mm), Scrap(500_mm));
  EXPECT_EQ(curve.Left(500_mm), Scrap(500_mm));
  EXPECT_GT(curve.KeepLength(), 1000_mm);
}

TEST(WorthCurve, LiesBetweenScrapAndNewMetal) {
  const WorthCurve curve({}, SteadyPast(50_mm, 3, 2), CrMo80(), 3000_mm);
  for (Length l = 20_mm; l <= 3000_mm; l += 7_mm) {
    EXPECT_GE(curve.Racked(l), Scrap(l));
    EXPECT_LE(curve.Racked(l), New(l));
    EXPECT_LE(curve.Left(l), curve.Racked(l));
    EXPECT_GE(curve.Left(l), Scrap(l));
  }
}

TEST(WorthCurve, CountsTheUsesAfterTheFirst) {
  // A line takes 156 of 2000 mm at a time: the first use alone is little, all of them nearly the whole drop.
  const Past past = SteadyPast(50_mm, 3, 2);
  const WorthCurve curve({}, past, CrMo80(), 3000_mm);
  const DropWorth once = WorthOf(RackDrop{2000_mm, {}, {}}, past, CrMo80(), true);
  EXPECT_LT(once.value.micro * 2, New(2000_mm).micro);
  EXPECT_GT(curve.Racked(2000_mm).micro, once.value.micro * 3 / 2);
}

TEST(WorthCurve, OfADropUsedOnceAtMostIsTheSingleUse) {
  const Past past = SteadyPast(100_mm, 1, 30);  // 204 mm gives one piece, then 102 is left, which gives none
  const WorthCurve curve({}, past, CrMo80(), 220_mm);
  const DropWorth once = WorthOf(RackDrop{200_mm, {}, {}}, past, CrMo80(), true);
  const auto later = static_cast<std::int64_t>(0.85 * static_cast<double>(once.gain.micro));
  EXPECT_NEAR(static_cast<double>(curve.Racked(200_mm).micro), static_cast<double>(Scrap(200_mm).micro + later - once.cost.micro), 2);
}

TEST(WorthCurve, GivesTheLengthFromWhichPuttingBackPays) {
  const WorthCurve curve({}, SteadyPast(50_mm, 20, 10), CrMo80(), 2000_mm);
  const Length keep = curve.KeepLength();
  EXPECT_GT(keep, 112_mm);
  for (Length l = 20_mm; l <= 2000_mm; l += 20_mm) EXPECT_EQ(curve.Left(l) > Scrap(l), l >= keep) << l.nm;
}

}  // namespace
}  // namespace heatkeep::year
