// What a stroke took off a bar is told once, by the stroke: the ledger has no other happening for it, and the replay
// finds the length all the same.
#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

using Words = std::vector<std::string>;

struct ToldByStrokes : ShopTest {
  std::string bar = shop.ReceiveCertified({}).at(0);

  void SetUp() override {
    shop.AddLine({});
    shop.Record(bar, {Trim(), Good(2, 290)});
    ASSERT_EQ(LengthNm(), Mm(6000 - 12 - 2 * 292));
  }
  std::int64_t LengthNm() { return shop.Number("select length_nm as n from book.piece where tag = $1", {bar}); }
  std::int64_t Version() { return shop.Number("select version as n from book.piece where tag = $1", {bar}); }
  // What is told of the bar after link `seq` of its chain.
  Words ToldAfter(std::int64_t seq) {
    Words words;
    for (
        const Row row : shop.admin.Execute(
            "select about || coalesce(' ' || (sets ->> 'length_nm'), '') as w from api.piece_history where tag = $1 and seq > $2 order by seq",
            {bar, seq}))
      words.push_back(row.Text("w"));
    return words;
  }
  std::int64_t LastLink() { return shop.Number("select max(seq) as n from api.piece_history where tag = $1", {bar}); }
};

TEST_F(ToldByStrokes, TheLengthIsNotToldAgainAndTheRowKeepsItsVersion) {
  const std::int64_t last = LastLink(), version = Version(), length = LengthNm();
  shop.Record(bar, {Good(1, 290), Fault("reject", 280, "short")});
  EXPECT_EQ(ToldAfter(last), (Words{"stroke " + std::to_string(Mm(290)), "stroke " + std::to_string(Mm(280))}));
  EXPECT_EQ(LengthNm(), length - Mm(292 + 282));
  EXPECT_EQ(Version(), version);
  EXPECT_EQ(shop.Broken(), Words());
}

TEST_F(ToldByStrokes, WhatElseIsChangedOfTheBarIsToldWithItsLength) {
  shop.Record(bar, {Good(1, 290)});
  const std::int64_t last = LastLink(), version = Version();
  shop.Record(bar, {Good(1, 290)}, DropLeft(6000 - 12 - 4 * 292));
  const Words told = ToldAfter(last);
  EXPECT_EQ(std::count(told.begin(), told.end(), "piece 0"), 1) << "cut up, with nothing left of it";
  EXPECT_EQ(Version(), version + 1);
  EXPECT_EQ(shop.Broken(), Words());
}

TEST_F(ToldByStrokes, ALengthMeasuredInTheSameDeedIsTold) {
  const std::int64_t last = LastLink(), length = LengthNm();
  DoBody(shop.saw, "record_cut", {{"tag", bar}, {"saw", "1"}, {"measured_nm", length - Mm(3)}, {"strokes", {Good(1, 290)}}});
  EXPECT_EQ(ToldAfter(last),
            (Words{"metal_out " + std::to_string(Mm(3)), "piece " + std::to_string(length - Mm(3)), "stroke " + std::to_string(Mm(290))}));
  EXPECT_EQ(LengthNm(), length - Mm(3 + 292));
  EXPECT_EQ(shop.Number("select measured_nm as n from api.measured_lengths where tag = $1", {bar}), length - Mm(3));
}

TEST_F(ToldByStrokes, APieceForStockTakesMetalThatNoStrokeTellsOf) {
  const std::int64_t last = LastLink(), length = LengthNm();
  const Json stock{{"class", "stock"}, {"length_nm", Mm(500)}, {"kerf_nm", Mm(2)}, {"place", "B1-2"}};
  shop.Record(bar, {stock, Good(1, 290)});
  EXPECT_EQ(ToldAfter(last).back(), "piece " + std::to_string(length - Mm(502 + 292)));
  shop.Record(bar, {Good(1, 290)});
  EXPECT_EQ(ToldAfter(last).back(), "stroke " + std::to_string(Mm(290)));
  EXPECT_EQ(LengthNm(), length - Mm(502 + 2 * 292));
}

TEST_F(ToldByStrokes, WhatIsTakenBackIsTold) {
  shop.Record(bar, {Good(1, 290)});
  shop.Record(bar, {Good(1, 290)});
  const std::int64_t last = LastLink(), length = LengthNm();
  DoBody(shop.saw, "not_cut", {{"tag", bar}, {"reason", "the blade did not come down"}});
  EXPECT_EQ(ToldAfter(last).back(), "piece " + std::to_string(length + Mm(292)));
  shop.Record(bar, {Good(1, 290)});
  EXPECT_EQ(shop.Broken(), Words());
}

