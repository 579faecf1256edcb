// Papers belong to lots; identity is put right only with a name and a reason, and all that was cut follows by
// key.
#include "client/allocator/eligible.h"
#include "client/allocator/shortage.h"
#include "client/gateway/plan_door.h"
#include "client/gateway/readings.h"
#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

struct ThePapers : ShopTest {
  Json Document(const std::string& number, const Json& lots, const std::string& issuer = "Vandrek") {
    const Json body{{"issuer", issuer},          {"number", number}, {"type", "3.1"},
                    {"issued_on", "2026-01-02"}, {"lots", lots},     {"file_base64", "JVBERi0xLjQKaGVhdAolJUVPRgo="}};
    return Do(shop.quality, "file_document", {body.dump()});
  }
  Json Lot(const std::string& heat, const std::string& grade = "42CrMo4", std::int64_t round = 80, const std::string& condition = "+QT") {
    return {{"heat", heat}, {"section", Round(round)}, {"condition", condition}, {"grade", grade}};
  }
  std::string HeatOf(const std::string& tag) {
    return shop.Word("select heat as w from book.piece join book.lot using (lot_id) where tag = $1", {tag});
  }
};

TEST_F(ThePapers, ADocumentOfAnotherHeatSectionConditionGradeOrMillFreesNothing_HK026) {
  shop.Receive({.heat = "R5512"});
  for (const Json& wrong : {Lot("R5521"), Lot("R5512", "42CrMo4", 60), Lot("R5512", "42CrMo4", 80, "+A"), Lot("R5512", "C45E")})
    EXPECT_EQ(Code([&] { Document("C1", Json::array({wrong})); }), "HK026") << wrong;
  EXPECT_EQ(Code([&] { Document("C1", Json::array({Lot("R5512")}), "Kestholm"); }), "HK026");
  EXPECT_EQ(Code([&] { Document("C1", Json::array({Lot("R5512"), Lot("R5521")})); }), "HK026");
  EXPECT_EQ(shop.Number("select count(*) as n from book.document"), 0);
  EXPECT_EQ(shop.Word("select papers_state::text as w from book.lot"), "awaited");
}

TEST_F(ThePapers, FilingFreesTheLotsItNamesAndNoOthers) {
  shop.Receive({.heat = "R5512"});
  shop.Receive({.heat = "R5513"});
  shop.Receive({.heat = "R5514"});
  EXPECT_EQ(Document("C1", Json::array({Lot("R5512"), Lot("R5513")})).at("lots"), 2);
  EXPECT_EQ(shop.Word("select string_agg(heat, ',' order by heat) as w from api.candidates"), "R5512,R5513");
  EXPECT_EQ(shop.Word("select document as w from api.stock_on_hand where heat = 'R5513'"), "3.1 no. C1");
  EXPECT_EQ(Code([&] { Document("C1", Json::array({Lot("R5514")})); }), "HK041");
}

TEST_F(ThePapers, TheFileIsKeptByteForByteUnderItsSha256) {
  shop.Receive({});
  Document("C1", Json::array({Lot("M2208")}));
  // sha256sum of the same bytes, worked out outside
  EXPECT_EQ(shop.Word("select file_sha256 as w from api.documents"), "258c5f1999ece54fdfeb172fdd38d72e971a31b671c11cc8284f9068e81d9147");
  EXPECT_EQ(shop.Raw("update book.document_file set bytes = 'other'"), "23514");
}

TEST_F(ThePapers, WeakerPapersNeverTakeTheStrongerOnesAway) {
  shop.Receive({});
  shop.Certify("M2208", {}, "3.1");
  shop.Certify("M2208", {}, "2.2");
  EXPECT_EQ(shop.Word("select papers::text as w from book.lot"), "3.1");
}

