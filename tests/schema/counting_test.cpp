// Places are counted blind while they are frozen; differences are looked at by another person before anything changes; what
// is missing stays unexplained; metal is never in two places. Common practice of the trade, no source.
#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

struct Counting : ShopTest {
  void SetUp() override { AddVanAndRack(shop); }
  std::vector<std::string> Drops(std::int64_t length, int count, const std::string& heat = "K3317") {
    return shop.ReceiveCertified({.heat = heat, .length = length, .count = count, .place = "B3", .kind = "drop", .ends = 1});
  }
  void Freeze() { DoBody(shop.planner, "freeze_place", {{"place", "B3"}}); }
  Json Seen(const Json& seen, bool done = true) {
    return DoBody(shop.clerk, "count_seen", {{"place", "B3"}, {"seen", seen}, {"done", done}});
  }
  Json Approve(Connection& who, const std::string& words = "looked under the rack") {
    return DoBody(who, "approve_count", {{"place", "B3"}, {"words", words}});
  }
  std::string StateOf(const std::string& tag) { return shop.Word("select state::text as w from book.piece where tag = $1", {tag}); }
  static Json Tag(const std::string& tag) { return {{"tag", tag}}; }
};

// Rack B3: the book has 14 drops, 8 420 mm; 13 are scanned. Missing one of K3317, 640; found a round 80, 638, no mark.
TEST_F(Counting, ACountDifferenceAndANamelessPieceAreNeverMergedByThemselves) {
  std::vector<std::string> tags = Drops(640, 1), others = Drops(600, 12, "M2208");
  const std::string last = Drops(580, 1, "M2208").at(0), missing = tags[0];
  others.push_back(last);
  EXPECT_EQ(shop.Number("select count(*) * 1000000 + (sum(length_nm) / 1000000)::bigint as n from api.stock_on_hand where place = 'B3'"),
            14'008'420);
  Freeze();
  Json seen = Json::array();
  for (const std::string& tag : others) seen.push_back(Tag(tag));
  seen.push_back({{"section", Round(80)}, {"length_nm", Mm(638)}, {"marks", "none"}});
  Seen(seen);
  EXPECT_EQ(shop.Number("select tags * 1000000 + counted_nm / 1000000 as n from api.counts"), 13'007'780);
  EXPECT_EQ(StateOf(missing), "on rack");  // nothing is put right by itself
  const Json answer = Approve(shop.planner);
  EXPECT_EQ(answer.at("missing"), Json::array({missing}));
  EXPECT_EQ(shop.Balance("K3317", "unexplained"), Mm(640));
  const std::string nameless = answer.at("found").at(0).at("tag");
  EXPECT_EQ(answer.at("found").at(0).at("hint"), Json::array({{{"tag", missing}, {"length_nm", Mm(640)}}}));
  EXPECT_EQ(shop.Word("select coalesce(heat, 'no heat') || ' ' || length_nm || ' ' || blocked as w from api.stock_on_hand where tag = $1",
                      {nameless}),
            "no heat 638000000 quarantined: found without a tag: nobody knows its heat");
  // nobody merges by resemblance: not the clerk, not on an analysis
  const Json merge{{"tag", nameless},
                   {"as_tag", missing},
                   {"method", "mark"},
                   {"result", "half a stencil ...3317, the only round 80 heat that ends so"}};
  for (Connection* who : {&shop.clerk, &shop.planner, &shop.saw, &shop.owner})
    EXPECT_EQ(Code([&] { DoBody(*who, "reestablish_identity", merge); }), "42501");
  Json guess = merge;
  guess["method"] = "analysis";
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "reestablish_identity", guess); }), "HK042");
  DoBody(shop.clerk, "add_photo", {{"tag", nameless}, {"kind", "mark"}, {"file_base64", SmallPng()}});
  EXPECT_EQ(DoBody(shop.quality, "reestablish_identity", merge).at("tag"), missing);
  EXPECT_EQ(shop.LengthOf(missing), Mm(638));
  EXPECT_EQ(shop.Balance("K3317", "unexplained"), Mm(2));
  EXPECT_EQ(StateOf(nameless), "passed on");
}

