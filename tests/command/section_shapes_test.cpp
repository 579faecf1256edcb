// Angles, boxes, channels and beams through the whole shop: taken in and planned.
#include "schema/terms/section.h"
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

using SectionShapes = Works;

TEST_F(SectionShapes, AreKeptApartAndWithTheirArea) {
  TakeIn(
      "1,bar,Vandrek,H1,C45E,angle 100x75x8,6000,0,,,\n"
      "2,bar,Vandrek,H1,C45E,angle 75x100x8 root 10,6000,0,,,\n"  // the same section
      "3,bar,Vandrek,H1,C45E,angle 100x75x8 root 9,6000,0,,,\n"
      "4,bar,Vandrek,H2,C45E,box 100x60x5 cold,6000,0,,,\n"
      "5,bar,Vandrek,H2,C45E,box 100x60x5 hot,6000,0,,,\n"
      "6,bar,Vandrek,H3,C45E,channel UPN 100,6000,0,,,\n"
      "7,bar,Vandrek,H3,C45E,beam HEA 100,6000,0,,,\n"
      "8,bar,Vandrek,H3,C45E,beam W8x31,20 ft,0,,,\n");
  EXPECT_EQ(Number("select count(*) as n from book.section"), 7);
  EXPECT_EQ(Number("select count(distinct lot_id) as n from book.piece"), 7);
  for (const char* words : {"angle 100x75x8", "angle 100x75x8 root 9 toe 4.5", "box 100x60x5 cold", "box 100x60x5 hot", "channel UPN 100",
                            "beam HE 100 A", "beam W8x31"})
    EXPECT_EQ(Number("select area_um2 as n from book.section where label = $1", {words}), AreaOf(ReadSection(words)).um2) << words;
  EXPECT_EQ(Broken(), "");
}

// A cold formed box is cut off one, never off a hot finished one of the same size.
TEST_F(SectionShapes, ArePlannedFromTheirOwnKindOnly) {
  TakeIn(
      "1,bar,Vandrek,H1,C45E,box 100x60x5 hot,6000,0,,,\n"
      "2,bar,Vandrek,H2,C45E,box 100x60x5 cold,6000,0,,,\n");
  Want("L", "A,1,Pallant,box 60x100x5 cold,C45E,1200,4,,,,\n");
  const std::int64_t plan = Plan("L", {"--saw", "1"});
  ASSERT_GT(plan, 0);
  const Json pieces = Sheet(plan)["blocks"];
  ASSERT_EQ(pieces.size(), 1U) << pieces.dump(1);
  EXPECT_EQ(pieces[0]["tag"], TagOf("2"));
  EXPECT_EQ(pieces[0]["section"], "box 100x60x5 cold");
  EXPECT_EQ(Broken(), "");
}

TEST_F(SectionShapes, ASawTooSmallDoesNotTakeThem) {
  TakeIn("1,bar,Vandrek,H1,C45E,beam IPE 270,6000,0,,,\n");
  Want("L", "A,1,Pallant,beam IPE 270,C45E,500,1,,,,\n");
  EXPECT_EQ(Plan("L", {"--saw", "1"}), 0) << "saw 1 takes 260";
  EXPECT_GT(Plan("L", {"--saw", "2"}), 0);
}

}  // namespace
}  // namespace heatkeep::command
