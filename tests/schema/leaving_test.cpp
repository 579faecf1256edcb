// Metal that leaves whole and comes back, metal of others, outside work, labels and pictures, rules from a date. Common
// practice of the trade, no source; the figures were worked out by hand.
#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

struct Leaving : ShopTest {
  void SetUp() override { AddVanAndRack(shop); }
  Json Sale(const std::string& tag, const std::string& note, const std::string& papers = "3.1", bool sent = true) {
    return {{"tags", {tag}}, {"order", "X1"}, {"customer", "Pallant"}, {"note", note}, {"papers", papers}, {"papers_sent", sent}};
  }
  std::string SaleCode(const Json& sale) {
    return Code([&] { DoBody(shop.planner, "sell", sale); });
  }
  std::string StateOf(const std::string& tag) { return shop.Word("select state::text as w from book.piece where tag = $1", {tag}); }
};

TEST_F(Leaving, ABarIsSoldAsWhatItIsAndComesBackToQuarantine) {
  const std::string bar = shop.ReceiveCertified({}).at(0), weak = shop.Receive({.heat = "W1"}).at(0),
                    awaited = shop.Receive({.heat = "W2"}).at(0);
  shop.Certify("W1", {}, "2.2");
  EXPECT_EQ(SaleCode(Sale(weak, "L1")), "HK042");
  EXPECT_EQ(SaleCode(Sale(awaited, "L1", "")), "HK040");
  EXPECT_EQ(SaleCode(Sale(bar, "L1", "3.1", false)), "HK026");
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "sell", Sale(bar, "L1")); }), "42501");
  const Json sold = DoBody(shop.planner, "sell", Sale(bar, "L1"));
  EXPECT_EQ(sold.at("sold").at(0).at("mass_g"), 236750);
  EXPECT_EQ(SaleCode(Sale(weak, "L1", "2.2")), "HK041");
  EXPECT_EQ(shop.Balance("M2208", "sold"), Mm(6000));
  EXPECT_EQ(shop.Balance("M2208", "on hand"), 0);
  EXPECT_EQ(shop.quality.Execute("select count(*) as n from api.trace('heat', 'M2208') where where_now = 'sold to Pallant, note L1'")
                .Only()
                .Int("n"),
            1);
  Json back{{"customer", "Pallant"}, {"note", "B1"},   {"reason", "bought twice"}, {"identity", "our tag and stencil"}, {"tag", bar},
            {"length_nm", Mm(5990)}, {"place", "QUAR"}};
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "customer_return", back); }), "HK026");  // who had it?
  back["held_by"] = "Pallant's store";
  EXPECT_EQ(Code([&] { DoBody(shop.saw, "customer_return", back); }), "42501");
  DoBody(shop.clerk, "customer_return", back);
  EXPECT_EQ(shop.Word("select blocked as w from api.stock_on_hand where tag = $1", {bar}),
            "quarantined: returned by Pallant, note B1: bought twice");
  EXPECT_EQ(shop.Balance("M2208", "sold"), 0);
  EXPECT_EQ(shop.Balance("M2208", "unexplained"), Mm(10));
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "customer_return", back); }), "HK043");
}

TEST_F(Leaving, AnOpenCutIsFinishedBeforeItsPieceGoesAnywhere_HK043) {
  const std::string bar = shop.ReceiveCertified({}).at(0);
  shop.AddLine({.quantity = 4});
  Do(shop.quality, "quarantine", {bar, "a doubt"});
  shop.Record(bar, {Trim(), Good(1, 290)});
  Do(shop.quality, "release", {bar, "looked at"});
  const DbError no = Refusal([&] { DoBody(shop.planner, "sell", Sale(bar, "L1")); });
  EXPECT_EQ(no.sqlstate, "HK043");
  EXPECT_EQ(no.message, bar + " cannot be sold: a cut of it was begun at saw 1 and is open");
  EXPECT_EQ(no.hint, "finish the cut first, and say what is left of it (heatkeep saw cut)");
  const Json out{{"tag", bar}, {"party", "Hardening"}, {"process", "hardening"}, {"note", "H1"}};
  EXPECT_EQ(Code([&] { DoBody(shop.planner, "send_outside", out); }), "HK043");
  const std::string rest = shop.Record(bar, Json::array(), DropLeft(5696)).at("drop_tag");
  EXPECT_EQ(SaleCode(Sale(rest, "L1")), "");
}

