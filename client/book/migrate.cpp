#include "client/book/migrate.h"

#include <algorithm>

#include "client/book/migrate_error.h"
#include "client/book/schema_fingerprint.h"

namespace heatkeep {
namespace {

using Kind = MigrateError::Kind;

// Any number, as long as every program takes the same: "HEAT" in ASCII.
constexpr const char* kOneAtATime = "select pg_advisory_xact_lock(1212498260)";

constexpr const char* kLedger = R"sql(
create schema if not exists book;
create table if not exists book.migration (
  version int primary key check (version > 0),
  name text not null,
  sha256 text not null check (sha256 ~ '^[0-9a-f]{64}$'),
  applied_at timestamptz not null default now(),
  applied_by text not null default session_user);
comment on table book.migration is 'which migration files have run in this book, and when';
)sql";

struct Applied {
  int version;
  std::string name;
  std::string sha256;
};

std::string FileName(int version, const std::string& name) {
  std::string digits = std::to_string(version);
  if (digits.size() < 4) digits.insert(0, 4 - digits.size(), '0');
  return digits + "_" + name + ".sql";
}

std::vector<Applied> ReadLedger(Connection& connection) {
  std::vector<Applied> ledger;
  if (connection.Execute("select to_regclass('book.migration') is not null as there").Only().Bool("there"))
    for (const Row row : connection.Execute("select version, name, sha256 from book.migration order by version"))
      ledger.push_back({static_cast<int>(row.Int("version")), row.Text("name"), row.Text("sha256")});
  return ledger;
}

const Migration* Find(const SchemaFiles& files, int version) {
  const auto found =
      std::find_if(files.migrations.begin(), files.migrations.end(), [&](const Migration& m) { return m.version == version; });
  return found == files.migrations.end() ? nullptr : &*found;
}

// The migrations that have not run yet, or a refusal.
std::vector<const Migration*> Compare(const std::vector<Applied>& ledger, const SchemaFiles& files) {
  const int newest_file = files.migrations.empty() ? 0 : files.migrations.back().version;
  const int newest_run = ledger.empty() ? 0 : ledger.back().version;
  if (newest_run > newest_file)
    throw MigrateError(Kind::TooNew,
                       "the book is at version " + std::to_string(newest_run) + ", this program only knows up to " +
                           std::to_string(newest_file) + ": a newer program has been here; use that one");
  for (const Applied& run : ledger) {
    const Migration* file = Find(files, run.version);
    const std::string name = FileName(run.version, run.name);
    if (!file || file->name != run.name)
      throw MigrateError(Kind::Missing, name + " has run in this book but is not among the files any more");
    if (file->sha256 != run.sha256)
      throw MigrateError(Kind::Edited,
                         name +
                             " was changed after it had run in this book; what has run is never "
                             "edited: put it back and write a new one");
  }
  std::vector<const Migration*> fresh;
  for (const Migration& file : files.migrations) {
    const bool has_run = std::any_of(ledger.begin(), ledger.end(), [&](const Applied& a) { return a.version == file.version; });
    if (has_run) continue;
    if (file.version < newest_run)
      throw MigrateError(Kind::BadFiles,
                         FileName(file.version, file.name) + " comes before " + std::to_string(newest_run) +
                             ", which has already run; expected a number after it");
    fresh.push_back(&file);
  }
  return fresh;
}

MigrateError FileFailed(const SchemaFile& file, const DbError& error) {
  // `position` counts characters; only the first byte of each counts here.
  int left = error.inner_query == file.text ? error.position : 0, line = 1;
  std::string where = file.path.string();
  if (left > 0) {
    for (const char c : file.text) {
      if ((static_cast<unsigned char>(c) & 0xc0) != 0x80 && --left == 0) break;
      if (c == '\n') ++line;
    }
    where += ":" + std::to_string(line);
  }
  std::string text = where + ": " + error.message;
  if (!error.sqlstate.empty()) text += " (" + error.sqlstate + ")";
  for (const std::string* more : {&error.detail, &error.hint})
    if (!more->empty()) text += "\n  " + *more;
  if (error.kind == DbError::Kind::Forbidden && file.kind == "roles")
    return {Kind::NotAllowed,
            text +
                "\n  Bringing a book up to date needs a login that owns the database and may make "
                "roles (CREATEROLE), or a superuser"};
  if (error.sqlstate == "55P03") text += "\n  Somebody is working in the book; try again when all have left it";
  return {Kind::Failed, text};
}

// Within a block of its own, where the server refuses whatever would end the transaction: a begin, commit or
// rollback in a file cannot leave half a book.
// What every deed has set. A step of a deed has it from the deed.
constexpr char kPathOfDeeds[] = "book, pg_catalog, pg_temp";

void RunFile(Connection& connection, const SchemaFile& file, const std::string& search_path = "default") {
  try {
    connection.Execute("set local search_path to " + search_path);
    connection.ExecuteScript("do " + connection.QuoteText("begin execute " + connection.QuoteText(file.text) + "; end"));
    connection.Execute("set constraints all immediate");
  } catch (const DbError& error) {
    if (error.kind == DbError::Kind::Unreachable) throw;
    throw FileFailed(file, error);
  }
}

void RunKind(Connection& connection, const SchemaFiles& files, const char* kind, const std::string& search_path = "default") {
  for (const SchemaFile& file : files.recreated)
    if (file.kind == kind) RunFile(connection, file, search_path);
}

void RequireSame(const std::vector<std::string>& before, const std::vector<std::string>& after, const char* when) {
  const auto differences = Differences(before, after);
  if (differences.empty()) return;
  std::string text = std::string("what the tables keep to changed ") + when +
      "; constraints, defaults and indexes may only use what the database itself brings:";
  for (const std::string& line : differences) text += "\n  " + line;
  throw MigrateError(Kind::Hanging, text);
}

// What somebody took away, or turned off, since the last program brought the book up to date. Our own triggers are made anew.
void RequireAsMade(Connection& connection) {
  if (!connection.Execute("select to_regprocedure('guard.unlike_made()') is not null as there").Only().Bool("there")) return;
  std::string text;
  for (const Row row : connection.Execute("select * from guard.unlike_made() x (line) where line !~ '^[a-z ]+: trigger '"))
    text += "\n  " + row.Text("line");
  if (!text.empty())
    throw MigrateError(Kind::Hanging, "the tables do not keep to what they were made with; put it back as its migration made it:" + text);
}

// So that this login may act as the owner of the schema, and the owner may make schemas here.
void BecomeOwner(Connection& connection) {
  try {
    connection.ExecuteScript(R"sql(do $$
begin
  if not pg_has_role(current_user, 'heatkeep_book', 'member') then
    execute format('grant heatkeep_book to %I', current_user);
  end if;
  if not has_database_privilege('heatkeep_book', current_database(), 'create') then
    execute format('grant create on database %I to heatkeep_book', current_database());
  end if;
end $$;
set local role heatkeep_book;
set local lock_timeout to '10s';)sql");
  } catch (const DbError& error) {
    if (error.kind == DbError::Kind::Unreachable) throw;
    throw MigrateError(Kind::NotAllowed,
                       "this login cannot act as the owner of the book: " + error.message +
                           "; it needs to own the database and have CREATEROLE, or be a superuser");
  }
}

void MakeLedger(Connection& connection) {
  const bool there = connection.Execute("select to_regclass('book.migration') is not null as t").Only().Bool("t");
  if (!there) connection.ExecuteScript(kLedger);
}

MigrateReport Report(const std::vector<Applied>& ledger, const std::vector<const Migration*>& fresh) {
  MigrateReport report;
  report.before = report.after = ledger.empty() ? 0 : ledger.back().version;
  for (const Migration* migration : fresh) {
    report.after = migration->version;
    report.migrations.push_back(FileName(migration->version, migration->name));
  }
  return report;
}

}  // namespace