TEST_F(Counting, AFrozenPlaceGivesAndTakesNothingUntilItIsGivenUp_HK040) {
  const auto tags = Drops(640, 2);
  const std::string other = Drops(640, 1, "M2208").at(0);
  Do(shop.clerk, "put_away", {other, "GATE"});
  Freeze();
  EXPECT_EQ(Code([&] { Freeze(); }), "HK041");
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {tags[0], "GATE"}); }), "HK040");
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {other, "B3"}); }), "HK040");
  EXPECT_EQ(shop.Pull(tags[0]).at("refused"), "HK040");
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "unfreeze_place", {{"place", "B3"}, {"reason", "r"}}); }), "42501");
  DoBody(shop.planner, "unfreeze_place", {{"place", "B3"}, {"reason", "tomorrow"}});
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {tags[0], "GATE"}); }), "");
}

TEST_F(Counting, WhatIsTakenApartOutOfACountedPlaceIsCountedThereNoMore) {
  const std::string tag = Drops(640, 1).at(0);
  Freeze();
  Do(shop.clerk, "quarantine", {tag, "a crack", "QUAR"});
  EXPECT_EQ(shop.Word("select w.name || ' ' || frozen as w from book.piece join book.place w using (place_id) where tag = $1", {tag}),
            "QUAR false");
  Seen(Json::array());
  EXPECT_EQ(Approve(shop.planner).at("missing"), Json::array());
}

TEST_F(Counting, TheCountIsBlindAndApprovedByAnotherPersonAndAboveTheLimitByTheOwner) {
  Do(shop.owner, "set_rules",
     {R"({"prices": [{"grade": "42CrMo4", "cents_per_tonne": 160000, "scrap_cents_per_tonne": 25000}], "settings": {"count_limit_cents": "4000"}})"});
  const auto tags = Drops(640, 2);
  Freeze();
  EXPECT_EQ(Code([&] { Approve(shop.planner); }), "HK043");  // not counted yet
  Seen(Json::array({Tag(tags[0])}), false);
  EXPECT_EQ(Code([&] { Seen(Json::array({Tag(tags[0])})); }), "HK041");
  EXPECT_EQ(Code([&] { shop.clerk.Execute("select * from api.count_differences"); }), "42501");
  EXPECT_EQ(shop.planner.Execute("select * from api.count_differences").size(), 0);
  EXPECT_EQ(shop.Number("select coalesce(difference_nm, counted_nm) as n from api.counts"), 0);
  Seen(Json::array());
  // 640 mm x 39.458 kg/m = 25.253 kg at 1.60 = 40.40
  EXPECT_EQ(shop.Word("select missing_nm || ' ' || difference_nm || ' ' || difference_cents as w from api.counts"),
            "640000000 -640000000 -4040");
  EXPECT_EQ(Code([&] { Approve(shop.clerk); }), "42501");
  EXPECT_EQ(Code([&] { Approve(shop.planner); }), "HK043");
  EXPECT_EQ(Code([&] { Approve(shop.owner, ""); }), "HK026");
  Approve(shop.owner);
  EXPECT_EQ(StateOf(tags[1]), "missing");
  Connection all = shop.book.As("all");
  DoBody(all, "freeze_place", {{"place", "B3"}});
  DoBody(all, "count_seen", {{"place", "B3"}, {"seen", Json::array({Tag(tags[0])})}, {"done", true}});
  EXPECT_EQ(Code([&] { Approve(all); }), "HK043");  // counted by the same person
}

TEST_F(Counting, ALengthThatIsNoPiecesIsRefusedSoThatNoSumOverCountsFails_HK034) {
  const auto tags = Drops(640, 2);
  Freeze();
  for (const std::string& tag : tags) {
    Json far = Tag(tag);
    far["length_nm"] = 9'000'000'000'000'000'000;
    EXPECT_EQ(Code([&] { Seen(Json::array({far}), false); }), "HK034");
  }
  const Json far{{"section", Round(80)}, {"length_nm", 9'000'000'000'000'000'000}, {"marks", "none"}};
  EXPECT_EQ(Code([&] { Seen(Json::array({far}), false); }), "HK026");
  Seen(Json::array({Tag(tags[0]), Tag(tags[1])}));
  EXPECT_EQ(shop.Number("select count(*) as n from api.counts"), 1);
}

