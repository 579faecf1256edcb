// The lorry: what was counted, weighed and read is booked, never what the slip says; what does not fit is
// quarantined.
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct Receiving : ShopTest {
  Json Line(const Bars& bars) { return shop.Deliver("N" + std::to_string(++notes), {bars}).at("lines").at(0); }
  int notes = 0;
};

TEST_F(Receiving, BooksWhatWasCountedAndSaysWhatTheSlipSays) {
  const Json line = Line({.count = 11, .slip_count = 12});
  EXPECT_EQ(line.at("tags").size(), 11u);
  EXPECT_EQ(line.at("mismatch"), "counted 11, the slip says 12");
  EXPECT_TRUE(line.at("quarantined").is_null());
  EXPECT_EQ(line.at("theoretical_g"), 2604255);  // 66 m x pi/4 x 80^2 mm2 x 7850 kg/m3 = 66 x 39.45840 kg
}

TEST_F(Receiving, AMassOffByMoreThanTheSettingIsQuarantinedAndNamed) {
  EXPECT_TRUE(Line({.weighed_g = 243'000}).at("quarantined").is_null());  // 2.6 % over 236.75 kg
  EXPECT_EQ(Line({.weighed_g = 245'000}).at("quarantined"), "weighed 245.0 kg, theory says 236.8 kg");
  EXPECT_EQ(Line({.weighed_g = 228'000}).at("quarantined"), "weighed 228.0 kg, theory says 236.8 kg");
  Do(shop.owner, "set_rules", {R"({"settings": {"mass_mismatch_percent": "10"}})"});
  EXPECT_TRUE(Line({.weighed_g = 245'000}).at("quarantined").is_null());
}

TEST_F(Receiving, AHeatReadFromTheSlipOnlyIsRefusedForMetalWithPapersAndQuarantinedElse_HK026) {
  EXPECT_EQ(Code([&] { Line({.read_from = "slip"}); }), "HK026");
  EXPECT_EQ(shop.Number("select count(*) as n from book.piece"), 0);
  const Json line = Line({.read_from = "slip", .papers_state = "none"});
  EXPECT_EQ(line.at("quarantined"), "the heat was read from the slip, not from the metal");
  shop.Certify("M2208");
  shop.AddLine({});
  EXPECT_EQ(shop.Promise(line.at("tags").at(0), {{.count = 1}}).at("taken").at(0).at("why"),
            "quarantined: the heat was read from the slip, not from the metal");
}

TEST_F(Receiving, AnUnreadableHeatIsALotOfItsOwnGoodForNothingCertificated) {
  const Json one = Line({.heat = "", .read_from = "none"}), two = Line({.heat = "", .read_from = "none"});
  EXPECT_EQ(one.at("quarantined"), "its heat could not be read");
  EXPECT_EQ(shop.Number("select count(distinct lot_id) as n from book.piece"), 2);
  EXPECT_EQ(shop.Word("select string_agg(distinct identity || ' ' || papers, ',') as w from book.lot"), "grade only none");
  EXPECT_EQ(shop.Raw("update book.lot set papers = '3.1', papers_state = 'here'"), "23514");
  Line({.heat = "", .grade = "", .read_from = "none"});
  EXPECT_EQ(shop.Number("select count(*) as n from book.lot where identity = 'unknown' and grade_id is null"), 1);
}

TEST_F(Receiving, AHeatThatLooksLikeAnotherIsWarnedOfAndNeverMerged) {
  Line({.heat = "O7715"});
  const Json line = Line({.heat = "07715"});
  EXPECT_EQ(line.at("mismatch"), "looks like heat O7715");
  EXPECT_EQ(shop.Word("select string_agg(heat, ',' order by lot_id) as w from book.lot"), "O7715,07715");
  Line({.heat = "o-77 15"});
  EXPECT_EQ(shop.Word("select string_agg(heat, ',' order by lot_id) as w from book.lot"), "O7715,07715,o-77 15");
}

TEST_F(Receiving, AHeatIsKeptExactlyAsRead) {
  Line({.heat = " 0K 33-17 "});
  EXPECT_EQ(shop.Word("select heat as w from book.lot"), " 0K 33-17 ");
  EXPECT_EQ(shop.Word("select read_as || ' from ' || read_from || ' by ' || read_by as w from book.heat_reading"),
            " 0K 33-17  from metal by test_clerk");
}

TEST_F(Receiving, TheSameHeatAsAnotherGrade_HK026) {
  Line({});
  EXPECT_EQ(Code([&] { Line({.grade = "C45E"}); }), "HK026");
}

TEST_F(Receiving, TheSameHeatInAnotherSectionConditionOrFromAnotherMillIsAnotherLot) {
  Line({});
  Line({.round = 60});
  Line({.condition = "+A"});
  Line({.mill = "Kestholm"});
  Line({});
  EXPECT_EQ(shop.Number("select count(*) as n from book.lot"), 4);
}

TEST_F(Receiving, AHeatWithoutAMill_HK026) {
  EXPECT_EQ(Code([&] { Line({.mill = ""}); }), "HK026");
}

TEST_F(Receiving, TheSameNoteWithOtherLines_HK041) {
  shop.Deliver("N7", {{}});
  EXPECT_EQ(Code([&] { shop.Deliver("N7", {{.count = 2}}); }), "HK041");
  EXPECT_EQ(shop.Number("select count(*) as n from book.piece"), 1);
}

TEST_F(Receiving, NothingIsHalfReceivedWhenOneLineIsWrong) {
  EXPECT_EQ(Code([&] { shop.Deliver("N8", {{.count = 3}, {.heat = "K1", .grade = "St 99"}}); }), "HK021");
  EXPECT_EQ(shop.Number("select (select count(*) from book.piece) + (select count(*) from book.receipt) + "
                        "(select count(*) from book.lot) as n"),
            0);
}

TEST_F(Receiving, UnknownNamesAreRefusedEachWithItsCode) {
  EXPECT_EQ(Code([&] { Line({.mill = "Nobody"}); }), "HK020");
  EXPECT_EQ(Code([&] { Line({.grade = "42CrMo"}); }), "HK021");
  EXPECT_EQ(Code([&] { Line({.place = "B9-9"}); }), "HK022");
  EXPECT_EQ(Code([&] { Line({.owner = "Nobody"}); }), "HK020");
  EXPECT_EQ(Code([&] { Line({.count = 0}); }), "HK026");
  EXPECT_EQ(Code([&] { Line({.length = 0}); }), "HK026");
  EXPECT_EQ(Code([&] { Line({.length = -6000}); }), "HK026");
}

// One bar of impossible length would make every sum over its heat fail.
TEST_F(Receiving, AmountsThatCannotBeAreRefused_HK026) {
  EXPECT_EQ(Code([&] { Line({.length = 1'000'001}); }), "HK026");
  EXPECT_EQ(Code([&] { Line({.round = 3001}); }), "HK026");
  EXPECT_EQ(Code([&] { Line({.count = 10'001}); }), "HK026");
  EXPECT_EQ(Code([&] {
              Do(shop.owner, "set_rules",
                 {R"({"prices": [{"grade": "C45E", "cents_per_tonne": 9000000000000000, "scrap_cents_per_tonne": 0}]})"});
            }),
            "HK026");
}

TEST_F(Receiving, APlaceTakesNoLongerOrHeavierThanItsLimits_HK033) {
  EXPECT_EQ(Code([&] { Line({.length = 6501}); }), "HK033");
  EXPECT_EQ(Code([&] { Line({.length = 1001, .place = "B1-2"}); }), "HK033");
  EXPECT_EQ(Code([&] { Line({.length = 1000, .place = "B1-2"}); }), "");
  EXPECT_EQ(Code([&] { Line({.length = 500, .count = 6, .place = "B1-3"}); }), "HK033");  // 6 x 19.7 kg
  const Json line = Line({.length = 500, .count = 5, .place = "B1-3"});
  const std::string sixth = Line({.length = 500}).at("tags").at(0);
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {sixth, "B1-3"}); }), "HK033");
  Do(shop.clerk, "put_away", {line.at("tags").at(0).get<std::string>(), "GATE"});
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {sixth, "B1-3"}); }), "");
}

struct WrongGrade : Receiving {
  static std::string As(const Bars& bars) { return LineJson(bars, "1").dump(); }
  std::string GradeOf(const std::string& tag) { return shop.Word("select grade as w from api.stock_on_hand where tag = $1", {tag}); }
  Json PutRight(const std::string& tag, const Bars& as) {
    return Do(shop.quality, "correct_receipt", {tag, As(as), "", "C45 was typed for C45E"});
  }
};

TEST_F(WrongGrade, ALotWhoseReceiptWasReversedTakesTheGradeItIsBookedWithNext) {
  shop.Deliver("N1", {{.heat = "E77"}});
  EXPECT_EQ(Code([&] { shop.Deliver("N2", {{.heat = "E77", .grade = "C45E"}}); }), "HK026");
  Do(shop.quality, "reverse_receipt", {Json({{"note", "N1"}, {"supplier", "Vandrek"}, {"reason", "wrong grade"}}).dump()});
  EXPECT_EQ(GradeOf(shop.Deliver("N1", {{.heat = "E77", .grade = "C45E"}})["lines"][0]["tags"][0]), "C45E");
}

TEST_F(WrongGrade, IsPutRightForTheWholeLotWhileNothingElseStandsOnIt) {
  const Json tags = shop.Deliver("N1", {{.heat = "E77", .count = 2, .papers_state = "none"}})["lines"][0]["tags"];
  shop.AddLine({.papers = "none"});
  shop.Promise(tags[1], {{.count = 1}});
  EXPECT_EQ(Code([&] { PutRight(tags[0], {.heat = "K1", .grade = "no grade"}); }), "HK021");
  EXPECT_EQ(PutRight(tags[0], {.heat = "E77", .grade = "C45E"}).at("follow"), 1);
  for (const Json& tag : tags) EXPECT_EQ(GradeOf(tag), "C45E");
  EXPECT_EQ(shop.Number("select count(*) as n from book.promise where state = 'live'"), 0) << "it was promised as another grade";
  // metal of another delivery stands on it now
  const std::string other = shop.Deliver("N2", {{.heat = "E77", .grade = "C45E"}})["lines"][0]["tags"][0];
  const DbError no = Refusal([&] { PutRight(tags[0], {.heat = "E77"}); });
  EXPECT_EQ(no.sqlstate, "HK026");
  EXPECT_NE(no.hint.find(other + " came with N2"), std::string::npos) << no.hint;
}

TEST_F(WrongGrade, StaysWhereMetalWasCutOrPapersAreFiled_HK026) {
  const std::string bar = shop.Receive({.heat = "E77", .papers_state = "none"}).at(0), paper = shop.ReceiveCertified({.heat = "E78"}).at(0);
  shop.AddLine({.papers = "none"});
  shop.Record(bar, {Trim(), Good(1, 290)}, DropLeft(5696));
  const DbError cut = Refusal([&] { PutRight(bar, {.heat = "E77", .grade = "C45E"}); });
  EXPECT_NE(cut.hint.find(bar + " was cut for an order"), std::string::npos) << cut.hint;
  const DbError filed = Refusal([&] { PutRight(paper, {.heat = "E78", .grade = "C45E"}); });
  EXPECT_NE(filed.hint.find("is filed for it"), std::string::npos) << filed.hint;
  // nobody edits it past the deed
  EXPECT_EQ(shop.Raw("update book.lot set grade_id = (select grade_id from book.grade where designation = 'C45E') where heat = 'E77'"),
            "HK031");
}

TEST_F(WrongGrade, OfAHeatThatIsAnotherGradeInAnotherSectionIsNamed) {
  Line({.heat = "E77"});
  EXPECT_TRUE(Line({.heat = "E77", .round = 60}).at("mismatch").is_null());
  const Json line = Line({.heat = "E77", .grade = "C45E", .round = 40});
  EXPECT_EQ(line.at("mismatch"), "heat E77 is 42CrMo4 in the book in another section or condition");
  EXPECT_TRUE(line.at("quarantined").is_null());
}

TEST_F(Receiving, TheOpeningBalanceKeepsOldMarksAndIsNotBroughtInTwice_HK041) {
  const auto open = [&](const std::string& name) {
    Json body{{"name", name}, {"lines", Json::array()}};
    body["lines"].push_back(
        LineJson({.length = 1100, .papers_state = "none", .kind = "drop", .old_tag = "I3", .ends = 1, .doubt = 1}, "1"));
    body["lines"].push_back(LineJson({.heat = "", .read_from = "none", .length = 640, .kind = "drop", .old_tag = "I5", .ends = 1}, "2"));
    return Do(shop.clerk, "open_balance", {body.dump()});
  };
  EXPECT_EQ(open("start").at("lines").size(), 2u);
  EXPECT_EQ(shop.Number("select sum(length_nm)::bigint as n from api.stock_on_hand where old_tag in ('I3', 'I5')"), Mm(1740));
  EXPECT_EQ(shop.Number("select count(*) as n from api.stock_on_hand where blocked is not null"), 0);
  EXPECT_EQ(Code([&] { open("start again"); }), "HK041");
  EXPECT_EQ(shop.Number("select count(*) as n from book.piece"), 2);
}

TEST_F(Receiving, AnOldMarkStandsOnceInAnOpeningBalance_HK041) {
  Json body{{"name", "start"}, {"lines", Json::array()}};
  for (const char* line : {"1", "2"})
    body["lines"].push_back(LineJson({.heat = "", .read_from = "none", .length = 640, .kind = "drop", .old_tag = "I1"}, line));
  const DbError no = Refusal([&] { Do(shop.clerk, "open_balance", {body.dump()}); });
  EXPECT_EQ(no.sqlstate, "HK041");
  EXPECT_EQ(no.message, "more than once in this opening balance: I1");
  EXPECT_EQ(shop.Number("select count(*) as n from book.piece"), 0);
}

// Twelve on the slip, eleven on the lorry, one of them stencilled another heat; the certificate names one
// heat only.
TEST_F(Receiving, AShortDeliveryOfMixedHeatsIsSeenBarByBar) {
  const Json answer = shop.Deliver(
      "N12", {{.heat = "K3317", .count = 10, .slip_count = 12, .weighed_g = 2'367'500}, {.heat = "K3371", .weighed_g = 236'750}});
  EXPECT_EQ(answer["lines"][0]["mismatch"], "counted 10, the slip says 12");
  shop.Certify("K3317");
  EXPECT_EQ(shop.Number("select sum(length_nm)::bigint as n from api.candidates"), Mm(60000));
  const std::string odd = answer["lines"][1]["tags"][0];
  EXPECT_EQ(shop.Word("select blocked as w from api.stock_on_hand where tag = $1", {odd}), "its papers are awaited");
  // nobody but quality puts the heat right
  for (Connection* who : {&shop.clerk, &shop.planner, &shop.saw, &shop.owner})
    EXPECT_EQ(Code([&] { Do(*who, "correct_receipt", {odd, LineJson({.heat = "K3317"}, "1").dump(), "", "misread"}); }), "42501");
}

TEST_F(Receiving, AWrongTagIsToldFromAnUnknownOne_HK024) {
  const std::string tag = Line({}).at("tags").at(0);
  std::string wrong = tag;
  wrong.back() = wrong.back() == 'A' ? 'B' : 'A';
  EXPECT_NE(Refusal([&] { Do(shop.clerk, "put_away", {wrong, "GATE"}); }).hint.find("check character"), std::string::npos);
  EXPECT_NE(Refusal([&] {
              Do(shop.clerk, "put_away", {shop.Word("select guard.tag_of('A', 4711) as w"), "GATE"});
            }).hint.find("well formed"),
            std::string::npos);
  std::string spaced = " " + tag.substr(0, 4) + "-" + tag.substr(4) + " ";
  spaced[1] = 'a';
  EXPECT_EQ(Do(shop.clerk, "put_away", {spaced, "GATE"}).at("tag"), tag);
}

}  // namespace
}  // namespace heatkeep
