// Time, feed, chips and money of a cut. The worked figures (tests/reference/sawing.csv and the rows below) are
// constructed: pi d^2 / 4 over a rate typed by hand; the rates themselves are common practice without a source.
#include <gtest/gtest.h>

#include <fstream>
#include <stdexcept>
#include <string>

#include "schema/terms/sawing.h"

namespace heatkeep {
namespace {

using namespace std::chrono_literals;
using namespace heatkeep::literals;

TEST(Sawing, TimeIsAreaOverRate) {
  // "100 mm round: A 78.54 cm2, q 40 cm2/min -> 1.963 min" (sawing.csv, cutting time)
  EXPECT_EQ(CutTime(AreaOf(ReadSection("round 100")), 1, {4'000}), 117'810ms);  // 7 853.98 / 4 000 = 1.96350 min
  // seven rounds of 40 in a bundle: 87.965 cm2 at 40 cm2/min: 2.199 min
  EXPECT_EQ(CutTime(AreaOf(ReadSection("round 40")), 7, {4'000}), 131'947ms);  // 8 796.46 / 4 000 = 2.199115 min
  EXPECT_EQ(CutTime(AreaOf(ReadSection("square 50")), 0, {4'000}), 0ms);
  EXPECT_THROW(CutTime({1}, 1, {0}), std::invalid_argument);
}

TEST(Sawing, TheReferenceTableSaysTheSameTime) {
  std::ifstream file(HEATKEEP_REFERENCE "/sawing.csv");
  std::string text((std::istreambuf_iterator<char>(file)), {});
  EXPECT_NE(text.find("cutting time,t = A / q,min,definition,FROM MEMORY,\"100 mm round: A 78.54 cm2, q 40 cm2/min -> 1.963 min\""),
            std::string::npos);
  EXPECT_EQ(AreaOf(ReadSection("round 100")).um2 / 1'000'000, 7853);
  EXPECT_EQ(CutTime(AreaOf(ReadSection("round 100")), 1000, {4'000}) / 60'000, 1963ms);
}

TEST(Sawing, ChipsAreKerfTimesAreaTimesDensity) {
  // a 100 mm round of steel at a kerf of 2.5: 7853.98 mm2 x 2.5 x 7.85e-6 = 0.15413 kg
  EXPECT_EQ(ChipMass(AreaOf(ReadSection("round 100")), 1, {2'500'000}, kSteel), Mass{154});
  EXPECT_EQ(ChipMass(AreaOf(ReadSection("round 100")), 1000, {2'500'000}, kSteel), Mass{154'134});
  EXPECT_EQ(ChipMass(AreaOf(ReadSection("round 100")), 1000, {}, kSteel), Mass{0});
}

TEST(Sawing, TheContactLengthOfEveryShape) {
  const auto contact = [](const char* words) { return ContactOf(ReadSection(words)); };
  EXPECT_EQ(contact("round 100").widest, 100_mm);
  EXPECT_EQ(contact("round 100").mean, 78'539'816_nm);  // pi/4 x 100
  EXPECT_EQ(contact("square 50").widest, 50_mm);
  EXPECT_EQ(contact("square 50").mean, 50_mm);
  EXPECT_EQ(contact("hex 50").height, 50_mm);
  EXPECT_EQ(contact("hex 50").widest, 57'735'027_nm);  // 100 / sqrt 3
  EXPECT_EQ(contact("hex 50").mean, 43'301'270_nm);    // (sqrt 3 / 2) 50
  EXPECT_EQ(contact("flat 100x20").height, 20_mm);
  EXPECT_EQ(contact("flat 100x20").mean, 100_mm);
  EXPECT_EQ(contact("tube 100x10").widest, 60_mm);        // 2 sqrt(10 x 90)
  EXPECT_EQ(contact("tube 100x10").mean, 28'274'334_nm);  // pi 10 x 90 / 100
  EXPECT_EQ(contact("angle 100x75x8").height, 75_mm);
  EXPECT_EQ(contact("angle 100x75x8").widest, 100_mm);
  EXPECT_EQ(contact("box 100x60x5 cold").height, 60_mm);
  EXPECT_EQ(contact("beam HE 100 A").height, 96_mm);
  EXPECT_EQ(contact("channel UPN 100").widest, 100_mm);
}

TEST(Sawing, FedAtTheMeanContactACutTakesItsTime) {
  for (const char* words :
       {"round 80", "square 60", "hex 41", "flat 100x20", "tube 60.3x4", "angle 100x75x8", "box 80x80x5 hot", "beam IPE 100"}) {
    const Section section = ReadSection(words);
    const Contact contact = ContactOf(section);
    const CuttingRate rate{4'500};
    // height / feed = time, within what a micrometre a minute makes of it
    const double minutes = static_cast<double>(contact.height.nm) / 1000 / static_cast<double>(DownFeed(rate, contact.mean).um_per_min);
    EXPECT_NEAR(minutes * 60'000, static_cast<double>(CutTime(AreaOf(section), 1, rate).count()), 5) << words;
    EXPECT_LE(DownFeed(rate, contact.widest), DownFeed(rate, contact.mean)) << words;
  }
  EXPECT_EQ(DownFeed({4'000}, 100_mm), FeedRate{40'000});  // 4 000 mm2/min over 100 mm: 40 mm/min
  EXPECT_THROW(DownFeed({4'000}, {}), std::invalid_argument);
}

TEST(Sawing, MoneyIsTimeAtAnHourlyPrice) {
  EXPECT_EQ(TimeCost(120'000ms, {4'500}), Money{150});  // 2 min at 45.00 an hour
  EXPECT_EQ(TimeCost(1'200ms, {4'500}), Money{2});      // 1.5: half up
}

TEST(Sawing, ALongPieceIsFedInSeveralStrokes) {
  EXPECT_EQ(FeedStrokes(500_mm, 500_mm), 1);
  EXPECT_EQ(FeedStrokes(501_mm, 500_mm), 2);
  EXPECT_EQ(FeedStrokes(1'600_mm, 500_mm), 4);
  EXPECT_EQ(FeedStrokes(1'600_mm, {}), 1);
}

}  // namespace
}  // namespace heatkeep
