// Worth against the C library's own exp, away from ties of rounding.
#include <gtest/gtest.h>

#include <cmath>

#include "client/allocator/worth.h"
#include "tests/allocator/problem_maker.h"

namespace heatkeep::allocator::test {
namespace {

TEST(Worth, IsTheLengthTimesItsChanceToTheMicrometre) {
  for (std::int64_t nm = 1'000'000; nm < 50'000'000'000; nm = nm * 17 / 16 + 12'345) {
    const long double um = static_cast<long double>(nm) / 1000 * -std::expm1(-static_cast<long double>(nm) / 1e9L);
    const long double part = um + 0.5L - std::floor(um + 0.5L);
    if (part < 1e-6L || part > 1 - 1e-6L) continue;
    EXPECT_EQ(WorthOfRest({nm}, {}).nm, static_cast<std::int64_t>(std::floor(um + 0.5L)) * 1000) << nm;
  }
}

TEST(Worth, OneMetreIsWorth632Millimetres) {
  EXPECT_EQ(WorthOfRest(Mm(1000), Mm(300)).nm, 632'121'000);  // 1 m x (1 - 1/e) = 632.1205588 mm
  EXPECT_EQ(WorthOfRest(Mm(299.999999), Mm(300)).nm, 0);
  EXPECT_EQ(WorthOfRest(Mm(300), Mm(300)).nm, 77'755'000);  // 300 x (1 - e^-0.3) = 77.7545338 mm
  EXPECT_EQ(WorthOfRest({}, {}).nm, 0);
}

TEST(Worth, NeverFallsAsTheRestGrows) {
  Length last;
  for (std::int64_t nm = 0; nm < 9'000'000'000; nm += 1'234'567) {
    const Length now = WorthOfRest({nm}, Mm(300));
    EXPECT_GE(now, last);
    last = now;
  }
}

}  // namespace
}  // namespace heatkeep::allocator::test
