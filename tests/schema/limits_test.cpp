// What a document is accepted by besides its heat analysis, and limits that were stored wrongly. 42CrMo4 +QT over 40 to 100 mm: Rm 900
// to 1100, Re at least 650, A at least 12 (EN 10083-3:2006, from memory); C 0.38 to 0.45 with 0.02 either way in a product analysis
// (EN 10083-3, from memory).
#include <future>

#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

Json TestLimit(const std::string& property, std::int64_t least, std::optional<std::int64_t> most = {}) {
  Json j{{"grade", "42CrMo4"},          {"condition", "+QT"},       {"property", property},       {"unit", property == "A" ? "%" : "MPa"},
         {"over_nm", Mm(40)},           {"upto_nm", Mm(100)},       {"least", least * 1'000'000}, {"least_places", 0},
         {"source", "EN 10083-3:2006"}, {"evidence", "FROM MEMORY"}};
  if (most) j["most"] = *most * 1'000'000, j["most_places"] = 0;
  return j;
}

struct Limits : ShopTest {
  void SetUp() override {
    DoBody(shop.quality, "define_limits", Json::array({TestLimit("Rm", 900, 1100), TestLimit("Re", 650), TestLimit("A", 12)}));
    shop.Receive({.heat = "K1"});
  }
  static Json Test(const std::string& property, std::int64_t milli) {
    return {{"property", property}, {"value_milli", milli}, {"unit", property == "A" ? "%" : "MPa"}};
  }
  static Json Document(const std::string& number, Json tests, Json product = Json::object(), const std::string& heat = "K1") {
    return {{"issuer", "Vandrek"},
            {"number", number},
            {"type", "3.1"},
            {"issued_on", "2026-01-02"},
            {"lots",
             Json::array({{{"heat", heat},
                           {"section", Round(80)},
                           {"condition", "+QT"},
                           {"grade", "42CrMo4"},
                           {"tests", std::move(tests)},
                           {"product_analysis", std::move(product)}}})}};
  }
  DbError Filed(const Json& document) {
    return Refusal([&] { DoBody(shop.quality, "file_document", document); });
  }
  Json Correct(Json limits, const std::string& reason = "the printed sheet says otherwise") {
    return DoBody(shop.quality, "correct_limits", {{"reason", reason}, {"limits", std::move(limits)}});
  }
};

