#include <gtest/gtest.h>

#include "reports/palette.h"

namespace heatkeep {
namespace {

TEST(Palette, ContrastIsTheOneOfWcag) {
  // WCAG 2.2, "contrast ratio": black on white is 21:1. #767676 on white is 4.54:1 (from memory).
  EXPECT_NEAR(Contrast({0, 0, 0}, {255, 255, 255}), 21.0, 1e-9);
  EXPECT_NEAR(Contrast({0x76, 0x76, 0x76}, {255, 255, 255}), 4.54, 0.005);
  EXPECT_NEAR(Contrast({10, 20, 30}, {10, 20, 30}), 1.0, 1e-12);
}

TEST(Palette, EveryPairThatMeetsHasItsContrastInEveryScheme) {
  // WCAG 2.2 success criteria 1.4.3 (text 4.5:1) and 1.4.11 (shapes 3:1).
  for (const Scheme scheme : {Scheme::Light, Scheme::Dark, Scheme::Paper})
    for (const TonePair& pair : TonePairs())
      EXPECT_GE(Contrast(ToneOf(pair.above, scheme), ToneOf(pair.below, scheme)), pair.least)
          << pair.why << ", scheme " << static_cast<int>(scheme) << ", use " << static_cast<int>(pair.below);
}

TEST(Palette, OnScreensMetalAndCutsStandOutFromTheGround) {
  for (const Scheme scheme : {Scheme::Light, Scheme::Dark}) {
    EXPECT_GE(Contrast(ToneOf(Use::Metal, scheme), ToneOf(Use::Ground, scheme)), 3.0);
    for (int order = 0; order < 6; ++order) EXPECT_GE(Contrast(ToneOf(CutUse(order), scheme), ToneOf(Use::Ground, scheme)), 3.0) << order;
  }
}

TEST(Palette, SixOrdersHaveSixTonesAndTheSeventhBeginsAgain) {
  for (const Scheme scheme : {Scheme::Light, Scheme::Dark})
    for (int a = 0; a < 6; ++a)
      for (int b = 0; b < a; ++b) EXPECT_FALSE(ToneOf(CutUse(a), scheme) == ToneOf(CutUse(b), scheme)) << a << b;
  EXPECT_EQ(CutUse(6), CutUse(0));
}

TEST(Palette, PaperIsBlackOnWhite) {
  EXPECT_EQ(ToneOf(Use::Ground, Scheme::Paper), (Tone{255, 255, 255}));
  EXPECT_EQ(ToneOf(Use::Text, Scheme::Paper), (Tone{0, 0, 0}));
}

}  // namespace
}  // namespace heatkeep
