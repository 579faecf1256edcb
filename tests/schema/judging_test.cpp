// The book judges an analysis as the program does, and what a document must be to be filed, accepted and passed on.
// EN 10204:2004 clauses 3 to 6 and ISO 10474:2013 clause 6, read in public copies.
#include <random>
#include <set>

#include "client/papers/check_heat.h"
#include "client/papers/mechanical.h"
#include "tests/papers/reference_rows.h"
#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

Json LimitsJson(const std::vector<GradeLimit>& limits, const std::string& grade, const std::string& as) {
  Json all = Json::array();
  for (const GradeLimit& l : limits) {
    if (l.grade != grade) continue;
    Json j{{"grade", as}, {"element", l.what}, {"over_nm", l.sizes.over.nm}, {"source", l.source}, {"evidence", l.evidence}};
    if (l.sizes.upto) j["upto_nm"] = l.sizes.upto->nm;
    if (l.least) j["least"] = l.least->millionths, j["least_places"] = l.least->places;
    if (l.most) j["most"] = l.most->millionths, j["most_places"] = l.most->places;
    all.push_back(j);
  }
  return all;
}

Json TestLimitsJson(const std::vector<MechanicalLimit>& limits, const std::vector<std::string>& grades) {
  Json all = Json::array();
  for (const MechanicalLimit& l : limits) {
    if (std::find(grades.begin(), grades.end(), l.grade) == grades.end()) continue;
    Json j{{"grade", l.grade},           {"condition", l.condition}, {"property", l.property}, {"unit", papers::UnitOf(l.property)},
           {"over_nm", l.sizes.over.nm}, {"source", l.source},       {"evidence", l.evidence}};
    if (l.sizes.upto) j["upto_nm"] = l.sizes.upto->nm;
    if (l.least) j["least"] = l.least->millionths, j["least_places"] = l.least->places;
    if (l.most) j["most"] = l.most->millionths, j["most_places"] = l.most->places;
    all.push_back(j);
  }
  return all;
}

// Of every standard; those of a grade go to the grade the small shop calls so.
Json DeviationsJson(const std::vector<ProductDeviation>& deviations, const std::map<std::string, std::string>& grades) {
  Json all = Json::array();
  for (const ProductDeviation& d : deviations) {
    const auto as = grades.find(d.grade);
    if (!d.grade.empty() && as == grades.end()) continue;
    Json j{{"standard", d.standard}, {"element", d.element}, {"over", d.over.millionths}, {"source", d.source}, {"evidence", d.evidence}};
    if (!d.grade.empty()) j["grade"] = as->second;
    if (d.upto) j["upto"] = d.upto->millionths;
    if (d.above) j["above"] = d.above->millionths, j["above_places"] = d.above->places;
    if (d.below) j["below"] = d.below->millionths, j["below_places"] = d.below->places;
    all.push_back(j);
  }
  return all;
}

struct Judging : ShopTest {
  Json Document(const std::string& number, const std::string& type = "3.1") {
    return {{"issuer", "Vandrek"},
            {"number", number},
            {"type", type},
            {"issued_on", "2026-01-02"},
            {"lots", Json::array({{{"heat", "R5512"}, {"section", Round(50)}, {"condition", ""}, {"grade", "1.4404"}}})}};
  }
  const Bars stainless{.heat = "R5512", .grade = "1.4404", .condition = "", .length = 4000, .count = 6, .round = 50};
  static Json By(const std::string& whom) { return {{"name", "A. Moor"}, {"position", "inspector"}, {"for", whom}}; }
};

