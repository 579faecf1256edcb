// Bringing a book up to date, with small schema files of the tests' own: what runs, what is refused, what is
// left behind.
#include "client/book/migrate.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <thread>

#include "client/book/migrate_error.h"
#include "tests/fixture/test_book.h"
#include "tests/fixture/test_cluster.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

struct Migrating : testing::Test {
  Migrating() {
    std::string made = (fs::temp_directory_path() / "heatkeep-schema-XXXXXX").string();
    if (!mkdtemp(made.data())) throw std::runtime_error("no folder");
    folder = made;
    for (const char* room : {"migrations", "guard", "api"}) fs::create_directory(folder / room);
    Write("files", "roles roles.sql   # who\nguard guard/fits.sql\n\napi api/things.sql\ngrants grants.sql\n");
    Write("roles.sql",
          "do $$ begin if not exists (select from pg_roles where rolname = 'heatkeep_book') then"
          " create role heatkeep_book nologin; end if; end $$;");
    Write("guard/fits.sql", "create function guard.fits(bigint) returns boolean language sql immutable return $1 > 0;");
    Write("api/things.sql", "create view api.things as select thing_id from book.thing;");
    Write("grants.sql", "grant usage on schema api to public;");
    Write("migrations/0001_thing.sql",
          "create table book.thing (thing_id bigint generated always as identity, length_nm bigint not null "
          "default 0,\n"
          "  constraint thing_pk primary key (thing_id), constraint thing_length check (length_nm >= 0));\n");
  }
  ~Migrating() override { fs::remove_all(folder); }

  void Write(const std::string& file, const std::string& text) { std::ofstream(folder / file) << text; }
  MigrateReport Run() { return Migrate(db, ReadSchemaFiles(folder)); }
  MigrateReport Check() { return CheckMigrations(db, ReadSchemaFiles(folder)); }
  bool There(const std::string& relation) { return db.Execute("select to_regclass($1) is not null as t", {relation}).Only().Bool("t"); }
  // Which refusal `Run` gives, and its words in `said`.
  MigrateError::Kind Refusal() {
    try {
      Run();
    } catch (const MigrateError& error) {
      said = error.what();
      return error.kind;
    }
    ADD_FAILURE() << "it was not refused";
    return {};
  }

  TestBook book{TestBook::Start::Empty};
  Connection db = book.Admin();
  fs::path folder;
  std::string said;
};

using Kind = MigrateError::Kind;

TEST_F(Migrating, EmptyBookComesToTheNewestVersion) {
  const MigrateReport report = Run();
  EXPECT_EQ(report.before, 0);
  EXPECT_EQ(report.after, 1);
  EXPECT_EQ(report.migrations, std::vector<std::string>{"0001_thing.sql"});
  const Result rows = db.Execute("select *, applied_at is not null as dated from book.migration");
  const Row row = rows.Only();
  EXPECT_EQ(row.Text("name"), "thing");
  EXPECT_EQ(row.Text("sha256").size(), 64U);
  EXPECT_EQ(row.Text("applied_by"), "heatkeep_admin");
  EXPECT_EQ(db.Execute("select tableowner from pg_tables where schemaname = 'book' and tablename = 'thing'").Only().Text("tableowner"),
            "heatkeep_book");
  EXPECT_TRUE(There("api.things"));
}

TEST_F(Migrating, ChecksumIsThatOfTheFilesBytes) {
  Write("migrations/0002_abc.sql", "-- abc");
  Run();
  // The database's own sha256() is the outside check.
  EXPECT_TRUE(
      db.Execute("select sha256 = encode(sha256('-- abc'), 'hex') as same from book.migration where version = 2").Only().Bool("same"));
}

TEST_F(Migrating, AgainIsNothingNewAndKeepsTheRows) {
  Run();
  db.ExecuteScript("insert into book.thing default values");
  const std::string ledger = db.Execute("select string_agg(m::text, '|') as all from book.migration m").Only().Text("all");
  const MigrateReport report = Run();
  EXPECT_EQ(report.before, 1);
  EXPECT_EQ(report.after, 1);
  EXPECT_TRUE(report.migrations.empty());
  EXPECT_EQ(db.Execute("select string_agg(m::text, '|') as all from book.migration m").Only().Text("all"), ledger);
  EXPECT_EQ(db.Execute("select count(*) as n from api.things").Only().Int("n"), 1);
}

TEST_F(Migrating, RecreatesWhatWasChangedInGuardAndApi) {
  Run();
  db.ExecuteScript("drop view api.things; create view api.left_over as select 1 as one");
  Run();
  EXPECT_TRUE(There("api.things"));
  EXPECT_FALSE(There("api.left_over"));
}

TEST_F(Migrating, RunsOnlyTheNewOnes) {
  Run();
  Write("migrations/0002_more.sql", "alter table book.thing add column note text;");
  EXPECT_EQ(Check().migrations, std::vector<std::string>{"0002_more.sql"});
  EXPECT_EQ(Run().migrations, std::vector<std::string>{"0002_more.sql"});
}

