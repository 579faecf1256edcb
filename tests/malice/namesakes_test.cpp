// The worst case: every person was given a schema and temporary tables, and put there a namesake of whatever the deeds use - every
// function, every operator, every table - that tells when it is run. None is.
#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

// Functions and operators of the database itself under their own names and arguments, which raise HKBAD when called; tables, views and
// types of the book's names. What needs types that cannot be written here, or has modes, is left out.
constexpr const char* kTraps = R"sql(
do $$
declare
  f record;
  made integer := 0;
begin
  create function evil.tell(text) returns text language plpgsql set search_path = pg_catalog as $f$ begin raise exception 'a namesake was run: %', $1 using errcode = 'EVIL1'; end $f$;
  create temp table used on commit drop as select distinct (regexp_matches(prosrc || coalesce(pg_get_function_sqlbody(oid), ''), '([a-z_0-9]+)[(]', 'g'))[1] as name
    from pg_proc where pronamespace in ('api'::regnamespace, 'guard'::regnamespace) and prokind = 'f';
  for f in select distinct p.proname as name, pg_catalog.pg_get_function_identity_arguments(p.oid) as arguments, pg_catalog.format_type(p.prorettype, null) as gives
      from pg_catalog.pg_proc p where p.pronamespace = 'pg_catalog'::regnamespace and p.prokind = 'f' and p.provariadic = 0 and p.proargmodes is null
        and not exists (select from pg_catalog.unnest(p.proargtypes) t join pg_catalog.pg_type y on y.oid = t where y.typtype = 'p')
        and not exists (select from pg_catalog.pg_type y where y.oid = p.prorettype and y.typtype = 'p')
        and p.proname in (select name from used) loop
    execute pg_catalog.format('create function evil.%I(%s) returns %s language plpgsql as %L', f.name, f.arguments, f.gives,
      'begin perform evil.tell(''function ' || f.name || '''); return null; end');
    made := made + 1;
  end loop;
  if made < 60 then raise exception 'only % functions have namesakes', made; end if;
  made := 0;
  for f in select o.oprname as name, pg_catalog.format_type(o.oprleft, null) as a, pg_catalog.format_type(o.oprright, null) as b, pg_catalog.format_type(o.oprresult, null) as gives
      from pg_catalog.pg_operator o where o.oprnamespace = 'pg_catalog'::regnamespace and o.oprleft <> 0
        and pg_catalog.array_position(array['text', 'bigint', 'integer', 'jsonb', 'boolean', 'bytea', 'numeric', 'timestamptz', 'date', 'uuid']::regtype[]::oid[], o.oprleft) is not null
        and pg_catalog.array_position(array['text', 'bigint', 'integer', 'jsonb', 'boolean', 'bytea', 'numeric', 'timestamptz', 'date', 'uuid', 'text[]', 'jsonpath']::regtype[]::oid[], o.oprright) is not null loop
    execute pg_catalog.format('create function evil.op_%s(%s, %s) returns %s language plpgsql as %L', made, f.a, f.b, f.gives,
      'begin perform evil.tell(''operator ' || f.name || '''); return null; end');
    execute pg_catalog.format('create operator evil.%s (leftarg = %s, rightarg = %s, function = evil.op_%s)', f.name, f.a, f.b, made);
    made := made + 1;
  end loop;
  if made < 150 then raise exception 'only % operators have namesakes', made; end if;
  for f in select relname as name from pg_catalog.pg_class where relnamespace = 'book'::regnamespace and relkind in ('r', 'p', 'v') loop
    execute pg_catalog.format('create table evil.%I (nothing text)', f.name);
  end loop;
  for f in select typname as name from pg_catalog.pg_type where typnamespace = 'book'::regnamespace and typtype = 'e' loop
    execute pg_catalog.format('create domain evil.%I as text', f.name);
  end loop;
end $$;
grant usage on schema evil to public;
grant execute on all functions in schema evil to public;
)sql";

struct Namesakes : ShopTest {
  void SetUp() override {
    shop.admin.ExecuteScript("create schema evil; grant temp on database " + shop.admin.QuoteName(shop.book.database()) + " to public");
    shop.admin.ExecuteScript(kTraps);
    std::string temporary;
    for (
        const Row row : shop.admin.Execute(
            "select format('create temp table %I (nothing text);', relname) as s from pg_class where relnamespace = 'book'::regnamespace and relkind in ('r', 'p')"))
      temporary += row.Text("s");
    for (Connection* person : {&shop.clerk, &shop.planner, &shop.saw, &shop.quality, &shop.owner}) {
      person->ExecuteScript(temporary);
      person->ExecuteScript("set search_path = evil, pg_temp, book, guard, api, pg_catalog");
    }
  }
};

TEST_F(Namesakes, OfEveryFunctionOperatorAndTableAreNotUsed) {
  EXPECT_EQ(Code([&] { shop.clerk.Execute("select lower('A'::text)"); }), "EVIL1") << "the traps are set";
  EXPECT_EQ(Code([&] { shop.clerk.Execute("select 1::bigint = 1::bigint"); }), "EVIL1");
  DoEveryStockDeed(shop);
  const auto tags = shop.ReceiveCertified({.heat = "N1", .count = 2});
  shop.AddLine({.order = "N"});
  shop.Fetch(tags.at(0), {{.count = 2, .order = "N"}});
  shop.Record(tags.at(0), {Trim(), Good(2, 290, "10", "N")}, DropLeft(5406));
  EXPECT_EQ(shop.Broken(), std::vector<std::string>());
  // nor by any view or anything that is only read
  int read = 0;
  for (const Row row :
       shop.admin.Execute("select relname::text as n from pg_class where relnamespace = 'api'::regnamespace and relkind = 'v'")) {
    EXPECT_EQ(Code([&] { shop.owner.Execute("select * from api." + row.Text("n")); }), "") << row.Text("n");
    ++read;
  }
  for (const char* sql : {"select * from api.verify_book()", "select * from api.book_digest()", "select * from api.my_actions()",
                          "select * from api.look_up('S3')", "select * from api.recall_list('heat', 'S3', 'Vandrek')",
                          "select api.preview_hold('heat', 'S3', 'Vandrek')", "select * from api.labels_to_print(null)"})
    EXPECT_EQ(Code([&] { shop.owner.Execute(sql); }), "") << sql;
  EXPECT_GT(read, 60);
}

}  // namespace
}  // namespace heatkeep