// Limits and deviations as published (seed/reference names the standard of each), and how far each is known.
TEST_F(Judging, TheBookAndTheProgramAgreeOnRandomAnalysesOfHeatAndProduct) {
  const papers::Known known = papers::ProgramLimits();
  // program's grade -> the small shop's: of EN 10025-2, EN 10083-2, EN 10083-3, ASTM A29 Table 1 with and without deviations, EN 573-3
  for (const std::map<std::string, std::string>& grades :
       {std::map<std::string, std::string>{{"S355J2", "42CrMo4"}, {"C45E", "C45E"}, {"EN AW-6061", "1.4404"}},
        std::map<std::string, std::string>{{"42CrMo4", "42CrMo4"}, {"1215", "C45E"}, {"1045", "1.4404"}}}) {
    SmallShop book;
    for (const auto& [grade, as] : grades) DoBody(book.quality, "define_limits", LimitsJson(known.limits, grade, as));
    DoBody(book.quality, "define_limits", DeviationsJson(known.deviations, grades));
    std::mt19937 random(12);
    int wrong = 0, missing = 0, allowed = 0;
    for (int i = 0; i < 1200; ++i) {
      const bool rounds = i >= 600, product = i % 2 == 1;
      if (i % 600 == 0) Do(book.owner, "set_rules", {Json{{"settings", {{"judging_by_rounding", rounds ? "yes" : "no"}}}}.dump()});
      const auto at = std::next(grades.begin(), i % 3);
      papers::Question q{at->first,
                         {},
                         product,
                         Length{static_cast<std::int64_t>(random() % 300 + 1) * kNmPerMm},
                         rounds ? papers::Method::HalfEven : papers::Method::Absolute};
      Json values = Json::object();
      for (const GradeLimit& l : known.limits) {
        if (l.grade != q.grade || !IsElement(l.what) || values.contains(l.what) || random() % 12 == 0) continue;
        const std::int64_t bound = l.least && random() % 3 == 0 ? l.least->millionths : l.most ? l.most->millionths : 1'000'000;
        const std::int64_t near = bound + (static_cast<std::int64_t>(random() % 81) - 40) * 500;
        values[l.what] = random() % 3 == 0 ? std::max<std::int64_t>(near, 0) : bound * 9 / 10;
      }
      for (const char* e : {"Cr", "Mo", "V", "Ni", "Cu"}) {
        if (!values.contains(e) && random() % 6 != 0) values[e] = static_cast<std::int64_t>(random() % 90'000);
      }
      for (const auto& [e, v] : values.items()) q.analysis.push_back({e, v.get<std::int64_t>()});
      const papers::Answer answer = CheckHeat(q, known);
      q.product = false;
      const papers::Answer as_heat = CheckHeat(q, known);
      std::map<std::string, std::string> ours, books;
      for (const auto* lines : {&answer.elements, &answer.sums}) {
        for (const papers::Line& l : *lines) {
          const auto text = [](const std::optional<Bound>& b) { return b ? BoundText({b->millionths, 6}) : std::string("-"); };
          if (l.verdict != papers::Verdict::NotLimited)
            ours[l.what] = std::string(papers::VerdictText(l.verdict)) + " " + text(l.below) + " " + text(l.above);
          wrong += l.verdict == papers::Verdict::High || l.verdict == papers::Verdict::Low ? 1 : 0;
          missing += l.verdict == papers::Verdict::Missing ? 1 : 0;
        }
      }
      for (std::size_t e = 0; e < answer.elements.size(); ++e) allowed += answer.elements[e].verdict != as_heat.elements[e].verdict ? 1 : 0;
      const Result rows =
          book.admin.Execute("select what, verdict, below, above from guard.judged(guard.grade($1), $2::bigint, $3::jsonb, $4)",
                             {at->second, q.size->nm, values.dump(), product});
      for (const auto& row : rows) {
        const auto text = [&](const char* column) { return row.IsNull(column) ? std::string("-") : BoundText({row.Int(column), 6}); };
        books[row.Text("what")] = row.Text("verdict") + " " + text("below") + " " + text("above");
      }
      ASSERT_EQ(ours, books) << q.grade << " " << q.size->nm << " " << values << (product ? " product" : " heat");
    }
    EXPECT_GT(wrong, 200);
    EXPECT_GT(missing, 100);
    EXPECT_GT(allowed, 30);  // what a heat may not have and a product may
  }
}

// What the book says of these tests, and what the program does: "Rm low 1000-1200; ...", by property.
struct BothSay {
  std::multiset<std::string> book, program;
};
BothSay Both(SmallShop& shop, const papers::TestQuestion& q, const std::vector<MechanicalLimit>& limits) {
  const auto words = [](const std::string& what, const std::string& verdict, const std::string& least, const std::string& most) {
    return what + " " + verdict + " " + least + "-" + most;
  };
  BothSay both;
  Json tests = Json::array();
  for (const papers::TestValue& v : q.values) tests.push_back({{"property", v.property}, {"value_milli", v.millionths / 1000}});
  for (const papers::Line& l : papers::CheckTests(q, limits)) {
    const auto text = [](const std::optional<Bound>& b) { return b ? std::to_string(b->millionths) : std::string(); };
    both.program.insert(words(l.what, std::string(papers::VerdictText(l.verdict)), text(l.least), text(l.most)));
  }
  for (const auto& row : shop.admin.Execute("select * from guard.judged_tests(guard.grade($1), $2, $3::bigint, $4::jsonb)",
                                            {q.grade, q.condition, q.size ? std::optional(q.size->nm) : std::nullopt, tests.dump()})) {
    const auto text = [&](const char* column) { return row.IsNull(column) ? std::string() : std::to_string(row.Int(column)); };
    both.book.insert(words(row.Text("what"), row.Text("verdict"), text("at_least"), text("at_most")));
  }
  return both;
}

// Every published minimum and range of the program's table, asked at the value itself and a thousandth of the unit beside it, at the
// ends of its sizes; by both methods.
TEST_F(Judging, TheBookAndTheProgramAgreeOnEveryPublishedMechanicalLimit) {
  const std::vector<MechanicalLimit> all = papers::ProgramMechanical();
  std::set<std::string> names;
  for (const MechanicalLimit& l : all) {
    if (!names.insert(l.grade).second || l.grade == "42CrMo4" || l.grade == "C45E" || l.grade == "X2CrNiMo17-12-2") continue;
    DoBody(shop.owner, "define_grade",
           Json::array({{{"designation", l.grade},
                         {"family", "steel"},
                         {"standard", "EN"},
                         {"density_kg_m3", 7850},
                         {"density_source", "nominal"},
                         {"source", "EN"},
                         {"evidence", "none"}}}));
  }
  EXPECT_EQ(DoBody(shop.quality, "define_limits", TestLimitsJson(all, {names.begin(), names.end()})).at("added"),
            static_cast<int>(all.size()));
  int low = 0, high = 0, ok = 0;
  for (const bool rounds : {false, true}) {
    Do(shop.owner, "set_rules", {Json{{"settings", {{"judging_by_rounding", rounds ? "yes" : "no"}}}}.dump()});
    for (const MechanicalLimit& l : all) {
      for (const std::optional<Bound>& bound : {l.least, l.most}) {
        if (!bound) continue;
        for (const std::int64_t beside : {-1'000'000, -500'000, -1'000, 0, 1'000, 500'000, 1'000'000}) {
          const Length size = l.sizes.upto && beside % 1'000'000 == 0 ? *l.sizes.upto : l.sizes.over + Length{1};
          const papers::TestQuestion q{l.grade,
                                       l.condition,
                                       size,
                                       {{l.property, bound->millionths + beside}},
                                       rounds ? papers::Method::HalfEven : papers::Method::Absolute};
          const BothSay both = Both(shop, q, all);
          ASSERT_EQ(both.book, both.program) << l.grade << l.condition << " " << l.property << " " << size.nm;
          for (const std::string& words : both.book) {
            low += words.find(" low ") != std::string::npos ? 1 : 0;
            high += words.find(" high ") != std::string::npos ? 1 : 0;
            ok += words.find(" ok ") != std::string::npos ? 1 : 0;
          }
        }
      }
    }
  }
  EXPECT_GT(low, 400);
  EXPECT_GT(high, 50);
  EXPECT_GT(ok, 600);
}

TEST_F(Judging, TheBookAndTheProgramAgreeWhereSizeOrConditionOrLimitIsNotKnown) {
  std::vector<MechanicalLimit> limits;
  for (const MechanicalLimit& l : papers::ProgramMechanical())
    if (l.grade == "42CrMo4" || l.grade == "X2CrNiMo17-12-2") limits.push_back(l);
  limits.push_back({"42CrMo4", "", {}, "Rm", ReadBound("500"), {}, "invented", "", ""});  // for any condition that has none of its own
  DoBody(shop.quality, "define_limits", TestLimitsJson(limits, {"42CrMo4", "X2CrNiMo17-12-2"}));
  std::mt19937 random(7);
  std::set<std::string> verdicts;
  for (int i = 0; i < 400; ++i) {
    papers::TestQuestion q{i % 3 == 0       ? "X2CrNiMo17-12-2"
                               : i % 3 == 1 ? "42CrMo4"
                                            : "C45E",
                           random() % 3 == 0       ? ""
                               : random() % 2 == 0 ? "+QT"
                                                   : "+AT",
                           {},
                           {},
                           papers::Method::Absolute};
    if (random() % 4 != 0) q.size = Length{static_cast<std::int64_t>(random() % 400 + 1) * kNmPerMm};
    for (const char* property : {"Rm", "Re", "A", "Rm"})
      if (random() % 3 != 0) q.values.push_back({property, static_cast<std::int64_t>(random() % 1300) * 1'000'000});
    const BothSay both = Both(shop, q, limits);
    ASSERT_EQ(both.book, both.program) << q.grade << q.condition << " " << (q.size ? q.size->nm : -1);
    for (const std::string& words : both.book) verdicts.insert(words.substr(words.find(' ') + 1, words.rfind(' ') - words.find(' ') - 1));
  }
  EXPECT_EQ(verdicts, (std::set<std::string>{"high", "low", "missing", "not limited", "ok"}));
}

// C 0.034 % where EN 10088-3 (from memory) has at most 0.030: nothing is released, all of it is held, in words.
TEST_F(Judging, AcceptingAWrongAnalysisHoldsItsMetal) {
  DoBody(shop.quality, "define_limits",
         Json::array({{{"grade", "1.4404"}, {"element", "C"}, {"most", 30000}, {"source", "EN 10088-3, from memory"}}}));
  shop.Receive(stainless);
  Json document = Document("C1");
  document["lots"][0]["heat_analysis"] = {{"C", 34000}};
  DoBody(shop.clerk, "file_papers", document);
  const Json answer = DoBody(shop.quality, "accept_document", {{"issuer", "Vandrek"}, {"number", "C1"}});
  EXPECT_EQ(
      answer.at("words"),
      "the document is not accepted: heat R5512: C 0.034 %, X2CrNiMo17-12-2 allows at most 0.03; its metal is held by hold 1 until that is lifted");
  EXPECT_EQ(shop.Word("select scope || ' ' || ref || ': ' || reason as w from api.holds where lifted_by is null"),
            "certificate C1: heat R5512: C 0.034 %, X2CrNiMo17-12-2 allows at most 0.03");
  EXPECT_EQ(shop.Number("select count(*) as n from api.waiting_for_papers"), 6);
  EXPECT_EQ(shop.Number("select count(*) as n from api.candidates"), 0);
  EXPECT_EQ(shop.Word("select words as w from api.refusals"), answer.at("words"));
}

TEST_F(Judging, WhoValidatedItMakesTheType_HK042) {
  shop.Receive(stainless);
  Json three_two = Document("C1", "3.2");
  const auto filed = [&](Json by) {
    three_two["validated_by"] = std::move(by);
    return Code([&] { DoBody(shop.quality, "file_document", three_two); });
  };
  EXPECT_EQ(filed(Json::array()), "HK042");
  EXPECT_EQ(filed(Json::array({By("independent")})), "HK042");
  EXPECT_EQ(filed(Json::array({By("purchaser"), By("manufacturer")})), "HK042");
  EXPECT_EQ(filed(Json::array({By("independent"), By("nobody")})), "HK026");
  EXPECT_EQ(filed(Json::array({By("independent"), By("official")})), "");
  Json three_one = Document("C2");
  three_one["validated_by"] = Json::array({By("manufacturer")});
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "file_document", three_one); }), "HK042");
  Do(shop.owner, "set_rules", {R"({"settings": {"validators_named": "yes"}})"});
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "file_document", Document("C2")); }), "HK042");
  three_one["validated_by"] = Json::array({By("independent")});
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "file_document", three_one); }), "");
}