TEST_F(Migrating, CheckChangesNothing) {
  EXPECT_EQ(Check().after, 1);
  EXPECT_FALSE(There("book.migration"));
}

TEST_F(Migrating, EditedFileIsRefused) {
  Run();
  Write("migrations/0001_thing.sql", "create table book.thing (thing_id int);");
  EXPECT_EQ(Refusal(), Kind::Edited);
  EXPECT_NE(said.find("0001_thing.sql was changed"), std::string::npos) << said;
  EXPECT_THROW(Check(), MigrateError);
  EXPECT_TRUE(There("api.things")) << "the book is as it was";
}

TEST_F(Migrating, MissingFileIsRefused) {
  Write("migrations/0002_more.sql", "alter table book.thing add column note text;");
  Run();
  fs::remove(folder / "migrations/0001_thing.sql");
  EXPECT_EQ(Refusal(), Kind::Missing);
  EXPECT_NE(said.find("0001_thing.sql has run"), std::string::npos) << said;
}

TEST_F(Migrating, BookNewerThanTheFilesIsRefused) {
  Write("migrations/0002_more.sql", "alter table book.thing add column note text;");
  Run();
  fs::remove(folder / "migrations/0002_more.sql");
  EXPECT_EQ(Refusal(), Kind::TooNew);
  EXPECT_NE(said.find("version 2"), std::string::npos) << said;
  EXPECT_NE(said.find("up to 1"), std::string::npos) << said;
}

TEST_F(Migrating, NumberBeforeOneThatHasRunIsRefused) {
  fs::rename(folder / "migrations/0001_thing.sql", folder / "migrations/0003_thing.sql");
  Run();
  Write("migrations/0002_late.sql", "select 1;");
  EXPECT_EQ(Refusal(), Kind::BadFiles);
}

TEST_F(Migrating, FailingMigrationLeavesNothingAndNamesFileAndLine) {
  Write("migrations/0002_bad.sql", "create table book.other (i int);\n-- äöü\nalter table book.nowhere add column x int;\n");
  EXPECT_EQ(Refusal(), Kind::Failed);
  EXPECT_NE(said.find("0002_bad.sql"), std::string::npos) << said;
  EXPECT_FALSE(There("book.thing"));
  EXPECT_FALSE(There("book.migration"));
  Write("migrations/0002_bad.sql", "create table book.other (i int);\n-- äöü\n\ncreate tabel x;\n");
  EXPECT_EQ(Refusal(), Kind::Failed);
  EXPECT_NE(said.find("0002_bad.sql:4: syntax error"), std::string::npos) << said;
  EXPECT_FALSE(There("book.migration"));
}

TEST_F(Migrating, FailingApiFileLeavesTheOldBook) {
  Run();
  Write("migrations/0002_more.sql", "alter table book.thing add column note text;");
  Write("api/things.sql", "create view api.things as\nselect nothing from book.thing;");
  EXPECT_EQ(Refusal(), Kind::Failed);
  EXPECT_NE(said.find("things.sql:2:"), std::string::npos) << said;
  EXPECT_TRUE(There("api.things"));
  EXPECT_EQ(db.Execute("select max(version) as v from book.migration").Only().Int("v"), 1);
}

TEST_F(Migrating, FileCannotEndTheTransaction) {
  for (const char* end : {"commit;", "rollback;", "begin;", "create table book.y (i int); commit; begin;"}) {
    Write("migrations/0002_end.sql", std::string("create table book.x (i int);\n") + end);
    EXPECT_EQ(Refusal(), Kind::Failed) << end;
    EXPECT_FALSE(There("book.x")) << end;
    EXPECT_FALSE(There("book.thing")) << end;
  }
}

TEST_F(Migrating, ConstraintHungOnGuardIsRefusedBothWays) {
  Write("guard/fits.sql",
        "create function guard.fits(bigint) returns boolean language sql immutable return $1 >= 0;\n"
        "alter table book.thing add constraint thing_fits check (guard.fits(length_nm));");
  EXPECT_EQ(Refusal(), Kind::Hanging);
  EXPECT_NE(said.find("+ constraint thing.thing_fits"), std::string::npos) << said;

  Write("guard/fits.sql", "create function guard.fits(bigint) returns boolean language sql immutable return $1 >= 0;");
  Run();
  db.ExecuteScript("alter table book.thing add constraint thing_fits check (guard.fits(length_nm))");
  EXPECT_EQ(Refusal(), Kind::Hanging);
  EXPECT_NE(said.find("- constraint thing.thing_fits"), std::string::npos) << said;
  EXPECT_EQ(db.Execute("select count(*) as n from pg_constraint where conname = 'thing_fits'").Only().Int("n"), 1);
}

