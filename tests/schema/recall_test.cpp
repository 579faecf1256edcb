// A recall finds everything of a heat wherever it is; a preview says what a hold would stop. Both change nothing.
#include "client/gateway/records.h"
#include "tests/schema/every_stock_deed.h"
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct Recall : ShopTest {
  void SetUp() override { tags = shop.ReceiveCertified({.count = 6}); }
  // "on rack B1-1 3", one a whereabouts and place, of a heat.
  std::vector<std::string> Where(const std::string& heat = "M2208") {
    std::vector<std::string> all;
    for (const Row row : shop.quality.Execute(
             "select whereabouts || coalesce(' ' || place, '') || coalesce(' ' || customer || ' ' || note, '') || ' ' || sum(count) as w"
             " from api.recall_list('heat', $1) group by whereabouts, place, customer, note order by 1",
             {heat}))
      all.push_back(row.Text("w"));
    return all;
  }
  Json Preview(const std::string& scope, const std::string& ref) { return PreviewHold(shop.quality, scope, ref); }
  using Lines = std::vector<std::string>;
  std::vector<std::string> tags;
};

TEST_F(Recall, EveryPlaceWhereMetalCanBeIsListed) {
  shop.AddLine({.quantity = 40});
  DoBody(shop.owner, "define_bins", {{"bins", {{{"bin", "B"}, {"group", "steel"}}}}});
  Json reject = Fault("reject", 280, "short");
  shop.Record(tags[0], {Trim(), Good(10, 290), reject}, DropLeft(2786));
  shop.Ship("D1", 4);
  shop.Fetch(tags[1], {{.count = 2}});
  DoBody(shop.planner, "send_outside", {{"tag", tags[2]}, {"party", "Hardening works"}, {"process", "heat treatment"}, {"note", "H1"}});
  DoBody(shop.planner, "sell",
         {{"tags", {tags[3]}}, {"order", "X1"}, {"customer", "Drewe"}, {"note", "L1"}, {"papers", "3.1"}, {"papers_sent", true}});
  DoBody(shop.saw, "scrap_piece", {{"tag", tags[4]}, {"bin", "B"}, {"reason", "bent"}});
  const std::string other =
      DoBody(shop.quality, "downgrade", {{"tag", tags[5]}, {"to", "unknown"}, {"reason", "the mark was cut off"}}).at("new_tag");
  EXPECT_EQ(Where(),
            (Lines{"at saw SAW-1 1", "on rack B1-1 2", "on site SAW-1 6", "outside Hardening works 1", "reject 1", "scrap B 1",
                   "shipped Pallant D1 4", "sold Drewe L1 1", "trim 1"}));
  EXPECT_EQ(shop.Number("select count(*) as n from api.recall_list('heat', 'M2208') where tag = $1", {other}), 1);
  // by length: all of what was received is listed, but for kerf
  EXPECT_EQ(
      shop.Number(
          "select sum(length_nm)::bigint + (select sum(kerf_nm)::bigint from book.stroke) as n from api.recall_list('heat', 'M2208')"),
      Mm(36000));
}

TEST_F(Recall, AHoldOfAHeatStopsMetalThatWentOnWithoutIt_HK040) {
  shop.AddLine({.quantity = 2, .papers = "none", .condition = "+QT"});
  const std::string now =
      DoBody(shop.quality, "downgrade", {{"tag", tags[0]}, {"to", "grade only"}, {"reason", "the mark was cut off"}}).at("new_tag");
  shop.Hold("M2208");
  const Json promised = shop.Promise(now, {{.count = 1}});
  ASSERT_TRUE(promised.contains("taken")) << promised;
  EXPECT_NE(promised["taken"][0]["why"].get<std::string>().find("letter of the mill"), std::string::npos) << promised;
  EXPECT_EQ(shop.Number("select count(*) as n from api.recall_list('heat', 'M2208') where not held"), 0);
}

TEST_F(Recall, APreviewSaysWhatAHoldStopsAndChangesNothing) {
  shop.AddLine({.quantity = 40});
  shop.AddLine({.line = "20", .quantity = 5, .order = "O2", .customer = "Drewe"});
  shop.Record(tags[0], {Trim(), Good(6, 290), Good(5, 290, "20", "O2")}, DropLeft(2776));
  shop.Ship("D1", 4);
  DoBody(shop.planner, "ship",
         {{"note", "D2"}, {"customer", "Drewe"}, {"lines", Json::array({{{"order", "O2"}, {"line", "20"}, {"count", 5}}})}});
  shop.Promise(tags[1], {{.count = 10}}, "2");
  const std::string before = shop.Word("select digest as w from api.book_digest()");
  const Json preview = Preview("heat", "M2208");
  EXPECT_EQ(preview.at("words"),
            "5 bars, 1 drop, 10 pieces still to cut at saw 2, 2 cut pieces that wait to be shipped, 2 customers have 9 pieces");
  EXPECT_EQ(preview.at("promised"), 1);
  EXPECT_EQ(preview.at("held_already"), 0);
  EXPECT_EQ(preview.at("shipped").at(0), (Json{{"customer", "Drewe"}, {"pieces", 5}, {"notes", {"D2"}}}));
  EXPECT_EQ(Preview("piece", tags[5]).at("words"), "1 bar");
  EXPECT_EQ(shop.Word("select digest as w from api.book_digest()"), before);
  EXPECT_EQ(shop.Number("select count(*) as n from book.hold"), 0);
  // what it says is what the hold does
  EXPECT_EQ(shop.Hold("M2208").at("pieces"), 6);
  EXPECT_EQ(Preview("heat", "M2208").at("held_already"), 6);
  EXPECT_EQ(Preview("heat", "M2208").at("promised"), 0);
}

TEST_F(Recall, UnknownNamesAreRefusedAsAHoldRefusesThem_HK026) {
  EXPECT_EQ(Code([&] { Preview("heat", "M9"); }), "HK026");
  EXPECT_EQ(Code([&] { ReadRecall(shop.quality, "heat", "M9"); }), "HK026");
  EXPECT_EQ(Code([&] { ReadRecall(shop.quality, "colour", "red"); }), "HK026");
  EXPECT_EQ(Code([&] { ReadRecall(shop.quality, "piece", "A9"); }), "HK024");
  EXPECT_EQ(Code([&] { ReadRecall(shop.clerk, "heat", "M2208"); }), "42501");
}

TEST_F(Recall, NamesWithEveryQuoteGoThroughUnharmed) {
  const std::string hostile = "=1+1' \"; drop table book.piece; -- $$ \\ <b>";
  shop.ReceiveCertified({.heat = hostile});
  EXPECT_EQ(Where(hostile), (Lines{"on rack B1-1 1"}));
  EXPECT_EQ(Preview("heat", hostile).at("words"), "1 bar");
  const RecordProof proof = ProveRecord(shop.quality, {"heat", hostile, ""}, std::string(64, 'a'));
  KeepRecord(shop.quality, {"heat", hostile, ""}, proof);
  EXPECT_EQ(CheckRecord(shop.quality, proof.digest).at("subject"), hostile);
}

}  // namespace
}  // namespace heatkeep
