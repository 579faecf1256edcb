// Nobody gets at the tables, the guards or the author's name but through the deeds.
#include "client/book/persons.h"
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct ClosedDoors : ShopTest {
  std::vector<std::string> Names(const std::string& sql) {
    std::vector<std::string> names;
    for (const Row row : shop.admin.Execute(sql)) names.push_back(row.Text("n"));
    return names;
  }
  std::vector<std::string> Everybody() {
    std::vector<std::string> all = RoleNames();
    all.push_back("all");
    return all;
  }
};

constexpr const char* kTables =
    "select format('book.%I', relname) as n from pg_class where relnamespace = 'book'::regnamespace and "
    "relkind in ('r', 'p')";

TEST_F(ClosedDoors, ALoginWithoutARoleDoesNotEvenGetIn) {
  const DbError error = Refusal([&] { shop.book.As("stranger"); });
  EXPECT_NE(error.message.find("permission denied for database"), std::string::npos) << error.message;
}

TEST_F(ClosedDoors, NoRoleReadsOrWritesAnyTableWithRawSql_42501) {
  const std::vector<std::string> tables = Names(kTables);
  ASSERT_GT(tables.size(), 40u);
  for (const std::string& who : Everybody()) {
    Connection person = shop.book.As(who);
    for (const std::string& t : tables) {
      for (const std::string& sql : {"select * from " + t, "insert into " + t + " default values", "delete from " + t, "truncate " + t,
                                     "create index on " + t + " ((1))", "drop table " + t, "alter table " + t + " disable trigger all"})
        EXPECT_EQ(Code([&] { person.Execute(sql); }), "42501") << who << ": " << sql;
      const std::string column = shop.Word("select attname::text as w from pg_attribute where attrelid = $1::regclass and attnum = 1", {t});
      EXPECT_EQ(Code([&] { person.Execute("update " + t + " set " + column + " = default"); }), "42501") << who << ": " << t;
    }
  }
}

TEST_F(ClosedDoors, NoRoleCallsAGuardOrTouchesASequence_42501) {
  const auto guards = Names(
      "select format('guard.%I(%s)', proname, (select string_agg('null::' || format_type(a, null), ', ' "
      "order by o)"
      " from unnest(proargtypes) with ordinality u (a, o))) as n from pg_proc where pronamespace = "
      "'guard'::regnamespace");
  const auto sequences = Names(
      "select format('book.%I', relname) as n from pg_class where relnamespace = 'book'::regnamespace and "
      "relkind = 'S'");
  ASSERT_GT(guards.size(), 40u);
  ASSERT_GT(sequences.size(), 30u);
  for (const std::string& who : Everybody()) {
    Connection person = shop.book.As(who);
    for (const std::string& g : guards) EXPECT_EQ(Code([&] { person.Execute("select " + g); }), "42501") << who << ": " << g;
    for (const std::string& s : sequences) {
      EXPECT_EQ(Code([&] { person.Execute("select nextval($1::text::regclass)", {s}); }), "42501") << who << ": " << s;
    }
  }
}

TEST_F(ClosedDoors, NobodyMakesAnythingInTheDatabase_42501) {
  for (const std::string& who : Everybody()) {
    Connection person = shop.book.As(who);
    for (const char* sql : {"create temp table piece (tag text)", "create schema mine", "create table public.t (i int)",
                            "create function public.f() returns int language sql as 'select 1'",
                            "create function api.f() returns int language sql as 'select 1'", "create role one_more",
                            "alter database template1 set fsync = off", "create view api.v as select 1",
                            "create function pg_temp.sha256(bytea) returns bytea language sql as 'select $1'"})
      EXPECT_EQ(Code([&] { person.Execute(sql); }), "42501") << who << ": " << sql;
  }
}

TEST_F(ClosedDoors, SetRoleAndSetSessionAuthorizationGainNothing_42501) {
  for (const std::string& who : Everybody()) {
    Connection person = shop.book.As(who);
    for (const char* sql : {"set role heatkeep_book", "set role heatkeep_admin", "set session authorization test_quality",
                            "set session_replication_role = replica", "grant heatkeep_book to current_user"})
      EXPECT_EQ(Code([&] { person.Execute(sql); }), who == "quality" && std::string(sql).ends_with("test_quality") ? "" : "42501")
          << who << ": " << sql;
  }
}

