// What metal may still be used for: limits, downgrades and holds, for all that comes of it, at once and later; identity is
// regained by evidence only. Common practice of the trade, no source.
#include <functional>

#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

struct UseLimits : ShopTest {
  void SetUp() override {
    AddVanAndRack(shop);
    tags = shop.ReceiveCertified({.count = 4});
    shop.AddLines({{.quantity = 100}, {.line = "none", .quantity = 100, .papers = "none"}});
  }
  std::string DropOf(const std::string& tag) { return shop.Record(tag, {Trim(), Good(1, 290)}, DropLeft(5696)).at("drop_tag"); }
  std::string Blocked(const std::string& tag) { return shop.Word("select blocked as w from api.stock_on_hand where tag = $1", {tag}); }
  std::string Papers(const std::string& tag) { return shop.Word("select papers as w from api.stock_on_hand where tag = $1", {tag}); }
  std::vector<std::string> tags;
};

TEST_F(UseLimits, AReleaseThatIsNotFor31BindsThePieceAndItsDropsAtOnceAndLater) {
  const std::string before = DropOf(tags[0]);
  Do(shop.clerk, "quarantine", {tags[0], "bent", "QUAR"});
  Do(shop.quality, "release", {tags[0], "straightened", "3.1"});
  const std::string after = shop.Record(before, Good(1, 290), DropLeft(5404)).at("drop_tag");
  EXPECT_EQ(Papers(after), "2.2");
  EXPECT_EQ(shop.Word("select limits as w from api.stock_on_hand where tag = $1", {after}), "not above 2.2: straightened");
  EXPECT_EQ(Refusal([&] { shop.Promise(after, {{.count = 1}}); }).message,
            "layout 1 on " + after + ": its use is limited: not above 2.2: straightened");
  EXPECT_TRUE(shop.Promise(after, {{.count = 1, .line = "none"}}).contains("plan"));
  EXPECT_EQ(Papers(tags[1]), "3.1");
  EXPECT_EQ(Code([&] { shop.Ship("D1", 1); }), "HK042");
}

TEST_F(UseLimits, AQuarantineInAPlaceMovesThePieceApartAndGivesItsLabel) {
  const Json answer = Do(shop.saw, "quarantine", {tags[0], "crack seen", "QUAR"});
  EXPECT_EQ(answer.at("label"), "QUARANTINE " + tags[0] + ": crack seen");
  EXPECT_EQ(shop.Word("select place as w from api.stock_on_hand where tag = $1", {tags[0]}), "QUAR");
  EXPECT_EQ(Code([&] { Do(shop.saw, "quarantine", {tags[1], "crack", "B1-1"}); }), "HK026");
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {tags[0], "B1-1"}); }), "HK040");
}

TEST_F(UseLimits, DamageIsRecordedByAnybodyAndStopsThePieceOnlyWhereItIsNotUsable) {
  const auto damage = [&](Connection& who, const std::string& tag, bool usable) {
    return DoBody(who, "record_damage", {{"tag", tag}, {"kind", "bent"}, {"usable", usable}, {"words", "3 mm"}});
  };
  damage(shop.owner, tags[0], true);
  EXPECT_EQ(Blocked(tags[0]), "");
  damage(shop.saw, tags[1], false);
  EXPECT_EQ(Blocked(tags[1]), "quarantined: bent: 3 mm");
  EXPECT_EQ(Code([&] { DoBody(shop.saw, "record_damage", {{"tag", tags[2]}, {"kind", "bent"}, {"words", "3 mm"}}); }), "HK026");
  EXPECT_EQ(shop.Number("select count(*) as n from api.piece_notes where kind = 'damage'"), 2);
}

