// The queue of labels: every new tag has one, printed or failed with the reason; again only at the piece.
#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

struct Labels : ShopTest {
  std::int64_t Job(const std::string& tag) { return shop.Number("select max(job) as n from api.label_queue where tag = $1", {tag}); }
  std::int64_t Waiting() { return shop.Number("select count(*) as n from api.label_queue where state <> 'printed'"); }
};

TEST_F(Labels, EveryNewTagIsAJobAndWhatIsCutUpNeedsNoneAnyMore) {
  const auto tags = shop.ReceiveCertified({.count = 2});
  EXPECT_EQ(Waiting(), 2);
  EXPECT_EQ(shop.Word("select distinct kind || ', ' || why || ', ' || asked_by || ', ' || state as w from api.label_queue"),
            "new, new tag, test_clerk, waiting");
  shop.AddLine({});
  const std::string drop = shop.Record(tags[0], {Trim(), Good(14, 290)}, DropLeft(1900)).at("drop_tag");
  EXPECT_EQ(Waiting(), 2) << "the drop's for the bar's";
  EXPECT_EQ(shop.Word("select asked_by as w from api.label_queue where tag = $1", {drop}), "test_saw");
}

TEST_F(Labels, AFailedOneStaysWithItsReasonUntilItIsPrinted) {
  const std::string tag = shop.Receive({}).at(0);
  const std::int64_t job = Job(tag);
  DoBody(shop.saw, "label_failed", {{"job", job}, {"printer", "saw 1"}, {"reason", "no ribbon"}});
  EXPECT_EQ(shop.Word("select state || ' at ' || printer || ': ' || words as w from api.label_queue"), "failed at saw 1: no ribbon");
  EXPECT_EQ(DoBody(shop.clerk, "label_printed", {{"jobs", {job}}, {"printer", "gate"}}).at("waiting"), 0);
  EXPECT_EQ(shop.Word("select state || ' at ' || printer || coalesce(words, '') as w from api.label_queue"), "printed at gate");
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "label_printed", {{"jobs", {job}}, {"printer", "gate"}}); }), "HK043");
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "label_failed", {{"job", job}, {"printer", "gate"}, {"reason", "faint"}}); }), "HK043");
}

TEST_F(Labels, ALabelAskedForAgainAtThePieceIsAJobOfItsOwn) {
  const std::string tag = shop.Receive({}).at(0);
  DoBody(shop.clerk, "label_printed", {{"jobs", {Job(tag)}}, {"printer", "gate"}});
  DoBody(shop.clerk, "reprint_label", {{"tag", tag}, {"why", "torn"}, {"old_destroyed", true}, {"scanned", tag}});
  EXPECT_EQ(shop.Word("select string_agg(kind || ' ' || why || ' ' || state, ', ' order by job) as w from api.label_queue"),
            "new new tag printed, again torn waiting");
}

TEST_F(Labels, RefusesWhatNamesNoJobPrinterOrReasonAndOneBadNumberPrintsNone) {
  const std::int64_t job = Job(shop.Receive({}).at(0));
  const auto printed = [&](Connection& who, const Json& body) { return Code([&] { DoBody(who, "label_printed", body); }); };
  EXPECT_EQ(printed(shop.clerk, {{"jobs", Json::array()}, {"printer", "gate"}}), "HK026");
  EXPECT_EQ(printed(shop.clerk, {{"jobs", {job}}}), "HK026");
  EXPECT_EQ(printed(shop.clerk, {{"jobs", {job, 4711}}, {"printer", "gate"}}), "HK026");
  EXPECT_EQ(Waiting(), 1);
  for (Connection* who : {&shop.planner, &shop.quality, &shop.owner})
    EXPECT_EQ(printed(*who, {{"jobs", {job}}, {"printer", "gate"}}), "42501");
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "label_failed", {{"job", job}, {"printer", "gate"}}); }), "HK026");
}

TEST_F(Labels, WhatIsToBePrintedSaysHeatMillLimitsAndWhyItIsNotToBeUsedEachForItself) {
  const auto tags = shop.ReceiveCertified({.count = 2});
  DoBody(shop.clerk, "label_printed", {{"jobs", {Job(tags[0])}}, {"printer", "gate"}});
  DoBody(shop.clerk, "reprint_label", {{"tag", tags[0]}, {"why", "torn"}, {"old_destroyed", true}, {"scanned", tags[0]}});
  const auto said = [&](const std::string& tag, const std::string& key) {
    return shop.Word("select coalesce(label ->> $2, 'null') as w from api.labels_to_print($1)", {tag, key});
  };
  EXPECT_EQ(shop.Number("select count(*) as n from api.labels_to_print('')"), 2);
  EXPECT_EQ(shop.Word("select reprint || ' ' || (asked_on = current_date) as w from api.labels_to_print($1)", {tags[0]}), "1 true");
  EXPECT_EQ(shop.Word("select reprint::text as w from api.labels_to_print($1)", {tags[1]}), "0");
  EXPECT_EQ(said(tags[1], "kind"), "bar");
  EXPECT_NE(said(tags[1], "mill"), "null");
  EXPECT_EQ(said(tags[1], "blocked"), "null");
  shop.quality.Execute("select api.place_hold(gen_random_uuid(), 'piece', $1, null, 'hardness')", {tags[1]});
  EXPECT_EQ(said(tags[1], "blocked"), "held by test_quality: hardness");
  EXPECT_EQ(said(tags[1], "limits"), "null");
}

TEST_F(Labels, CutPiecesOnSiteAreABatchALineAndHeat) {
  const auto tags = shop.ReceiveCertified({.count = 1});
  shop.AddLine({});
  shop.Record(tags[0], {Trim(), Good(14, 290)}, DropLeft(1900));
  EXPECT_EQ(
      shop.Word(
          "select string_agg(line || ' ' || count || ' of ' || length_nm / 1000000 || ' mm, ' || heat || coalesce(', ' || blocked, ''), '; ') as w from api.cut_batches"),
      shop.Word("select '10 14 of 290 mm, ' || heat as w from api.stock_on_hand limit 1"));
}

}  // namespace
}  // namespace heatkeep