TEST_F(Counting, LengthsAndPlacesArePutRightOnlyByTheApproval) {
  const auto tags = Drops(640, 1), stray = Drops(500, 1, "M2208");
  Do(shop.clerk, "put_away", {stray[0], "GATE"});
  Freeze();
  Json shorter = Tag(tags[0]);
  shorter["length_nm"] = Mm(638);
  Seen(Json::array({shorter, Tag(stray[0])}));
  EXPECT_EQ(shop.LengthOf(tags[0]), Mm(640));
  Approve(shop.planner);
  EXPECT_EQ(shop.LengthOf(tags[0]), Mm(638));
  EXPECT_EQ(shop.Word("select place as w from api.stock_on_hand where tag = $1", {stray[0]}), "B3");
  EXPECT_EQ(shop.Word("select reason || ' by ' || named as w from book.metal_out"), "counted in B3: looked under the rack by test_planner");
}

// What was counted rightly and is cut before the approval stays cut; the good pieces are not metal twice.
TEST_F(Counting, AnApprovalDoesNotBringBackWhatWasCutSinceItWasCounted) {
  const std::string bar = shop.ReceiveCertified({.place = "B3"}).at(0), other = Drops(640, 1).at(0);
  shop.AddLine({.length = 1000, .quantity = 5});
  Freeze();
  Json measured = Tag(bar);
  measured["length_nm"] = Mm(6000);
  Seen(Json::array({measured, Tag(other)}));
  shop.Record(bar, Good(5, 1000));
  const Json answer = Approve(shop.planner);
  EXPECT_EQ(answer.at("difference_nm"), 0);
  EXPECT_EQ(shop.LengthOf(bar), Mm(990));
  EXPECT_EQ(shop.Number("select count(*) as n from book.metal_out"), 0);
  EXPECT_EQ(shop.Number("select counted_nm as n from api.counts"), Mm(6640)) << "as counted, whatever has become of it since";
}

TEST_F(Counting, WhatWasCountedOtherwiseAndHasChangedSinceIsLeftForAPerson) {
  const auto tags = Drops(640, 2);
  const std::string stray = Drops(500, 1, "M2208").at(0);
  Do(shop.clerk, "put_away", {stray, "GATE"});
  Freeze();
  Json shorter = Tag(tags[0]);
  shorter["length_nm"] = Mm(638);
  Seen(Json::array({shorter, Tag(tags[1]), Tag(stray)}));
  Do(shop.clerk, "quarantine", {tags[0], "a crack", "QUAR"});
  Do(shop.clerk, "quarantine", {stray, "a crack", "QUAR"});
  EXPECT_EQ(Approve(shop.planner).at("left"), Json::array({tags[0], stray}));
  EXPECT_EQ(shop.LengthOf(tags[0]), Mm(640));
  EXPECT_EQ(shop.Number("select count(*) as n from api.stock_on_hand where place = 'QUAR'"), 2);
  EXPECT_EQ(shop.Number("select count(*) as n from api.conflicts where kind = 'changed since it was counted'"), 2);
}

// Refused while it is counted, so that the count is not lost; a bar that came longer than it was booked is put right by its receipt.
TEST_F(Counting, WhatMeasuresLongerThanItWasMadeIsRefusedAtOnceWithTheWayOut_HK034) {
  const std::string bar = shop.ReceiveCertified({.place = "B3"}).at(0), drop = Drops(640, 1).at(0);
  const auto seen = [&](const std::string& tag, std::int64_t length, bool done) {
    Json one = Tag(tag);
    one["length_nm"] = Mm(length);
    return Seen(Json::array({one}), done);
  };
  const auto put_right = [&](const std::string& tag, std::int64_t length, const std::string& heat = "M2208") {
    Json lot = LineJson({.heat = heat}, "1");
    lot["received_nm"] = Mm(length);
    return Do(shop.quality, "correct_receipt", {tag, lot.dump(), "", "measured twice when it was counted"});
  };
  Freeze();
  const DbError no = Refusal([&] { seen(bar, 6050, false); });
  EXPECT_EQ(no.sqlstate, "HK034");
  EXPECT_NE(no.hint.find("heatkeep correct receipt"), std::string::npos) << no.hint;
  EXPECT_EQ(
      Refusal([&] { seen(drop, 641, false); }).hint,
      "measure again; no piece is longer than it ever was. Where a piece was booked that was not cut before it, take it back: heatkeep saw take-back");
  EXPECT_EQ(Code([&] { put_right(bar, 6000); }), "HK034");
  EXPECT_EQ(Code([&] { put_right(drop, 641, "K3317"); }), "HK043");
  put_right(bar, 6050);
  seen(bar, 6049, false);
  seen(drop, 640, true);
  Approve(shop.planner);
  EXPECT_EQ(shop.LengthOf(bar), Mm(6049));
  EXPECT_EQ(shop.Balance("M2208", "unexplained"), Mm(1));
  put_right(bar, 6052);
  EXPECT_EQ(shop.LengthOf(bar), Mm(6052));
  EXPECT_EQ(shop.Balance("M2208", "unexplained"), 0);
  EXPECT_EQ(shop.Balance("M2208", "received"), Mm(6052));
  shop.AddLine({});
  shop.Record(bar, Good(1, 290), DropLeft(5760));
  EXPECT_EQ(Code([&] { put_right(bar, 6060); }), "HK043") << "it was cut";
}

