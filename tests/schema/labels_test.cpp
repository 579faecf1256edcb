// The queue of labels: every new tag has one, printed or failed with the reason; again only at the piece.
#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

struct Labels : ShopTest {
  std::int64_t Job(const std::string& tag) {
    return shop.Number("select max(job) as n from api.label_queue where tag = $1", {tag});
  }
  std::int64_t Waiting() { return shop.Number("select count(*) as n from api.label_queue where state <> 'printed'"); }
};

TEST_F(Labels, EveryNewTagIsAJobAndWhatIsCutUpNeedsNoneAnyMore) {
  const auto tags = shop.ReceiveCertified({.count = 2});
  EXPECT_EQ(Waiting(), 2);
  EXPECT_EQ(shop.Word("select distinct kind || ', ' || why || ', ' || asked_by || ', ' || state as w from api.label_queue"), "new, new tag, test_clerk, waiting");
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
  EXPECT_EQ(shop.Word("select string_agg(kind || ' ' || why || ' ' || state, ', ' order by job) as w from api.label_queue"), "new new tag printed, again torn waiting");
}

TEST_F(Labels, RefusesWhatNamesNoJobPrinterOrReasonAndOneBadNumberPrintsNone) {
  const std::int64_t job = Job(shop.Receive({}).at(0));
  const auto printed = [&](Connection& who, const Json& body) { return Code([&] { DoBody(who, "label_printed", body); }); };
  EXPECT_EQ(printed(shop.clerk, {{"jobs", Json::array()}, {"printer", "gate"}}), "HK026");
  EXPECT_EQ(printed(shop.clerk, {{"jobs", {job}}}), "HK026");
  EXPECT_EQ(printed(shop.clerk, {{"jobs", {job, 4711}}, {"printer", "gate"}}), "HK026");
  EXPECT_EQ(Waiting(), 1);
  for (Connection* who : {&shop.planner, &shop.quality, &shop.owner}) EXPECT_EQ(printed(*who, {{"jobs", {job}}, {"printer", "gate"}}), "42501");
  EXPECT_EQ(Code([&] { DoBody(shop.clerk, "label_failed", {{"job", job}, {"printer", "gate"}}); }), "HK026");
}

}  // namespace
}  // namespace heatkeep