// Cut at risk before the certificate came: ten pieces, the rest and five bars wait; one act frees them all.
TEST_F(ThePapers, CutAtRiskNothingShipsUntilTheCertificateIsFiledAndThenAllIsFree) {
  const Bars stainless{.heat = "R5512", .grade = "1.4404", .condition = "", .length = 4000, .count = 6, .round = 50};
  const auto tags = shop.Receive(stainless);
  shop.AddLine({.length = 250, .quantity = 10, .papers = "none", .grade = "1.4404", .round = 50});
  Do(shop.quality, "allow_at_risk", {"Vandrek", "R5512", "cut at risk, do not ship"});
  shop.Fetch(tags[0], {{.count = 10, .length = 250}});
  const std::string rest = shop.Record(tags[0], {Trim(), Good(10, 250)}, DropLeft(1468)).at("drop_tag");
  EXPECT_EQ(shop.LengthOf(rest), Mm(1468));
  EXPECT_EQ(shop.Word("select document as w from api.stock_on_hand where tag = $1", {rest}), "papers awaited");
  EXPECT_EQ(Code([&] { shop.Ship("D1", 1); }), "HK040");
  Bars as = stainless;
  EXPECT_EQ(Code([&] { shop.Certify("R5521", as); }), "HK026");
  shop.Certify("R5512", as);
  EXPECT_NO_THROW(shop.Ship("D1", 10));
  EXPECT_EQ(shop.Number("select count(*) as n from api.candidates where heat = 'R5512'"), 6);
  EXPECT_LT(shop.Number("select min(happening_id) as n from book.happening where tbl = 'stroke'"),
            shop.Number("select min(happening_id) as n from book.happening where tbl = 'document'"));
}

TEST_F(ThePapers, OnlyQualityFilesAllowsHoldsAndReleases_42501) {
  const std::string tag = shop.Receive({.read_from = "slip", .papers_state = "none"}).at(0);
  for (Connection* who : {&shop.clerk, &shop.planner, &shop.saw, &shop.owner}) {
    EXPECT_EQ(Code([&] { Do(*who, "release", {tag, "looked at it"}); }), "42501");
    EXPECT_EQ(Code([&] { Do(*who, "allow_at_risk", {"Vandrek", "M2208", "hurry"}); }), "42501");
    EXPECT_EQ(Code([&] { Do(*who, "lift_hold", {1, "hurry"}); }), "42501");
    EXPECT_EQ(Code([&] { Do(*who, "file_document", {"{}"}); }), "42501");
  }
}

TEST_F(ThePapers, WhoReceivedItDoesNotReleaseItWhereTheShopWantsTwoPersons_HK043) {
  Connection all = shop.book.As("all");
  Json body{
      {"note", "N9"}, {"supplier", "Vandrek"}, {"lines", Json::array({LineJson({.read_from = "slip", .papers_state = "none"}, "1")})}};
  const std::string tag = Do(all, "receive_delivery", {body.dump()})["lines"][0]["tags"][0];
  Do(shop.owner, "set_rules", {R"({"settings": {"two_person_release": "yes"}})"});
  EXPECT_EQ(Code([&] { Do(all, "release", {tag, "looked again"}); }), "HK043");
  EXPECT_NO_THROW(Do(shop.quality, "release", {tag, "looked too"}));
}

TEST_F(ThePapers, ACorrectedReceiptIsFollowedByAllDropsAndCutPiecesByKey) {
  const auto tags = shop.ReceiveCertified({.count = 2});
  shop.ReceiveCertified({.heat = "K3317"});
  shop.AddLine({});
  const std::string drop = shop.Record(tags[0], {Trim(), Good(3, 290)}, DropLeft(5112)).at("drop_tag");
  const std::string second =
      shop.Record(drop, {Good(2, 290), Fault("reject", 290, "short")}, DropLeft(4200), {{"reason", "tape"}}).at("drop_tag");
  const Json done = Do(shop.quality, "correct_receipt", {tags[0], LineJson({.heat = "K3317"}, "1").dump(), "", "stencil read again"});
  EXPECT_EQ(done.at("follow"), 2);
  for (const std::string& tag : {tags[0], drop, second}) EXPECT_EQ(HeatOf(tag), "K3317") << tag;
  EXPECT_EQ(HeatOf(tags[1]), "M2208");
  EXPECT_EQ(shop.Number("select count(*) as n from book.stroke join book.lot using (lot_id) where heat = 'K3317'"), 7);
  EXPECT_EQ(shop.Balance("M2208", "received"), Mm(6000));
  EXPECT_EQ(shop.Balance("K3317", "received"), Mm(12000));
  EXPECT_EQ(shop.Balance("K3317", "unexplained"), Mm(36));  // 5112 - 3 x 292 - 4200
  EXPECT_EQ(shop.Word("select string_agg(distinct reason || ' by ' || who, ',') as w from book.happening "
                      "where deed = 'correct_receipt' and chain = 'piece'"),
            "stencil read again by test_quality");
}

