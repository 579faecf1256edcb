// Papers after the metal: chased by date, filed by the clerk, accepted by quality, replaced by their issuer. Common practice of
// the trade, no source; carbon of 1.4404 at most 0.030 %: EN 10088-3, from memory.
#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

struct PapersLater : ShopTest {
  Json Document(const std::string& number, const std::string& heat, std::int64_t carbon = 20000) {
    return {{"issuer", "Vandrek"},
            {"number", number},
            {"type", "3.1"},
            {"issued_on", "2026-01-02"},
            {"lots",
             Json::array({{{"heat", heat},
                           {"section", Round(50)},
                           {"condition", ""},
                           {"grade", "1.4404"},
                           {"heat_analysis", {{"C", std::to_string(carbon)}}}}})}};
  }
  std::int64_t Waiting() { return shop.Number("select coalesce(sum(count), 0)::bigint as n from api.waiting_for_papers"); }
  const Bars stainless{.heat = "R5512", .grade = "1.4404", .condition = "", .length = 4000, .count = 6, .round = 50};
};

// 6 x round 50 x 4 000, heat R5512, no certificate; cut at risk: 10 x 250 leave 4 000 - 12 - 2 520 = 1 468.
TEST_F(PapersLater, NothingIsReleasedByAWrongCertificateAndEverythingByTheRightOneInOneAct) {
  DoBody(shop.quality, "define_limits",
         Json::array({{{"grade", "1.4404"}, {"element", "C"}, {"most", 30000}, {"source", "EN 10088-3, from memory"}}}));
  const auto tags = shop.Receive(stainless);
  shop.AddLine({.length = 250, .quantity = 10, .grade = "1.4404", .round = 50});
  shop.AddLine({.line = "risk", .length = 250, .quantity = 10, .papers = "none", .grade = "1.4404", .round = 50});
  EXPECT_TRUE(shop.Promise(tags[0], {{.count = 10, .length = 250, .line = "risk"}}).contains("taken"));
  Do(shop.quality, "allow_at_risk", {"Vandrek", "R5512", "cut at risk, do not ship"});
  shop.Fetch(tags[0], {{.count = 10, .length = 250, .line = "risk"}});
  const std::string rest = shop.Record(tags[0], {Trim(), Good(10, 250, "risk")}, DropLeft(1468)).at("drop_tag");
  EXPECT_EQ(shop.LengthOf(rest), Mm(1468));
  EXPECT_EQ(shop.Word("select document as w from api.stock_on_hand where tag = $1", {rest}), "papers awaited");
  EXPECT_EQ(Code([&] { shop.Ship("D1", 10, "risk"); }), "HK040");
  EXPECT_EQ(Waiting(), 17);  // 10 pieces, the rest, 5 bars and the open order line
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "file_document", Document("C1", "R5521")); }), "HK026");
  const DbError carbon = Refusal([&] { DoBody(shop.quality, "file_document", Document("C1", "R5512", 34000)); });
  EXPECT_EQ(carbon.sqlstate, "HK042");
  EXPECT_EQ(carbon.message, "the document is not accepted: heat R5512: C 0.034 %, X2CrNiMo17-12-2 allows at most 0.03");
  EXPECT_EQ(Waiting(), 17);
  DoBody(shop.quality, "file_document", Document("C1", "R5512"));
  EXPECT_EQ(Waiting(), 0);
  EXPECT_EQ(shop.Number("select count(*) as n from api.candidates where heat = 'R5512'"), 6);
  EXPECT_EQ(Code([&] { shop.Ship("D1", 10, "risk"); }), "");
  EXPECT_LT(shop.Number("select min(happening_id) as n from book.happening where tbl = 'stroke'"),
            shop.Number("select min(happening_id) as n from book.happening where tbl = 'document'"));
}

TEST_F(PapersLater, TheClerkFilesAndOnlyQualityAccepts) {
  shop.Receive(stainless);
  EXPECT_EQ(Code([&] { DoBody(shop.planner, "file_papers", Document("C1", "R5512")); }), "42501");
  DoBody(shop.clerk, "file_papers", Document("C1", "R5512"));
  EXPECT_EQ(shop.Word("select papers_state::text as w from book.lot"), "awaited");
  EXPECT_EQ(shop.Word("select guard.document_words(lot_id) as w from book.lot"), "papers awaited");
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "accept_document", {{"issuer", "Vandrek"}, {"number", "C1"}}); }), "42501");
  DoBody(shop.quality, "accept_document", {{"issuer", "Vandrek"}, {"number", "C1"}});
  EXPECT_EQ(shop.Word("select papers::text as w from book.lot"), "3.1");
  EXPECT_EQ(shop.Word("select filed_by || ' ' || accepted_by as w from api.documents"), "test_clerk test_quality");
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "accept_document", {{"issuer", "Vandrek"}, {"number", "C1"}}); }), "HK043");
}