MigrateReport Migrate(Connection& connection, const SchemaFiles& files) {
  Transaction transaction(connection);
  connection.Execute(kOneAtATime);
  RunKind(connection, files, "roles");
  BecomeOwner(connection);
  MakeLedger(connection);
  const auto ledger = ReadLedger(connection);
  const auto fresh = Compare(ledger, files);

  RequireAsMade(connection);
  const auto with_old = SchemaFingerprint(connection);
  connection.ExecuteScript("drop schema if exists guard cascade; drop schema if exists api cascade");
  RequireSame(with_old, SchemaFingerprint(connection), "when the schemas guard and api were dropped");

  for (const Migration* migration : fresh) {
    RunFile(connection, migration->file);
    connection.Execute("insert into book.migration (version, name, sha256) values ($1, $2, $3)",
                       {migration->version, migration->name, migration->sha256});
  }
  const auto migrated = SchemaFingerprint(connection);

  connection.ExecuteScript("create schema guard; create schema api");
  RunKind(connection, files, "guard", kPathOfDeeds);
  RunKind(connection, files, "api", kPathOfDeeds);
  connection.Execute("reset role");
  RunKind(connection, files, "grants");
  RequireSame(migrated, SchemaFingerprint(connection), "while guard, api and grants were made");
  transaction.Commit();
  return Report(ledger, fresh);
}

MigrateReport CheckMigrations(Connection& connection, const SchemaFiles& files) {
  const auto ledger = ReadLedger(connection);
  return Report(ledger, Compare(ledger, files));
}

void MakeOwnerReady(Connection& connection, const SchemaFiles& files) {
  Transaction transaction(connection);
  connection.Execute(kOneAtATime);
  RunKind(connection, files, "roles");
  BecomeOwner(connection);
  transaction.Commit();
}

}  // namespace heatkeep