TEST_F(Counting, AMissingPieceComesBackOnlyReadAndMeasured) {
  const std::string tag = Drops(640, 1).at(0);
  Freeze();
  Seen(Json::array());
  Approve(shop.owner);
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {tag, "B3"}); }), "HK043");
  const auto again = [&](Json body) {
    body.update({{"tag", tag}, {"place", "B3"}});
    return DoBody(shop.clerk, "found_again", body);
  };
  EXPECT_EQ(Code([&] { again({{"length_nm", Mm(640)}}); }), "HK026");
  EXPECT_EQ(Code([&] { again({{"read", "K3317"}}); }), "HK026");
  EXPECT_EQ(Code([&] { again({{"read", "K3371"}, {"length_nm", Mm(640)}}); }), "HK042");
  EXPECT_EQ(Code([&] { again({{"read", "K3317"}, {"length_nm", Mm(641)}}); }), "HK034");
  again({{"read", "K3317"}, {"length_nm", Mm(639)}});
  EXPECT_EQ(shop.Balance("K3317", "unexplained"), Mm(1));
  EXPECT_EQ(Code([&] { again({{"read", "K3317"}, {"length_nm", Mm(639)}}); }), "HK043");
}

TEST_F(Counting, OnlyTheOwnerWritesOffWhatIsMissingAndItsMillimetresStayUnexplained) {
  const auto tags = Drops(640, 2);
  EXPECT_EQ(Code([&] { DoBody(shop.owner, "write_off", {{"tag", tags[0]}, {"reason", "gone"}}); }), "HK043");
  Freeze();
  Seen(Json::array({Tag(tags[1])}));
  Approve(shop.owner);
  for (Connection* who : {&shop.clerk, &shop.planner, &shop.saw, &shop.quality})
    EXPECT_EQ(Code([&] { DoBody(*who, "write_off", {{"tag", tags[0]}, {"reason", "gone"}}); }), "42501");
  DoBody(shop.owner, "write_off", {{"tag", tags[0]}, {"reason", "stolen, police told"}});
  EXPECT_EQ(StateOf(tags[0]), "written off");
  EXPECT_EQ(shop.Balance("K3317", "unexplained"), Mm(640));
  DoBody(shop.clerk, "found_again", {{"tag", tags[0]}, {"read", "K3317"}, {"length_nm", Mm(640)}, {"place", "B3"}});
  EXPECT_EQ(shop.Balance("K3317", "unexplained"), 0);
  EXPECT_EQ(shop.Number("select count(*) as n from book.metal_out where reverses_id is not null"), 1);
}

TEST_F(Counting, MetalOnItsWayToAnotherSiteIsInNoPlaceAndArrivesMeasured) {
  const std::string tag = Drops(640, 1).at(0);
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {tag, "VAN-1"}); }), "HK043");
  EXPECT_EQ(Code([&] { DoBody(shop.planner, "send_to_site", {{"tags", {tag}}, {"site", "van"}, {"note", "T1"}}); }), "42501");
  DoBody(shop.clerk, "send_to_site", {{"tags", {tag}}, {"site", "van"}, {"note", "T1"}});
  EXPECT_EQ(shop.Word("select coalesce(place, 'nowhere') || ' ' || state as w from api.stock_on_hand where tag = $1", {tag}),
            "nowhere in transit");
  EXPECT_EQ(shop.Number("select count(*) as n from api.candidates where tag = $1", {tag}), 0);
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {tag, "B3"}); }), "HK043");
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "receive_transfer", {{"tag", tag}, {"place", "B3"}, {"length_nm", Mm(640)}}); }), "HK043");
  EXPECT_EQ(DoBody(shop.clerk, "receive_transfer", {{"tag", tag}, {"place", "VAN-1"}, {"length_nm", Mm(637)}}).at("difference_nm"), -Mm(3));
  EXPECT_EQ(shop.Balance("K3317", "unexplained"), Mm(3));
  EXPECT_EQ(shop.Number("select difference_nm as n from api.transfers"), -Mm(3));
}