TEST_F(PapersLater, AReplacedDocumentIsKeptBesideTheNewOneAndNamesWhatItWentWith) {
  const auto tags = shop.Receive(stainless);
  DoBody(shop.quality, "file_document", Document("C1", "R5512"));
  shop.AddLine({.length = 250, .quantity = 10, .grade = "1.4404", .round = 50});
  const std::string rest = shop.Record(tags[0], {Trim(), Good(10, 250)}, DropLeft(1468)).at("drop_tag");
  shop.Ship("D1", 10);
  shop.AddLine({.length = 250, .quantity = 10, .order = "O2", .grade = "1.4404", .round = 50});
  shop.Promise(tags[1], {{.count = 10, .length = 250, .order = "O2"}});
  ASSERT_EQ(shop.Number("select count(*) as n from api.promises where state = 'live'"), 1);
  Json newer = Document("C1", "R5512");
  newer["type"] = "2.2";
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "replace_document", newer); }), "HK026");
  newer["reason"] = "issued as 3.1 by mistake";
  const Json touched = DoBody(shop.quality, "replace_document", newer);
  EXPECT_EQ(touched.at("version"), 2);
  EXPECT_EQ(shop.Number("select count(*) as n from api.promises where state = 'live'"), 0);  // O2 asks for 3.1
  EXPECT_EQ(touched.at("pieces").size(), 7u);
  EXPECT_EQ(touched.at("shipments"), Json::array({"D1"}));
  EXPECT_EQ(
      shop.Word(
          "select string_agg(version || ' ' || type || case when replaced then ' replaced' else '' end, ', ' order by version) as w from api.documents"),
      "1 3.1 replaced, 2 2.2");
  EXPECT_EQ(shop.Word("select papers as w from api.stock_on_hand where tag = $1", {rest}), "2.2");
  EXPECT_EQ(shop.Word("select document as w from api.stock_on_hand where tag = $1", {rest}), "2.2 no. C1");
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "file_document", Document("C1", "R5512")); }), "HK041");
}

TEST_F(PapersLater, AwaitedPapersAreChasedByDate) {
  shop.Receive(stainless);
  EXPECT_EQ(shop.Number("select chase_on - current_date as n from api.papers_awaited"), 7);
  EXPECT_EQ(Code([&] {
              DoBody(shop.clerk, "chase_papers", {{"mill", "Vandrek"}, {"heat", "R5512"}, {"chase_on", "2026-01-02"}});
            }),
            "HK026");
  DoBody(shop.clerk, "chase_papers",
         {{"mill", "Vandrek"}, {"heat", "R5512"}, {"chase_on", "2020-01-02"}, {"words", "asked; promised for Friday"}});
  EXPECT_EQ(
      shop.Word("select heat || ' ' || pieces || ' ' || chase_words || ' ' || receipts as w from api.papers_awaited where days_late > 0"),
      "R5512 6 asked; promised for Friday note N1 of Vandrek");
  DoBody(shop.quality, "file_document", Document("C1", "R5512"));
  EXPECT_EQ(shop.Number("select count(*) as n from api.papers_awaited"), 0);
  EXPECT_EQ(Code([&] {
              DoBody(shop.clerk, "chase_papers", {{"mill", "Vandrek"}, {"heat", "R5512"}, {"chase_on", "2026-01-02"}, {"words", "w"}});
            }),
            "HK026");
}

// C 0.41 % on the first document, 0.43 % by a later analysis: both rows stay, the later one is valid; what it does not say stays as it was.
TEST_F(PapersLater, ALaterAnalysisIsANewRowAndTheBookSaysWhatIsValidNow) {
  shop.Receive({.heat = "K1"});
  const auto document = [&](const std::string& number, const std::string& issued, const Json& analysis) {
    return Json{{"issuer", "Vandrek"},
                {"number", number},
                {"type", "3.1"},
                {"issued_on", issued},
                {"lots",
                 Json::array({{{"heat", "K1"},
                               {"section", Round(80)},
                               {"condition", "+QT"},
                               {"grade", "42CrMo4"},
                               {"heat_analysis", analysis},
                               {"tests", Json::array({{{"property", "Rm"}, {"value_milli", 900'000}, {"unit", "MPa"}}})}}})}};
  };
  const auto values = [&](bool valid) {
    return shop.Word(
        "select string_agg(number || ' ' || what || ' ' || value, ', ' order by number, what) as w from api.document_values where valid = $1",
        {valid ? "yes" : "no"});
  };
  DoBody(shop.quality, "file_document", document("C1", "2026-01-02", {{"C", 410000}, {"Mn", 700000}}));
  Json later = document("C2", "2026-03-02", {{"C", 430000}});
  later["lots"][0].erase("tests");
  DoBody(shop.clerk, "file_papers", later);
  EXPECT_EQ(values(true), "C1 C 410000, C1 Mn 700000, C1 Rm 900000") << "nobody has accepted the later one";
  DoBody(shop.quality, "accept_document", {{"issuer", "Vandrek"}, {"number", "C2"}});
  EXPECT_EQ(values(true), "C1 Mn 700000, C1 Rm 900000, C2 C 430000");
  EXPECT_EQ(values(false), "C1 C 410000");
}

}  // namespace
}  // namespace heatkeep