TEST_F(Leaving, WhatIsWrittenOffInTheMiddleOfACutEndsTheCutAndMayTurnUpAgain) {
  const std::string bar = shop.ReceiveCertified({}).at(0);
  shop.AddLine({.quantity = 4});
  Do(shop.quality, "quarantine", {bar, "a doubt"});
  shop.Record(bar, {Trim(), Good(1, 290)});
  Do(shop.saw, "report_missing", {bar, "looked for in every bay"});
  DoBody(shop.owner, "write_off", {{"tag", bar}, {"reason", "gone"}});
  EXPECT_EQ(shop.Balance("M2208", "unexplained"), Mm(5696));
  EXPECT_EQ(shop.Number("select count(*) as n from book.cut where not closed"), 0);
  DoBody(shop.clerk, "found_again", {{"tag", bar}, {"read", "M2208"}, {"length_nm", Mm(5690)}, {"place", "B1-1"}});
  EXPECT_EQ(shop.LengthOf(shop.Record(bar, Good(1, 290), DropLeft(5398)).at("drop_tag")), Mm(5398));
  EXPECT_EQ(shop.Balance("M2208", "unexplained"), Mm(6));
}

TEST_F(Leaving, CutPiecesThatComeBackWaitForQualityAndMayShipAgain) {
  const std::string bar = shop.ReceiveCertified({}).at(0);
  shop.AddLine({.quantity = 4});
  shop.Record(bar, {Trim(), Good(4, 290)}, DropLeft(4820));
  shop.Ship("D1", 4);
  Json back{{"customer", "Pallant"}, {"note", "B2"},  {"reason", "too many"}, {"identity", "marked M2208"},
            {"held_by", "Pallant"},  {"order", "O1"}, {"line", "10"},         {"count", 5}};
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "customer_return", back); }), "HK034");
  back["count"] = 2;
  DoBody(shop.clerk, "customer_return", back);
  EXPECT_EQ(shop.Balance("M2208", "shipped"), Mm(580));
  EXPECT_EQ(shop.Balance("M2208", "on site"), Mm(580));
  EXPECT_EQ(Code([&] { shop.Ship("D2", 2); }), "HK040");
  Do(shop.quality, "close_conflict", {shop.Number("select conflict_id as n from api.conflicts"), "looked at, as they left", true});
  EXPECT_EQ(Code([&] { shop.Ship("D2", 2); }), "");
  EXPECT_EQ(shop.Number("select pieces as n from api.customer_returns"), 2);
}

TEST_F(Leaving, CutPiecesThatACustomerHadAreStoppedInTrueWordsEverywhere) {
  const std::string bar = shop.ReceiveCertified({}).at(0);
  shop.AddLine({.quantity = 4});
  shop.Record(bar, {Trim(), Good(4, 290)});
  shop.Ship("D1", 4);
  DoBody(shop.clerk, "customer_return",
         {{"customer", "Pallant"},
          {"note", "B2"},
          {"reason", "too many"},
          {"identity", "marked M2208"},
          {"held_by", "Pallant"},
          {"order", "O1"},
          {"line", "10"},
          {"count", 2}});
  const std::string words = "returned by Pallant, note B2: too many";
  EXPECT_EQ(Refusal([&] { shop.Ship("D2", 2); }).message,
            "not shipped: order O1 line 10, 2 pieces of heat M2208 cut from " + bar + ": " + words);
  EXPECT_EQ(shop.Word("select words || ' ' || pieces as w from api.stands_against"), words + " 2");
  EXPECT_EQ(shop.Word("select blocked as w from api.cut_batches"), words);
  const std::int64_t hold = shop.Hold("M2208").at("hold_id");
  const std::string stock =
      DoBody(shop.saw, "pieces_to_stock", {{"order", "O1"}, {"line", "10"}, {"count", 1}, {"place", "B1-2"}, {"reason", "r"}})
          .at("tags")
          .at(0);
  EXPECT_EQ(shop.Word("select quarantine as w from book.piece where tag = $1", {stock}), words);
  shop.Record(bar, Good(1, 290));
  Do(shop.quality, "lift_hold", {hold, "seen"});
  EXPECT_EQ(shop.Word("select string_agg(words || ' ' || pieces, '; ' order by words) as w from api.stands_against"),
            "cut while it was held 1; " + words + " 1");
}

