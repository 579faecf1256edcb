// One confirmed too many: strokes that were booked and never made are taken back, and their metal is where it is. Every balance is exact.
#include "tests/schema/every_stock_deed.h"
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

// 6 000 long; trim 10 + 2 first; every good piece 290 + 2.
struct NotCut : ShopTest {
  void SetUp() override {
    bar = shop.ReceiveCertified({}).at(0);
    shop.AddLine({.quantity = 14});
  }
  Json TakeBack(const std::string& tag, int count = 1, const std::string& reason = "pressed once more") {
    return DoBody(shop.saw, "not_cut", {{"tag", tag}, {"count", count}, {"reason", reason}});
  }
  std::string CodeOf(const std::string& tag, int count = 1, const std::string& reason = "pressed once more") {
    return Code([&] { TakeBack(tag, count, reason); });
  }
  // What is marked on a piece, from the end that is cut first of it as it was made.
  std::string Zones(const std::string& tag) {
    return shop.Word(
        "select string_agg(z.from_nm / 1000000 || '-' || z.to_nm / 1000000, ' ' order by z.from_nm) as w from book.defect_zone z "
        "join book.piece e using (piece_id) where e.tag = $1",
        {tag});
  }
  std::int64_t Cut() { return shop.Number("select cut as n from api.cut_lines where line_no = '10'"); }
  std::string bar;
};

TEST_F(NotCut, WhileTheBarIsAtTheSawItIsAsLongAsItIs) {
  shop.Record(bar, {Trim(), Good(9, 290)});
  const DbError no = Refusal([&] { shop.Record(bar, Json::array(), DropLeft(5988 - 8 * 292)); });
  EXPECT_EQ(no.sqlstate, "HK034");
  EXPECT_NE(no.hint.find("heatkeep saw take-back"), std::string::npos) << no.hint;
  EXPECT_EQ(TakeBack(bar).at("length_nm"), Mm(5988 - 8 * 292));
  EXPECT_EQ(Cut(), 8);
  const std::string drop = shop.Record(bar, Json::array(), DropLeft(5988 - 8 * 292)).at("drop_tag");
  EXPECT_EQ(shop.LengthOf(drop), Mm(5988 - 8 * 292));
  ExpectBalance("M2208", {{"on site", 8 * 290}, {"kerf", 9 * 2}, {"trim", 10}, {"on hand", 5988 - 8 * 292}, {"unexplained", 0}});
  EXPECT_EQ(shop.Number("select sum(count) as n from api.trace('heat', 'M2208') where what = 'cut piece'"), 8);
  EXPECT_EQ(shop.Number("select count(*) as n from api.trace('heat', 'M2208') where what = 'trim'"), 1)
      << "nothing is shown that was not cut";
  EXPECT_EQ(Happenings(bar, "not_cut"), 2);
}

TEST_F(NotCut, WhatTheOrderLacksIsCutAfterAll) {
  shop.Fetch(bar, {{.count = 14}});
  shop.Record(bar, {Trim(), Good(14, 290)});
  EXPECT_EQ(shop.Number("select open as n from api.cut_lines where line_no = '10'"), 0);
  TakeBack(bar, 3);
  EXPECT_EQ(Cut(), 11);
  shop.Record(bar, Good(3, 290), DropLeft(1900));
  EXPECT_EQ(Cut(), 14);
  EXPECT_EQ(shop.Number("select count(*) as n from api.open_pieces"), 0);
  EXPECT_EQ(shop.Number("select count(*) as n from api.conflicts"), 0);
}

TEST_F(NotCut, ACutOfWhichNothingWasMadeMayEndAsTheSamePiece) {
  shop.Record(bar, Good(1, 290));
  TakeBack(bar);
  EXPECT_EQ(shop.Record(bar, Json::array(), SamePiece()).at("length_nm"), Mm(6000));
  EXPECT_EQ(shop.Word("select state::text as w from book.piece where tag = $1", {bar}), "on rack");
}

TEST_F(NotCut, OfAClosedCutTheDropIsThatMuchLonger) {
  shop.Fetch(bar, {{.count = 14}});
  const std::string drop = shop.Record(bar, {Trim(), Good(14, 290)}, DropLeft(1900)).at("drop_tag");
  EXPECT_EQ(CodeOf(bar), "HK043") << "the drop is what is longer";
  DoBody(shop.saw, "label_printed",
         {{"printer", "P"}, {"jobs", {shop.Number("select job as n from api.label_queue where tag = $1", {drop})}}});
  EXPECT_EQ(TakeBack(drop, 2).at("length_nm"), Mm(1900 + 2 * 292));
  EXPECT_EQ(shop.LengthOf(drop), Mm(1900 + 2 * 292));
  EXPECT_EQ(Cut(), 12);
  EXPECT_EQ(shop.Word("select missing || ' ' || why as w from api.open_pieces"), "2 pressed once more");
  EXPECT_EQ(shop.Word("select why as w from api.label_queue where tag = $1 and not printed", {drop}), "it is longer than the label says");
  ExpectBalance("M2208", {{"on site", 12 * 290}, {"kerf", 13 * 2}, {"trim", 10}, {"on hand", 1900 + 2 * 292}, {"unexplained", 0}});
  shop.Record(drop, Good(1, 290));
  EXPECT_EQ(CodeOf(drop), "") << "of its own cut";
  shop.Record(drop, Good(1, 290), DropLeft(1900 + 292));
  EXPECT_EQ(CodeOf(drop), "HK043") << "it was cut up since";
}

