// Every question that a screen or command puts to the book by a key is answered by an index, not by luck: on the ten-year book none of them
// reads a table of the years through, nor does a deed. What PostgreSQL counts is asked (pg_stat_xact_user_tables), so the queries inside
// functions are seen too, as they are run; sequential scans stay allowed.
#include <gtest/gtest.h>

#include "client/gateway/request_number.h"
#include "tests/schema/years_book.h"

namespace heatkeep {
namespace {

YearsBook& Years() {
  static YearsBook years;
  return years;
}

// The question with the book's words for {tag}, {heat}, ...
std::string Asked(std::string question) {
  for (const auto& [what, word] : Years().words)
    for (std::size_t at = 0; (at = question.find("{" + what + "}")) != std::string::npos;) question.replace(at, what.size() + 2, word);
  return question;
}

std::map<std::string, std::int64_t> Scans(Connection& session) {
  std::map<std::string, std::int64_t> scans;
  for (
      const Row row : session.Execute(
          "select relname::text as name, seq_scan from pg_stat_xact_user_tables where schemaname = 'book' and seq_scan > 0 and relname in (" +
          TablesOfYears() + ")"))
    scans[row.Text("name")] = row.Int("seq_scan");
  return scans;
}

// The tables that it reads through, each with a blank after it; and how many rows it answers.
std::string ReadThrough(const std::string& question, std::int64_t* answers = nullptr) {
  Connection session = Years().book.As("all");
  session.ExecuteScript("set max_parallel_workers_per_gather = 0; set jit = off; begin");  // scans are counted where they are done
  const auto before = Scans(session);
  const std::int64_t rows = session.Execute("select count(x::text) as n from (" + Asked(question) + ") x").Only().Int("n");
  if (answers) *answers = rows;
  std::string tables;
  for (const auto& [name, count] : Scans(session))
    if (const auto was = before.find(name); was == before.end() || was->second < count) tables += name + " ";
  session.ExecuteScript("rollback");
  return tables;
}

struct YearsQuestions : testing::TestWithParam<const char*> {};

TEST_P(YearsQuestions, AnsweredByAnIndex) { EXPECT_EQ(ReadThrough(GetParam()), "") << Asked(GetParam()); }

INSTANTIATE_TEST_SUITE_P(
    OfATag, YearsQuestions,
    testing::Values("select * from api.stock_on_hand where tag = '{tag}'", "select * from api.own_pieces where tag = '{tag}'",
                    "select * from api.piece_history where tag = '{bar}'", "select * from api.promises where tag = '{tag}'",
                    "select * from api.label_queue where tag = '{tag}'", "select * from api.labels_to_print('{tag}')",
                    "select * from api.photos where tag = '{tag}'", "select * from api.piece_notes where tag = '{tag}'",
                    "select * from api.outside_trips where tag = '{tag}'", "select * from api.transfers where tag = '{tag}'",
                    "select * from api.measured_lengths where tag = '{tag}'", "select * from api.defects where tag = '{tag}'",
                    "select * from api.defect_zones where tag = '{tag}'", "select * from api.trace('piece', '{bar}')",
                    "select * from api.metal_balance('piece', '{bar}')", "select * from api.recall_list('piece', '{bar}')",
                    "select api.preview_hold('piece', '{bar}')", "select * from api.record_of('piece', '{bar}', null, 'x')"));
INSTANTIATE_TEST_SUITE_P(
    OfAHeat, YearsQuestions,
    testing::Values("select * from api.trace('heat', '{heat}', '{mill}')", "select * from api.metal_balance('heat', '{heat}', '{mill}')",
                    "select * from api.recall_list('heat', '{heat}', '{mill}')", "select api.preview_hold('heat', '{heat}', '{mill}')",
                    "select * from api.record_of('heat', '{heat}', '{mill}', 'x')", "select * from api.stock_on_hand where heat = '{heat}'",
                    "select * from api.look_alikes where heat = '{heat}'", "select * from api.document_values where heat = '{heat}'",
                    "select * from api.waiting_for_papers where heat = '{heat}'"));
INSTANTIATE_TEST_SUITE_P(OfPlacesAndMetal, YearsQuestions,
                         testing::Values("select * from api.stock_on_hand where place = '{place}'",
                                         "select * from api.stock_on_hand where grade = '{grade}' and section = '{section}'",
                                         "select * from api.candidates where grade = '{grade}' and section = '{section}'",
                                         "select * from api.counts where place = '{place}'",
                                         "select * from api.count_differences where place = '{place}'"));
INSTANTIATE_TEST_SUITE_P(
    OfAPlan, YearsQuestions,
    testing::Values(
        "select * from api.plans where plan_id = {plan}", "select * from api.plan_layouts where plan_id = {plan} and state <> 'dropped'",
        "select * from api.plan_cuts where plan_id = {plan}", "select * from api.plan_shorts where plan_id = {plan}",
        "select * from api.plan_sawing where plan_id = {plan}", "select * from api.plan_metal where plan_id = {plan}",
        "select c.* from (select order_no, line_no from api.plan_cuts where plan_id = {plan} union select order_no, line_no from api.plan_shorts where plan_id = {plan}) p join api.cut_lines c using (order_no, line_no)"));
INSTANTIATE_TEST_SUITE_P(
    OfAnOrder, YearsQuestions,
    testing::Values("select * from api.cut_lines where cut_list = '{list}'", "select * from api.cut_lines where order_no = '{order}'",
                    "select * from api.line_heats where cut_list = '{list}'", "select * from api.stands_against where order_no = '{order}'",
                    "select * from api.cut_batches where \"order\" = '{order}'", "select * from api.open_pieces where order_no = '{order}'",
                    "select * from api.consents where order_no = '{order}'", "select api.order_heats('{order}')",
                    "select * from api.trace('order', '{order}')", "select * from api.metal_balance('order', '{order}')",
                    "select * from api.record_of('order', '{order}', null, 'x')",
                    "select api.package_of('{\"order\": \"{order}\", \"without_files\": true}')",
                    "select * from api.certificate_packages where order_no = '{order}'"));
INSTANTIATE_TEST_SUITE_P(OfPapersAndTheDoor, YearsQuestions,
                         testing::Values("select * from api.documents where number = '{document}'",
                                         "select * from api.document_values where number = '{document}'",
                                         "select * from api.document_versions where number = '{document}'",
                                         "select * from api.receipts where note = '{note}'"));
INSTANTIATE_TEST_SUITE_P(WhatIsOpen, YearsQuestions,
                         testing::Values("select * from api.label_queue where not printed", "select * from api.labels_to_print('')",
                                         "select * from api.conflicts where closed_by is null", "select * from api.rejects",
                                         "select * from api.open_pieces", "select * from api.holds", "select * from api.outside_trips",
                                         "select * from api.transfers", "select * from api.defects", "select * from api.handovers",
                                         "select * from api.papers_awaited", "select * from api.saw_bands", "select * from api.scrap_bins",
                                         "select * from api.bundles", "select * from api.customer_property",
                                         "select * from api.measured_lengths where at >= date '2025-12-01'"));

// A list of everything on hand reads the pieces that are here, not those that ever were: neither through the table nor
// through an index of all.
struct YearsOnHand : testing::TestWithParam<const char*> {};
TEST_P(YearsOnHand, ReadsOnlyWhatIsOnHand) {
  std::int64_t rows = 0;
  EXPECT_EQ(ReadThrough(GetParam(), &rows), "");
  EXPECT_GT(rows, 10);
  Connection session = Years().book.As("all");
  session.ExecuteScript("set max_parallel_workers_per_gather = 0; set jit = off; begin");
  session.Execute(std::string("select count(x::text) from (") + GetParam() + ") x");
  const auto read = session.Execute("select idx_tup_fetch as n from pg_stat_xact_user_tables where relname = 'piece'").Only().Int("n");
  EXPECT_LT(read, Years().book.Admin().Execute("select count(*) / 4 as n from book.piece").Only().Int("n"));
}
INSTANTIATE_TEST_SUITE_P(Lists, YearsOnHand,
                         testing::Values("select * from api.stock_on_hand", "select * from api.own_pieces", "select * from api.candidates",
                                         "select * from api.stock_value"));

// A deed with its request number, as text in a query; what it does is undone.
struct YearsDeeds : testing::TestWithParam<const char*> {};
TEST_P(YearsDeeds, ReadsNoTableThrough) { EXPECT_EQ(ReadThrough(GetParam()), "") << Asked(GetParam()); }
INSTANTIATE_TEST_SUITE_P(
    OfTheDay, YearsDeeds,
    testing::Values(
        "select api.put_away(gen_random_uuid(), '{line_bar}', '{place}')",
        "select api.receive_delivery(gen_random_uuid(), '{\"note\": \"new\", \"supplier\": \"{mill}\", \"lines\": [{\"line\": \"1\", \"mill\": \"{mill}\", \"heat\": \"NEW1\", \"read_from\": \"metal\", \"grade\": \"42CrMo4\","
        " \"section\": {\"shape\": \"round\", \"dim1_nm\": 50000000, \"label\": \"round 50\"}, \"condition\": \"+QT\", \"length_nm\": 6000000000, \"count\": 3, \"ends\": 0}]}')",
        "select api.reserve(gen_random_uuid(), '{\"tag\": \"{line_bar}\", \"order\": \"{line_order}\", \"line\": \"{line_no}\", \"count\": 1}')",
        "select api.pull_for_line(gen_random_uuid(), '{\"tag\": \"{line_bar}\", \"saw\": \"{saw}\", \"order\": \"{line_order}\", \"line\": \"{line_no}\", \"count\": 1}')",
        "select api.record_cut(gen_random_uuid(), '{\"tag\": \"{line_bar}\", \"saw\": \"{saw}\", \"strokes\": [{\"class\": \"good\", \"order\": \"{line_order}\", \"line\": \"{line_no}\", \"count\": 1,"
        " \"length_nm\": {line_nm}, \"kerf_nm\": 1300000}], \"finish\": true, \"left\": {\"fate\": \"drop\", \"place\": \"{place}\"}}')",
        "select api.sell(gen_random_uuid(), '{\"note\": \"new\", \"customer\": \"Customer 01\", \"order\": \"1\", \"papers\": \"none\", \"tags\": [\"{line_bar}\"]}')",
        "select api.pull(gen_random_uuid(), '{plan_bar}', '{plan_saw}', {plan})",
        "select api.ship(gen_random_uuid(), '{\"note\": \"new\", \"customer\": \"{customer}\", \"lines\": [{\"order\": \"{order}\", \"line\": \"{order_line}\", \"count\": 1}]}')",
        "select api.place_hold(gen_random_uuid(), 'heat', '{heat}', '{mill}', 'asked for')",
        "select api.correct_length(gen_random_uuid(), '{line_bar}', 2900000000, 1000000, 'tape')",
        "select api.cancel_plan(gen_random_uuid(), {plan}, 'not needed')"));

// The pieces to which something happened last are replayed from their own chains (verify --new, every day).
TEST(YearsBook, WhatCameLastIsReplayedWithoutReadingTheYears) {
  Connection admin = Years().book.Admin();
  admin.ExecuteScript("set max_parallel_workers_per_gather = 0; set jit = off; begin");
  EXPECT_EQ(admin.Execute("select guard.replay_differs('piece', 'piece_id', (select max(happening_id) - 200 from book.happening)) as n")
                .Only()
                .Int("n"),
            0);
  const auto scans = Scans(admin);
  for (const char* table : {"happening", "piece"}) EXPECT_FALSE(scans.contains(table)) << table;
  const auto read = admin.Execute("select idx_tup_fetch as n from pg_stat_xact_user_tables where relname = 'happening'").Only().Int("n");
  EXPECT_GT(read, 200);
  EXPECT_LT(read, admin.Execute("select count(*) / 20 as n from book.happening").Only().Int("n")) << "nor through an index of all";
}

TEST(YearsBook, IsABookAsTheDeedsWouldHaveLeftIt) {
  Connection quality = Years().book.As("quality");
  for (const char* verify : {"select * from api.verify_book()", "select * from api.verify_new()"})
    for (const Row row : quality.Execute(verify))
      EXPECT_TRUE(row.Bool("ok") || row.Text("check") == "the server keeps what it says")
          << row.Text("check") << ": " << row.Text("detail");
  const Row size = Years()
                       .book.Admin()
                       .Execute(
                           "select (select count(*) from book.piece) as pieces, (select count(*) from book.happening) as happenings,"
                           " (select count(*) from book.piece where length_nm > 0) as here")
                       .Only();
  EXPECT_NEAR(static_cast<double>(size.Int("pieces")), 10'000, 500);
  EXPECT_NEAR(static_cast<double>(size.Int("happenings")), 100'000, 5'000);
  EXPECT_GT(size.Int("here"), 300);
}

TEST(YearsBook, EveryWordThatIsAskedForIsThere) {
  for (const char* what : {"tag", "bar", "heat", "mill", "order", "list", "plan", "place", "document", "note", "grade", "section",
                           "line_order", "line_bar", "plan_bar", "order_line"})
    EXPECT_TRUE(Years().words.contains(what)) << what;
  for (const char* question :
       {"select * from api.stock_on_hand where tag = '{tag}'", "select * from api.plan_layouts where plan_id = {plan}",
        "select * from api.cut_lines where order_no = '{order}'", "select * from api.trace('heat', '{heat}', '{mill}')",
        "select * from api.receipts where note = '{note}'", "select * from api.document_values where number = '{document}'"}) {
    std::int64_t rows = 0;
    ReadThrough(question, &rows);
    EXPECT_GT(rows, 0) << Asked(question);
  }
}

// The question that cannot be answered by an index: every line there ever was.
TEST(YearsBook, AReadingThroughIsSeen) { EXPECT_NE(ReadThrough("select * from api.past_lines").find("cut_line "), std::string::npos); }

}  // namespace
}  // namespace heatkeep