TEST_F(Leaving, AConflictFreesOnlyWhatItStoppedItself) {
  const std::string bar = shop.ReceiveCertified({}).at(0);
  shop.AddLine({.quantity = 8});
  shop.Record(bar, {Trim(), Good(4, 290)});
  shop.Ship("D1", 4);
  const auto back = [&](const char* note) {
    DoBody(shop.clerk, "customer_return",
           {{"customer", "Pallant"},
            {"note", note},
            {"reason", "too many"},
            {"identity", "marked"},
            {"held_by", "Pallant"},
            {"order", "O1"},
            {"line", "10"},
            {"count", 1}});
  };
  back("B1");
  back("B2");
  const std::int64_t hold = shop.Hold("M2208").at("hold_id");
  shop.Record(bar, Good(2, 290));
  Do(shop.quality, "lift_hold", {hold, "seen"});
  ASSERT_EQ(
      shop.Raw("insert into book.conflict (kind, piece_id, words) select 'good piece across a defect', piece_id, 'x' from book.piece"), "");
  const auto conflict = [&](const char* kind) {
    return shop.Number("select min(conflict_id) as n from book.conflict where closed_by is null and kind = $1", {kind});
  };
  const auto close = [&](std::int64_t which) { return Do(shop.quality, "close_conflict", {which, "looked at", true}); };
  const std::int64_t cut = conflict("cut while held"), first = conflict("returned by a customer");
  const Json defect = close(conflict("good piece across a defect"));
  EXPECT_EQ(defect.at("freed"), 0);
  EXPECT_EQ(defect.at("stopped_by"), Json::array({first, first + 1, cut}));
  const Json one = close(first);
  EXPECT_EQ(one.at("freed"), 0);  // the other return is open
  EXPECT_EQ(one.at("stopped_by"), Json::array({first + 1, cut}));
  EXPECT_EQ(close(cut).at("freed"), 2);
  EXPECT_EQ(Code([&] { shop.Ship("D2", 4); }), "HK040");
  const Json last = close(first + 1);
  EXPECT_EQ(last.at("freed"), 2);
  EXPECT_EQ(last.at("stopped_by"), Json::array());
  EXPECT_EQ(Code([&] { shop.Ship("D2", 4); }), "");
}

TEST_F(Leaving, PiecesOfTwoHeatsThatComeBackAreTwoConflictsEachOfItsOwnNumber) {
  shop.AddLine({.quantity = 3});
  std::vector<std::string> bars;
  for (const auto& [heat, count] : {std::pair{"K1", 2}, {"K2", 1}}) {
    bars.push_back(shop.ReceiveCertified({.heat = heat}).at(0));
    shop.Record(bars.back(), {Trim(), Good(count, 290)}, DropLeft(6000 - 12 - 292 * count));
  }
  DoBody(shop.planner, "ship",
         {{"note", "D1"}, {"customer", "Pallant"}, {"lines", {{{"order", "O1"}, {"line", "10"}, {"count", 3}, {"heats", {"K1", "K2"}}}}}});
  DoBody(shop.clerk, "customer_return",
         {{"customer", "Pallant"},
          {"note", "B3"},
          {"reason", "too many"},
          {"identity", "marked"},
          {"held_by", "Pallant"},
          {"order", "O1"},
          {"line", "10"},
          {"count", 3}});
  const std::string tail = "returned by Pallant, note B3: too many";
  EXPECT_EQ(shop.Word("select string_agg(words, '|' order by conflict_id) as w from api.conflicts"),
            "2 pieces of order O1 line 10, cut from " + bars[0] + " of heat K1: " + tail + "|1 piece of order O1 line 10, cut from " +
                bars[1] + " of heat K2: " + tail);
}

