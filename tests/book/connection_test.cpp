// The connection against a real server: what goes in comes out, what fails says so in one kind.
#include "client/gateway/connection.h"

#include <gtest/gtest.h>

#include <map>
#include <tuple>

#include "client/gateway/copy_in.h"
#include "tests/fixture/test_book.h"

namespace heatkeep {
namespace {

// What `deed` throws; the test fails when it throws nothing.
DbError ErrorOf(const auto& deed) {
  try {
    deed();
  } catch (const DbError& error) { return error; }
  ADD_FAILURE() << "nothing was thrown";
  return {DbError::Kind::Bug, "", "nothing was thrown"};
}

struct Connected : testing::Test {
  static void SetUpTestSuite() { book = new TestBook(TestBook::Start::Empty); }
  static void TearDownTestSuite() { delete book; }
  static inline TestBook* book = nullptr;
  Connection db = book->Admin();
};

TEST_F(Connected, ValuesComeBackAsTheyWentIn) {
  const std::string nasty = "O'Neil \"x\" \\ $1 ; -- \t\n äß€ 材";
  const Result rows = db.Execute("select $1::text as t, $2::bigint as i, $3::bool as b, $4::text as n",
                                 {nasty, std::int64_t{-9'223'372'036'854'775'807}, true, std::nullopt});
  const Row row = rows.Only();
  EXPECT_EQ(row.Text("t"), nasty);
  EXPECT_EQ(row.Int("i"), -9'223'372'036'854'775'807);
  EXPECT_TRUE(row.Bool("b"));
  EXPECT_TRUE(row.IsNull("n"));
  EXPECT_EQ(row.OptionalText("n"), std::nullopt);
  EXPECT_EQ(row.OptionalInt("i"), -9'223'372'036'854'775'807);
}

TEST_F(Connected, TextWithAZeroByteIsRefusedAndNotCutShort) {
  const DbError error = ErrorOf([&] { db.Execute("select $1::text as t", {std::string("a\0b", 3)}); });
  EXPECT_NE(error.message.find("zero byte"), std::string::npos);
}

TEST_F(Connected, GettersRefuseWhatIsNotThere) {
  const Result rows = db.Execute("select 'x' as t, null::bigint as n, 1.5 as r");
  const Row row = rows.Only();
  EXPECT_THROW(std::ignore = row.Int("t"), DbError);
  EXPECT_THROW(std::ignore = row.Int("n"), DbError);
  EXPECT_THROW(std::ignore = row.Int("r"), DbError);
  EXPECT_THROW(std::ignore = row.Text("missing"), DbError);
  EXPECT_THROW(std::ignore = row.Bool("t"), DbError);
  EXPECT_THROW(std::ignore = rows[1], DbError);
}

TEST_F(Connected, KindsFollowTheSqlstate) {
  const auto raise = [&](const std::string& code) {
    return ErrorOf([&] {
      db.ExecuteScript("do $$ begin raise exception using errcode = '" + code +
                       "', message = 'm', detail = 'd', hint = 'h', constraint = 'c'; end $$");
    });
  };
  const std::vector<std::pair<std::string, DbError::Kind>> expected{
      {"HK001", DbError::Kind::Refused},     {"HK043", DbError::Kind::Refused},     {"HK409", DbError::Kind::Stale},
      {"HK400", DbError::Kind::Stale},       {"42501", DbError::Kind::Forbidden},   {"23514", DbError::Kind::Refused},
      {"23505", DbError::Kind::Refused},     {"40001", DbError::Kind::Stale},       {"08006", DbError::Kind::Unreachable},
      {"53100", DbError::Kind::Unreachable}, {"57P03", DbError::Kind::Unreachable}, {"22003", DbError::Kind::Bug},
      {"57014", DbError::Kind::Bug},         {"25006", DbError::Kind::Refused}};
  const std::map<std::string, std::string> in_our_words{
      {"53100", "the disk of the book is full, and nothing of this was booked: make room there and do it again (m)"},
      {"25006",
       "this server of the book only answers questions (a standby, or set so), and nothing of this was booked: do it at the server that takes deeds"}};
  for (const auto& [code, kind] : expected) {
    const DbError error = raise(code);
    EXPECT_EQ(error.kind, kind) << code;
    EXPECT_EQ(error.sqlstate, code);
    EXPECT_EQ(error.message, in_our_words.contains(code) ? in_our_words.at(code) : "m");
    EXPECT_EQ(error.detail + error.hint + error.constraint, "dhc");
  }
}

TEST_F(Connected, NoServerIsUnreachable) {
  EXPECT_EQ(ErrorOf([] { Connection::Open("host=/nowhere dbname=x"); }).kind, DbError::Kind::Unreachable);
  EXPECT_EQ(ErrorOf([] { Connection::Open(book->Conninfo("admin") + " dbname=missing"); }).kind, DbError::Kind::Unreachable);
}

TEST_F(Connected, CutOffSessionIsUnreachableAndKnowsIt) {
  Connection other = book->Admin();
  const std::int64_t pid = other.Execute("select pg_backend_pid() as pid").Only().Int("pid");
  db.Execute("select pg_terminate_backend($1::int, 5000)", {pid});
  EXPECT_EQ(ErrorOf([&] { other.Execute("select 1"); }).kind, DbError::Kind::Unreachable);
  EXPECT_FALSE(other.Alive());
}

TEST_F(Connected, TransactionRollsBackUnlessCommitted) {
  db.ExecuteScript("create temp table t (i int)");
  {
    Transaction transaction(db);
    db.Execute("insert into t values (1)");
  }
  EXPECT_EQ(db.Execute("select count(*) as n from t").Only().Int("n"), 0);
  {
    Transaction transaction(db);
    EXPECT_EQ(db.Execute("insert into t values (1), (2)").Affected(), 2);
    transaction.Commit();
  }
  EXPECT_EQ(db.Execute("select count(*) as n from t").Only().Int("n"), 2);
}

TEST_F(Connected, FailedTransactionCannotBeCommitted) {
  Transaction transaction(db);
  EXPECT_THROW(db.Execute("select 1/0"), DbError);
  EXPECT_THROW(transaction.Commit(), DbError);
}

TEST_F(Connected, TransactionsDoNotNest) {
  Transaction transaction(db);
  EXPECT_THROW(Transaction inner(db), DbError);
  EXPECT_EQ(db.Execute("select 1 as n").Only().Int("n"), 1) << "the outer one goes on";
}

TEST_F(Connected, CopyTakesRowsIn) {
  db.ExecuteScript("create temp table c (i bigint, t text)");
  CopyIn copy(db, "copy c (i, t) from stdin");
  for (int i = 0; i < 20'000; ++i) copy.Add({i, i % 2 ? Param("tab\tline\nback\\slash \\N") : Param(std::nullopt)});
  EXPECT_EQ(copy.Finish(), 20'000);
  const Row row = db.Execute(
                        "select count(*) filter (where t is null) as nulls, count(*) filter (where t = $1) "
                        "as texts from c",
                        {"tab\tline\nback\\slash \\N"})
                      .Only();
  EXPECT_EQ(row.Int("nulls"), 10'000);
  EXPECT_EQ(row.Int("texts"), 10'000);
}

TEST_F(Connected, CopyGivenUpOrWrongKeepsNothing) {
  db.ExecuteScript("create temp table g (i bigint)");
  {
    CopyIn copy(db, "copy g (i) from stdin");
    copy.Add({1});
  }
  {
    CopyIn copy(db, "copy g (i) from stdin");
    copy.Add({1});
    copy.Add({"one"});
    EXPECT_THROW(copy.Finish(), DbError);
  }
  EXPECT_EQ(db.Execute("select count(*) as n from g").Only().Int("n"), 0);
  EXPECT_THROW(CopyIn(db, "select 1"), DbError);
}

TEST_F(Connected, RowOutlivesTheResultItCameFrom) {
  const Row row = db.Execute("select 'still here' as t").Only();
  EXPECT_EQ(row.Text("t"), "still here");
}

TEST_F(Connected, QuotedNamesAndTextsStayOne) {
  const std::string name = "a\"; drop table x; --";
  db.ExecuteScript("create temp table q (" + db.QuoteName(name) + " text default " + db.QuoteText("it's \\ $$") + ")");
  db.ExecuteScript("insert into q default values");
  EXPECT_EQ(db.Execute("select * from q").Only().Text(name), "it's \\ $$");
}

TEST_F(Connected, DatesComeBackInIsoFormWhateverTheEnvironmentSays) {
  ASSERT_EQ(setenv("PGDATESTYLE", "German", 1), 0);
  Connection german = book->Admin();
  unsetenv("PGDATESTYLE");
  EXPECT_EQ(german.Execute("select date '2026-02-03' as d").Only().Text("d"), "2026-02-03");
}

}  // namespace
}  // namespace heatkeep
