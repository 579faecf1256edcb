// What is kept apart: bars under a strap, places that are counted, heats that leave together, metal that is not here.
// Common practice of the trade, no source.
#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

struct PutApart : ShopTest {};

TEST_F(PutApart, ABarIsNotPulledOutOfAStrappedBundle_HK043) {
  const auto tags = shop.ReceiveCertified({.count = 3});
  shop.AddLine({});
  DoBody(shop.clerk, "make_bundle", {{"bundle", "S-12"}, {"tags", {tags[0], tags[1]}}});
  shop.Promise(tags[0], {{.count = 1}});
  const Json no = shop.Pull(tags[0]);
  EXPECT_EQ(no.at("refused"), "HK043");
  EXPECT_TRUE(
      no.at("words").get<std::string>().starts_with(tags[0] + ": it is strapped in bundle S-12: open the bundle first; take " + tags[2]))
      << no;
  EXPECT_EQ(shop.Number("select count(*) as n from api.refusals where code = 'HK043'"), 1);
  DoBody(shop.saw, "open_bundle", {{"bundle", "S-12"}});
  EXPECT_EQ(shop.Pull(tags[0]).value("tag", ""), tags[0]);
}

TEST_F(PutApart, ADropIsNotPutInAPlaceThatIsCountedAndThePlaceBesideIsNamed_HK040) {
  AddVanAndRack(shop);
  const std::string bar = shop.ReceiveCertified({}).at(0);
  shop.AddLine({});
  shop.Fetch(bar, {{.count = 14}});
  DoBody(shop.planner, "freeze_place", {{"place", "B3"}});
  const DbError no = Refusal([&] { shop.Record(bar, {Trim(), Good(14, 290)}, DropLeft(1900, "B3")); });
  EXPECT_EQ(no.sqlstate, "HK040");
  EXPECT_EQ(no.hint, "put it in B1-1 beside it, or wait until the count is approved");
  EXPECT_EQ(shop.LengthOf(bar), Mm(6000)) << "nothing is half booked";
  EXPECT_TRUE(shop.Record(bar, {Trim(), Good(14, 290)}, DropLeft(1900, "B1-1")).contains("drop_tag"));
}

TEST_F(PutApart, WhatIsFreeIsNotPutInQuarantineWithoutAReason_HK043) {
  const auto tags = shop.ReceiveCertified({.count = 2});
  const DbError no = Refusal([&] { Do(shop.clerk, "put_away", {tags[0], "QUAR"}); });
  EXPECT_EQ(no.sqlstate, "HK043");
  EXPECT_NE(no.hint.find("heatkeep quarantine"), std::string::npos) << no.hint;
  Do(shop.clerk, "quarantine", {tags[0], "a seam", "QUAR"});
  shop.Hold("M2208");
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {tags[1], "QUAR"}); }), "") << "held metal may lie apart";
}

TEST_F(PutApart, PiecesOfSeveralHeatsLeaveOnALineOnlyWhereEachIsListed_HK042) {
  shop.AddLine({.quantity = 5});
  for (const auto& [heat, count] : {std::pair{"K1", 3}, {"K2", 2}}) {
    const std::string bar = shop.ReceiveCertified({.heat = heat}).at(0);
    shop.Record(bar, {Trim(), Good(count, 290)}, DropLeft(6000 - 12 - 292 * count));
  }
  const auto ship = [&](int count, const Json& heats) {
    Json line{{"order", "O1"}, {"line", "10"}, {"count", count}};
    if (!heats.is_null()) line["heats"] = heats;
    return DoBody(shop.planner, "ship", {{"note", "L" + std::to_string(count)}, {"customer", "Pallant"}, {"lines", {line}}});
  };
  const DbError no = Refusal([&] { ship(5, nullptr); });
  EXPECT_EQ(no.sqlstate, "HK042");
  EXPECT_NE(std::string(no.what()).find("the pieces are of several heats, 3 of K1 and 2 of K2"), std::string::npos) << no.what();
  EXPECT_EQ(Code([&] { ship(5, {"K1"}); }), "HK034") << "of K1 there are three";
  EXPECT_EQ(ship(1, nullptr).at("lines").size(), 1u) << "one piece is of one heat";
  EXPECT_EQ(ship(4, {"K1", "K2"}).at("lines").size(), 2u);
}