TEST_F(UseLimits, ADamagedStretchIsMarkedOnThePieceAsItIsNow) {
  Json trim = Trim();
  trim["length_nm"] = Mm(998);
  shop.Record(tags[0], trim, SamePiece());
  ASSERT_EQ(shop.LengthOf(tags[0]), Mm(5000));
  Json dent{{"tag", tags[0]}, {"kind", "dented"}, {"usable", true}, {"words", "a fork"}, {"from_nm", Mm(100)}};
  const auto damage = [&] { return Code([&] { DoBody(shop.saw, "record_damage", dent); }); };
  EXPECT_EQ(damage(), "HK026") << "to where?";
  dent["to_nm"] = Mm(900'000);
  EXPECT_EQ(damage(), "HK034");
  dent["to_nm"] = Mm(5001);
  EXPECT_EQ(damage(), "HK034");
  dent["to_nm"] = Mm(200);
  EXPECT_EQ(damage(), "");
  EXPECT_EQ(
      shop.Word("select from_nm / 1000000 || '-' || to_nm / 1000000 || ' ' || kind as w from api.defect_zones where tag = $1", {tags[0]}),
      "100-200 dented");
  EXPECT_EQ(shop.Number("select count(*) as n from api.candidates where tag = $1", {tags[0]}), 0);
}

TEST_F(UseLimits, ADowngradeGoesDownOnlyAndSaysWhy) {
  const auto down = [&](Connection& who, const std::string& tag, const std::string& to,
                        const std::string& why = "tests of another section") {
    return DoBody(who, "downgrade", {{"tag", tag}, {"to", to}, {"reason", why}});
  };
  EXPECT_EQ(Code([&] { down(shop.planner, tags[0], "2.2"); }), "42501");
  EXPECT_EQ(Code([&] { down(shop.quality, tags[0], "2.2", ""); }), "HK026");
  down(shop.quality, tags[0], "2.2");
  EXPECT_EQ(Papers(tags[0]), "2.2");
  EXPECT_EQ(Code([&] { down(shop.quality, tags[0], "3.1"); }), "HK042");
  const std::string grade_only = down(shop.quality, tags[1], "grade only").at("new_tag");
  EXPECT_EQ(shop.Word("select coalesce(heat, 'no heat') || ' ' || grade || ' ' || papers as w from api.stock_on_hand where tag = $1",
                      {grade_only}),
            "no heat 42CrMo4 none");
  EXPECT_EQ(shop.Balance("M2208", "received"), Mm(24000));
  EXPECT_EQ(shop.Balance("M2208", "passed on"), Mm(6000));
  EXPECT_EQ(shop.Balance("M2208", "on hand"), Mm(18000));
  // the metal's story is one, whichever tag is asked
  for (const std::string& tag : {tags[1], grade_only})
    EXPECT_EQ(shop.quality.Execute("select count(*) as n from api.trace('piece', $1) where name in ($2, $3)", {tag, tags[1], grade_only})
                  .Only()
                  .Int("n"),
              2);
}

TEST_F(UseLimits, AHoldOfWhatItWasStopsWhatItIsNow) {
  const std::string now = DoBody(shop.quality, "downgrade", {{"tag", tags[0]}, {"to", "unknown"}, {"reason", "label lost"}}).at("new_tag");
  Do(shop.quality, "place_hold", {"piece", tags[0], std::nullopt, "crack seen"});
  EXPECT_EQ(Blocked(now), "held by test_quality: crack seen");
}

TEST_F(UseLimits, ALotACertificateOrADeliveryIsHeldLikeAHeat) {
  const auto hold = [&](const std::string& scope, const std::string& ref, const Param& of) {
    const Json answer = Do(shop.quality, "place_hold", {scope, ref, of, "letter"});
    EXPECT_EQ(Blocked(tags[3]), "held by test_quality: letter") << scope;
    EXPECT_EQ(answer.at("pieces"), 4) << scope;
    Do(shop.quality, "lift_hold", {answer.at("hold_id").get<std::int64_t>(), "second letter"});
    EXPECT_EQ(Blocked(tags[3]), "") << scope;
  };
  hold("lot", tags[0], std::nullopt);
  hold("certificate", shop.Word("select number as w from book.document"), "Vandrek");
  hold("receipt", shop.Word("select note as w from book.receipt"), "Vandrek");
  EXPECT_EQ(Code([&] { Do(shop.quality, "place_hold", {"certificate", "none", "Vandrek", "letter"}); }), "HK026");
  EXPECT_EQ(Code([&] { Do(shop.quality, "place_hold", {"colour", "red", std::nullopt, "letter"}); }), "HK026");
}

TEST_F(UseLimits, HeldMetalIsNotEditedSoldOrSentAwayAndStaysAsEvidence_HK040) {
  shop.Hold("M2208");
  const std::string& tag = tags[0];
  const std::vector<std::function<void()>> tries{
      [&] {
        Do(shop.saw, "correct_length", {tag, Mm(5990), Mm(1), "tape"});
      },
      [&] {
        Do(shop.quality, "correct_receipt", {tag, LineJson({.heat = "K1"}, "1").dump(), "", "misread"});
      },
      [&] {
        DoBody(shop.quality, "downgrade", {{"tag", tag}, {"to", "none"}, {"reason", "r"}});
      },
      [&] {
        DoBody(shop.planner, "sell", {{"tags", {tag}}, {"order", "X"}, {"customer", "Pallant"}, {"note", "L"}});
      },
      [&] {
        DoBody(shop.clerk, "send_to_site", {{"tags", {tag}}, {"site", "van"}, {"note", "T"}});
      },
      [&] {
        DoBody(shop.planner, "send_outside", {{"tag", tag}, {"party", "x"}, {"process", "test"}, {"note", "n"}});
      },
      [&] {
        DoBody(shop.clerk, "return_to_supplier", {{"tag", tag}, {"note", "n"}, {"claim", "c"}, {"reason", "r"}});
      }};
  for (std::size_t i = 0; i < tries.size(); ++i) EXPECT_EQ(Code(tries[i]), "HK040") << i;
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {tag, "QUAR"}); }), "");  // physically apart
}

