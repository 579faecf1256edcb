// What may leave with a delivery note: metal that serves the line, no more of it than was asked for or agreed to. Common practice of the
// trade, no source.
#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

struct Shipping : ShopTest {};

TEST_F(Shipping, MetalThatMayNotServeTheLineStaysWhateverTheReasonIs_HK042) {
  for (const auto& [order, bars, why] : {std::tuple{"G", Bars{.heat = "K1", .grade = "C45E"}, "another grade"},
                                         {"S", Bars{.heat = "K2", .round = 85}, "another section"},
                                         {"C", Bars{.heat = "K3", .condition = "+N"}, "another condition"},
                                         {"O", Bars{.heat = "K4", .owner = "Ister"}, "another owner"},
                                         {"P", Bars{.heat = "K5"}, "its papers are weaker than asked for (none, not 3.1)"}}) {
    shop.AddLine({.order = order, .condition = "+QT"});
    Bars without = bars;
    without.papers_state = "none";
    const std::string bar = shop.Receive(without).at(0);
    shop.Record(bar, {Trim(), Good(2, 290, "10", order)});
    const DbError refused = Refusal([&] { shop.Ship("D1", 2, "10", order); });
    EXPECT_EQ(refused.sqlstate, "HK042") << why;
    EXPECT_EQ(refused.message,
              "not shipped: order " + std::string(order) + " line 10, 2 pieces of heat " + bars.heat + " cut from " + bar + ": " + why);
    EXPECT_EQ(shop.Word("select string_agg(distinct words, '; ') as w from api.stands_against where order_no = $1", {order}), why);
  }
  EXPECT_EQ(shop.Number("select count(*) as n from book.shipment"), 0);
}

TEST_F(Shipping, ARowOfMetalThatMayNotServeItsLineIsNotMarkedShippedBehindTheDeedsBack_HK040) {
  shop.AddLine({});
  const std::string bar = shop.Receive({.heat = "K1", .grade = "C45E", .papers_state = "none"}).at(0);
  shop.Record(bar, {Trim(), Good(2, 290)});
  EXPECT_EQ(
      shop.Raw(
          "insert into book.shipment (note, customer_id, shipped_at, shipped_by) select 'D1', party_id, now(), 'x' from book.party where name = 'Pallant';"
          "insert into book.shipment_line (shipment_id, cut_line_id) select s.shipment_id, c.cut_line_id from book.shipment s, book.cut_line c;"
          "update book.stroke set shipment_line_id = (select shipment_line_id from book.shipment_line) where class = 'good'",
          "ship"),
      "HK040");
}

TEST_F(Shipping, ACustomersMetalIsCutForNobodyElse_HK042) {
  const auto add = [&](const char* customer) { return Refusal([&] { shop.AddLine({.customer = customer, .owner = "Ister"}); }); };
  for (const char* other : {"Pallant", ""}) {
    const DbError refused = add(other);
    EXPECT_EQ(refused.sqlstate, "HK042") << other;
    EXPECT_EQ(refused.message, "order O1 line 10: metal of Ister is cut for nobody else");
    EXPECT_NE(refused.hint.find("bought over"), std::string::npos);
  }
  EXPECT_EQ(add("Ister").sqlstate, "");
}

TEST_F(Shipping, ALineTakenOnEarlierForAnotherCustomerDoesNotLetMetalOfItsOwnerGo_HK042) {
  shop.AddLine({.customer = "Ister", .papers = "none", .owner = "Ister"});
  const std::string bar = shop.Receive({.papers_state = "none", .owner = "Ister"}).at(0);
  shop.Record(bar, {Trim(), Good(2, 290)});
  ASSERT_EQ(shop.Raw("update book.cut_line set customer_id = (select party_id from book.party where name = 'Pallant')"), "");
  const DbError refused = Refusal([&] { shop.Ship("D1", 2); });
  EXPECT_EQ(refused.sqlstate, "HK042");
  EXPECT_NE(refused.message.find("cut from " + bar + ": it belongs to Ister and serves nobody else"), std::string::npos) << refused.message;
}

TEST_F(Shipping, NoMoreLeavesThanTheLineAsksForOverAllItsNotes_HK042) {
  const std::string bar = shop.ReceiveCertified({}).at(0);
  shop.AddLine({.quantity = 4});
  EXPECT_EQ(shop.Record(bar, {Trim(), Good(6, 290)}).at("conflicts"), Json::array({"order O1 line 10: 4 ordered, 6 cut"}));
  const DbError five = Refusal([&] { shop.Ship("D1", 5); });
  EXPECT_EQ(five.sqlstate, "HK042");
  EXPECT_EQ(five.message, "order O1 line 10 asks for 4 pieces; 0 have left, and 5 more would be too many");
  for (const char* way : {"heatkeep saw to-stock", "heatkeep saw change"}) EXPECT_NE(five.hint.find(way), std::string::npos) << way;
  shop.Ship("D1", 3);
  EXPECT_EQ(Code([&] { shop.Ship("D2", 2); }), "HK042");
  const Json one{{"order", "O1"}, {"line", "10"}, {"count", 1}};
  EXPECT_EQ(Code([&] { DoBody(shop.planner, "ship", {{"note", "D2"}, {"customer", "Pallant"}, {"lines", {one, one}}}); }), "HK042");
  DoBody(shop.planner, "change_order", {{"order", "O1"}, {"line", "10"}, {"quantity", 5}, {"place", "B1-2"}, {"reason", "mail"}});
  EXPECT_EQ(Code([&] { shop.Ship("D2", 2); }), "");
  EXPECT_EQ(shop.Balance("M2208", "shipped"), Mm(5 * 290));
}