TEST_F(Judging, A22NeverBecomesA31AndA21HasNoResults_HK042) {
  shop.Receive(stainless);
  DoBody(shop.quality, "file_document", Document("C1", "2.2"));
  Json better = Document("C1", "3.1");
  better["reason"] = "please";
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "replace_document", better); }), "HK042");
  Json declared = Document("C2", "2.1");
  declared["lots"][0]["heat_analysis"] = {{"C", 20000}};
  EXPECT_EQ(Code([&] { DoBody(shop.quality, "file_document", declared); }), "HK042");
}

TEST_F(Judging, TheFileIsRecognisedByWhatIsInIt_HK026) {
  shop.Receive(stainless);
  const auto filed = [&](const std::string& base64) {
    Json d = Document("C1");
    d["file_base64"] = base64;
    return Code([&] { DoBody(shop.quality, "file_document", d); });
  };
  EXPECT_EQ(filed("aGVhdA=="), "HK026");              // "heat"
  EXPECT_EQ(filed("JVBERi0xLjQKaGVhdAo="), "HK026");  // a PDF without its end
  Do(shop.owner, "set_rules", {R"({"settings": {"document_mb": 0}})"});
  EXPECT_EQ(filed(SmallPng()), "HK026");
  Do(shop.owner, "set_rules", {R"({"settings": {"document_mb": 1}})"});
  EXPECT_EQ(filed(SmallPng()), "");
  EXPECT_EQ(shop.Word("select guard.document_media('\\xffd8ffe0') || guard.document_media('\\x49492a0008') as w"), "image/jpegimage/tiff");
}