TEST_F(ClosedDoors, ADeedIsRefusedToEveryRoleItIsNotGrantedTo_42501) {
  const auto deeds = Names("select p.oid::regprocedure::text as n from pg_proc p where pronamespace = 'api'::regnamespace");
  int refused = 0;
  for (const std::string& who : Everybody()) {
    Connection person = shop.book.As(who);
    for (const std::string& deed : deeds) {
      const bool may = shop.admin.Execute("select has_function_privilege('test_' || $1, $2, 'execute') as m", {who, deed}).Only().Bool("m");
      if (may) continue;
      const std::string call = shop.Word(
          "select format('select %s(%s)', oid::regproc, (select string_agg('null::' || format_type(a, null), "
          "', ' order by o)"
          " from unnest(proargtypes) with ordinality u (a, o))) as w from pg_proc where oid = "
          "$1::text::regprocedure",
          {deed});
      EXPECT_EQ(Code([&] { person.Execute(call); }), "42501") << who << ": " << call;
      ++refused;
    }
  }
  EXPECT_GT(refused, 80);
}

TEST_F(ClosedDoors, ARolesOwnSettingsDoNotChangeWhoDidItNorWhichDeedItWas) {
  for (const char* note : {"deed", "request", "true_at", "device", "reason"})
    shop.clerk.Execute("select set_config($1, 'correct_receipt', false)", {std::string("heatkeep.") + note});
  const auto tags = shop.Receive({});
  EXPECT_EQ(shop.Word("select string_agg(distinct deed || ' by ' || who || coalesce(reason, '') || "
                      "coalesce(device, ''), ',') as w"
                      " from book.happening where chain = 'piece'"),
            "receive_delivery by test_clerk");
  EXPECT_EQ(Code([&] { shop.clerk.Execute("update book.piece set lot_id = 1"); }), "42501");
}

TEST_F(ClosedDoors, TheAuthorIsTheLoginWhateverIsSaidAndWhateverRoleIsTaken) {
  Connection all = shop.book.As("all");
  all.Execute("set role heatkeep_clerk");
  Json body{
      {"note", "N1"}, {"supplier", "Vandrek"}, {"received_by", "somebody else"}, {"who", "test_owner"}, {"lines", {LineJson({}, "1")}}};
  body["lines"][0]["who"] = "test_owner";
  Do(all, "receive_delivery", {body.dump()});
  EXPECT_EQ(shop.Word("select received_by as w from book.receipt"), "test_all");
  EXPECT_EQ(shop.Number("select count(*) as n from book.happening where who not in ('test_all', "
                        "'test_owner') and deed = 'receive_delivery'"),
            0);
  EXPECT_EQ(all.Execute("select api.whoami() as w").Only().Text("w"), "test_all");
  EXPECT_EQ(shop.Number("select count(*) as n from information_schema.parameters where specific_schema = 'api'"
                        " and parameter_name in ('p_who', 'p_by', 'p_user', 'p_author') and parameter_mode = 'IN'"),
            0);
}

// The worst case: an attacker who was given a schema and temporary tables of his own.
TEST_F(ClosedDoors, SearchPathAndNamesakesOfAnAttackerAreNotUsed) {
  shop.admin.ExecuteScript("create schema evil authorization test_clerk; grant temp on database " + shop.book.database() +
                           " to test_clerk");
  shop.clerk.ExecuteScript(R"(
    create table evil.trap (what text);
    create function evil.sha256(bytea) returns bytea language plpgsql as $$ begin insert into evil.trap values ('sha256'); return 'x'; end $$;
    create function evil.lower(text) returns text language plpgsql as $$ begin insert into evil.trap values ('lower'); return 'x'; end $$;
    create function evil.btrim(text) returns text language plpgsql as $$ begin insert into evil.trap values ('btrim'); return 'Vandrek'; end $$;
    create function evil.jsonb_strip_nulls(jsonb) returns jsonb language sql as 'select ''{}''::jsonb';
    create function evil.clock_timestamp() returns timestamptz language sql as 'select ''2001-01-01''::timestamptz';
    create function evil.eq(text, text) returns boolean language sql as 'select true';
    create operator evil.= (leftarg = text, rightarg = text, function = evil.eq);
    create table evil.party as select 0::bigint as party_id, 'Nobody'::text as name;
    create temp table party as select 0::bigint as party_id, 'Nobody'::text as name;
    create temp table piece (piece_id bigint, tag text);
    create temp table lot (lot_id bigint);
    create temp table happening (happening_id bigint);
    set search_path = evil, pg_temp, pg_catalog;)");
  EXPECT_EQ(Code([&] { shop.Receive({.mill = "Nobody"}); }), "HK020");
  const auto tags = shop.Receive({});
  EXPECT_EQ(shop.Number("select count(*) as n from book.piece where tag = $1", {tags.at(0)}), 1);
  EXPECT_EQ(shop.Number("select count(*) as n from book.happening where at < '2020-01-01' or sets = '{}'"), 0);
  shop.clerk.Execute("select * from api.stock_on_hand");
  EXPECT_EQ(shop.Number("select count(*) as n from evil.trap"), 0);
}

