// What the sheet offers at the end of a piece, booked at the saw: kerf 2, trim 10, no grip (a hand-fed saw), lengths from the readout
// without doubt; two of 250 -0/+1. Lengths by hand arithmetic in millimetres.
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

struct ExactEnds : Works {
  void SetUp() override {
    const Ran shop = As("owner", {"shop", "set", File("hand.json", R"({"places": [{"place": "SAW-3", "site": "main", "kind": "saw"}],
        "saws": [{"saw": "3", "place": "SAW-3", "max_section": "260 mm", "band": "27 x 0.9", "kerf": "2 mm", "trim": "10 mm", "grip": "0 mm", "grip_bundle": "0 mm"}]})")});
    ASSERT_EQ(shop.code, 0) << shop;
  }
  void TearDown() override { EXPECT_EQ(Broken(), ""); }
  // Plans the pieces out of one drop; the sheet's only block.
  Json Planned(const std::string& drop, int quantity) {
    TakeIn("D,drop,Vandrek,K1,42CrMo4,round 80," + drop + ",2,none,,0\n");
    Want("A", "O1,10,Pallant,round 80,42CrMo4,250," + std::to_string(quantity) + ",,,,-0/+1\n");
    EXPECT_EQ(Plan("A", {"--saw", "3"}), 1);
    tag = TagOf("D");
    return Sheet(1)["blocks"][0];
  }
  Ran Record(const Words& more = {}) {
    Words words{"cut", "record", "--plan", "1", "--tag", tag, "--place", "B1-1"};
    words.insert(words.end(), more.begin(), more.end());
    return As("saw", words);
  }
  // good, kerf and on hand of the heat, in millimetres; nothing negative, no piece of nothing.
  void ExpectMetal(std::int64_t good, std::int64_t kerf, std::int64_t on_hand) {
    EXPECT_EQ(Balance("K1", "on site"), good * kMm);
    EXPECT_EQ(Balance("K1", "kerf"), kerf * kMm);
    EXPECT_EQ(Balance("K1", "on hand"), on_hand * kMm);
    EXPECT_EQ(Balance("K1", "unexplained"), 0);
    EXPECT_EQ(Number("select count(*) as n from book.piece where parent_id is not null"), on_hand > 0 ? 1 : 0);
    EXPECT_EQ(Number("select count(*) as n from book.stroke where length_nm <= 0 or kerf_nm < 0"), 0);
  }
  std::string tag;
};

TEST_F(ExactEnds, A504LeavesNothingAndTheSheetWarns) {
  EXPECT_EQ(Planned("504", 2)["ends"], Json::array({"THIN LAST SLICE: nothing behind the blade, it may wander"}));
  EXPECT_EQ(Record().out, tag + ": 2 pieces, nothing left\n");
  ExpectMetal(500, 4, 0);
}

TEST_F(ExactEnds, B502MakesTheSecondOfWhatRemains) {
  EXPECT_EQ(Planned("502", 2)["ends"], Json::array({"LAST PIECE: no cut, it is what remains"}));
  EXPECT_EQ(Record().out, tag + ": 2 pieces, nothing left; no cut for the last one\n");
  ExpectMetal(500, 2, 0);
}

TEST_F(ExactEnds, C503GoesToChipsAsPlanned) {
  const Json block = Planned("503", 2);
  EXPECT_EQ(block["kerf_nm"], 3 * kMm);
  EXPECT_EQ(block["ends"][0], "OFFER: leave the last piece uncut at 251 mm, in its tolerance; 1 mm less to chips");
  EXPECT_TRUE(Has(As("saw", {"plan", "show", "1"}).out, "OFFER: leave the last piece uncut at 251 mm"));
  EXPECT_EQ(Record().out, tag + ": 2 pieces, nothing left\n");
  ExpectMetal(500, 3, 0);
}

TEST_F(ExactEnds, C503AsOfferedLeavesTheSecondAt251AndOnlyTwoToChips) {
  Planned("503", 2);
  EXPECT_EQ(Record({"--last-uncut"}).out, tag + ": 2 pieces, nothing left; no cut for the last one\n");
  ExpectMetal(501, 2, 0);
  EXPECT_EQ(Word("select string_agg((length_nm / 1000000)::text, ' ' order by seq) as w from book.stroke"), "250 251");
  EXPECT_EQ(Number("select open as n from api.cut_lines"), 0);
}

// A bar of 12 ft gives 9 x 13 7/8 in (352.425 mm) with kerf 0.063, trim 0.5 and grip 2 in: 457.073 mm are left, and would give a tenth; it
// is offered on the sheet and not taken.
TEST_F(ExactEnds, ATenthPieceIsOfferedOnTheSheetAndTheRestIsBookedToTheNanometre) {
  ASSERT_EQ(As("owner",
               {"shop", "set",
                File("inch.json", R"({"places": [{"place": "SAW-4", "site": "main", "kind": "saw"}], "saws": [{"saw": "4", "place": "SAW-4",
      "max_section": "260 mm", "band": "27 x 0.9", "kerf": "0.063 in", "trim": "0.5 in", "grip": "2 in", "grip_bundle": "2 in"}]})")})
                .code,
            0);
  TakeIn("D,bar,Vandrek,K1,42CrMo4,round 2 in,12 ft,0,none,,0\n");
  Want("A", "O1,10,Pallant,round 2 in,42CrMo4,13 7/8 in,9,,,,\n");
  ASSERT_EQ(Plan("A", {"--saw", "4"}), 1);
  tag = TagOf("D");
  const Json block = Sheet(1)["blocks"][0];
  EXPECT_EQ(block["cuts"][0]["count"], 9);
  EXPECT_EQ(block["ends"], Json::array({"OFFER: what is left would give 1 more of O1/10, then 103 mm left; not taken, ask first"}));
  ASSERT_EQ(Record().code, 0);
  EXPECT_EQ(Number("select length_nm as n from book.piece where parent_id is not null"), 457'073'000);
  EXPECT_EQ(Number("select count(*) as n from book.stroke where class = 'good'"), 9);
}

TEST_F(ExactEnds, APieceLeftUncutOutsideItsToleranceIsRefused) {
  Planned("504", 2);
  const Ran ran = Record({"--last-uncut"});
  EXPECT_EQ(ran.code, 1) << ran;
  EXPECT_TRUE(Has(ran.err, "252 mm is outside the tolerance of order O1 line 10")) << ran;
  EXPECT_EQ(Number("select count(*) as n from book.stroke"), 0);
}

TEST_F(ExactEnds, D250IsIssuedWhole) {
  const Json block = Planned("250", 1);
  EXPECT_EQ(block["ends"], Json::array({"NO CUT: issue it whole"}));
  EXPECT_EQ(block["strokes"], 0);
  EXPECT_EQ(Record().out, tag + ": 1 piece, nothing left; issued whole, no cut\n");
  ExpectMetal(250, 0, 0);
}

TEST_F(ExactEnds, E501GivesOneKeeps249AndLeavesOneShort) {
  EXPECT_EQ(Planned("501", 2)["left_nm"], 249 * kMm);
  EXPECT_TRUE(Has(Record().out, "(249 mm) to B1-1"));
  ExpectMetal(250, 2, 249);
  EXPECT_EQ(Number("select open as n from api.cut_lines"), 1);
}

}  // namespace
}  // namespace heatkeep::command
