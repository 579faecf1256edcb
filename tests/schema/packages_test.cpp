// What stands against a certificate package, said by the book itself. Scenario 7: a hold during a cut blocks every package of the
// heat. Common practice of the trade, no source.
#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

struct Packages : ShopTest {
  Json Of(const Json& asked) { return Answer(shop.quality, "api.package_of($1)", {asked.dump()}); }
  std::vector<std::string> Against(const Json& asked) { return Of(asked).at("against").get<std::vector<std::string>>(); }
  Json Body(Json asked) {
    asked["read"] = shop.quality.Execute("select encode(sha256(convert_to(api.package_of($1)::text, 'UTF8')), 'hex') as w", {asked.dump()})
                        .Only()
                        .Text("w");
    asked.update({{"sha256", std::string(64, 'b')}, {"pages", 4}});
    return asked;
  }
  void Attach(const std::string& heat) {
    const std::string number = shop.Word("select number as w from api.documents where heat = $1", {heat});
    DoBody(shop.quality, "attach_file", {{"issuer", "Vandrek"}, {"number", number}, {"file_base64", SmallPng()}});
  }
};

// M2208: bar 1 gives 14 x 290 to Pallant, its drop 1 900 gives 7 x 240 to Drewe; both have left. Then quality holds the heat.
TEST_F(Packages, OfAHeldHeatAreBlockedForEveryCustomerUntilTheHoldIsLifted) {
  const std::string bar = shop.ReceiveCertified({}).at(0);
  Attach("M2208");
  shop.AddLine({});
  const std::string drop = shop.Record(bar, {Trim(), Good(14, 290)}, DropLeft(1900)).at("drop_tag");
  shop.AddLine({.length = 240, .quantity = 7, .order = "O2", .customer = "Drewe"});
  shop.Record(drop, {Good(7, 240, "10", "O2")}, DropLeft(206));
  shop.Ship("D1", 14);
  DoBody(shop.planner, "ship", {{"note", "D2"}, {"customer", "Drewe"}, {"lines", {{{"order", "O2"}, {"line", "10"}, {"count", 7}}}}});
  const Json before = Body({{"order", "O2"}});
  const std::int64_t hold = shop.Hold("M2208").at("hold_id");
  const std::string why = shop.Word("select guard.hold_words(piece_id) as w from book.piece where tag = $1", {bar});
  EXPECT_EQ(Against({{"order", "O1"}}), std::vector<std::string>{"order O1 line 10, 14 pieces of heat M2208 cut from " + bar + ": " + why});
  EXPECT_EQ(Against({{"note", "D2"}}), std::vector<std::string>{"order O2 line 10, 7 pieces of heat M2208 cut from " + drop + ": " + why});
  // read before the hold, kept after it: refused too
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "keep_package", before); }), "HK040");
  EXPECT_EQ(shop.Number("select count(*) as n from book.certificate_package"), 0);
  Do(shop.quality, "lift_hold", {hold, "second analysis"});
  EXPECT_EQ(Against({{"order", "O1"}}), std::vector<std::string>{});
  const Json kept = DoBody(shop.quality, "keep_package", Body({{"order", "O2"}}));
  EXPECT_EQ(kept.at("kept_before"), false);
  EXPECT_EQ(
      shop.Word(
          "select made_by || ' ' || order_no || ' ' || customer || ' ' || heats || ' ' || documents as w from api.certificate_packages"),
      "test_quality O2 Drewe M2208 3.1 no. " + shop.Word("select number as w from api.documents limit 1") + " of Vandrek, version 1");
  EXPECT_EQ(shop.Number("select count(*) as n from api.documents_passed where note = 'D2'"), 1);
}

TEST_F(Packages, AreRefusedWhereThePapersAreAwaitedLimitedOrReplacedByAVersionNotAccepted) {
  const auto tags = shop.Receive({.count = 2});
  Do(shop.quality, "allow_at_risk", {"Vandrek", "M2208", "cut at risk"});
  shop.AddLine({.papers = "none"});
  shop.Record(tags[0], {Trim(), Good(14, 290)}, ScrapLeft());
  EXPECT_EQ(Against({{"order", "O1"}}),
            (std::vector<std::string>{"order O1 line 10, 14 pieces of heat M2208 cut from " + tags[0] + ": its papers are awaited",
                                      "no inspection document of this metal is filed and accepted"}));
  shop.Certify("M2208");
  Attach("M2208");
  EXPECT_EQ(Against({{"order", "O1"}}), std::vector<std::string>{});
  shop.AddLine({.quantity = 14, .order = "O2"});
  shop.Record(tags[1], {Trim(), Good(14, 290, "10", "O2")}, DropLeft(1900));
  Do(shop.clerk, "quarantine", {tags[1], "rust"});
  Do(shop.quality, "release", {tags[1], "cleaned", "3.1"});
  const auto limited = Against({{"order", "O2"}});
  ASSERT_EQ(limited.size(), 1U);
  EXPECT_NE(limited[0].find("its use is limited: "), std::string::npos) << limited[0];
  EXPECT_EQ(
      shop.Raw(
          "insert into book.document (issuer_id, number, type, issued_on, version, replaces_id) select issuer_id, number, type, '2026-03-01', 2, document_id from book.document where version = 1 on conflict do nothing",
          "file_papers"),
      "");
  const auto newer = Against({{"order", "O1"}});
  ASSERT_EQ(newer.size(), 1U);
  EXPECT_NE(newer[0].find("has version 2 of 2026-03-01, which is not accepted yet"), std::string::npos) << newer[0];
}

TEST_F(Packages, AFileIsAttachedOnceAndByQuality) {
  shop.ReceiveCertified({});
  const std::string number = shop.Word("select number as w from api.documents");
  Json body{{"issuer", "Vandrek"}, {"number", number}, {"file_base64", SmallPng()}};
  for (Connection* who : {&shop.clerk, &shop.planner, &shop.saw, &shop.owner})
    EXPECT_EQ(Code([&] { DoBody(*who, "attach_file", body); }), "42501");
  DoBody(shop.quality, "attach_file", body);
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "attach_file", body); }), "HK041");
  body["number"] = "no such";
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "attach_file", body); }), "HK026");
  body["file_base64"] = "***";
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "attach_file", body); }), "HK026");
}

TEST_F(Packages, WhatChangedBetweenReadingAndKeepingIsReadAgain_HK409) {
  const std::string bar = shop.ReceiveCertified({}).at(0);
  shop.AddLine({});
  shop.Record(bar, {Trim(), Good(14, 290)}, ScrapLeft());
  const Json read = Body({{"order", "O1"}, {"without_files", true}});
  shop.Ship("D1", 14);
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "keep_package", read); }), "HK409");
  EXPECT_EQ(Code([&] { Of({{"order", "O9"}}); }), "HK026");
  EXPECT_EQ(Code([&] { Of(Json::object()); }), "HK026");
  EXPECT_EQ(Code([&] { Of({{"order", "O1"}, {"rule", "ISO 10474"}}); }), "HK026");
}

}  // namespace
}  // namespace heatkeep
