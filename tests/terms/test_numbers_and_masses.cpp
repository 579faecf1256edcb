#include <gtest/gtest.h>

#include "schema/terms/mass_text.h"
#include "schema/terms/number_text.h"
#include "schema/terms/tolerance_text.h"
#include "schema/terms/wide.h"
#include "tests/terms/refusal_text.h"

namespace heatkeep {
namespace {

using namespace literals;

TEST(ReadScaled, IsExactOrRefuses) {
  EXPECT_EQ(ReadScaled("1.60", 2), 160);
  EXPECT_EQ(ReadScaled("1.600", 2), 160);
  EXPECT_EQ(ReadScaled("0.435", 6), 435'000);
  EXPECT_EQ(ReadScaled("1,6", 2, ','), 160);
  EXPECT_EQ(ReadScaled("12 345", 0), 12'345);
  EXPECT_EQ(RefusalText([] { ReadScaled("1.605", 2); }), "\"1.605\" has 3 decimals; expected at most 2 decimals");
  EXPECT_NE(RefusalText([] { ReadScaled("999999999999999999", 6); }), "");
}

TEST(ReadWhole, StaysInItsRange) {
  EXPECT_EQ(ReadWhole(" 25 ", 1, 25), 25);
  EXPECT_EQ(RefusalText([] { ReadWhole("0", 1, 1'000'000); }), "\"0\" is out of range; expected a whole number from 1 to 1000000");
  for (const char* text : {"", "-1", "2.5", "two", "1e2", "26", "1,100"}) {
    EXPECT_NE(RefusalText([&] { ReadWhole(text, 1, 25); }), "") << text;
  }
}

TEST(WriteScaled, DropsTrailingZeros) {
  EXPECT_EQ(WriteScaled(1'500, 3), "1.5");
  EXPECT_EQ(WriteScaled(-5, 3), "-0.005");
  EXPECT_EQ(WriteScaled(1'234'567'000, 3, true), "1 234 567");
  EXPECT_EQ(WriteWhole(-1'234'567, true), "-1 234 567");
}

TEST(DivideHalfAway, TakesHalvesAwayFromZero) {
  EXPECT_EQ(static_cast<int>(DivideHalfAway(5, 2)), 3);
  EXPECT_EQ(static_cast<int>(DivideHalfAway(-5, 2)), -3);
  EXPECT_EQ(static_cast<int>(DivideHalfAway(4, 3)), 1);
  EXPECT_EQ(static_cast<int>(DivideDown(-5, 2)), -3);
}

// 1 lb = 0.45359237 kg by definition (1959), from memory.
TEST(ReadMass, TakesKilogramsPoundsAndTonnes) {
  EXPECT_EQ(ReadMass("2841.0 kg").g, 2'841'000);
  EXPECT_EQ(ReadMass("2841").g, 2'841'000);
  EXPECT_EQ(ReadMass("2.841 t").g, 2'841'000);
  EXPECT_EQ(ReadMass("1 lb").g, 454);
  EXPECT_EQ(ReadMass("100000 lb").g, 45'359'237);
  EXPECT_EQ(ReadMass("2 841,5", ',').g, 2'841'500);
  EXPECT_EQ(ReadMass("0.0005 kg").g, 1);
}

TEST(ReadMass, SaysWhatIsWrong) {
  EXPECT_EQ(RefusalText([] { ReadMass("5 stone"); }),
            "unknown unit \"stone\" in \"5 stone\"; expected a mass like 2841, 2841.5 kg, 6263 lb or 2.8 t");
  for (const char* text : {"", "-5", "kg", "5 kg 3", "200000 t", "1,100"}) {
    EXPECT_NE(RefusalText([&] { ReadMass(text); }), "") << text;
  }
}

TEST(WriteMass, RoundsToTheNearest) {
  EXPECT_EQ(WriteKg({236'750}), "236.8");
  EXPECT_EQ(WriteKg({2'367'504}, 0, true), "2 368");
  EXPECT_EQ(WriteLb({454}, 2), "1");
  EXPECT_EQ(WriteLb({45'359'237}, 1, true), "100 000");
}

TEST(ReadTolerance, TakesBothLimits) {
  EXPECT_EQ(ReadTolerance("-0/+1"), (Tolerance{0_mm, 1_mm}));
  EXPECT_EQ(ReadTolerance("+1/-0"), (Tolerance{0_mm, 1_mm}));
  EXPECT_EQ(ReadTolerance("0/+1"), (Tolerance{0_mm, 1_mm}));
  EXPECT_EQ(ReadTolerance("-2/0"), (Tolerance{2_mm, 0_mm}));
  EXPECT_EQ(ReadTolerance("-0.1 / +0.2 mm"), (Tolerance{100_um, 200_um}));
  EXPECT_EQ(ReadTolerance("+-0.5"), (Tolerance{500_um, 500_um}));
  EXPECT_EQ(ReadTolerance("\u00B10.5"), (Tolerance{500_um, 500_um}));
  EXPECT_EQ(ReadTolerance("-0/+1/16 in").plus.nm, 1'587'500);
  EXPECT_EQ(ToleranceText(ReadTolerance("+-0.5")), "-0.5/+0.5");
}

TEST(ReadTolerance, RefusesWhatDoesNotSayBothLimits) {
  EXPECT_EQ(RefusalText([] { ReadTolerance("+0.5/+1"); }),
            "\"+0.5/+1\" does not say one lower and one upper limit; expected a tolerance like -0/+1 or +-0.5");
  for (const char* text : {"", "1", "-1", "0/1", "-a/+1", "h11", "-0/+1,100", "/", "+-"}) {
    EXPECT_NE(RefusalText([&] { ReadTolerance(text); }), "") << text;
  }
}

}  // namespace
}  // namespace heatkeep