TEST_F(UseLimits, CondemnedMetalIsNeverFreedAndGoesBackWithAClaim) {
  const std::int64_t hold = shop.Hold("M2208").at("hold_id");
  EXPECT_EQ(Code([&] { DoBody(shop.planner, "condemn_hold", {{"hold_id", hold}, {"reason", "letter"}}); }), "42501");
  EXPECT_EQ(DoBody(shop.quality, "condemn_hold", {{"hold_id", hold}, {"reason", "second analysis"}}).at("pieces"), 4);
  EXPECT_EQ(Code([&] { Do(shop.quality, "lift_hold", {hold, "changed my mind"}); }), "HK043");
  EXPECT_EQ(Blocked(tags[0]), "condemned by test_quality: second analysis");
  const Json gone =
      DoBody(shop.clerk, "return_to_supplier", {{"tag", tags[0]}, {"note", "R1"}, {"claim", "C9"}, {"reason", "wrong chemistry"}});
  EXPECT_EQ(gone.at("words"), "returned to Vandrek, note R1, claim C9: wrong chemistry");
  EXPECT_EQ(gone.at("mass_g"), 236750);
  EXPECT_EQ(shop.Balance("M2208", "returned"), Mm(6000));
  EXPECT_EQ(shop.Number("select count(*) as n from api.documents"), 1);
}