TEST_F(ThePapers, ACorrectedReceiptReachesPiecesThatWereShipped) {
  const std::string bar = shop.ReceiveCertified({}).at(0);
  shop.ReceiveCertified({.heat = "K3317"});
  shop.AddLine({});
  shop.Record(bar, {Trim(), Good(14, 290)}, ScrapLeft());
  shop.Ship("D1", 14);
  Do(shop.quality, "correct_receipt", {bar, LineJson({.heat = "K3317"}, "1").dump(), "", "letter of the mill"});
  EXPECT_EQ(shop.Balance("K3317", "shipped"), Mm(4060));
  EXPECT_EQ(shop.quality.Execute("select count(*) as n from api.trace('heat', 'M2208')").Only().Int("n"), 0);
}

TEST_F(ThePapers, ACorrectedReceiptTakesItsDropsOutOfTheirBundle) {
  const std::string bar = shop.ReceiveCertified({}).at(0);
  shop.AddLine({});
  const Json stock =
      shop.Record(bar, {Good(1, 290), {{"class", "stock"}, {"count", 2}, {"length_nm", Mm(1000)}, {"kerf_nm", Mm(2)}, {"place", "B1-1"}}},
                  DropLeft(3704));
  Json tags = stock.at("stock_tags");
  tags.push_back(stock.at("drop_tag"));
  const auto put_right = [&](const char* heat) {
    return Do(shop.quality, "correct_receipt", {bar, LineJson({.heat = heat}, "1").dump(), "", "misread"});
  };
  DoBody(shop.clerk, "make_bundle", {{"bundle", "s1"}, {"tags", tags}});
  EXPECT_EQ(put_right("K3317").at("follow"), 3);
  EXPECT_EQ(shop.Number("select count(*) as n from book.piece where bundle_id is not null"), 0);
  DoBody(shop.clerk, "make_bundle", {{"bundle", "s2"}, {"tags", tags}});
  DoBody(shop.saw, "open_bundle", {{"bundle", "s2"}});
  EXPECT_EQ(put_right("M2208").at("follow"), 3);
  EXPECT_EQ(HeatOf(tags[0]), "M2208");
}

// What went on under another tag would stay of the wrong heat without a word.
TEST_F(ThePapers, AReceiptIsCorrectedAfterWhatWentOnUnderAnotherTag_HK043) {
  const std::string bar = shop.ReceiveCertified({.owner = "Ister"}).at(0);
  const std::string ours = DoBody(shop.planner, "buy_over", {{"tag", bar}, {"writing", "letter"}, {"cents_per_tonne", 90000}}).at("tag");
  const auto put_right = [&](const std::string& tag, const std::string& owner) {
    Do(shop.quality, "correct_receipt", {tag, LineJson({.heat = "K3317"}, "1").dump(), owner, "misread"});
  };
  const DbError no = Refusal([&] { put_right(bar, "Ister"); });
  EXPECT_EQ(no.sqlstate, "HK043");
  EXPECT_NE(no.message.find(ours + " is 42CrMo4 heat M2208"), std::string::npos) << no.message;
  EXPECT_EQ(HeatOf(bar), "M2208") << "nothing is half corrected";
  put_right(ours, "");
  put_right(bar, "Ister");
  EXPECT_EQ(HeatOf(ours), "K3317");
}

TEST_F(ThePapers, ACorrectedReceiptTakesTheReportOfItsDefectToTheRightHeat_HK045) {
  const std::string bar = shop.ReceiveCertified({}).at(0), innocent = shop.ReceiveCertified({}).at(0),
                    guilty = shop.ReceiveCertified({.heat = "K3317"}).at(0);
  shop.AddLine({.quantity = 20});
  for (const std::string& tag : {innocent, guilty}) shop.Promise(tag, {{.count = 1}});
  Do(shop.saw, "report_defect", {Json({{"tag", bar}, {"kind", "pipe"}, {"at_nm", Mm(30)}, {"words", "seen at the face"}}).dump()});
  Do(shop.quality, "correct_receipt", {bar, LineJson({.heat = "K3317"}, "1").dump(), "", "stencil read again"});
  EXPECT_EQ(shop.Pull(guilty).value("refused", ""), "HK045");
  EXPECT_EQ(shop.Pull(innocent).value("tag", ""), innocent);
}

