#include <gtest/gtest.h>

#include "schema/terms/section.h"
#include "tests/terms/refusal_text.h"

namespace heatkeep {
namespace {

using namespace literals;

std::string Refusal(const std::string& words) {
  return RefusalText([&] { ReadSection(words); });
}

constexpr const char* kExpected =
    "; expected one of: round 50, square 50, hex 50, flat 100x20, tube 60.3x4, angle 100x75x8, box 100x60x5 cold, channel UPN 100, "
    "beam IPE 100 (or in inches: round 3 1/8 in)";

TEST(ReadSection, TakesTheFiveShapesInBothUnits) {
  EXPECT_EQ(ReadSection("round 50"), (Section{Shape::Round, 50_mm, {}}));
  EXPECT_EQ(ReadSection("ROUND  50mm"), (Section{Shape::Round, 50_mm, {}}));
  EXPECT_EQ(ReadSection("\u00D850"), (Section{Shape::Round, 50_mm, {}}));
  EXPECT_EQ(ReadSection("Square50"), (Section{Shape::Square, 50_mm, {}}));
  EXPECT_EQ(ReadSection("hexagon 50"), (Section{Shape::Hex, 50_mm, {}}));
  EXPECT_EQ(ReadSection("flat 100x20"), (Section{Shape::Flat, 100_mm, 20_mm}));
  EXPECT_EQ(ReadSection("flat 20 \u00D7 100 mm"), (Section{Shape::Flat, 100_mm, 20_mm}));
  EXPECT_EQ(ReadSection("tube 60.3x4"), (Section{Shape::Tube, 60'300_um, 4_mm}));
}

TEST(Section, IsTheSameInWhateverUnitItWasWritten) {
  EXPECT_EQ(ReadSection("round 2in"), ReadSection("round 50.8"));
  EXPECT_EQ(SectionKey(ReadSection("round 2in")), "round 50800000");
  EXPECT_EQ(SectionKey(ReadSection("flat 100x20")), "flat 100000000 20000000");
  EXPECT_NE(ReadSection("round 3 1/8in"), ReadSection("round 80"));
  EXPECT_EQ(ReadSection("round 3 1/8in").first, 79'375_um);
  EXPECT_NE(ReadSection("round 50"), ReadSection("square 50"));
}

TEST(SectionText, KeepsTheUnitItWasWrittenIn) {
  EXPECT_EQ(SectionText(ReadSection("ROUND 50.0 mm")), "round 50");
  EXPECT_EQ(SectionText(ReadSection("round 2in")), "round 2 in");
  EXPECT_EQ(SectionText(ReadSection("round 3-1/8\"")), "round 3 1/8 in");
  EXPECT_EQ(SectionText(ReadSection("flat 4in x 3/4in")), "flat 4 in x 3/4 in");
  EXPECT_EQ(SectionText(ReadSection("flat 4 x 3/4 in")), "flat 4 in x 3/4 in");
  EXPECT_EQ(SectionText(ReadSection("flat 2 in x 30 mm")), "flat 2 in x 30 mm");
  EXPECT_EQ(SectionText(ReadSection("round 2.063 in")), "round 2.063 in");
  EXPECT_EQ(SectionText(ReadSection("tube 60.3 x 4.0")), "tube 60.3x4");
}

TEST(SectionText, ReadsBackAsTheSameSection) {
  for (const char* words : {"round 50", "round 0.3", "round 1/3 ft", "hex 1 1/4 in", "flat 4in x 3/4in", "flat 2 in x 30 mm",
                            "flat 30 mm x 1 in", "tube 2.375 in x 0.154 in", "tube 60.3x3.91", "square 12.700001"}) {
    const Section section = ReadSection(words);
    EXPECT_EQ(ReadSection(SectionText(section)), section) << words;
  }
}

TEST(ReadSection, SaysWhatIsWrong) {
  EXPECT_EQ(Refusal("tee 50x50x5"), std::string("unknown shape \"tee\" in section \"tee 50x50x5\"") + kExpected);
  EXPECT_EQ(Refusal("80"), std::string("no shape in section \"80\"") + kExpected);
  EXPECT_EQ(Refusal(""), std::string("no section is written") + kExpected);
  EXPECT_EQ(Refusal("round"), std::string("section \"round\" has 0 dimensions, a round has 1") + kExpected);
  EXPECT_EQ(Refusal("flat 100"), std::string("section \"flat 100\" has 1 dimension, a flat has 2") + kExpected);
  EXPECT_EQ(Refusal("square 0"), std::string("a dimension of zero in section \"square 0\"") + kExpected);
  EXPECT_EQ(Refusal("flat 4in x 3"), "the last dimension of \"flat 4in x 3\" has no unit; expected a unit behind the last dimension");
  EXPECT_EQ(Refusal("flat 50x50"), "\"flat 50x50\" is as thick as it is wide; expected \"square\" and one dimension");
  EXPECT_EQ(Refusal("tube 60 x 30"), "the wall of \"tube 60 x 30\" leaves no bore; expected a wall under half the outside diameter");
  EXPECT_NE(Refusal("round 1,100").find("1.1 mm or 1 100 mm"), std::string::npos);
}

TEST(ReadSection, TakesAnglesBoxesChannelsAndBeams) {
  const Section angle = ReadSection("angle 75 x 100 x 8");
  EXPECT_EQ(angle, (Section{Shape::Angle, 100_mm, 75_mm, LengthUnit::Mm, LengthUnit::Mm, 8_mm, 10_mm, 5_mm}));
  EXPECT_EQ(ReadSection("angle 130x65x8 root 11"), ReadSection("angle 65x130x8 ROOT 11mm toe 5.5"));
  EXPECT_EQ(ReadSection("angle 100x75x8 root 10"), angle);
  EXPECT_NE(ReadSection("angle 100x75x8 root 9"), angle);
  EXPECT_EQ(ReadSection("angle 100x75x8 root 0").r2, Length{});
  EXPECT_EQ(ReadSection("box 60x100x5 cold"), (Section{Shape::Box, 100_mm, 60_mm, LengthUnit::Mm, LengthUnit::Mm, 5_mm, 10_mm, 5_mm}));
  EXPECT_EQ(ReadSection("box 80x5 hot finished"), ReadSection("box 80x80x5 hot"));
  EXPECT_NE(ReadSection("box 80x80x5 hot"), ReadSection("box 80x80x5 cold"));
  EXPECT_EQ(ReadSection("beam HEA 100"), ReadSection("beam he 100 a"));
  EXPECT_NE(ReadSection("beam HEA 100"), ReadSection("beam HEB 100"));
  EXPECT_EQ(ReadSection("channel upn100").first, 100_mm);
  EXPECT_EQ(WidestOf(ReadSection("beam HE 100 A")), 100_mm);
  EXPECT_EQ(WidestOf(ReadSection("tube 60.3x4")), 60'300_um);
}

TEST(SectionText, OfTheNewShapesReadsBackToo) {
  for (const char* words :
       {"angle 100x75x8", "angle 130x65x8 root 11 toe 5.5", "angle 4 in x 3 in x 1/2 in root 3/8 in toe 3/16 in", "box 100x60x5 cold",
        "box 4 in x 2 in x 1/4 in hot", "box 50x50x6.3 cold", "channel UPN 100", "channel C4x5.4", "beam HE 100 A", "beam W8x31"}) {
    const Section section = ReadSection(words);
    EXPECT_EQ(SectionText(section), words);
    EXPECT_EQ(ReadSection(SectionText(section)), section) << words;
  }
  EXPECT_EQ(SectionText(ReadSection("box 80x5 hot")), "box 80x80x5 hot");
  EXPECT_EQ(SectionText(ReadSection("angle 100x75x8 root 10 toe 5")), "angle 100x75x8");
}

TEST(SectionKey, TellsEverySectionApart) {
  EXPECT_EQ(SectionKey(ReadSection("angle 100x75x8")), "angle 100000000 75000000 8000000 10000000 5000000");
  EXPECT_EQ(SectionKey(ReadSection("angle 4x4x1/2in root 0")), "angle 101600000 101600000 12700000 0 0");
  EXPECT_EQ(SectionKey(ReadSection("box 100x60x5 cold")), "box 100000000 60000000 5000000 10000000 5000000");
  EXPECT_EQ(SectionKey(ReadSection("beam hea 100")), "beam HE 100 A");
}

TEST(ReadSection, SaysWhatIsWrongOfTheNewShapes) {
  EXPECT_EQ(Refusal("angle 100x75x9"),
            "\"angle 100x75x9\" is no size of EN 10056-1; expected its root radius too, like angle 130x65x8 root 11");
  EXPECT_EQ(Refusal("angle 100x10"), std::string("section \"angle 100x10\" has 2 dimensions, an angle has 3") + kExpected);
  EXPECT_EQ(Refusal("angle 4in x 100mm x 10mm root 1"),
            "millimetres and inches in \"angle 4in x 100mm x 10mm root 1\"; expected one unit for all its dimensions");
  EXPECT_EQ(Refusal("angle 50x50x5 root 50"),
            "the radii of \"angle 50x50x5 root 50\" leave no leg; expected radii that fit between root and toe");
  EXPECT_EQ(Refusal("box 100x60x5"),
            "section \"box 100x60x5\" does not say how it was made; expected hot or cold behind it: their corners differ");
  EXPECT_EQ(Refusal("box 20x10x5 hot"),
            "\"box 20x10x5 hot\" is thicker than half of its smaller side; expected a thickness under half of it");
  EXPECT_EQ(Refusal("box 60x60x12 cold"),
            "the wall of \"box 60x60x12 cold\" is too thick for its corners; expected corner radii that fit its smaller side");
  EXPECT_EQ(Refusal("beam UPN 100"),
            "the beam of \"beam upn 100\" is not in the table; expected a name like IPE 100, HE 100 A, HE 100 B or W8x31");
  EXPECT_EQ(Refusal("channel 100"), "the channel of \"channel 100\" is not in the table; expected a name like UPN 100, UPE 100 or C4x5.4");
  for (const char* words : {"angle", "box hot", "box 100x60x5 hotcold", "box 100x60x5 warm", "angle 50x50x5 root", "angle 50x50x5 root x",
                            "beam", "box x hot", "angle xx"}) {
    EXPECT_NE(Refusal(words), "") << words;
  }
}

TEST(ReadSection, RefusesRubbish) {
  for (const char* words : {"roundish 50", "octagon 30", "round 50 60", "round x", "flat x20", "round -5", "round 2001", "tube 60.3x4x2",
                            "pipe 2", "round 1/3 in", "rnd 50"}) {
    EXPECT_NE(Refusal(words), "") << words;
  }
}

TEST(AreaOf, IsRoundedToTheSquareMicrometre) {
  EXPECT_EQ(AreaOf(ReadSection("round 50")).um2, 1'963'495'408);  // 625 pi = 1963.4954084936...
  EXPECT_EQ(AreaOf(ReadSection("hex 10")).um2, 86'602'540);       // 50 sqrt 3 = 86.6025403784...
  EXPECT_EQ(AreaOf(ReadSection("square 0.0015")).um2, 2);         // 2.25
  EXPECT_EQ(AreaOf(ReadSection("flat 0.005x0.0005")).um2, 3);     // 2.5: halves away from zero
  EXPECT_EQ(AreaOf(ReadSection("flat 100x20")).um2, 2'000'000'000);
  EXPECT_EQ(AreaOf(ReadSection("tube 60.3x4")).um2, 707'486'666);  // 225.2 pi = 707.4866655...
}

TEST(MassOf, IsRoundedToTheGram) {
  EXPECT_EQ(MassOf(ReadSection("round 50"), kSteel, 6000_mm).g, 92'481);  // 92.4806 kg
  EXPECT_EQ(MassOf(ReadSection("square 10"), {8000}, 625_um).g, 1);       // 0.5 g: away from zero
  EXPECT_EQ(MassOf(ReadSection("square 10"), {8000}, 624_um).g, 0);
  EXPECT_EQ(MassOf(ReadSection("round 2000"), {22'590}, kLongestLength).g, 70'968'578'045);  // 22590 pi t
  EXPECT_EQ(MassOf(ReadSection("round 50"), kSteel, {}).g, 0);
}

}  // namespace
}  // namespace heatkeep