TEST_F(Limits, ATestBelowItsMinimumIsRefusedAsAViolatedAnalysisIs_HK042) {
  const DbError low = Filed(Document("C1", {Test("Rm", 899'999), Test("Re", 650'000), Test("A", 12'000)}));
  EXPECT_EQ(low.sqlstate, "HK042");
  EXPECT_EQ(low.message, "the document is not accepted: heat K1: Rm 899.999 MPa, 42CrMo4 +QT allows at least 900 (EN 10083-3:2006)");
  EXPECT_EQ(Filed(Document("C1", {Test("Rm", 1'100'001)})).sqlstate, "HK042");
  EXPECT_EQ(Filed(Document("C1", {Test("A", 11'900)})).sqlstate, "HK042");
  // two test pieces: one that fails is enough
  EXPECT_EQ(Filed(Document("C1", {Test("Re", 700'000), Test("Re", 640'000)})).sqlstate, "HK042");
  EXPECT_EQ(shop.Word("select papers_state::text as w from book.lot"), "awaited");
  EXPECT_EQ(Filed(Document("C1", {Test("Rm", 900'000), Test("Re", 650'000), Test("A", 12'000)})).sqlstate, "");
  EXPECT_EQ(
      shop.Word(
          "select string_agg(what || ' ' || verdict || ' ' || at_least / 1000000 || ' ' || source, '; ' order by what) as w from api.document_verdicts"),
      "A ok 12 EN 10083-3:2006; Re ok 650 EN 10083-3:2006; Rm ok 900 EN 10083-3:2006");
}

// ISO 404:2013 8.5 (seen): the value is rounded to the figures of the limit where the shop says so.
TEST_F(Limits, TheShopsRoundingIsThatOfTheTestsToo) {
  EXPECT_EQ(Filed(Document("C1", {Test("Rm", 899'600)})).sqlstate, "HK042");
  Do(shop.owner, "set_rules", {R"({"settings": {"judging_by_rounding": "yes"}})"});
  EXPECT_EQ(Filed(Document("C1", {Test("Rm", 899'400)})).sqlstate, "HK042");
  EXPECT_EQ(Filed(Document("C1", {Test("Rm", 899'600)})).sqlstate, "");
}

TEST_F(Limits, AcceptingAWrongTestHoldsTheMetal) {
  DoBody(shop.clerk, "file_papers", Document("C1", {Test("Re", 640'000)}));
  const Json answer = DoBody(shop.quality, "accept_document", {{"issuer", "Vandrek"}, {"number", "C1"}});
  EXPECT_EQ(
      answer.at("words"),
      "the document is not accepted: heat K1: Re 640 MPa, 42CrMo4 +QT allows at least 650 (EN 10083-3:2006); its metal is held by hold 1 until that is lifted");
  EXPECT_EQ(shop.Number("select count(*) as n from api.candidates"), 0);
  const Json again = DoBody(shop.quality, "accept_document", {{"issuer", "Vandrek"}, {"number", "C1"}});
  EXPECT_EQ(again.at("words"), answer.at("words"));
  EXPECT_EQ(shop.Number("select count(*) as n from api.holds"), 1) << "for one reason it is held once";
  Json good = Document("C1", {Test("Re", 660'000)});
  good["reason"] = "a slip of the pen";
  const Json replaced = DoBody(shop.quality, "replace_document", good);
  EXPECT_EQ(replaced.at("holds"),
            Json::array({{{"hold_id", 1}, {"reason", "heat K1: Re 640 MPa, 42CrMo4 +QT allows at least 650 (EN 10083-3:2006)"}}}));
  Do(shop.quality, "lift_hold", {"1", "the corrected document"});
  EXPECT_GT(shop.Number("select count(*) as n from api.candidates"), 0);
}

TEST_F(Limits, WhereNoLimitIsKnownItIsSaid) {
  shop.Receive({.heat = "K2", .grade = "C45E"});
  Json document = Document("C2", {Test("Rm", 1'000), Test("A", 1'000)}, Json::object(), "K2");
  document["lots"][0]["grade"] = "C45E";
  EXPECT_EQ(DoBody(shop.quality, "file_document", document).at("warning"), "no limit known: heat K2 A, Rm");
  EXPECT_EQ(shop.Word("select string_agg(distinct verdict, ';') as w from api.document_verdicts"), "no limit known");
}

TEST_F(Limits, ATestInAnotherUnitOrOutOfAllRangeIsRefused_HK026) {
  Json psi = Test("Rm", 900'000);
  psi["unit"] = "psi";
  EXPECT_EQ(Filed(Document("C1", Json::array({psi}))).sqlstate, "HK026");
  EXPECT_EQ(Filed(Document("C1", {Test("Rm", -1)})).sqlstate, "HK026");
  EXPECT_EQ(Filed(Document("C1", {Test("Rm", 9'000'000'000'000'000'000)})).sqlstate, "HK026");
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "define_limits", Json::array({TestLimit("KV", 27)})); }), "HK026");
}

TEST_F(Limits, AProductAnalysisMayLieOutsideByItsDeviationAndAHeatAnalysisMayNot) {
  DoBody(shop.quality, "define_limits",
         Json::array({{{"grade", "42CrMo4"},
                       {"element", "C"},
                       {"least", 380000},
                       {"most", 450000},
                       {"least_places", 2},
                       {"most_places", 2},
                       {"source", "EN 10083-3:2006"}},
                      {{"standard", "EN 10083-3"},
                       {"element", "C"},
                       {"upto", 550000},
                       {"above", 20000},
                       {"below", 20000},
                       {"above_places", 2},
                       {"below_places", 2},
                       {"source", "EN 10083-3"}}}));
  const auto product = [&](std::int64_t c) { return Filed(Document("C1", Json::array(), {{"C", c}})); };
  EXPECT_EQ(
      product(470001).message,
      "the document is not accepted: heat K1: product analysis C 0.470001 %, 42CrMo4 allows at most 0.45 and 0.02 more for a product analysis (EN 10083-3:2006)");
  EXPECT_EQ(product(359999).sqlstate, "HK042");
  Json heat = Document("C1", Json::array());
  heat["lots"][0]["heat_analysis"] = {{"C", 450001}};
  EXPECT_EQ(Filed(heat).sqlstate, "HK042");
  heat["lots"][0]["heat_analysis"] = {{"C", 450000}};
  heat["lots"][0]["product_analysis"] = {{"C", 470000}};
  EXPECT_EQ(Filed(heat).sqlstate, "");
}

TEST_F(Limits, ALimitStoredWronglyIsReplacedAndTheOldOneStaysVisible) {
  EXPECT_EQ(Filed(Document("C1", {Test("Rm", 950'000)})).sqlstate, "");
  const Json answer = Correct(Json::array({TestLimit("Rm", 1000, 1200)}));
  EXPECT_EQ(answer.at("replaced"), 1);
  EXPECT_EQ(answer.at("added"), 1);
  EXPECT_EQ(answer.at("documents"), 1);
  EXPECT_EQ(
      shop.Word(
          "select least_millionths / 1000000 || ' ' || most_millionths / 1000000 as w from api.mechanical_limits where property = 'Rm'"),
      "1000 1200");
  EXPECT_EQ(
      shop.Word(
          "select kind || ' ' || grade || ' ' || condition || ' ' || what || ': ' || was || ' -> ' || became || ', ' || corrected_by || ', ' || reason as w from api.limit_changes"),
      "test 42CrMo4 +QT Rm: 900 to 1100 MPa -> 1000 to 1200 MPa, test_quality, the printed sheet says otherwise");
  EXPECT_EQ(shop.Word("select number || ' ' || heat || ' ' || what || ' ' || stands || ': ' || wrong as w from api.accepted_before"),
            "C1 K1 Rm true: heat K1: Rm 950 MPa, 42CrMo4 +QT allows at least 1000 (EN 10083-3:2006)");
  shop.Receive({.heat = "K2"});
  EXPECT_EQ(Filed(Document("C2", {Test("Rm", 950'000)}, Json::object(), "K2")).sqlstate, "HK042");
  EXPECT_EQ(Filed(Document("C2", {Test("Rm", 1'000'000)}, Json::object(), "K2")).sqlstate, "");
  EXPECT_EQ(shop.Number("select count(*) as n from api.accepted_before"), 1);  // what was judged by the new one is not looked at again
  // what the program brings is known, also where it was replaced
  EXPECT_EQ(DoBody(shop.quality, "define_limits", Json::array({TestLimit("Rm", 900, 1100)})).at("added"), 0);
}

TEST_F(Limits, OnlyDocumentsThatSayItOfThatSizeAndConditionAreLookedAtAgain) {
  EXPECT_EQ(Filed(Document("C1", {Test("Re", 700'000)})).sqlstate, "");
  shop.Receive({.heat = "K2", .condition = "+N"});
  Json other = Document("C2", {Test("Rm", 950'000)}, Json::object(), "K2");
  other["lots"][0]["condition"] = "+N";
  EXPECT_EQ(Filed(other).sqlstate, "");
  shop.Receive({.heat = "K3", .round = 120});
  other = Document("C3", {Test("Rm", 950'000)}, Json::object(), "K3");
  other["lots"][0]["section"] = Round(120);
  EXPECT_EQ(Filed(other).sqlstate, "");
  shop.Receive({.heat = "K4"});
  DoBody(shop.clerk, "file_papers", Document("C4", {Test("Rm", 950'000)}, Json::object(), "K4"));  // not accepted
  EXPECT_EQ(Correct(Json::array({TestLimit("Rm", 1000, 1200)})).at("documents"), 0);
  EXPECT_EQ(Correct(Json::array({TestLimit("Re", 750)})).at("documents"), 1);
}

TEST_F(Limits, ABoundaryBetweenTwoSizesIsMovedInOneCorrection) {
  Json to60 = TestLimit("Rm", 1000), to100 = TestLimit("Rm", 900);
  to60["upto_nm"] = to100["over_nm"] = Mm(60);
  const Json answer = Correct({to60, to100});
  EXPECT_EQ(answer.at("replaced"), 1);
  EXPECT_EQ(answer.at("added"), 2);
  EXPECT_EQ(shop.Word("select became as w from api.limit_changes"), "at least 1000 MPa; at least 900 MPa");
  to60["upto_nm"] = to100["over_nm"] = Mm(50);
  EXPECT_EQ(Correct({to60, to100}).at("replaced"), 2);
  EXPECT_EQ(shop.Number("select count(*) as n from api.mechanical_limits where property = 'Rm'"), 2);
  EXPECT_EQ(shop.Number("select count(*) as n from api.limit_changes"), 3);
}

TEST_F(Limits, ACorrectionSaysAllOfItAndNothingElse_HK026) {
  Json part = TestLimit("Rm", 1000), twice = TestLimit("Rm", 900), none = TestLimit("Rm", 1000);
  part["upto_nm"] = Mm(60);
  const auto code = [&](Json limits, const std::string& reason = "misread") { return Code([&] { Correct(std::move(limits), reason); }); };
  EXPECT_EQ(code({part}), "HK026");                          // 60 to 100 mm is left out
  EXPECT_EQ(code({TestLimit("Rm", 1000), twice}), "HK041");  // the same sizes twice
  twice["over_nm"] = Mm(50);
  EXPECT_EQ(code({TestLimit("Rm", 1000), twice}), "HK026");  // some of the same sizes
  EXPECT_EQ(code({TestLimit("Rm", 1000)}, " "), "HK026");    // no reason
  EXPECT_EQ(code(Json::array()), "HK026");
  none["condition"] = "+N";
  EXPECT_EQ(code({none}), "HK026");  // the book has none there
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "correct_limits", {{"reason", "x"}, {"limits", {TestLimit("Rm", 1)}}}); }), "42501");
  EXPECT_EQ(shop.Number("select count(*) as n from api.limit_changes"), 0);
  Json gone = TestLimit("Rm", 0);
  gone.erase("least");
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "define_limits", Json::array({gone})); }), "HK026");  // says neither
  EXPECT_EQ(Correct({gone}).at("added"), 0);                                                      // there is no such limit
  EXPECT_EQ(shop.Word("select was || ' -> ' || became as w from api.limit_changes"), "900 to 1100 MPa -> no limit");
  EXPECT_EQ(Filed(Document("C1", {Test("Rm", 1'000)})).sqlstate, "");
}

TEST_F(Limits, LimitsOfAnAnalysisAndDeviationsAreReplacedTheSameWay) {
  const Json carbon{{"grade", "42CrMo4"}, {"element", "C"}, {"most", 450000}, {"most_places", 2}, {"source", "EN 10083-3:2006"}};
  const Json wider{{"standard", "EN 10083-3"}, {"element", "C"}, {"above", 20000}, {"above_places", 2}, {"source", "EN 10083-3"}};
  DoBody(shop.quality, "define_limits", {carbon, wider});
  EXPECT_EQ(Filed(Document("C1", Json::array(), {{"C", 465000}})).sqlstate, "");
  Json less = wider, lower = carbon;
  less["above"] = 10000;
  lower["most"] = 440000;
  EXPECT_EQ(Correct({less}).at("documents"), 1);
  EXPECT_EQ(
      shop.Word("select was || ' -> ' || became || ': ' || wrong as w from api.accepted_before"),
      "0.02 % above -> 0.01 % above: heat K1: product analysis C 0.465 %, 42CrMo4 allows at most 0.45 and 0.01 more for a product analysis (EN 10083-3:2006)");
  EXPECT_EQ(Correct({lower}).at("documents"), 1);
  EXPECT_EQ(shop.Word("select string_agg(was || ' -> ' || became, '; ' order by correction) as w from api.limit_changes"),
            "0.02 % above -> 0.01 % above; at most 0.45 % -> at most 0.44 %");
  EXPECT_EQ(shop.Raw("delete from book.grade_limit"), "HK004");
}

TEST_F(Limits, AnAcceptanceWaitsForACorrectionUnderWayAndIsJudgedByIt) {
  Connection second = shop.book.As("quality");
  Transaction open(shop.quality);
  Correct(Json::array({TestLimit("Rm", 1000, 1200)}));
  auto waiting =
      std::async(std::launch::async, [&] { return Code([&] { DoBody(second, "file_document", Document("C1", {Test("Rm", 950'000)})); }); });
  EXPECT_EQ(waiting.wait_for(std::chrono::milliseconds(300)), std::future_status::timeout) << "it did not wait";
  open.Commit();
  EXPECT_EQ(waiting.get(), "HK042");
}

}  // namespace
}  // namespace heatkeep