TEST_F(UseLimits, CondemnedMetalLeavesAsScrapOrToItsOwnerUnlessAnotherHoldIsOnIt) {
  DoBody(shop.owner, "define_bins", {{"bins", {{{"bin", "B"}, {"group", "steel"}}}}});
  const auto theirs = shop.ReceiveCertified({.heat = "E1", .count = 3, .owner = "Ister"});
  const auto scrap = [&](const std::string& tag) {
    return Code([&] {
      DoBody(shop.planner, "scrap_piece", {{"tag", tag}, {"bin", "B"}, {"reason", "condemned"}, {"instruction", "mail"}});
    });
  };
  const auto back = [&](const std::string& tag, const char* fate) {
    return Code([&] { DoBody(shop.planner, "return_to_owner", {{"tag", tag}, {"note", "L1"}, {"fate", fate}, {"writing", "mail"}}); });
  };
  const auto condemn = [&](std::int64_t hold) { DoBody(shop.quality, "condemn_hold", {{"hold_id", hold}, {"reason", "letter"}}); };
  EXPECT_EQ(scrap(tags[3]), "");  // in the bin before anybody doubted it
  Do(shop.quality, "quarantine", {tags[0], "looks odd"});
  const std::int64_t ours = shop.Hold("M2208").at("hold_id"), owned = shop.Hold("E1").at("hold_id");
  EXPECT_EQ(scrap(tags[0]) + back(theirs[0], "returned"), "HK040HK040");
  condemn(ours);
  condemn(owned);
  const std::int64_t other = Do(shop.quality, "place_hold", {"piece", tags[1], std::nullopt, "the insurer wants to see it"}).at("hold_id");
  Do(shop.quality, "place_hold", {"piece", theirs[2], std::nullopt, "the insurer wants to see it"});
  EXPECT_EQ(scrap(tags[0]), "");
  EXPECT_EQ(scrap(tags[1]) + back(theirs[2], "scrapped"), "HK040HK040");
  EXPECT_EQ(Code([&] {
              DoBody(shop.clerk, "return_to_supplier", {{"tag", tags[1]}, {"note", "R1"}, {"claim", "C1"}, {"reason", "r"}});
            }),
            "HK040");
  EXPECT_EQ(back(theirs[0], "returned") + back(theirs[1], "scrapped"), "");
  const auto ticket = [&](const char* number) {
    return Code([&] {
      DoBody(shop.planner, "scrap_ticket",
             {{"bin", "B"}, {"dealer", "Kestholm"}, {"ticket", number}, {"mass_g", 470000}, {"cents_per_tonne", 1}});
    });
  };
  const std::int64_t late = Do(shop.quality, "place_hold", {"piece", tags[3], std::nullopt, "what was it"}).at("hold_id");
  EXPECT_EQ(ticket("1"), "HK040");
  Do(shop.quality, "lift_hold", {late, "seen"});
  EXPECT_EQ(ticket("1"), "");
  Do(shop.quality, "lift_hold", {other, "seen"});
  EXPECT_EQ(scrap(tags[1]), "");
}

TEST_F(UseLimits, AnAnalysisProvesTheGradeNeverTheHeat_HK042) {
  const std::string found =
      DoBody(shop.saw, "found_piece", {{"section", Round(80)}, {"length_nm", Mm(300)}, {"marks", "none"}, {"place", "QUAR"}}).at("tag");
  EXPECT_EQ(Code([&] {
              DoBody(shop.saw, "found_piece",
                     {{"section", Round(80)}, {"length_nm", Mm(300)}, {"marks", "none"}, {"place", "QUAR"}, {"heat", "M2208"}});
            }),
            "HK026");
  Json as_heat{{"tag", found}, {"method", "analysis"}, {"result", "Cr 1.0"}, {"lot", LineJson({}, "1")}};
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "reestablish_identity", as_heat); }), "HK042");
  EXPECT_EQ(Code([&] { DoBody(shop.planner, "reestablish_identity", as_heat); }), "42501");
  const std::string graded =
      DoBody(shop.quality, "reestablish_identity", {{"tag", found}, {"method", "analysis"}, {"result", "Cr 1.0"}, {"grade", "42CrMo4"}})
          .at("tag");
  EXPECT_EQ(shop.Word("select identity::text as w from book.piece join book.lot using (lot_id) where tag = $1", {graded}), "grade only");
  as_heat = {{"tag", graded}, {"method", "mark"}, {"result", "stencil M2208 under the paint"}, {"lot", LineJson({}, "1")}};
  const std::string sure = DoBody(shop.quality, "reestablish_identity", as_heat).at("tag");
  EXPECT_EQ(shop.Word("select heat || ' ' || papers as w from api.stock_on_hand where tag = $1", {sure}), "M2208 3.1");
  EXPECT_EQ(Blocked(sure), "");
  EXPECT_EQ(shop.Balance("M2208", "taken over"), Mm(300));
}

}  // namespace
}  // namespace heatkeep