TEST_F(Leaving, ACustomersMetalIsWorthNothingToUsAndLeavesOrBecomesOursOnlyInWriting) {
  Do(shop.owner, "set_rules", {R"({"prices": [{"grade": "42CrMo4", "cents_per_tonne": 160000, "scrap_cents_per_tonne": 25000}]})"});
  Json line = LineJson({.count = 3, .owner = "Ister"}, "1");
  line.update({{"owner_ref", "IM-77"}, {"rests", "return"}, {"chips", "scrap"}});
  const Json answer = DoBody(shop.clerk, "receive_delivery", {{"note", "N1"}, {"supplier", "Vandrek"}, {"lines", Json::array({line})}});
  shop.Certify("M2208");
  const auto tags = answer["lines"][0]["tags"].get<std::vector<std::string>>();
  EXPECT_EQ(
      shop.Word(
          "select string_agg(distinct owner || ' ' || owner_ref || ' ' || rests_rule || ' ' || chips_rule, ',') as w from api.customer_property"),
      "Ister IM-77 return scrap");
  EXPECT_EQ(shop.Number("select count(*) as n from api.stock_value"), 0);
  EXPECT_EQ(SaleCode(Sale(tags[0], "L1")), "HK042");
  EXPECT_EQ(Code([&] { DoBody(shop.planner, "return_to_owner", {{"tag", tags[0]}, {"note", "L2"}, {"fate", "returned"}}); }), "HK026");
  DoBody(shop.planner, "return_to_owner", {{"tag", tags[0]}, {"note", "L2"}, {"fate", "returned"}, {"writing", "signed by their driver"}});
  DoBody(shop.planner, "return_to_owner", {{"tag", tags[1]}, {"note", "L3"}, {"fate", "scrapped"}, {"writing", "mail of 3 March"}});
  EXPECT_EQ(StateOf(tags[0]) + ", " + StateOf(tags[1]), "returned, scrapped");
  EXPECT_EQ(Code([&] { DoBody(shop.planner, "buy_over", {{"tag", tags[2]}, {"cents_per_tonne", 90000}}); }), "HK026");
  const std::string ours =
      DoBody(shop.planner, "buy_over", {{"tag", tags[2]}, {"writing", "letter"}, {"cents_per_tonne", 100000}}).at("tag");
  EXPECT_EQ(shop.Word("select owner || ' ' || heat as w from api.stock_on_hand where tag = $1", {ours}), "ours M2208");
  EXPECT_EQ(shop.Number("select cents as n from api.stock_value"), 23675);  // 236.75 kg at 1.00
  EXPECT_EQ(shop.Balance("M2208", "received"), Mm(18000));
  EXPECT_EQ(shop.Balance("M2208", "taken over"), Mm(6000));
}

TEST_F(Leaving, HeatTreatmentMakesAnotherLotThatWaitsForPapersOfItsOwn) {
  const auto tags = shop.ReceiveCertified({.count = 2});
  const auto out = [&](const std::string& tag, const std::string& process) {
    DoBody(shop.planner, "send_outside",
           {{"tag", tag}, {"party", "Hardening works"}, {"process", process}, {"note", "H1"}, {"mass_g", 236000}});
  };
  const auto back = [&](const std::string& tag, const std::string& condition, std::int64_t mm = 5998) {
    return DoBody(shop.quality, "back_from_outside",
                  {{"tag", tag}, {"place", "B1-1"}, {"length_nm", Mm(mm)}, {"condition", condition}, {"mass_g", 235900}});
  };
  EXPECT_EQ(Code([&] { back(tags[0], "+N"); }), "HK043");
  out(tags[0], "normalizing");
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {tags[0], "B1-1"}); }), "HK043");
  EXPECT_EQ(Code([&] { back(tags[0], "+QT"); }), "HK042");
  const Json answer = back(tags[0], "+N");
  EXPECT_EQ(answer.at("papers"), "awaited");
  EXPECT_EQ(shop.Word("select condition || ' ' || heat || ' ' || papers || ' ' || blocked as w from api.stock_on_hand where tag = $1",
                      {answer.at("tag").get<std::string>()}),
            "+N M2208 none its papers are awaited");
  EXPECT_EQ(shop.Balance("M2208", "unexplained"), Mm(2));
  EXPECT_EQ(shop.Word("select out_g || ' ' || back_g || ' ' || out_nm - back_nm as w from api.outside_trips"), "236000 235900 2000000");
  out(tags[1], "test");
  EXPECT_EQ(back(tags[1], "+QT", 6000).at("tag"), tags[1]);
  EXPECT_EQ(shop.Word("select papers as w from api.stock_on_hand where tag = $1", {tags[1]}), "3.1");
}

