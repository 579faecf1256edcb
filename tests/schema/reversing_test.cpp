// A receipt that was booked wrongly as a whole, and which deed puts what right. Common practice of the trade, no source.
#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

struct Reversing : ShopTest {
  Json Reverse(Connection& who, const std::string& note = "N1") {
    return DoBody(who, "reverse_receipt", {{"note", note}, {"supplier", "Vandrek"}, {"reason", "the slip of another lorry"}});
  }
};

TEST_F(Reversing, AllPiecesLeaveWithTheReasonTheHappeningsStayAndTheNoteMayBeBookedAgain) {
  const std::string tag = shop.Deliver("N1", {{.heat = "K1", .count = 2}, {.heat = "K2"}})["lines"][0]["tags"][0];
  EXPECT_EQ(Reverse(shop.quality).at("pieces"), 3);
  EXPECT_EQ(shop.Number("select count(*) as n from api.stock_on_hand"), 0);
  EXPECT_EQ(shop.Balance("K1", "reversed"), Mm(12000));
  EXPECT_EQ(shop.Balance("K1", "received"), Mm(12000));
  EXPECT_EQ(shop.Number("select count(*) as n from api.piece_history where tag = $1 and deed = 'receive_delivery'", {tag}),
            2);  // the piece and its label
  EXPECT_EQ(shop.Word("select distinct reversed_by || ': ' || reversed_words as w from api.receipts"),
            "test_quality: the slip of another lorry");
  EXPECT_EQ(shop.Number("select count(*) as n from api.claims"), 0);
  EXPECT_EQ(Code([&] { Reverse(shop.quality); }), "HK026");
  shop.Deliver("N1", {{.heat = "K1", .count = 1}});
  EXPECT_EQ(shop.Balance("K1", "on hand"), Mm(6000));
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {tag, "GATE"}); }), "HK043");
}

TEST_F(Reversing, PapersAreAwaitedOfNothingThatWasNeverHere) {
  shop.Deliver("N1", {{.heat = "K1"}, {.heat = "K2"}});
  EXPECT_EQ(shop.Word("select string_agg(heat || ' ' || pieces, ', ' order by heat) as w from api.papers_awaited"), "K1 1, K2 1");
  Reverse(shop.quality);
  EXPECT_EQ(shop.Number("select count(*) as n from api.papers_awaited"), 0);
  shop.Deliver("N2", {{.heat = "K1"}});
  EXPECT_EQ(shop.Word("select heat || ' ' || pieces || ' ' || receipts as w from api.papers_awaited"), "K1 1 note N2 of Vandrek");
}

TEST_F(Reversing, IsQualitysOnly_42501) {
  shop.Deliver("N1", {{}});
  for (Connection* who : {&shop.clerk, &shop.planner, &shop.saw, &shop.owner}) EXPECT_EQ(Code([&] { Reverse(*who); }), "42501");
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "reverse_receipt", {{"note", "N1"}, {"supplier", "Vandrek"}}); }), "HK026") << "no reason";
}

TEST_F(Reversing, WhatHasGoneOnIsNamedWithWhatToDoInstead_HK043) {
  const Json tags = shop.Deliver("N1", {{.count = 4}})["lines"][0]["tags"];
  shop.Certify("M2208");
  shop.AddLine({});
  shop.Record(tags[0], {Trim(), Good(14, 290)}, DropLeft(1900));
  DoBody(shop.planner, "sell", {{"tags", {tags[1]}}, {"order", "X1"}, {"customer", "Pallant"}, {"note", "L1"}});
  Do(shop.clerk, "correct_length", {tags[2].get<std::string>(), Mm(5998), 0, "measured again"});
  const std::string before = shop.Word("select digest as w from api.book_digest()");
  const DbError no = Refusal([&] { Reverse(shop.quality); });
  EXPECT_EQ(no.sqlstate, "HK043");
  const auto tag = [&](int i) { return tags[static_cast<std::size_t>(i)].get<std::string>(); };
  EXPECT_EQ(std::string(no.what()).find("receipt N1 is not reversed as a whole: " + tag(0) + " has been cut; " + tag(1) + " is shipped; " +
                                        tag(2) + " was measured otherwise since") == std::string::npos,
            false)
      << no.what();
  EXPECT_NE(no.hint.find("heatkeep correct receipt"), std::string::npos);
  EXPECT_EQ(shop.Word("select digest as w from api.book_digest()"), before) << "nothing is half done";
}

TEST_F(Reversing, HeldOrPromisedMetalIsNotReversed_HK043) {
  const std::string tag = shop.Deliver("N1", {{}})["lines"][0]["tags"][0];
  shop.Certify("M2208");
  shop.AddLine({});
  shop.Promise(tag, {{.count = 1}});
  EXPECT_EQ(Code([&] { Reverse(shop.quality); }), "HK043");
  shop.Hold("M2208");
  EXPECT_EQ(Code([&] { Reverse(shop.quality); }), "HK043");
}

TEST_F(Reversing, AnOpeningBalanceIsBroughtInAgainAfterwards) {
  const Json opening{{"name", "start"},
                     {"lines", Json::array({LineJson({.heat = "", .read_from = "none", .kind = "drop", .old_tag = "I3"}, "1")})}};
  DoBody(shop.clerk, "open_balance", opening);
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "open_balance", opening); }), "HK041");
  DoBody(shop.quality, "reverse_receipt", {{"note", "start"}, {"reason", "the list of another year"}});
  DoBody(shop.clerk, "open_balance", opening);
  EXPECT_EQ(shop.Number("select count(*) as n from api.stock_on_hand where old_tag = 'I3'"), 1);
}

TEST_F(Reversing, TheHistorySaysWhichDeedPutsAHappeningRightOrWhyNoneDoes) {
  const std::string tag = shop.ReceiveCertified({}).at(0);
  Do(shop.saw, "quarantine", {tag, "a seam"});
  EXPECT_EQ(shop.Word("select put_right as w from api.piece_history where tag = $1 and deed = 'quarantine'", {tag}),
            "release, with evidence");
  Do(shop.quality, "release", {tag, "ground out"});
  shop.AddLine({});
  shop.Record(tag, {Trim(), Good(14, 290)}, DropLeft(1900));
  EXPECT_TRUE(shop.Word("select distinct put_right as w from api.piece_history where tag = $1 and deed = 'record_cut'", {tag})
                  .starts_with("not_cut, where the last strokes were not made; metal that is cut stays cut"));
}

}  // namespace
}  // namespace heatkeep