TEST_F(ThePapers, ACorrectionNeedsAReasonAndTheBarItselfNotADrop) {
  const std::string bar = shop.ReceiveCertified({}).at(0);
  shop.AddLine({});
  const std::string drop = shop.Record(bar, {Trim(), Good(3, 290)}, DropLeft(5112)).at("drop_tag");
  const std::string lot = LineJson({.heat = "K3317"}, "1").dump();
  EXPECT_EQ(Code([&] { Do(shop.quality, "correct_receipt", {bar, lot, "", " "}); }), "HK026");
  EXPECT_EQ(Code([&] { Do(shop.quality, "correct_receipt", {drop, lot, "", "misread"}); }), "HK043");
}

TEST_F(ThePapers, ACorrectedOwnerKeepsTheMetalForThatCustomerOnly) {
  const std::string bar = shop.ReceiveCertified({}).at(0);
  shop.AddLines({{}, {.line = "own", .customer = "Ister", .owner = "Ister"}});
  shop.Promise(bar, {{.count = 1}});
  Do(shop.quality, "correct_receipt", {bar, LineJson({}, "1").dump(), "Ister", "customer's own, slip misread"});
  EXPECT_EQ(shop.Number("select count(*) as n from book.promise where state = 'live'"), 0);
  EXPECT_EQ(Code([&] { shop.Promise(bar, {{.count = 1}}); }), "HK042");
  EXPECT_TRUE(shop.Promise(bar, {{.count = 1, .line = "own"}}).contains("plan"));
}

// Metal that waits for its papers is cut at risk for the orders that ask for them: what they will be is not known yet.
struct CutAtRisk : ThePapers {
  void SetUp() override {
    tags = shop.Receive({.heat = "E77", .count = 3});
    shop.AddLine({.quantity = 14});
    Do(shop.quality, "allow_at_risk", {"Vandrek", "E77", "promised for Friday"});
  }
  Json Reserve(const std::string& tag) {
    return Do(shop.planner, "reserve", {Json({{"tag", tag}, {"order", "O1"}, {"line", "10"}, {"count", 1}}).dump()});
  }
  std::string Why(const std::string& tag) {
    const auto no = Refusal([&] { Reserve(tag); });
    return no.sqlstate.empty() ? "" : no.message;
  }
  std::vector<std::string> tags;
  const std::string risk = "cut at risk: papers awaited, do not ship";
};

TEST_F(CutAtRisk, ItServesLinesThatAskForPapersAndShipsWhenTheyHaveCome) {
  EXPECT_EQ(shop.Word("select papers || ', ' || cut_for || ', ' || risk as w from api.candidates where tag = $1", {tags[0]}),
            "none, 3.2, " + risk);
  EXPECT_EQ(shop.Word("select risk as w from api.stock_on_hand where tag = $1", {tags[0]}), risk);
  EXPECT_EQ(shop.Number("select free_nm as n from api.to_buy"), Mm(18000)) << "it need not be bought";
  Reserve(tags[1]);
  Do(shop.planner, "unreserve", {tags[1], "planned instead"});
  shop.Fetch(tags[0], {{.count = 14}});
  EXPECT_EQ(shop.Word("select papers || ', ' || risk as w from api.plan_layouts"), "none, " + risk);
  shop.Record(tags[0], {Trim(), Good(14, 290)}, DropLeft(1900));
  EXPECT_EQ(shop.Number("select count(*) as n from api.conflicts"), 0);
  EXPECT_EQ(shop.Word("select words as w from api.stands_against"), "its papers are awaited");
  EXPECT_EQ(Code([&] { shop.Ship("D1", 1); }), "HK040");
  const Json sale{{"tags", {tags[1]}}, {"order", "X"}, {"customer", "Pallant"}, {"note", "D2"}};
  EXPECT_EQ(Code([&] { Do(shop.planner, "sell", {sale.dump()}); }), "HK040") << "nor does the bar itself";
  shop.Certify("E77");
  EXPECT_EQ(shop.Number("select count(*) as n from api.stock_on_hand where risk is not null"), 0);
  EXPECT_NO_THROW(shop.Ship("D1", 14));
}