TEST_F(Shipping, NoMoreIsReservedPulledCutOrShippedThanTheCustomerTookInWriting_HK042) {
  shop.AddLine({.quantity = 12});
  const auto weak = shop.Receive({.heat = "W1", .count = 2, .papers_state = "none"});
  const std::string right = shop.ReceiveCertified({}).at(0);
  const Json two{{"order", "O1"},           {"line", "10"},      {"papers", "none"}, {"count", 2},
                 {"agreed_by", "Ms Alder"}, {"writing", "mail"}, {"cost_cents", 0}};
  Do(shop.quality, "sign_consent", {DoBody(shop.planner, "record_consent", two).at("consent").get<int>()});
  const std::string words = "the customer takes 2 pieces with papers none";
  const auto reserve = [&](const std::string& tag, int count) {
    return Refusal([&] { DoBody(shop.planner, "reserve", {{"tag", tag}, {"order", "O1"}, {"line", "10"}, {"count", count}}); });
  };
  const auto pull = [&](const std::string& tag, int count) {
    return Do(shop.saw, "pull_for_line", {Json({{"tag", tag}, {"saw", "1"}, {"order", "O1"}, {"line", "10"}, {"count", count}}).dump()})
        .value("words", "");
  };
  EXPECT_EQ(reserve(weak[0], 3).message, weak[0] + " may not serve order O1 line 10: " + words);
  EXPECT_EQ(reserve(weak[0], 2).sqlstate, "");
  EXPECT_EQ(reserve(weak[1], 1).sqlstate, "HK042");  // both are promised
  EXPECT_EQ(pull(weak[1], 1), weak[1] + " may not serve it: " + words);
  EXPECT_EQ(pull(weak[0], 3), weak[0] + " may not serve it: " + words);
  EXPECT_EQ(pull(weak[0], 2), "");
  EXPECT_EQ(reserve(weak[1], 1).sqlstate, "HK042");  // both are at the saw
  EXPECT_EQ(Code([&] { shop.Promise(weak[1], {{.count = 1}}); }), "HK042");
  EXPECT_EQ(shop.Record(weak[0], {Trim(), Good(2, 290)}).at("conflicts"), Json::array());
  EXPECT_EQ(shop.Record(weak[0], Good(4, 290)).at("conflicts").at(0), "order O1 line 10 from " + weak[0] + ": " + words);
  EXPECT_EQ(reserve(weak[1], 1).sqlstate, "HK042");
  EXPECT_EQ(reserve(right, 6).sqlstate, "");
  shop.Record(right, {Trim(), Good(6, 290)});
  const auto ship = [&](const std::string& note, int count, const char* heat) {
    const Json line{{"order", "O1"}, {"line", "10"}, {"count", count}, {"heats", {heat}}};
    return Refusal([&] { DoBody(shop.planner, "ship", {{"note", note}, {"customer", "Pallant"}, {"lines", Json::array({line})}}); });
  };
  EXPECT_EQ(ship("D1", 3, "W1").message, "order O1 line 10: " + words);
  EXPECT_EQ(ship("D1", 1, "W1").sqlstate + ship("D2", 6, "M2208").sqlstate, "");
  EXPECT_EQ(ship("D3", 2, "W1").sqlstate, "HK042");
  EXPECT_EQ(ship("D3", 1, "W1").sqlstate, "");
  EXPECT_EQ(ship("D4", 1, "W1").sqlstate, "HK042");
}

TEST_F(Shipping, TheNumberTheCustomerTookHoldsForAnotherGradeAndSectionToo_HK042) {
  shop.AddLine({.quantity = 12, .papers = "none"});
  const std::string grade = shop.Receive({.heat = "G1", .grade = "C45E", .papers_state = "none"}).at(0),
                    section = shop.Receive({.heat = "S1", .papers_state = "none", .round = 85}).at(0);
  const Json two{{"order", "O1"}, {"line", "10"}, {"count", 2}, {"agreed_by", "Ms Alder"}, {"writing", "mail"}, {"cost_cents", 0}};
  Json other = two, larger = two;
  other["grade"] = "C45E";
  larger["section"] = Round(85);
  Do(shop.quality, "sign_consent", {DoBody(shop.planner, "record_consent", other).at("consent").get<int>()});
  DoBody(shop.planner, "record_consent", larger);
  for (const auto& [tag, what] : {std::pair{grade, "C45E"}, {section, "round 85"}}) {
    const auto reserve = [&, tag = tag](int count) {
      return Refusal([&] { DoBody(shop.planner, "reserve", {{"tag", tag}, {"order", "O1"}, {"line", "10"}, {"count", count}}); });
    };
    EXPECT_EQ(reserve(3).message, tag + " may not serve order O1 line 10: the customer takes 2 pieces of " + what);
    EXPECT_EQ(reserve(2).sqlstate, "");
  }
}

}  // namespace
}  // namespace heatkeep
