// Traces follow the metal: through any depth of drops and on under another tag; and which heats went into an order is proved
// from the happenings.
#include "tests/schema/every_stock_deed.h"
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct Trace : ShopTest {
  void SetUp() override { tags = shop.ReceiveCertified({.count = 3}); }
  // Names of the trace that are pieces.
  std::vector<std::string> Pieces(const std::string& kind, const std::string& name) {
    std::vector<std::string> names;
    for (const Row row : shop.quality.Execute("select name from api.trace($1, $2) where what in ('bar', 'drop')", {kind, name}))
      names.push_back(row.Text("name"));
    return names;
  }
  // What left the pieces of a trace, and what is left, make up what they were, piece for piece.
  void ExpectWhole(const std::string& kind, const std::string& name) {
    EXPECT_EQ(
        shop.Number(
            "with t as (select * from api.trace($1, $2)) select count(*) as n from t p where what in ('bar', 'drop') and length_nm <> now_nm"
            " + (select coalesce(sum(case when what in ('bar', 'drop') then length_nm else length_nm * count + kerf_nm end), 0) from t c where c.parent = p.name"
            "    and not (what in ('bar', 'drop') and exists (select from t o where o.parent = p.name and o.what = 'passed on')))",
            {kind, name}),
        0);
  }
  Json Heats(const std::string& order = "O1") { return Answer(shop.quality, "api.order_heats($1)", {order}); }
  std::vector<std::string> tags;
};

TEST_F(Trace, AnOrderShowsWhatIsUnexplainedOfItsBars) {
  shop.AddLine({.quantity = 14});
  shop.Record(tags[0], {Trim(), Good(14, 290)}, DropLeft(1890), {{"reason", "not found"}});
  EXPECT_EQ(shop.Word("select name || ' ' || length_nm as w from api.trace('order', 'O1') where what = 'unexplained'"),
            "not found 10000000");
  EXPECT_EQ(shop.Number("select count(*) as n from api.trace('order', 'O1') where parent = $1", {tags[0]}), 2);
}

TEST_F(Trace, GoesThroughTwentyGenerationsOfDropsBothWays) {
  shop.AddLine({.length = 100, .quantity = 40});
  std::vector<std::string> line{tags[0]};
  for (int i = 0; i < 20; ++i) {
    const std::int64_t left = shop.LengthOf(line.back()) / 1'000'000 - (i == 0 ? 114 : 102);
    line.push_back(
        shop.Record(line.back(), i == 0 ? Json{Trim(), Good(1, 100)} : Json::array({Good(1, 100)}), DropLeft(left)).at("drop_tag"));
  }
  EXPECT_EQ(Pieces("piece", line.back()), line);
  EXPECT_EQ(Pieces("piece", line.front()), line);
  EXPECT_EQ(Pieces("piece", line[10]), line);
  EXPECT_EQ(Pieces("heat", "M2208").size(), 23U);
  ExpectWhole("heat", "M2208");
}

TEST_F(Trace, FollowsMetalThatWentOnUnderAnotherTagInAnotherLot) {
  shop.AddLine({.quantity = 3});
  const std::string now =
      DoBody(shop.quality, "downgrade", {{"tag", tags[0]}, {"to", "grade only"}, {"reason", "the mark was cut off"}}).at("new_tag");
  for (const auto& [kind, name] : std::vector<std::pair<std::string, std::string>>{{"heat", "M2208"}, {"piece", tags[0]}, {"piece", now}}) {
    const auto pieces = Pieces(kind, name);
    EXPECT_NE(std::find(pieces.begin(), pieces.end(), tags[0]), pieces.end()) << kind;
    EXPECT_NE(std::find(pieces.begin(), pieces.end(), now), pieces.end()) << kind;
    ExpectWhole(kind, name);
  }
}

TEST_F(Trace, OneHeatIsStatedOnlyWithWhatWasLookedAt) {
  shop.AddLine({.quantity = 14});
  shop.Record(tags[0], {Trim(), Good(14, 290)}, DropLeft(1900));
  const Json heats = Heats();
  EXPECT_TRUE(heats.at("one_heat"));
  EXPECT_EQ(heats.at("statement"), "All 14 pieces cut for order O1 are of heat M2208 of Vandrek; no other heat went into this order.");
  EXPECT_TRUE(heats.at("looked_at")
                  .get<std::string>()
                  .starts_with("Looked at: 14 strokes booked for the order at any time, in 1 cuts; 14 cut pieces now, from 1 pieces"))
      << heats;
  EXPECT_NE(heats.at("looked_at").get<std::string>().find("none broken, and the tables say the same"), std::string::npos) << heats;
  EXPECT_EQ(shop.Number("select count(*) as n from api.order_heats('O9') h where h is not null"), 0);
}

TEST_F(Trace, OtherHeatsAreListedAndNothingIsDenied) {
  const auto others = shop.ReceiveCertified({.heat = "K7", .mill = "Kestholm"});
  shop.AddLine({.quantity = 6});
  shop.Record(tags[0], {Trim(), Good(2, 290)}, DropLeft(5404));
  shop.Record(others[0], {Trim(), Good(3, 290)}, DropLeft(5112));
  const Json heats = Heats();
  EXPECT_FALSE(heats.at("one_heat"));
  EXPECT_EQ(
      heats.at("statement"),
      "It is not so that one heat alone went into order O1: 3 of heat K7 of Kestholm, 2 of heat M2208 of Vandrek. 1 pieces are not cut yet.");
  EXPECT_EQ(heats.at("heats").size(), 2U);
}

TEST_F(Trace, ACutPieceMovedBehindTheBooksBackIsFoundByTheHappenings) {
  const auto others = shop.ReceiveCertified({.heat = "K7"});
  shop.AddLines({{.quantity = 6}, {.quantity = 6, .order = "O2"}});
  shop.Record(tags[0], {Trim(), Good(2, 290)}, DropLeft(5404));
  shop.Record(others[0], {Trim(), Good(1, 290)}, DropLeft(5696));
  EXPECT_FALSE(Heats().at("one_heat"));
  // the only piece of the other heat is written over to another order
  Behind(
      "update book.stroke set cut_line_id = (select cut_line_id from book.cut_line where order_no = 'O2') where class = 'good' and lot_id = (select lot_id from book.lot where heat = 'K7')");
  const Json heats = Heats();
  EXPECT_FALSE(heats.at("one_heat"));
  EXPECT_EQ(heats.at("wrong").at(0), "the tables say otherwise of a stroke of " + others[0] + " than the happenings do");
  EXPECT_EQ(heats.at("statement"),
            "Nothing is stated about the heats of order O1: the book was changed behind its back. 4 pieces are not cut yet.");
}

}  // namespace
}  // namespace heatkeep