TEST_F(Judging, ADocumentIsPassedOnUnalteredAndOnlyWithItsOwnMetal) {
  const auto tags = shop.Receive(stainless);
  Json document = Document("C1");
  shop.AddLine({.length = 250, .quantity = 10, .grade = "1.4404", .round = 50});
  Json body{{"issuer", "Vandrek"}, {"number", "C1"}, {"note", "D1"}, {"rule", "EN 10204"}, {"form", "copy"}};
  const auto code = [&] { return Code([&] { DoBody(shop.quality, "pass_on_document", body); }); };
  DoBody(shop.quality, "file_document", document);
  shop.Record(tags[0], {Trim(), Good(10, 250)}, DropLeft(1468));
  EXPECT_EQ(code(), "HK026");  // no such shipment
  shop.Ship("D1", 10);
  EXPECT_EQ(code(), "HK043");  // a copy of nothing
  document["file_base64"] = SmallPng();
  document["reason"] = "the file itself";
  DoBody(shop.quality, "replace_document", document);
  const std::string words = DoBody(shop.quality, "pass_on_document", body).at("words");
  EXPECT_TRUE(words.starts_with("Copy of 3.1 no. C1 version 2 of Vandrek, unaltered (file SHA-256 ")) << words;
  EXPECT_NE(words.find("Delivered under note D1: heat R5512: 10 pieces of 250 mm (order O1 line 10)."), std::string::npos) << words;
  body["rule"] = "ISO 10474";
  EXPECT_EQ(code(), "HK026");  // no additional document
  body["additional"] = "OS-12";
  EXPECT_EQ(code(), "");
  EXPECT_EQ(shop.Number("select count(*) as n from api.documents_passed"), 2);
  shop.ReceiveCertified({});
  body["number"] = shop.Word("select number as w from api.documents where heat = 'M2208'");
  body["form"] = "original";
  EXPECT_EQ(code(), "HK042");  // of another heat
}

}  // namespace
}  // namespace heatkeep
