// Over a shift at the saw: the first piece, the bar left in the vice, defects and half cuts, other metal with consent,
// bands and what they have cut.
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct SawShift : ShopTest {
  void SetUp() override {
    tags = shop.ReceiveCertified({.count = 3});
    shop.AddLine({.quantity = 28, .minus = 1, .plus = 1});
  }
  Json SawDeed(const char* deed, Json body) {
    body["saw"] = "1";
    return Do(shop.saw, deed, {body.dump()});
  }
  std::vector<std::string> tags;
};

TEST_F(SawShift, TheFirstPieceIsMeasuredAndTheStopIsMoved) {
  const auto first = [&](std::int64_t nm) { return SawDeed("first_piece", {{"order", "O1"}, {"line", "10"}, {"measured_nm", nm}}); };
  EXPECT_TRUE(first(Mm(290)).at("good"));
  EXPECT_EQ(first(290'400'000).at("off_nm"), 400'000);
  const Json bad = first(Mm(292));
  EXPECT_FALSE(bad.at("good"));
  EXPECT_EQ(bad.at("words"), "outside the tolerance: move the stop by -2 mm and book the piece as a reject");
  EXPECT_EQ(Code([&] { first(0); }), "HK026");
  EXPECT_EQ(shop.Number("select count(*) as n from api.first_pieces where good"), 2);
}

TEST_F(SawShift, ABarLeftInTheViceIsHandedOverWithEveryOpenPieceExplained) {
  shop.Fetch(tags[0], {{.count = 14}});
  shop.Record(tags[0], {Trim(), Good(9, 290)});
  EXPECT_EQ(Code([&] { SawDeed("hand_over", {{"words", "end of shift"}}); }), "HK026");  // what is in the vice?
  const DbError open = Refusal([&] { SawDeed("hand_over", {{"tag", tags[0]}, {"words", "end of shift"}}); });
  EXPECT_EQ(open.message, "still open on " + tags[0] + ": 5 of order O1 line 10; say why");
  const Json given = SawDeed(
      "hand_over", {{"tag", tags[0]}, {"words", "end of shift"}, {"open", {{{"order", "O1"}, {"line", "10"}, {"why", "no time left"}}}}});
  EXPECT_EQ(given.at("length_nm"), Mm(5988 - 9 * 292));
  EXPECT_EQ(given.at("open").at(0).at("count"), 5);
  EXPECT_EQ(Code([&] { SawDeed("hand_over", {{"words", "again"}}); }), "HK043");
  Connection next = shop.book.As("all");
  const Json taken = Do(next, "take_over", {"1"});
  EXPECT_EQ(taken.at("tag"), tags[0]);
  EXPECT_EQ(taken.at("done").at(0).at("count"), 9);
  EXPECT_EQ(taken.at("given_by"), "test_saw");
  EXPECT_EQ(shop.Word("select given_by || ' ' || taken_by as w from api.handovers"), "test_saw test_all");
  EXPECT_EQ(Code([&] { Do(next, "take_over", {"1"}); }), "HK043");
  shop.Record(tags[0], Good(5, 290), DropLeft(1900));
  EXPECT_EQ(shop.Balance("M2208", "unexplained"), 0);
}

// After five pieces the face shows pipe; the fifth is rejected, two crops of 150, eight more, a rest of 458 "from piped
// bar". The lead answers before the next bar of the heat is cut.
TEST_F(SawShift, AfterADefectNoOtherBarOfTheHeatIsPulledUntilTheLeadAnswers) {
  const auto bars = shop.ReceiveCertified({.heat = "T900", .count = 2, .round = 100});
  shop.AddLine({.line = "p", .length = 400, .quantity = 24, .round = 100});
  shop.Promise(bars[1], {{.count = 12, .length = 400, .line = "p"}});
  shop.Fetch(bars[0], {{.count = 12, .length = 400, .line = "p"}});
  shop.Record(bars[0], {Trim(), Good(4, 400, "p"), Fault("reject", 400, "pipe")});
  const Json report =
      Do(shop.saw, "report_defect",
         {Json({{"tag", bars[0]}, {"kind", "pipe"}, {"at_nm", 0}, {"to_nm", Mm(302)}, {"words", "pipe on the face"}}).dump()});
  EXPECT_EQ(report.at("suspect"), Json::array({bars[1]}));
  EXPECT_EQ(shop.Word("select words as w from api.conflicts where kind = 'defect in the heat'"),
            "pipe in " + bars[0] + " at 0 mm from the first end: pipe on the face");
  const auto pull = [&] { return Do(shop.saw, "pull", {bars[1], "2"}); };
  EXPECT_EQ(pull().at("refused"), "HK045");
  shop.Record(bars[0], Fault("crop", 150, "pipe", 2));
  const Json done = shop.Record(bars[0], Good(8, 400, "p"), DropLeft(458));
  EXPECT_EQ(done.at("label").at("from"), "from piped bar");
  for (const auto& [word, mm] : std::vector<std::pair<std::string, std::int64_t>>{
           {"on site", 4800}, {"reject", 400}, {"crop", 300}, {"trim", 10}, {"kerf", 32}, {"on hand", 6458}, {"received", 12000}})
    EXPECT_EQ(shop.Balance("T900", word), Mm(mm)) << word;
  EXPECT_EQ(shop.Number("select count(*) as n from api.candidates where tag = $1", {done.at("drop_tag").get<std::string>()}), 0);
  Do(shop.planner, "answer_defect", {report.at("report").get<int>(), "stop", "quality looks at it"});
  EXPECT_EQ(pull().at("refused"), "HK045");
  EXPECT_EQ(Code([&] { Do(shop.planner, "answer_defect", {report.at("report").get<int>(), "maybe", "x"}); }), "HK026");
  EXPECT_EQ(shop.Number("select count(*) as n from api.conflicts where closed_by is null and kind = 'defect in the heat'"), 1)
      << "a stop closes nothing";
  EXPECT_EQ(Do(shop.quality, "answer_defect", {report.at("report").get<int>(), "cut on", "only the end of that bar"}).at("open"), nullptr);
  EXPECT_EQ(shop.Word("select closed_by || ': ' || closing_words as w from api.conflicts where kind = 'defect in the heat'"),
            "test_quality: cut on: only the end of that bar");
  EXPECT_EQ(pull().value("tag", ""), bars[1]);
  EXPECT_EQ(Code([&] { Do(shop.planner, "answer_defect", {report.at("report").get<int>(), "stop", "late"}); }), "HK043");
}

TEST_F(SawShift, AnotherBarCutBeforeTheAnswerIsRecordedAndRaisesAConflict) {
  Do(shop.saw, "report_defect",
     {Json({{"tag", tags[0]}, {"kind", "crack"}, {"at_nm", Mm(100)}, {"from_end", "last"}, {"words", "seen in the rack"}}).dump()});
  shop.Record(tags[1], {Trim(), Good(14, 290)}, DropLeft(1900));
  EXPECT_EQ(shop.Number("select count(*) as n from api.conflicts where kind = 'cut before the lead answered'"), 1);
  EXPECT_EQ(Code([&] {
              Do(shop.saw, "report_defect", {Json({{"tag", tags[0]}, {"kind", "hole"}, {"at_nm", 0}, {"words", "w"}}).dump()});
            }),
            "HK026");
  EXPECT_EQ(Code([&] {
              Do(shop.saw, "report_defect",
                 {Json({{"tag", tags[0]}, {"kind", "pipe"}, {"at_nm", Mm(5999)}, {"to_nm", Mm(6001)}, {"words", "w"}}).dump()});
            }),
            "HK034");
}

TEST_F(SawShift, NothingIsPlannedAcrossAHalfCut) {
  shop.Fetch(tags[0], {{.count = 14}});
  shop.Record(tags[0], {Trim(), Good(4, 290)});
  const Json half = SawDeed("report_half_cut", {{"tag", tags[0]}, {"at_nm", Mm(290)}, {"kerf_nm", Mm(2)}, {"cause", "blade broke"}});
  EXPECT_EQ(half.at("crop_nm"), Mm(290));
  EXPECT_EQ(shop.Word("select from_nm || ' ' || to_nm || ' ' || kind as w from api.defect_zones"), "290000000 292000000 half cut");
  SawDeed("fit_band", {{"width_nm", Mm(34)}, {"thickness_nm", 1'100'000}, {"kerf_nm", Mm(2)}, {"reason", "broke"}});
  // a good piece across it is a fact and a conflict; the crop takes the zone away
  shop.Record(tags[0], Good(1, 291, "10", "O1"));
  EXPECT_EQ(shop.Number("select count(*) as n from api.conflicts where kind = 'good piece across a defect'"), 1);
  EXPECT_EQ(shop.Number("select count(*) as n from api.defect_zones"), 0);

  SawDeed("report_half_cut", {{"tag", tags[1]}, {"at_nm", Mm(500)}, {"kerf_nm", Mm(2)}, {"cause", "bar slipped"}});
  EXPECT_EQ(Code([&] { shop.Promise(tags[1], {{.count = 1}}); }), "HK042");
  EXPECT_EQ(shop.Number("select count(*) as n from api.candidates where tag = $1", {tags[1]}), 0);
  shop.Record(tags[1], Fault("crop", 505, "half cut"));
  const std::string rest = shop.Record(tags[1], Json::array(), DropLeft(5493)).at("drop_tag");
  EXPECT_EQ(shop.Number("select count(*) as n from api.candidates where tag = $1", {rest}), 1);
  EXPECT_EQ(Code([&] { SawDeed("report_half_cut", {{"tag", rest}, {"at_nm", Mm(5)}, {"kerf_nm", Mm(2)}, {"cause", "lunch"}}); }), "HK026");
}

// A crack is in the metal, whatever tag it lies under.
TEST_F(SawShift, ADefectZoneGoesOnWithTheMetalUnderEveryNewTag) {
  const auto zones = [&](const std::string& tag) {
    return shop.Word(
        "select string_agg(from_nm / 1000000 || '-' || to_nm / 1000000 || ' ' || kind, ', ' order by from_nm) as w from api.defect_zones where tag = $1",
        {tag});
  };
  const auto candidate = [&](const std::string& tag) {
    return shop.Number("select count(*) as n from api.candidates where tag = $1", {tag});
  };
  const auto crack = [&](const std::string& tag, std::int64_t from, std::int64_t to) {
    const Json report = Do(shop.saw, "report_defect",
                           {Json({{"tag", tag}, {"kind", "crack"}, {"at_nm", Mm(from)}, {"to_nm", Mm(to)}, {"words", "seen"}}).dump()});
    Do(shop.planner, "answer_defect", {report.at("report").get<int>(), "cut on", "only that bar"});
  };
  shop.AddLine({.line = "20", .length = 1000, .quantity = 20});
  crack(tags[0], 4000, 4200);
  const std::string drop = shop.Record(tags[0], Good(1, 1000, "20"), DropLeft(4998)).at("drop_tag");
  EXPECT_EQ(zones(drop), "2998-3198 crack");
  EXPECT_EQ(candidate(drop), 0);
  EXPECT_EQ(zones(tags[0]), "");
  // another lot, another tag, the same crack
  const std::string nameless =
      Do(shop.quality, "downgrade", {Json({{"tag", drop}, {"to", "grade only"}, {"reason", "the mark is gone"}}).dump()}).at("new_tag");
  EXPECT_EQ(zones(nameless), "2998-3198 crack");
  EXPECT_EQ(candidate(nameless), 0);
  shop.Record(nameless, Good(4, 1000, "20"), DropLeft(990));
  EXPECT_EQ(shop.Number("select count(*) as n from api.conflicts where kind = 'good piece across a defect'"), 1);

  // parts that are split off, each with what lies in it
  crack(tags[1], 3990, 4010);
  const auto part = [](std::int64_t mm) { return Json{{"length_nm", Mm(mm)}, {"place", "B1-1"}, {"heat", "M2208"}}; };
  const Json split =
      Do(shop.clerk, "split_piece",
         {Json({{"tag", tags[1]}, {"saw", "1"}, {"kerf_nm", Mm(2)}, {"parts", {part(1998), part(1998), part(2000)}}}).dump()});
  EXPECT_EQ(zones(split.at("stock_tags").at(0)), "");
  EXPECT_EQ(zones(split.at("stock_tags").at(1)), "1990-1998 crack");
  EXPECT_EQ(zones(split.at("drop_tag")), "0-10 crack");

  // a reject taken up again; and a rest that measures 2 less than the arithmetic: nobody knows at which end
  crack(tags[2], 1500, 1520);
  crack(tags[2], 3000, 3100);
  const Json cut = shop.Record(tags[2], {Good(1, 1000, "20"), Fault("reject", 995, "crack")}, DropLeft(3999));
  EXPECT_EQ(zones(cut.at("drop_tag")), "999-1101 crack");
  const Json reuse{
      {"reject", cut.at("rejects").at(0)}, {"length_nm", Mm(995)}, {"place", "B1-2"}, {"heat", "M2208"}, {"reason", "half of it will do"}};
  EXPECT_EQ(zones(Do(shop.planner, "reuse_reject", {reuse.dump()}).at("tag")), "498-518 crack");
}

TEST_F(SawShift, OtherMetalIsCutOnlyWithTheCustomersConsentInWriting) {
  const std::string big = shop.ReceiveCertified({.heat = "B85", .round = 85}).at(0), weak = shop.Receive({.heat = "W1"}).at(0);
  shop.Certify("W1", {}, "2.2");
  const auto consent = [&](Json body) {
    body.update({{"order", "O1"}, {"line", "10"}});
    return Do(shop.planner, "record_consent", {body.dump()});
  };
  const Json word{{"agreed_by", "Ms Alder"}, {"writing", "mail of 4 March"}, {"cost_cents", 1400}};
  Json size = word, papers = word;
  size["section"] = Round(85);
  papers.update({{"papers", "2.2"}, {"count", 4}});
  EXPECT_EQ(Code([&] { shop.Promise(big, {{.count = 1}}); }), "HK042");
  EXPECT_EQ(Code([&] { consent({{"section", Round(85)}, {"agreed_by", "x"}, {"cost_cents", 0}}); }), "HK026");
  EXPECT_EQ(Code([&] { consent(word); }), "HK026");
  EXPECT_FALSE(consent(size).at("needs_quality"));
  EXPECT_TRUE(shop.Promise(big, {{.count = 1}}).contains("plan"));
  const Json weaker = consent(papers);
  EXPECT_TRUE(weaker.at("needs_quality"));
  EXPECT_EQ(Code([&] { shop.Promise(weak, {{.count = 4}}); }), "HK042");
  Do(shop.quality, "sign_consent", {weaker.at("consent").get<int>()});
  EXPECT_EQ(Code([&] { Do(shop.quality, "sign_consent", {weaker.at("consent").get<int>()}); }), "HK043");
  EXPECT_EQ(Code([&] { shop.Promise(weak, {{.count = 5}}); }), "HK042");  // he takes four of them
  EXPECT_TRUE(shop.Promise(weak, {{.count = 4}}).contains("plan"));
}

TEST_F(SawShift, ABandCountsWhatItHasCutAndHowOftenItWasOutOfSquare) {
  const auto fit = [&](std::int64_t kerf_um, Json more) {
    more.update({{"kerf_nm", kerf_um * 1000}, {"reason", "worn"}});
    return SawDeed("fit_band", more);
  };
  const Json size{{"width_nm", Mm(41)}, {"thickness_nm", 1'300'000}};
  EXPECT_EQ(Code([&] { fit(1200, size); }), "HK026");  // narrower than the band is thick
  EXPECT_EQ(fit(2100, size).at("band"), "41 x 1.3");
  const auto worn = [&] { return shop.saw.Execute("select * from api.saw_bands where saw = '1'").Only(); };
  EXPECT_EQ(worn().Int("cuts"), 0);
  shop.Record(tags[0], {Trim(), Good(3, 290), Fault("reject", 290, "out of square by 0.6"), Good(1, 290)});
  Row band = worn();
  EXPECT_EQ(band.Int("cuts"), 6);
  EXPECT_EQ(band.Text("area_um2"), std::to_string(6LL * 5'026'548'246));  // pi/4 80^2 mm2 a cut
  EXPECT_EQ(band.Int("out_of_square"), 1);
  EXPECT_EQ(band.Text("area_to_first_um2"), std::to_string(5LL * 5'026'548'246));
  fit(2200, Json::object());  // the kerf measured anew on the same band
  shop.Record(tags[0], Good(1, 290));
  EXPECT_EQ(worn().Int("cuts"), 7);
  EXPECT_EQ(worn().Int("kerf_nm"), 2'200'000);
  fit(2100, size);
  EXPECT_EQ(worn().Int("cuts"), 0);
}

TEST_F(SawShift, ASawTakesWhatItsCapacityForTheShapeSays) {
  const Json capacity{{"saw", "1"},
                      {"stop_stroke_nm", Mm(500)},
                      {"cents_per_hour", 4500},
                      {"capacity", {{{"shape", "round"}, {"width_nm", Mm(70)}, {"height_nm", Mm(70)}}}}};
  Do(shop.owner, "set_saw", {capacity.dump()});
  const DbError no = Refusal([&] { shop.Promise(tags[0], {{.count = 1}}); });
  EXPECT_EQ(no.sqlstate, "HK042");
  EXPECT_NE(no.message.find("saw 1 takes a round of 70 x 70 mm"), std::string::npos) << no.message;
  EXPECT_TRUE(shop.Promise(tags[0], {{.count = 1}}, "2").contains("plan"));
}

TEST_F(SawShift, ASawsOwnRateGoesBeforeTheShopsAndThatBeforeTheOneThatShips) {
  const auto rate = [&](const std::string& family) {
    return shop.Word("select mm2_per_min || ' ' || source as w from guard.rate((select saw_id from book.saw where name = '1'), $1)",
                     {family});
  };
  EXPECT_EQ(rate("alloy steel"), "4500 common practice, no source");
  Do(shop.owner, "set_rules", {R"({"rates": [{"family": "alloy steel", "mm2_per_min": 4000}]})"});
  EXPECT_EQ(rate("alloy steel"), "4000 the shop's own");
  Do(shop.owner, "set_rules",
     {R"({"rates": [{"saw": "1", "family": "alloy steel", "mm2_per_min": 3800}, {"family": "ours", "mm2_per_min": 900}]})"});
  EXPECT_EQ(rate("alloy steel"), "3800 the shop's own");
  EXPECT_EQ(rate("ours"), "900 the shop's own");
  EXPECT_EQ(shop.Number("select count(*) as n from api.shipped_rates where source like 'common practice, no source%'"), 9);
}

}  // namespace
}  // namespace heatkeep