TEST_F(PutApart, MetalThatIsOutOrOnItsWayIsNotOnHandInTheBalance) {
  AddVanAndRack(shop);
  const auto tags = shop.ReceiveCertified({.count = 3});
  DoBody(shop.clerk, "send_to_site", {{"tags", {tags[0]}}, {"site", "van"}, {"note", "T1"}});
  DoBody(shop.planner, "send_outside", {{"tag", tags[1]}, {"party", "Hardening works"}, {"process", "heat treatment"}, {"note", "H1"}});
  EXPECT_EQ(shop.Balance("M2208", "in transit"), Mm(6000));
  EXPECT_EQ(shop.Balance("M2208", "outside"), Mm(6000));
  EXPECT_EQ(shop.Balance("M2208", "on hand"), Mm(6000));
}

struct Away : ShopTest {
  void SetUp() override {
    AddVanAndRack(shop);
    shop.AddLine({.quantity = 28});
    tags = shop.ReceiveCertified({.count = 3});
    Do(shop.saw, "report_missing", {tags[0], "looked for in every bay"});
    DoBody(shop.clerk, "send_to_site", {{"tags", {tags[1]}}, {"site", "van"}, {"note", "T1"}});
    DoBody(shop.planner, "send_outside", {{"tag", tags[2]}, {"party", "Hardening works"}, {"process", "hardening"}, {"note", "H1"}});
  }
  std::vector<std::string> tags;
};

TEST_F(Away, MetalThatIsNotHereIsNeitherScrappedNorSplitNorSliced_HK043) {
  const auto part = [](std::int64_t mm) { return Json{{"length_nm", Mm(mm)}, {"place", "B1-1"}, {"heat", "M2208"}}; };
  const std::vector<std::string> states{"missing", "in transit", "outside"};
  for (std::size_t i = 0; i < tags.size(); ++i) {
    const DbError scrap = Refusal([&] { Do(shop.saw, "scrap_piece", {Json({{"tag", tags[i]}, {"reason", "bent"}}).dump()}); });
    EXPECT_EQ(scrap.sqlstate, "HK043") << states[i];
    EXPECT_EQ(scrap.message, tags[i] + " is " + states[i] + ": it cannot be scrapped");
    EXPECT_NE(scrap.hint, "");
    const Json split{{"tag", tags[i]}, {"saw", "1"}, {"kerf_nm", Mm(2)}, {"parts", {part(3000), part(2998)}}};
    EXPECT_EQ(Code([&] { Do(shop.saw, "split_piece", {split.dump()}); }), "HK043") << states[i];
    const Json slice{{"tag", tags[i]}, {"saw", "1"}, {"length_nm", Mm(25)}, {"kerf_nm", Mm(2)}, {"lab", "LAB 1"}, {"place", "B1-1"}};
    EXPECT_EQ(Code([&] { Do(shop.quality, "take_test_slice", {slice.dump()}); }), "HK043") << states[i];
  }
}

// A cut is a fact: it is booked, and a person looks at it.
TEST_F(Away, WhatWasCutThoughTheBookHasItElsewhereIsAConflict) {
  shop.Record(tags[0], {Trim(), Good(2, 290)});
  EXPECT_EQ(shop.Word("select state::text as w from book.piece where tag = $1", {tags[0]}), "at saw");
  shop.Record(tags[0], Good(1, 290), DropLeft(5112));
  shop.Record(tags[1], {Trim(), Good(1, 290)}, DropLeft(5696));
  const std::string drop = shop.Record(tags[2], {Trim(), Good(1, 290)}, DropLeft(5696)).at("drop_tag");
  EXPECT_EQ(
      shop.Word("select string_agg(words, ', ' order by conflict_id) as w from api.conflicts where kind = 'cut though it is not here'"),
      tags[0] + " was cut; in the book it is missing, " + tags[1] + " was cut; in the book it is on its way to van, note T1, " + tags[2] +
          " was cut; in the book it is outside at Hardening works for hardening, note H1");
  EXPECT_EQ(shop.Number("select count(*) as n from api.outside_trips where back_nm is null"), 0);
  EXPECT_EQ(shop.Number("select count(*) as n from api.transfers where received_nm is null"), 0);
  // in what condition it is nobody wrote down
  EXPECT_EQ(shop.Word("select blocked as w from api.stock_on_hand where tag = $1", {drop}),
            "quarantined: cut while it was outside at Hardening works for hardening, note H1");
  EXPECT_EQ(shop.Number("select count(*) as n from book.stroke where held and class = 'good'"), 1);
}

}  // namespace
}  // namespace heatkeep
