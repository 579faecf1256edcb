// A book made before there were angles, boxes, channels and beams is brought up to date with its sections as they were.
#include <algorithm>

#include "client/book/migrate.h"
#include "client/book/schema_files.h"
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

constexpr int kWithShapes = 11;

std::string RowsOf(Connection& db, const std::string& table) {
  return db.Execute("select coalesce(jsonb_agg(jsonb_strip_nulls(to_jsonb(t)))::text, '') as w from book." + table + " t").Only().Text("w");
}

// The replay of the ledger compares rows without their nulls: they must read as before.
TEST(OlderSections, StayAsTheyWereAndTakeTheNewShapesBesides) {
  TestBook book(TestBook::Start::Empty);
  Connection db = book.Admin();
  const SchemaFiles all = ReadSchemaFiles(SchemaFolder());
  SchemaFiles before;  // without guard, so that rows can be put in by hand
  std::copy_if(all.recreated.begin(), all.recreated.end(), std::back_inserter(before.recreated),
               [](const SchemaFile& f) { return f.kind == "roles"; });
  std::copy_if(all.migrations.begin(), all.migrations.end(), std::back_inserter(before.migrations),
               [](const Migration& m) { return m.version < kWithShapes; });
  Migrate(db, before);
  db.ExecuteScript(
      "insert into book.section (shape, dim1_nm, dim2_nm, thickness_nm, label, area_um2) values ('round', 80000000, 0, 0, 'round 80', 5026548246),"
      " ('flat', 100000000, 20000000, 0, 'flat 100x20', 2000000000), ('tube', 60300000, 0, 4000000, 'tube 60.3x4', 707486666)");
  const std::string sections = RowsOf(db, "section");
  Migrate(db, all);
  EXPECT_EQ(RowsOf(db, "section"), sections);
  // the same sections are found again, and a new shape is made
  db.ExecuteScript(
      "begin; select guard.begin_deed('test', gen_random_uuid(), '{}');"
      "select guard.section('{\"shape\":\"tube\",\"dim1_nm\":60300000,\"thickness_nm\":4000000,\"label\":\"tube 60.3x4\"}');"
      "select guard.section('{\"shape\":\"box\",\"dim1_nm\":100000000,\"dim2_nm\":60000000,\"thickness_nm\":5000000,\"r1_nm\":10000000,"
      "\"r2_nm\":5000000,\"label\":\"box 100x60x5 cold\"}'); commit");
  EXPECT_EQ(db.Execute("select count(*) as n from book.section").Only().Int("n"), 4);
}

}  // namespace
}  // namespace heatkeep
