// A superuser with every trigger and key off edits the book: every column of every kept table, every row taken out or put in, every
// column of the ledger itself. The chain and the replay find each of them (`heatkeep book verify`). What they cannot find is named at
// the end; that the whole book was rewritten consistently only a digest kept outside tells (tests/schema/verify_test.cpp, CutOff).
#include <set>

#include "tests/schema/every_stock_deed.h"
#include "tests/walk/walker.h"

namespace heatkeep {
namespace {

// Another value of the column `c` of this type.
std::string Other(const std::string& c, const std::string& type, const std::string& kind) {
  if (kind == "e")
    return "(select e.enumlabel::" + type + " from pg_enum e where e.enumtypid = '" + type +
        "'::regtype and e.enumlabel is distinct from " + c + "::text limit 1)";
  if (type.ends_with("[]")) return "coalesce(" + c + " || " + c + ", '{}')";
  if (type == "bigint" || type == "integer" || type == "smallint" || type == "numeric") return "coalesce(" + c + " + 1, 1)";
  if (type == "boolean") return "not coalesce(" + c + ", false)";
  if (type == "text") return "coalesce(" + c + ", '') || 'x'";
  if (type == "date") return "coalesce(" + c + " + 1, '2020-01-01')";
  if (type.starts_with("timestamp")) return "coalesce(" + c + " + interval '1 second', now())";
  if (type == "uuid") return "gen_random_uuid()";
  if (type == "bytea") return "coalesce(" + c + ", '') || '\\x00'";
  if (type == "jsonb") return "case when " + c + " = '\"x\"' then '1'::jsonb else '\"x\"' end";
  return "";
}

// One shop for all: every edit is undone.
struct EveryEdit : testing::Test {
  static void SetUpTestSuite() {
    made = std::make_unique<SmallShop>();
    SmallShop& shop = *made;
    DoEveryStockDeed(shop);
    const auto bars = shop.ReceiveCertified({.heat = "E1", .count = 2});
    shop.AddLine({.order = "E"});
    shop.Fetch(bars.at(0), {{.count = 2, .order = "E"}});
    shop.Record(bars.at(0), {Trim(), Good(2, 290, "10", "E")}, DropLeft(5406));
    Walker(shop.book, 7).Walk(400);
    Do(shop.quality, "seal_book", {});
    shop.ReceiveCertified({.heat = "E2"});
    shop.admin.ExecuteScript("set session_replication_role = replica");
  }
  static void TearDownTestSuite() { made.reset(); }
  struct Column {
    std::string table, name, type, kind;
  };
  std::vector<Column> Columns(const std::string& where) {
    std::vector<Column> columns;
    for (
        const Row row : shop.admin.Execute(
            "select c.relname::text as t, a.attname::text as n, format_type(a.atttypid, null) as y, y.typtype::text as k from pg_attribute a"
            " join pg_class c on c.oid = a.attrelid join pg_type y on y.oid = a.atttypid"
            " where c.relnamespace = 'book'::regnamespace and c.relkind in ('r', 'p') and not c.relispartition and a.attnum > 0 and not a.attisdropped and a.attgenerated = ''"
            " and " +
            where + " order by 1, a.attnum"))
      columns.push_back({row.Text("t"), row.Text("n"), row.Text("y"), row.Text("k")});
    return columns;
  }
  // Does it, asks `found` (an SQL text that gives one number), and undoes it: -1 where there was nothing to edit, -2 where even so the
  // column's own check or key would not have it.
  std::int64_t After(const std::string& edit, const std::string& found, const std::string& before = "") {
    shop.admin.Execute("begin");
    std::int64_t number = -1;
    const std::string code = Code([&] {
      if (!before.empty()) shop.admin.ExecuteScript(before);
      number =
          shop.admin.Execute("with edited as (" + edit + " returning 1) select count(*) as n from edited").Only().Int("n") > 0 ? 0 : -1;
    });
    if (!code.empty()) number = -2;
    EXPECT_TRUE(code.empty() || code.starts_with("23") || code == "428C9" || code == "22P02" || code == "22003") << code << " " << edit;
    if (number == 0) number = shop.Number(found);
    shop.admin.Execute("rollback");
    return number;
  }
  std::string First(const std::string& table) { return "ctid = (select ctid from book." + table + " order by ctid limit 1)"; }
  static inline std::unique_ptr<SmallShop> made;
  SmallShop& shop = *made;
  static constexpr const char* kVerify =
      "select count(*) as n from api.verify_book() where not ok and \"check\" <> 'the server keeps what it says'";
};

TEST_F(EveryEdit, OfAnyColumnOfAnyKeptTableIsFoundByTheReplay) {
  int edited = 0, empty = 0, refused = 0;
  std::set<std::string> without;  // a row in this shop
  for (const Column& c : Columns("c.relname in (select tbl from guard.chronicled())")) {
    const std::string other = Other("t." + c.name, c.type, c.kind);
    ASSERT_FALSE(other.empty()) << c.table << "." << c.name << " is " << c.type << ": say what another value of it is";
    const std::string key = shop.Word("select key_column as w from guard.chronicled() where tbl = $1", {c.table});
    // of parties number 0, the shop itself, which no happening made
    const std::string row = c.table == "party" ? "party_id = 0" : First(c.table);
    const std::int64_t found = After("update book." + c.table + " t set " + c.name + " = " + other + " where " + row,
                                     "select guard.replay_differs('" + c.table + "', '" + key + "') as n");
    (found == -1 ? empty : found == -2 ? refused : edited) += 1;
    if (found == -1) without.insert(c.table);
    EXPECT_NE(found, 0) << c.table << "." << c.name << " was edited and nobody noticed";
  }
  std::cout << edited << " columns edited and found, " << refused << " the table's own checks refused, " << empty
            << " of tables without a row here:";
  for (const std::string& table : without) std::cout << ' ' << table;
  std::cout << '\n';
  EXPECT_GT(edited, 300);
  EXPECT_LT(without.size(), 20U) << "of 66 tables";
}

TEST_F(EveryEdit, ARowTakenOutOrPutInIsFoundInEveryKeptTable) {
  int tried = 0;
  for (const Row t : shop.admin.Execute("select tbl, key_column as k from guard.chronicled()")) {
    const std::string table = t.Text("tbl"), key = t.Text("k");
    const std::string differs = "select guard.replay_differs('" + table + "', '" + key + "') as n";
    const std::string row = table == "party" ? "party_id = (select max(party_id) from book.party)" : First(table);
    const std::int64_t gone = After("delete from book." + table + " where " + row, differs);
    EXPECT_NE(gone, 0) << table;
    if (gone > 0) ++tried;
    if (shop.Number("select count(*) as n from book." + table) == 0) continue;
    shop.admin.Execute("begin");
    const std::string code = Code([&] {
      shop.admin.ExecuteScript("create temp table twin on commit drop as select * from book." + table + " where " + row +
                               "; update twin set " + key + " = " + key + " + 1000000; insert into book." + table +
                               " overriding system value select * from twin");
    });
    if (code.empty()) { EXPECT_GT(shop.Number(differs), 0) << table; }
    shop.admin.Execute("rollback");
  }
  EXPECT_GT(tried, 40);
}

TEST_F(EveryEdit, OfAnyColumnOfTheLedgerItselfIsFound) {
  // the last happening of a chain that has several, so that what follows cannot tell it
  const std::string last = "happening_id = (select max(happening_id) from book.happening where seq > 1)";
  int edited = 0;
  for (const Column& c : Columns("c.relname in ('happening', 'chain_end', 'seal')")) {
    const std::string other = Other("t." + c.name, c.type, c.kind);
    ASSERT_FALSE(other.empty()) << c.table << "." << c.name << " " << c.type;
    const std::int64_t found =
        After("update book." + c.table + " t set " + c.name + " = " + other + " where " + (c.table == "happening" ? last : First(c.table)),
              kVerify);
    // who took a seal and when is written beside its digest for people to read; what it says is the digest
    if (c.table == "seal" &&
        (c.name == "taken_at" || c.name == "taken_by" || c.name == "at" || c.name == "who" || c.name == "seal_id" ||
         c.name == "request_id"))
      continue;
    EXPECT_NE(found, 0) << c.table << "." << c.name << " was edited and nobody noticed";
    if (found > 0) ++edited;
  }
  EXPECT_GT(edited, 14);
}

TEST_F(EveryEdit, OfTheOrderOrTheTailOfTheLedgerIsFound) {
  const std::string two = "(select chain, chain_id, max(seq) as s from book.happening group by 1, 2 having max(seq) > 2 limit 1) x";
  EXPECT_GT(After("update book.happening set seq = seq - 1000000 where seq > 1000000", kVerify,
                  "update book.happening h set seq = 1000000 + 2 * x.s - 1 - h.seq from " + two +
                      " where h.chain = x.chain and h.chain_id = x.chain_id and h.seq >= x.s - 1"),
            0)
      << "two change places";
  EXPECT_GT(
      After(
          "update book.happening h set happening_id = happening_id + 1000000 where happening_id = (select min(happening_id) from book.happening where tbl = 'piece' group by row_id order by count(*) desc limit 1)",
          kVerify, "alter table book.happening alter happening_id drop identity"),
      0)
      << "the first of a piece that changed much comes last";
  EXPECT_GT(After("delete from book.happening where happening_id > (select max(happening_id) - 10 from book.happening)", kVerify), 0)
      << "the tail is gone";
  EXPECT_GT(After("delete from book.happening", kVerify), 0);
  EXPECT_GT(After("delete from book.chain_end", kVerify), 0);
  EXPECT_GT(
      After(
          "insert into book.happening overriding system value select (jsonb_populate_record(h, jsonb_build_object('happening_id', 1e7, 'seq', h.seq + 1))).* from book.happening h"
          " where happening_id = (select max(happening_id) from book.happening)",
          kVerify),
      0)
      << "one more at the end";
}

TEST_F(EveryEdit, OneByteOfAFileThatWasFiledIsFound) {
  int files = 0;
  for (const Column& c : Columns("y.typname = 'bytea' and c.relname not in ('happening', 'chain_end')")) {
    if (shop.Number("select count(*) as n from book." + c.table + " where length(" + c.name + ") > 4") == 0) continue;
    const std::int64_t found =
        After("update book." + c.table + " set " + c.name + " = set_byte(" + c.name + ", 4, (get_byte(" + c.name +
                  ", 4) + 1) % 256) where ctid = (select ctid from book." + c.table + " where length(" + c.name + ") > 4 limit 1)",
              kVerify, "alter table book." + c.table + " drop constraint if exists document_file_unaltered");
    EXPECT_GT(found, 0) << c.table << "." << c.name;
    ++files;
  }
  EXPECT_EQ(files, 1);
  EXPECT_GT(
      After(
          "delete from book.document_file where ctid = (select f.ctid from book.document_file f join book.photo p using (sha256) limit 1)",
          kVerify),
      0)
      << "a file is gone";
}

// Nothing of a row changes by these; what would be refused from now on does.
TEST_F(EveryEdit, OfWhatTheTablesKeepToIsFoundAndNamed) {
  const auto said = [&](const std::string& edit) {
    shop.admin.Execute("begin");
    shop.admin.ExecuteScript(edit);
    std::string words;
    for (const char* ask : {"verify_book", "verify_new"})
      for (const Row row : shop.admin.Execute("select detail from api." + std::string(ask) +
                                              "() where \"check\" = 'tables keep to what they were made with' and not ok"))
        words += row.Text("detail") + "\n";
    shop.admin.Execute("rollback");
    return words;
  };
  const auto twice = [](const std::string& line) { return line + "\n" + line + "\n"; };
  EXPECT_EQ(said("create index quicker on book.piece (made_length_nm)"), "");
  EXPECT_EQ(said("drop index book.promise_one_live"), twice("1 differ: gone: unique index promise.promise_one_live"));
  EXPECT_EQ(said("alter table book.piece disable trigger balance"), twice("1 differ: turned off: trigger piece.balance"));
  EXPECT_EQ(said("drop trigger a_chronicle on book.piece"), twice("1 differ: gone: trigger piece.a_chronicle"));
  EXPECT_EQ(said("create trigger x before insert on book.piece for each row execute function guard.never_deleted()"),
            twice("1 differ: new: trigger piece.x"));
  EXPECT_EQ(said("alter table book.party drop constraint party_name_filled"), twice("1 differ: gone: constraint party.party_name_filled"));
  const std::string easy =
      said("create or replace function book.piece_is_sound(p book.piece) returns boolean language plpgsql as 'begin return true; end'");
  EXPECT_NE(easy.find("2 differ: gone: function piece_is_sound "), std::string::npos) << easy;
  EXPECT_NE(easy.find("; new: function piece_is_sound "), std::string::npos) << easy;
  EXPECT_EQ(said("alter table book.party alter name drop not null"),
            twice("2 differ: gone: column party.name text not null; new: column party.name text"));
  const std::string all = said("alter table book.stroke disable trigger all");
  EXPECT_NE(all.find("turned off: foreign key stroke."), std::string::npos) << all;
  EXPECT_NE(all.find("turned off: trigger stroke.a_chronicle"), std::string::npos) << all;
}

// What verify does not look at. Each is here because nothing of the book rests on it.
TEST_F(EveryEdit, WhatIsNotKeptInTheLedgerIsNamedHere) {
  std::string others;
  for (
      const Row row : shop.admin.Execute(
          "select relname::text as n from pg_class where relnamespace = 'book'::regnamespace and relkind in ('r', 'p') and not relispartition"
          " and relname not in (select tbl from guard.chronicled()) order by relname collate \"C\""))
    others += row.Text("n") + " ";
  // chain_end, happening, seal: the ledger, above. migration: what the program's files must be (client/book/migrate.h). printed_record:
  // each has its own digest over the ledger (api/records.sql). refusal: what was refused, for people to read. request: answers given
  // before. document_file: the file test, above.
  EXPECT_EQ(others, "chain_end document_file happening migration printed_record refusal request seal ");
}

}  // namespace
}  // namespace heatkeep