// The papers turn out weaker: what waits in the rack is planned anew, what was cut meanwhile does not ship.
TEST_F(CutAtRisk, PapersThatComeWeakerTakeItFromTheLineAgain) {
  shop.Record(tags[0], {Trim(), Good(1, 290)}, DropLeft(5696));
  shop.Promise(tags[1], {{.count = 1}});
  Reserve(tags[2]);
  shop.Certify("E77", {}, "2.2");
  EXPECT_EQ(shop.Number("select count(*) as n from book.promise where state = 'live'"), 0);
  EXPECT_NE(Why(tags[1]).find("its papers are weaker than asked for"), std::string::npos) << Why(tags[1]);
  EXPECT_EQ(shop.Word("select words as w from api.stands_against"), "its papers are weaker than asked for (2.2, not 3.1)");
  EXPECT_EQ(Code([&] { shop.Ship("D1", 1); }), "HK042");
}

TEST_F(CutAtRisk, WhatIsKnownToBeWeakerOrWasNeverToHavePapersIsNotMeant) {
  Do(shop.clerk, "quarantine", {tags[0], "bent"});
  Do(shop.quality, "release", {tags[0], "straightened", "3.1"});
  EXPECT_NE(Why(tags[0]).find("its use is limited: "), std::string::npos) << Why(tags[0]);
  EXPECT_EQ(
      Why(shop.Receive({.heat = "E78", .papers_state = "none"}).at(0)).find("its papers are weaker than asked for") == std::string::npos,
      false);
  shop.Receive({.heat = "E79"});
  shop.Certify("E79", {}, "2.2");
  EXPECT_EQ(Code([&] { Do(shop.quality, "allow_at_risk", {"Vandrek", "E79", "hurry"}); }), "HK026") << "its papers are here, and weaker";
}

// The program plans with it, and its sheet warns of it.
TEST_F(CutAtRisk, ThePlannersProblemTakesItAndItsSheetSaysSo) {
  PlanQuestion question;
  question.saw = "1";
  question.cut_lists = {shop.Word("select cut_list as w from api.cut_lines")};
  const BookProblem asked = ReadProblem(shop.planner, question);
  ASSERT_EQ(asked.problem.lines.size(), 1U);
  ASSERT_EQ(asked.problem.pieces.size(), 3U);
  EXPECT_EQ(asked.problem.pieces[0].risk, risk);
  EXPECT_EQ(allocator::WhyNot(asked.problem, asked.problem.pieces[0], asked.problem.lines.at(0)), std::nullopt);
  const std::int64_t plan = shop.Promise(tags[0], {{.count = 14}}).at("plan");
  EXPECT_EQ(ReadSheet(shop.saw, plan)->blocks.at(0).risk, risk);
  for (const StockRow& row : ReadStock(shop.planner, "")) EXPECT_EQ(row.state, "on rack; " + risk) << row.tag;
}

// Why do we buy, while bars of it lie on the rack? Short drops of it and metal that is free do not count.
TEST_F(ThePapers, AShortageSaysWhatOfItLiesHereAndIsNotFree) {
  shop.Receive({.heat = "K1", .count = 2});
  shop.Receive({.heat = "K1", .length = 200, .kind = "drop"});
  shop.Receive({.heat = "K3", .owner = "Ister"});
  const std::string bent = shop.ReceiveCertified({.heat = "K2"}).at(0);
  shop.Receive({.heat = "K4"});
  shop.Certify("K4", {}, "2.2");
  Do(shop.clerk, "quarantine", {shop.Word("select min(tag) as w from api.stock_on_hand where heat = 'K4'"), "bent, and too weak anyway"});
  Do(shop.clerk, "quarantine", {bent, "bent"});
  shop.AddLine({.quantity = 7});
  PlanQuestion question;
  question.saw = "1";
  question.cut_lists = {shop.Word("select cut_list as w from api.cut_lines")};
  const BookProblem asked = ReadProblem(shop.planner, question);
  ASSERT_EQ(asked.problem.lines.size(), 1U);
  const std::string why = allocator::WhyShort(asked.problem, 0, 7);
  EXPECT_TRUE(
      why.starts_with("nothing is free of round 80 42CrMo4; 2 pieces of it are here: papers awaited; 1 piece of it is here: quarantined; "
                      "the shortest bar to buy for 7 is "))
      << why;
  EXPECT_EQ(shop.Word("select waiting as w from api.to_buy"), "2 papers awaited, 1 quarantined");
}

}  // namespace
}  // namespace heatkeep