TEST_F(ToldByStrokes, ALengthThatTheStrokesDoNotMakeIsFoundByTheReplay) {
  Do(shop.quality, "seal_book", {});
  shop.Record(bar, {Good(1, 290)});
  for (const char* verify : {"verify_book", "verify_new"}) EXPECT_EQ(Failing(verify), Words()) << verify;
  Behind("update book.piece set length_nm = length_nm - 1 where tag = '" + bar + "'");
  for (const char* verify : {"verify_book", "verify_new"})
    EXPECT_EQ(Failing(verify), (Words{"replay equals the present state", "metal balance of every piece", "metal balance of every lot"}))
        << verify;
  // with a stroke that was lengthened to fit
  Behind("update book.stroke set length_nm = length_nm + 1 where stroke_id = (select max(stroke_id) from book.stroke)");
  for (const char* verify : {"verify_book", "verify_new"}) EXPECT_EQ(Failing(verify), Words{"replay equals the present state"}) << verify;
}

// The note by which a deed says so is no way around the balance, nor around the deed.
TEST_F(ToldByStrokes, TheNoteAloneShortensNothing) {
  const std::string shorter = "select set_config('heatkeep.shortened', (select piece_id::text from book.piece where tag = '" + bar +
      "'), true); update book.piece set length_nm = length_nm - 1 where tag = '" + bar + "'";
  EXPECT_EQ(shop.Raw(shorter), "HK030");
  EXPECT_EQ(shop.Raw(shorter, ""), "HK002");
  shop.clerk.ExecuteScript("set heatkeep.shortened = '" + shop.Word("select piece_id::text as w from book.piece where tag = $1", {bar}) +
                           "'");
  const std::int64_t last = LastLink(), length = LengthNm();
  Do(shop.clerk, "correct_length", {bar, length - Mm(4), Mm(1), "tape"});
  EXPECT_EQ(ToldAfter(last).back(), "piece " + std::to_string(length - Mm(4)));
}

// What a planner saw of a bar on the rack is its version and its length: a trim that left it where it lay told only of the length.
TEST_F(ToldByStrokes, ABarThatGotShorterSinceThePlanWasMadeIsNotPromised) {
  shop.Record(bar, Json::array(), DropLeft(6000 - 12 - 2 * 292));
  const std::string drop = shop.Word("select tag as w from book.piece where kind = 'drop'");
  shop.AddLine({.line = "20", .quantity = 8});
  const Json plan = shop.PlanFor(drop, {{.count = 5, .line = "20"}});
  const Json stays{{"fate", "same piece"},
                   {"place", shop.Word("select p.name as w from book.piece e join book.place p using (place_id) where tag = $1", {drop})}};
  shop.Record(drop, {Trim()}, stays);
  EXPECT_EQ(shop.PlanFor(drop, {{.count = 5, .line = "20"}})["layouts"][0]["version"], plan["layouts"][0]["version"]);
  const Json no = Do(shop.planner, "commit_plan", {plan.dump()});
  EXPECT_EQ(no["taken"][0]["why"], "it was changed since the plan was made") << no;
  EXPECT_TRUE(Do(shop.planner, "commit_plan", {shop.PlanFor(drop, {{.count = 5, .line = "20"}}).dump()}).contains("plan"));
  EXPECT_EQ(shop.Broken(), Words());
}

TEST_F(ToldByStrokes, ABarThatWasCutWhileItWasHeldIsAsShortAsItsStrokesSay) {
  const std::string held = shop.ReceiveCertified({.heat = "K7"}).at(0);
  shop.Hold("K7");
  const std::int64_t last = shop.Number("select max(seq) as n from api.piece_history where tag = $1", {held});
  shop.Record(held, {Trim(), Good(1, 290)});
  EXPECT_EQ(shop.Number("select count(*) as n from api.piece_history where tag = $1 and seq > $2 and about = 'piece'", {held, last}), 0);
  EXPECT_EQ(shop.Number("select length_nm as n from book.piece where tag = $1", {held}), Mm(6000 - 12 - 292));
  EXPECT_EQ(shop.Broken(), Words());
}

// A happening of the piece that was made one of another row, its chain hashed anew.
TEST_F(ToldByStrokes, AHappeningOfAnotherRowInTheChainIsFoundByTheReplay) {
  Do(shop.clerk, "correct_length", {bar, LengthNm() - Mm(4), Mm(1), "tape"});
  Behind(
      R"(update book.happening set row_id = row_id + 1 where happening_id = (select max(happening_id) from book.happening where tbl = 'piece');
    with h as (update book.happening n set hash = guard.happening_hash(b.hash, n) from book.happening b
      where n.happening_id = (select max(happening_id) from book.happening where tbl = 'piece') and b.chain = n.chain and b.chain_id = n.chain_id and b.seq = n.seq - 1 returning n.*)
    update book.chain_end e set hash = h.hash from h where e.chain = h.chain and e.chain_id = h.chain_id)");
  EXPECT_EQ(Failing(), Words{"replay equals the present state"});
}

}  // namespace
}  // namespace heatkeep
