// The ledger of happenings only grows, and its chains can be worked out again from its own rows.
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct Ledger : ShopTest {};

TEST_F(Ledger, IsNotUpdatedDeletedOrTruncatedByAnybody_HK003) {
  shop.Receive({});
  for (const char* sql :
       {"update book.happening set who = 'x'", "update book.happening set sets = sets", "delete from book.happening",
        "truncate book.happening", "truncate book.happening cascade", "delete from book.happening where happening_id = 1"})
    EXPECT_EQ(shop.Raw(sql), "HK003") << sql;
}

TEST_F(Ledger, TakesRowsOnlyFromTheBookItself_HK003) {
  shop.Receive({});
  const std::string copy =
      "insert into book.happening (chain, chain_id, seq, deed, tbl, row_id, sets, at, true_at, who, hash)"
      " select chain, chain_id, seq + 1000, deed, tbl, row_id, sets, at, true_at, %, hash from "
      "book.happening limit 1";
  for (const char* who : {"who", "session_user", "'test_quality'"}) {
    std::string sql = copy;
    EXPECT_EQ(shop.Raw(sql.replace(sql.find('%'), 1, who)), "HK003") << who;
  }
}

TEST_F(Ledger, SealsAreNotChangedOrTakenOut_HK003) {
  Do(shop.quality, "seal_book", {});
  for (const char* sql : {"update book.seal set digest = 'x'", "delete from book.seal", "truncate book.seal"})
    EXPECT_EQ(shop.Raw(sql), "HK003") << sql;
}

TEST_F(Ledger, NotesDownEveryColumnThatADeedSet) {
  const std::string tag = shop.Receive({}).at(0);
  Do(shop.clerk, "put_away", {tag, "GATE"});
  const Row last = shop.admin
                       .Execute(
                           "select h.* from book.happening h join book.piece p on chain = 'piece' and "
                           "chain_id = piece_id order by seq desc limit 1")
                       .Only();
  EXPECT_EQ(last.Text("deed"), "put_away");
  EXPECT_EQ(last.Text("who"), "test_clerk");
  EXPECT_EQ(Json::parse(last.Text("sets")),
            Json({{"place_id", shop.Number("select place_id as n from book.place where name = 'GATE'")}, {"version", 2}}));
}

// SHA-256 over the previous hash and the canonical bytes, worked out here with the server's sha256 but not
// with the guard.
TEST_F(Ledger, ChainsAreSha256OverPreviousHashAndCanonicalBytes) {
  shop.Receive({.count = 3});
  const auto wrong = shop.Number(
      R"(select count(*) as n from (select *, lag(hash) over (partition by chain, chain_id order by seq) as before from book.happening) h
    where hash <> sha256(coalesce(before, '') || convert_to(jsonb_build_array(chain, chain_id, seq, deed, tbl, row_id, sets,
      to_char(at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.US"Z"'), to_char(true_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.US"Z"'),
      who, device, reason, request_id)::text, 'UTF8')))");
  EXPECT_EQ(wrong, 0);
  EXPECT_GT(shop.Number("select count(*) as n from book.happening where seq > 1"), 0);
}

TEST_F(Ledger, IsTheSameInAnyTimeZoneAndDateStyle) {
  shop.clerk.ExecuteScript(
      "set timezone = 'Australia/Eucla'; set datestyle = 'German'; set bytea_output = 'escape'; set "
      "intervalstyle = 'sql_standard'");
  const std::string tag = shop.Receive({}).at(0);
  Do(shop.clerk, "put_away", {tag, "GATE", "2026-01-02 03:04:05.678901+00"});
  shop.quality.ExecuteScript("set timezone = 'Asia/Kathmandu'; set extra_float_digits = -5");
  EXPECT_EQ(shop.Broken(), std::vector<std::string>());
  EXPECT_EQ(shop.Word("select to_char(true_at at time zone 'UTC', 'YYYY-MM-DD HH24:MI:SS.US') as w from "
                      "book.happening where deed = 'put_away'"),
            "2026-01-02 03:04:05.678901");
}

TEST_F(Ledger, ADeedOfTheFutureIsRefused_HK011_AndOneEnteredLateKeepsItsTrueTime) {
  const std::string tag = shop.Receive({}).at(0);
  EXPECT_EQ(Code([&] { Do(shop.clerk, "put_away", {tag, "GATE", "2999-01-01"}); }), "HK011");
  Do(shop.clerk, "put_away", {tag, "GATE", "2026-02-03 04:05:06+00", "scanner 4"});
  EXPECT_EQ(shop.Word("select to_char(true_at at time zone 'UTC', 'YYYY-MM-DD HH24:MI') || ' on ' || device "
                      "as w from book.happening where deed = 'put_away'"),
            "2026-02-03 04:05 on scanner 4");
}

}  // namespace
}  // namespace heatkeep