TEST_F(Migrating, WhatWasTakenFromTheTablesIsRefusedUntilItIsPutBack) {
  fs::copy_file(SchemaFolder() / "api/as_made.sql", folder / "api/as_made.sql");
  std::ofstream(folder / "files", std::ios::app) << "api api/as_made.sql\n";
  Run();
  Run();
  db.ExecuteScript("alter table book.thing drop constraint thing_length");
  EXPECT_EQ(Refusal(), Kind::Hanging);
  EXPECT_NE(said.find("\n  gone: constraint thing.thing_length"), std::string::npos) << said;
  db.ExecuteScript("alter table book.thing add constraint thing_length check (length_nm >= 0)");
  Run();
}

TEST_F(Migrating, DefaultAndIndexHungOnGuardAreRefused) {
  Run();
  for (const auto& [hang, line] :
       {std::pair{"alter table book.thing alter length_nm set default (guard.fits(1))::int", "- default thing.length_nm"},
        std::pair{"create index thing_odd on book.thing (guard.fits(length_nm))", "- index thing"}}) {
    db.ExecuteScript(hang);
    EXPECT_EQ(Refusal(), Kind::Hanging) << hang;
    EXPECT_NE(said.find(line), std::string::npos) << said;
    db.ExecuteScript("alter table book.thing alter length_nm set default 0; drop index if exists book.thing_odd");
  }
}

TEST_F(Migrating, TriggersOfGuardAreNoConstraintAndComeBack) {
  Write("guard/fits.sql",
        "create function guard.look() returns trigger language plpgsql as $$ begin return null; end $$;\n"
        "create constraint trigger thing_look after insert on book.thing deferrable initially deferred for "
        "each row execute function guard.look();");
  Run();
  Run();
  EXPECT_EQ(db.Execute("select count(*) as n from pg_trigger where tgname = 'thing_look'").Only().Int("n"), 1);
}

TEST_F(Migrating, BadListsAreRefusedWithFileAndLine) {
  const auto words = [&] {
    try {
      ReadSchemaFiles(folder);
    } catch (const MigrateError& error) {
      EXPECT_EQ(error.kind, Kind::BadFiles);
      return std::string(error.what());
    }
    return std::string("read without complaint");
  };
  Write("files", "roles roles.sql\nviews api/things.sql\n");
  EXPECT_NE(words().find("files:2: 'views' is no kind"), std::string::npos) << words();
  Write("files", "roles roles.sql\napi\n");
  EXPECT_NE(words().find("files:2: expected"), std::string::npos) << words();
  Write("files", "api api/nowhere.sql\n");
  EXPECT_NE(words().find("nowhere.sql cannot be read"), std::string::npos) << words();
  Write("files", "");
  Write("migrations/1_short.sql", "select 1;");
  EXPECT_NE(words().find("expected NNNN_name.sql"), std::string::npos) << words();
  fs::remove(folder / "migrations/1_short.sql");
  Write("migrations/0001_twice.sql", "select 1;");
  EXPECT_NE(words().find("there twice"), std::string::npos) << words();
}

TEST_F(Migrating, TwoProgramsAtOnceRunEachFileOnce) {
  int ran = 0;
  std::vector<std::thread> programs;
  std::mutex counting;
  for (int i = 0; i < 4; ++i)
    programs.emplace_back([&, conninfo = book.Conninfo("admin")] {
      Connection own = Connection::Open(conninfo);
      const MigrateReport report = Migrate(own, ReadSchemaFiles(folder));
      const std::lock_guard lock(counting);
      ran += static_cast<int>(report.migrations.size());
    });
  for (std::thread& program : programs) program.join();
  EXPECT_EQ(ran, 1);
}

TEST_F(Migrating, OnAServerTheOwnerOfTheDatabaseMayWithCreateroleAndAnotherMayNot) {
  Run();  // the group roles are there, as on a server with another book
  Connection admin = TestCluster::Get().cluster().Admin("postgres");
  admin.ExecuteScript("create role shop_keeper login createrole; create role shop_guest login;");
  TestCluster::Get().cluster().Admit({"shop_keeper", "shop_guest"});
  admin.ExecuteScript("create database shop_book owner shop_keeper");
  {
    const auto as = [&](const char* who) { return Connection::Open(TestCluster::Get().cluster().Conninfo(who, "shop_book")); };
    Connection guest = as("shop_guest");
    try {
      Migrate(guest, ReadSchemaFiles(folder));
      ADD_FAILURE() << "a guest brought the book up to date";
    } catch (const MigrateError& error) {
      EXPECT_EQ(error.kind, Kind::NotAllowed) << error.what();
      EXPECT_NE(std::string(error.what()).find("CREATEROLE"), std::string::npos) << error.what();
    }
    Connection keeper = as("shop_keeper");
    EXPECT_EQ(Migrate(keeper, ReadSchemaFiles(folder)).after, 1);
    EXPECT_EQ(Migrate(keeper, ReadSchemaFiles(folder)).before, 1);
  }
  admin.ExecuteScript("drop database shop_book with (force)");
  admin.ExecuteScript("drop role shop_keeper; drop role shop_guest");
}

}  // namespace
}  // namespace heatkeep
