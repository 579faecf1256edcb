// What PostgreSQL itself can do to a machine or a database, asked for by every role.
#include "client/book/persons.h"
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

constexpr const char* kTools[] = {
    "copy (select 1) to program 'true'",
    "create temp table t (a text)",
    "copy pg_catalog.pg_class from program 'id'",
    "copy (select 1) to '/dev/null'",
    "select pg_read_file('/etc/passwd')",
    "select pg_read_binary_file('PG_VERSION')",
    "select pg_ls_dir('/')",
    "select pg_stat_file('PG_VERSION')",
    "select pg_file_write('x', 'y', false)",
    "select lo_import('/etc/passwd')",
    "select lo_export(1, '/dev/null')",
    "select lo_create(0)",
    "select lo_creat(-1)",
    "select lo_from_bytea(0, 'x')",
    "alter system set archive_command = 'true'",
    "select pg_reload_conf()",
    "select pg_rotate_logfile()",
    "select pg_switch_wal()",
    "select pg_create_restore_point('x')",
    "select pg_create_physical_replication_slot('x')",
    "select pg_promote()",
    "select pg_hba_file_rules()",
    "select rolpassword from pg_authid",
    "select * from pg_shadow",
    "select * from pg_file_settings",
    "select setting from pg_settings where name = 'data_directory' and setting is null union all select pg_read_file('x')",
    "load 'auto_explain'",
    "create extension file_fdw schema api",
    "create extension dblink schema api",
    "create language plperlu",
    "create server s foreign data wrapper f",
    "create publication p for all tables",
    "create subscription s connection '' publication p",
    "create event trigger e on ddl_command_start execute function f()",
    "create database mine",
    "create tablespace t location '/dev'",
    "drop database postgres",
    "drop owned by heatkeep_book",
    "reassign owned by heatkeep_book to current_user",
    "alter role heatkeep_book login",
    "alter role current_user createrole",
    "alter schema api rename to x",
    "alter function api.whoami() security definer",
    "drop function api.whoami()",
    "create or replace function api.whoami() returns text language sql as 'select ''test_owner''::text'",
    "create rule r as on select to api.grades do instead nothing",
    "create trigger t before insert on book.piece execute function f()",
    "create policy p on book.piece",
    "comment on table book.piece is 'x'",
    "security label on table book.piece is 'x'",
    "do $$ begin lock table book.piece; end $$",
    "do $$ begin lock table api.grades in access exclusive mode; end $$",
    "analyze book.piece",
    "vacuum book.piece",
    "reindex table book.piece",
    "cluster book.piece",
    "refresh materialized view api.grades",
    "grant select on book.piece to public",
    "grant heatkeep_owner to test_clerk",
    "alter default privileges for role heatkeep_book grant all on tables to public",
    "set session_replication_role = replica",
    "set log_statement = 'all'",
    "set dynamic_library_path = '$libdir/mine'",
    "set session_preload_libraries = 'x'",
    "set zero_damaged_pages = on",
    "set lo_compat_privileges = on",
    "set allow_system_table_mods = on",
    "set ignore_checksum_failure = on",
    "set role heatkeep_book",
    "set role pg_read_server_files",
    "set session authorization heatkeep_admin",
    "insert into api.grades select * from api.grades",
    "update api.places set place = 'x'",
    "delete from api.stock_on_hand",
    "truncate api.stock_on_hand",
    "create index on api.grades ((1))",
    "select pg_terminate_backend(pg_backend_pid() + 0) from pg_roles where false union all select pg_terminate_backend(pid) from pg_stat_activity where usename = 'heatkeep_admin' and pid <> pg_backend_pid()",
};

// 42501 is "you may not"; the rest is that there is no such thing to be had here.
bool Refused(const std::string& code) {
  return code == "42501" || code == "42704" || code == "42883" || code == "0A000" || code == "58P01" || code == "42P01" ||
      code == "42809" || code == "55000" || code == "42601" || code == "25001" || code == "22023" || code == "55006" || code == "42P07" ||
      code == "55P02" || code == "2BP01";
}

TEST(ServerTools, AreRefusedToEveryRole) {
  SmallShop shop;
  std::vector<std::string> people = RoleNames();
  people.push_back("all");
  for (const std::string& who : people) {
    Connection person = shop.book.As(who);
    for (const char* sql : kTools) {
      const DbError error = Refusal([&] { person.Execute(sql); });
      EXPECT_TRUE(Refused(error.sqlstate)) << who << ": " << sql << ": \"" << error.sqlstate << "\" " << error.message;
    }
    EXPECT_EQ(person.Execute("select api.whoami() as w").Only().Text("w"), "test_" + who);
  }
  EXPECT_EQ(shop.Number("select count(*) as n from pg_largeobject_metadata"), 0);
  EXPECT_EQ(shop.Broken(), std::vector<std::string>());
}

// Locks that anybody may take by number would stop deeds that took such a lock: none does.
TEST(ServerTools, NoDeedWaitsForALockThatAPersonCanTake) {
  SmallShop shop;
  EXPECT_EQ(
      shop.Number(
          "select count(*) as n from pg_proc where pronamespace in ('api'::regnamespace, 'guard'::regnamespace) and prosrc like '%pg_advisory%'"),
      0);
}

}  // namespace
}  // namespace heatkeep