TEST_F(ClosedDoors, EverySecurityDefinerFunctionPinsItsSearchPathWithTempLast) {
  const auto open = Names(
      "select oid::regprocedure::text as n from pg_proc where prosecdef and pronamespace in "
      "('api'::regnamespace, 'guard'::regnamespace)"
      " and (select s from unnest(proconfig) s where s like 'search_path=%') !~ '^search_path=(book, "
      ")?pg_catalog, pg_temp$' is not false");
  EXPECT_EQ(open, std::vector<std::string>());
}

// What names tables without their schema takes the path of who calls it: that is a deed or a trigger, never a person.
TEST_F(ClosedDoors, AStepThatHasItsPathFromTheDeedIsCalledByNoRole) {
  const std::string steps =
      "select p.oid::regprocedure::text as n from pg_proc p join pg_language l on l.oid = p.prolang where l.lanname = 'plpgsql' and p.proconfig is null"
      " and p.pronamespace in ('api'::regnamespace, 'guard'::regnamespace) and p.prorettype <> 'trigger'::regtype";
  EXPECT_GT(Names(steps).size(), 100U);
  EXPECT_EQ(
      Names(
          steps +
          " and exists (select from pg_roles r where r.rolname in ('heatkeep_clerk', 'heatkeep_planner', 'heatkeep_saw', 'heatkeep_quality', 'heatkeep_owner')"
          " and has_function_privilege(r.oid, p.oid, 'execute'))"),
      std::vector<std::string>());
}

TEST_F(ClosedDoors, TheRolesThemselvesLogInNowhereAndHaveNoPowers) {
  EXPECT_EQ(Names("select rolname::text as n from pg_roles where rolname in ('heatkeep_book', "
                  "'heatkeep_clerk', 'heatkeep_planner', 'heatkeep_saw', 'heatkeep_quality',"
                  " 'heatkeep_owner') and (rolcanlogin or rolsuper or rolcreaterole or rolcreatedb or "
                  "rolbypassrls or rolreplication)"),
            std::vector<std::string>());
  EXPECT_EQ(Names("select m.member::regrole::text as n from pg_auth_members m where m.roleid = "
                  "'heatkeep_book'::regrole and m.member::regrole::text <> 'heatkeep_admin'"),
            std::vector<std::string>());
}

TEST_F(ClosedDoors, NothingIsLeftToPublic) {
  EXPECT_EQ(Names("select p.oid::regprocedure::text as n from pg_proc p, aclexplode(coalesce(proacl, "
                  "acldefault('f', proowner))) a"
                  " where pronamespace in ('api'::regnamespace, 'guard'::regnamespace, 'book'::regnamespace) "
                  "and a.grantee = 0"),
            std::vector<std::string>());
  EXPECT_EQ(Names("select c.oid::regclass::text as n from pg_class c, aclexplode(relacl) a"
                  " where relnamespace in ('api'::regnamespace, 'book'::regnamespace) and a.grantee = 0"),
            std::vector<std::string>());
  EXPECT_EQ(Names("select nspname::text as n from pg_namespace, aclexplode(nspacl) a"
                  " where nspname in ('api', 'book', 'guard', 'public') and a.grantee = 0"),
            std::vector<std::string>());
}

}  // namespace
}  // namespace heatkeep