TEST_F(Leaving, WhatIsWrittenOffOnItsWayOrOutsideAndFoundAgainMayBeSentAgain) {
  const std::string tag = shop.ReceiveCertified({}).at(0);
  const std::vector<std::pair<const char*, Json>> ways{
      {"send_to_site", {{"tags", {tag}}, {"site", "van"}, {"note", "T1"}}},
      {"send_outside", {{"tag", tag}, {"party", "Hardening works"}, {"process", "test"}, {"note", "H1"}}}};
  for (const auto& [deed, body] : ways) {
    Connection& who = std::string(deed) == "send_to_site" ? shop.clerk : shop.planner;
    for (int round = 0; round < 2; ++round) {
      EXPECT_EQ(Code([&, deed = deed, body = body] { DoBody(who, deed, body); }), "") << deed << ' ' << round;
      EXPECT_EQ(Code([&] { DoBody(shop.planner, "scrap_piece", {{"tag", tag}, {"bin", "B"}, {"reason", "r"}}); }), "HK043");
      DoBody(shop.owner, "write_off", {{"tag", tag}, {"reason", "never came"}});
      DoBody(shop.clerk, "found_again", {{"tag", tag}, {"read", "M2208"}, {"length_nm", Mm(6000)}, {"place", "B1-1"}});
    }
  }
  EXPECT_EQ(shop.Word("select string_agg(received_nm::text, ' ') as w from api.transfers"), "0 0");
  EXPECT_EQ(shop.Word("select string_agg(back_nm::text, ' ') as w from api.outside_trips"), "0 0");
}

TEST_F(Leaving, CondemnedMetalOnItsWayThatGoesBackToItsSupplierIsOnItsWayNoMore) {
  const std::string tag = shop.ReceiveCertified({}).at(0);
  DoBody(shop.clerk, "send_to_site", {{"tags", {tag}}, {"site", "van"}, {"note", "T1"}});
  DoBody(shop.quality, "condemn_hold", {{"hold_id", shop.Hold("M2208").at("hold_id")}, {"reason", "letter"}});
  DoBody(shop.clerk, "return_to_supplier", {{"tag", tag}, {"note", "R1"}, {"claim", "C1"}, {"reason", "condemned"}});
  EXPECT_EQ(shop.Number("select count(*) as n from api.transfers where received_nm is null"), 0);
}

TEST_F(Leaving, WhatWasWrittenOffOnItsWayByAnOlderProgramMayBeSentAgainToo) {
  const std::string tag = shop.ReceiveCertified({}).at(0);
  const Json sent{{"tags", {tag}}, {"site", "van"}, {"note", "T1"}};
  DoBody(shop.clerk, "send_to_site", sent);
  DoBody(shop.owner, "write_off", {{"tag", tag}, {"reason", "never came"}});
  ASSERT_EQ(shop.Raw("update book.transfer set received_nm = null"), "");
  DoBody(shop.clerk, "found_again", {{"tag", tag}, {"read", "M2208"}, {"length_nm", Mm(6000)}, {"place", "B1-1"}});
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "send_to_site", sent); }), "");
}