// Metal changes its site by a transfer only: not by a quarantine, not with what is left of a cut, not by a count.
TEST_F(Counting, MetalIsAtAnotherSiteOnlyAfterATransfer_HK043) {
  DoBody(shop.owner, "define_shop", {{"places", Json::array({{{"place", "VAN-Q"}, {"site", "van"}, {"kind", "quarantine"}}})}});
  const std::string bar = shop.ReceiveCertified({}).at(0), drop = Drops(640, 1).at(0);
  shop.AddLine({});
  const DbError no = Refusal([&] { Do(shop.clerk, "quarantine", {drop, "a crack", "VAN-Q"}); });
  EXPECT_EQ(no.sqlstate, "HK043");
  EXPECT_EQ(no.message, drop + " is at another site than VAN-Q");
  EXPECT_EQ(Code([&] { shop.Record(bar, Trim(), SamePiece("VAN-1")); }), "HK043");
  EXPECT_EQ(Code([&] { shop.Record(bar, {Trim(), Good(1, 290)}, DropLeft(5696, "VAN-1")); }), "HK043");
  EXPECT_EQ(shop.LengthOf(bar), Mm(6000)) << "nothing is half booked";
  DoBody(shop.planner, "freeze_place", {{"place", "VAN-1"}});
  DoBody(shop.clerk, "count_seen", {{"place", "VAN-1"}, {"seen", Json::array({Tag(drop)})}, {"done", true}});
  const Json answer = DoBody(shop.planner, "approve_count", {{"place", "VAN-1"}, {"words", "it stands there"}});
  EXPECT_EQ(answer.at("left"), Json::array({drop}));
  EXPECT_EQ(shop.Number("select count(*) as n from api.conflicts where kind = 'counted at another site'"), 1);
  EXPECT_EQ(shop.Number("select count(*) as n from api.stock_on_hand where place like 'VAN%'"), 0);
}

TEST_F(Counting, WhatIsCutAtASawOfAnotherSiteIsAFactAndAConflict) {
  DoBody(shop.owner, "define_shop",
         {{"places", Json::array({{{"place", "VAN-S"}, {"site", "van"}, {"kind", "saw"}}})},
          {"saws",
           Json::array({{{"saw", "V"},
                         {"place", "VAN-S"},
                         {"max_section_nm", Mm(260)},
                         {"band", "34 x 1.1"},
                         {"kerf_nm", Mm(2)},
                         {"trim_nm", Mm(10)},
                         {"grip_nm", Mm(60)},
                         {"grip_bundle_nm", Mm(120)}}})}});
  const std::string bar = shop.ReceiveCertified({}).at(0);
  shop.AddLine({});
  shop.Promise(bar, {{.count = 1}});
  EXPECT_TRUE(shop.Pull(bar, "V").at("words").get<std::string>().starts_with(bar + " is at another site than saw V"));
  shop.Record(bar, {Trim(), Good(1, 290)}, DropLeft(5696, "VAN-1"), {{"saw", "V"}});
  EXPECT_EQ(shop.Number("select count(*) as n from api.conflicts where kind = 'cut at another site'"), 1);
  EXPECT_EQ(shop.Word("select place as w from api.stock_on_hand where length_nm = 5696000000"), "VAN-1");
}

TEST_F(Counting, AStrappedBundleMovesAsOneUntilItIsOpened) {
  const auto tags = Drops(640, 3);
  DoBody(shop.clerk, "make_bundle", {{"bundle", "s1"}, {"tags", {tags[0], tags[1]}}});
  EXPECT_EQ(shop.Number("select bars as n from api.bundles where strapped"), 2);
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {tags[0], "GATE"}); }), "HK043");
  EXPECT_EQ(DoBody(shop.clerk, "move_bundle", {{"bundle", "s1"}, {"place", "GATE"}}).at("bars"), 2);
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "make_bundle", {{"bundle", "s2"}, {"tags", {tags[0], tags[2]}}}); }), "HK043");
  DoBody(shop.saw, "open_bundle", {{"bundle", "s1"}});
  EXPECT_EQ(Code([&] { DoBody(shop.saw, "open_bundle", {{"bundle", "s1"}}); }), "HK026");
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {tags[0], "B3"}); }), "");
}

}  // namespace
}  // namespace heatkeep