TEST_F(NotCut, WhatIsMarkedOnTheMetalKeepsItsPlace) {
  // the last two pieces lie from 3 516 to 4 100, the drop behind them
  Json mark{{"tag", bar}, {"kind", "dented"}, {"usable", true}, {"words", "a fork"}};
  for (const auto& [from, to] : std::vector<std::pair<int, int>>{{3400, 3600}, {4000, 4200}, {5000, 5100}}) {
    mark["from_nm"] = Mm(from);
    mark["to_nm"] = Mm(to);
    DoBody(shop.saw, "record_damage", mark);
  }
  const std::string drop = shop.Record(bar, {Trim(), Good(14, 290)}, DropLeft(1900)).at("drop_tag");
  EXPECT_EQ(Zones(drop), "0-100 900-1000");
  TakeBack(drop, 2);
  // as on a drop that was left after twelve: 6 000 - 2 484 = 3 516
  EXPECT_EQ(Zones(drop), "0-84 484-584 584-684 1484-1584");
}

TEST_F(NotCut, WhatWasMadeIsNotTakenBack) {
  EXPECT_EQ(CodeOf(bar), "HK043") << "no cut is open";
  shop.Record(bar, {Trim(), Good(2, 290)});
  EXPECT_EQ(CodeOf(bar, 1, ""), "HK026");
  EXPECT_EQ(CodeOf(bar, 0), "HK026");
  EXPECT_EQ(CodeOf(bar, 4), "HK034") << "a trim and two pieces are booked";
  EXPECT_EQ(CodeOf("A000999X"), "HK024");
  shop.Ship("D1", 1);
  EXPECT_EQ(CodeOf(bar, 2), "HK043") << "the first has left";
  EXPECT_EQ(CodeOf(bar), "");
  EXPECT_EQ(CodeOf(bar), "HK043") << "what is left to take back has left";
  EXPECT_EQ(Cut(), 1);
  shop.Record(bar, {{{"class", "stock"}, {"length_nm", Mm(500)}, {"kerf_nm", Mm(2)}, {"place", "B1-2"}}});
  EXPECT_EQ(CodeOf(bar), "HK043") << "a piece with a tag";
}

TEST_F(NotCut, ARejectThatIsRecutWasMade) {
  const Json reject{{"class", "reject"}, {"order", "O1"}, {"line", "10"}, {"length_nm", Mm(285)}, {"kerf_nm", Mm(2)}, {"fault", "short"}};
  const Json done = shop.Record(bar, {Trim(), Good(2, 290), reject}, DropLeft(5988 - 3 * 292 + 5));
  const std::string drop = done.at("drop_tag");
  Do(shop.planner, "recut", {Json({{"reject", done.at("rejects").at(0)}, {"tag", drop}}).dump()});
  EXPECT_EQ(CodeOf(drop), "HK043");
  const std::string other = shop.ReceiveCertified({}).at(0);
  shop.Record(other, {Trim(), reject});
  TakeBack(other);
  EXPECT_EQ(shop.Number("select count(*) as n from api.rejects"), 1) << "none that was never cut";
}

TEST_F(NotCut, OnlyTheRestOfACutGetsItsMetal) {
  const std::string scrapped = shop.ReceiveCertified({}).at(0);
  const Json stock{{"class", "stock"}, {"length_nm", Mm(500)}, {"kerf_nm", Mm(2)}, {"place", "B1-2"}};
  const std::string piece = shop.Record(scrapped, {Trim(), stock, Good(1, 290)}, ScrapLeft()).at("stock_tags").at(0);
  EXPECT_EQ(CodeOf(piece), "HK043") << "what was left was scrapped";
  const std::string drop = shop.Record(bar, {Trim(), Good(1, 290)}, DropLeft(5696)).at("drop_tag");
  shop.Hold("M2208");
  EXPECT_EQ(CodeOf(drop), "HK040") << "it is evidence";
}

TEST_F(NotCut, WhatWasCutOfHeldMetalIsEvidenceUntilQualityLiftsTheHold_HK040) {
  shop.Record(bar, {Trim(), Good(2, 290)});
  const std::int64_t hold = shop.Hold("M2208").at("hold_id");
  EXPECT_EQ(CodeOf(bar), "HK040");
  EXPECT_EQ(Cut(), 2);
  Do(shop.quality, "lift_hold", {hold, "the letter was about another heat"});
  TakeBack(bar);
  EXPECT_EQ(Cut(), 1);
}

TEST_F(NotCut, WhoMay) {
  shop.Record(bar, {Trim(), Good(2, 290)});
  const Json body{{"tag", bar}, {"count", 1}, {"reason", "pressed once more"}};
  for (Connection* who : {&shop.clerk, &shop.quality}) EXPECT_EQ(Code([&] { DoBody(*who, "not_cut", body); }), "42501");
  DoBody(shop.planner, "not_cut", body);
  EXPECT_EQ(Cut(), 1);
}

}  // namespace
}  // namespace heatkeep