TEST_F(Leaving, ALabelIsPrintedAgainOnlyAtThePieceAndCounted) {
  const std::string tag = shop.ReceiveCertified({}).at(0);
  Json again{{"tag", tag}, {"why", "torn off"}, {"old_destroyed", true}};
  EXPECT_EQ(Code([&] { DoBody(shop.saw, "reprint_label", again); }), "HK042");
  again["scanned"] = tag;
  EXPECT_EQ(Code([&] { DoBody(shop.planner, "reprint_label", again); }), "42501");
  EXPECT_EQ(DoBody(shop.saw, "reprint_label", again).at("reprints"), 1);
  again["old_destroyed"] = false;
  EXPECT_EQ(Code([&] { DoBody(shop.saw, "reprint_label", again); }), "HK026");
  again.erase("scanned");
  again.update({{"old_destroyed", true},
                {"photo_id", DoBody(shop.saw, "add_photo", {{"tag", tag}, {"kind", "mark"}, {"file_base64", SmallPng()}}).at("photo_id")}});
  EXPECT_EQ(DoBody(shop.clerk, "reprint_label", again).at("reprints"), 2);
}

// SHA-256 of the sixteen bytes of SmallPng(), by sha256sum.
TEST_F(Leaving, APictureIsKeptByteForByteIfItIsOneAndNotTooLarge) {
  const std::string tag = shop.ReceiveCertified({}).at(0);
  const auto add = [&](const std::string& base64, const std::string& kind = "defect") {
    return Code([&] { DoBody(shop.saw, "add_photo", {{"tag", tag}, {"kind", kind}, {"file_base64", base64}}); });
  };
  EXPECT_EQ(add("aGVhdA=="), "HK026");
  EXPECT_EQ(add(SmallPng(), "selfie"), "HK026");
  EXPECT_EQ(add(SmallPng()), "");
  EXPECT_EQ(shop.Word("select media || ' ' || sha256 as w from api.photos"),
            "image/png 02a3e298f1533f62558c58e4c70edcab9af5a50d62d925fd5390942020fb0fb8");
  EXPECT_EQ(shop.saw.Execute("select encode(api.file_bytes(sha256), 'base64') as w from api.photos").Only().Text("w"), SmallPng());
  Do(shop.owner, "set_rules", {R"({"settings": {"photo_bytes": "15"}})"});
  EXPECT_EQ(add(SmallPng()), "HK026");
}

TEST_F(Leaving, RulesCountFromTheirDateAndTheSameDateTwiceOrAnUnknownSettingIsRefusedInWords) {
  const auto price = [&](const std::string& from, int cents) {
    const Json p{{"grade", "42CrMo4"}, {"cents_per_tonne", cents}, {"scrap_cents_per_tonne", 1}, {"from", from}};
    return Refusal([&] { Do(shop.owner, "set_rules", {Json({{"prices", Json::array({p})}}).dump()}); });
  };
  EXPECT_EQ(price("2026-01-01", 100).sqlstate, "");
  EXPECT_EQ(price("2026-02-01", 200).sqlstate, "");
  EXPECT_EQ(price("2026-02-01", 300).sqlstate, "HK041");
  EXPECT_NE(price("2026-02-01", 300).message.find("a price of 42CrMo4 in every section is in the book from 2026-02-01"), std::string::npos);
  EXPECT_EQ(price("2026-01-15", 300).sqlstate, "HK041");  // would have counted on days that are over
  EXPECT_EQ(shop.Word("select string_agg(value::text, ',' order by valid_from) as w from api.rules where rule = 'price'"), "100,200");
  const DbError unknown = Refusal([&] { Do(shop.owner, "set_rules", {R"({"settings": {"tape_dout_nm": "1"}})"}); });
  EXPECT_EQ(unknown.sqlstate, "HK026");
  EXPECT_EQ(unknown.message, "no setting is called \"tape_dout_nm\"");
  EXPECT_NE(unknown.hint.find("tape_doubt_nm"), std::string::npos);
}

}  // namespace
}  // namespace heatkeep
