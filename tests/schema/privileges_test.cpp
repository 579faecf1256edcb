// Who may do what, as the catalogue has it, is what tests/golden/privileges.txt says: any widening shows as a
// line there. When a change is meant: HEATKEEP_WRITE_GOLDEN=1 test_schema --gtest_filter=Privileges.*
#include <cstdlib>
#include <fstream>
#include <sstream>

#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

// One line an object of schema api: kind, name, and the roles that may execute or read it.
constexpr const char* kMatrix = R"(
  with role (name) as (values ('clerk'), ('planner'), ('saw'), ('quality'), ('owner')),
  object as (
    select 'do' as kind, proname || '(' || pg_get_function_identity_arguments(p.oid) || ')' as name, p.oid
      from pg_proc p where pronamespace = 'api'::regnamespace
    union all
    select 'see', relname, c.oid from pg_class c where relnamespace = 'api'::regnamespace and relkind in ('v', 'm', 'r', 'p', 'f')
    union all
    select 'compute', proname || '(' || pg_get_function_identity_arguments(p.oid) || ')', p.oid
      from pg_proc p where pronamespace = 'guard'::regnamespace and exists (select from role where has_function_privilege('heatkeep_' || role.name, p.oid, 'execute'))),
  may as (
    select o.kind, o.name, r.name as role, case o.kind when 'see' then
        case when has_table_privilege('heatkeep_' || r.name, o.oid, 'insert,update,delete,truncate,references,trigger') then r.name || ' (WRITES)'
             when has_table_privilege('heatkeep_' || r.name, o.oid, 'select') then r.name end
      when 'compute' then case when has_function_privilege('heatkeep_' || r.name, o.oid, 'execute') then r.name end
      else case when has_function_privilege('heatkeep_' || r.name, o.oid, 'execute') then r.name end end as may
      from object o cross join role r)
  select kind || ' ' || name || ': ' || coalesce(string_agg(may, ' ' order by position(role in 'clerk planner saw quality owner')), '-') as line
    from may group by kind, name order by kind, name collate "C")";

TEST(Privileges, AreThoseOfTheGoldenFile) {
  TestBook book;
  std::string matrix;
  for (const Row row : book.Admin().Execute(kMatrix)) matrix += row.Text("line") + '\n';
  if (std::getenv("HEATKEEP_WRITE_GOLDEN")) std::ofstream(HEATKEEP_GOLDEN "/privileges.txt") << matrix;
  std::ifstream file(HEATKEEP_GOLDEN "/privileges.txt");
  std::ostringstream golden;
  golden << file.rdbuf();
  EXPECT_EQ(matrix, golden.str());
}

TEST(Privileges, EveryViewAndEveryDeedIsOfUseToSomebody) {
  TestBook book;
  for (const Row row : book.Admin().Execute(kMatrix)) EXPECT_FALSE(row.Text("line").ends_with(": -")) << row.Text("line");
}

TEST(Privileges, EveryViewCanBeReadByWhoMayReadIt) {
  SmallShop shop;
  shop.ReceiveCertified({.count = 2});
  shop.AddLine({});
  int read = 0;
  for (const char* who : {"clerk", "planner", "saw", "quality", "owner"}) {
    Connection person = shop.book.As(who);
    for (const Row row : shop.admin.Execute("select relname::text as n, has_table_privilege('heatkeep_' || "
                                            "$1, oid, 'select') as may from pg_class"
                                            " where relnamespace = 'api'::regnamespace and relkind = 'v'",
                                            {who})) {
      EXPECT_EQ(Code([&] { person.Execute("select * from api." + row.Text("n")); }), row.Bool("may") ? "" : "42501")
          << who << ' ' << row.Text("n");
      ++read;
    }
  }
  EXPECT_GT(read, 80);
}

TEST(Privileges, MyActionsAreExactlyWhatTheLoginMayExecute) {
  TestBook book;
  Connection admin = book.Admin();
  for (const char* who : {"clerk", "planner", "saw", "quality", "owner", "all"}) {
    const std::string said =
        book.As(who).Execute("select string_agg(a, ' ' order by a collate \"C\") as w from api.my_actions() a").Only().Text("w");
    EXPECT_EQ(said,
              admin
                  .Execute("select string_agg(distinct proname::text, ' ' order by proname::text) as w "
                           "from (select proname::text collate \"C\" as proname, oid from pg_proc"
                           " where pronamespace = 'api'::regnamespace) p where "
                           "has_function_privilege('test_' || $1, oid, 'execute')",
                           {who})
                  .Only()
                  .Text("w"))
        << who;
  }
}

}  // namespace
}  // namespace heatkeep
