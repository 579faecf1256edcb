#include "client/book/restore.h"

#include <algorithm>
#include <system_error>

#include "client/book/book_error.h"
#include "client/book/migrate_error.h"
#include "client/book/own_book.h"
#include "client/book/piped_child.h"
#include "client/book/server_binaries.h"
#include "client/gateway/conninfo.h"
#include "client/gateway/records.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

BookError Bad(const std::string& what) { return {BookError::Kind::BadInput, what}; }

void RequireVersions(const BackupFacts& facts, const SchemaFiles& files, int server_major) {
  if (facts.schema > files.migrations.back().version)
    throw MigrateError(MigrateError::Kind::TooNew,
                       "the backup is of a book at version " + std::to_string(facts.schema) + ", this program only knows up to " +
                           std::to_string(files.migrations.back().version) + "; expected the program that made it (" + facts.program +
                           ") or a newer one");
  if (const int wanted = std::max(facts.server / 10000, facts.dumped_by); wanted > server_major)
    throw Bad("the backup of a PostgreSQL " + std::to_string(facts.server / 10000) + " was written by pg_dump " + std::to_string(wanted) +
              ", the server here is PostgreSQL " + std::to_string(server_major) + "; expected " + std::to_string(wanted) +
              " or a newer one");
}

// What can be known to fail before anything is changed.
void RequireFits(Connection& keeper, const BackupFacts& facts, const SchemaFiles& files) {
  RequireVersions(facts, files, keeper.ServerVersion() / 10000);
  const Row there =
      keeper
          .Execute(
              "select (select count(*) from pg_class c join pg_namespace n on n.oid = c.relnamespace where n.nspname not in ('pg_catalog', 'information_schema', 'pg_toast')"
              "   and n.nspname not like 'pg_temp%' and n.nspname not like 'pg_toast_temp%') as things,"
              " (select count(*) from pg_namespace where nspname in ('book', 'guard', 'api')) as schemas")
          .Only();
  if (there.Int("things") + there.Int("schemas") > 0)
    throw Bad("the database " + keeper.Database() + " is not empty; expected a new one: a backup is never given back over what is there");
  for (const Person& person : facts.persons)
    if (!keeper.Execute("select 1 from pg_roles where rolname = $1 and not (rolcanlogin and not rolsuper)", {person.name}).empty())
      throw Bad("the backup has the person " + person.name +
                ", and on this server that name is no person's login; expected another server, or that role renamed");
}

// From 17 on pg_restore sets transaction_timeout, which older servers do not know.
fs::path ProgramsFor(int server_major) {
  constexpr int kSetsTransactionTimeout = 17;
  const ServerBinaries programs = FindClientPrograms(server_major);
  if (server_major < kSetsTransactionTimeout && programs.major >= kSetsTransactionTimeout)
    throw BookError(BookError::Kind::NoServer,
                    "pg_restore " + std::to_string(programs.major) + " cannot give a book back to PostgreSQL " +
                        std::to_string(server_major) + "; expected the package postgresql-client-" + std::to_string(server_major));
  return programs.folder;
}

void Feed(Connection& keeper, const fs::path& programs, BackupReader& backup, const RestoreProgress& progress) {
  PipedChild restore({(programs / "pg_restore").string(), "--single-transaction", "--exit-on-error", "--no-password",
                      "--role=heatkeep_book", "--dbname=" + ConninfoPair("dbname", keeper.Database())},
                     EnvironmentOf(keeper.handle()), PipedChild::Stream::ToIt);
  bool listens = true;
  for (std::string_view bytes; listens && !(bytes = backup.Next()).empty();) {
    progress("giving back", backup.Done(), backup.facts().dump_bytes);
    listens = restore.Write(bytes);
  }
  progress("indexes and rules", 0, 0);
  if (restore.End() != 0 || !listens)
    throw BookError(BookError::Kind::Broken, "the backup could not be given back, and nothing was: " + restore.Complaint());
}

void RequireSame(Connection& keeper, const BackupFacts& facts) {
  keeper.Execute("set role heatkeep_book");
  const BookDigest now = ReadBookDigest(keeper);
  if (now.digest != facts.digest || now.happenings != facts.happenings) {
    keeper.ExecuteScript(
        "drop schema if exists api cascade; drop schema if exists guard cascade; drop schema if exists book cascade; reset role");
    throw BookError(BookError::Kind::Broken,
                    "what was given back is not what was backed up, and was taken away again: the book's digest is " + now.digest +
                        " over " + std::to_string(now.happenings) + " happenings, the backup says " + facts.digest + " over " +
                        std::to_string(facts.happenings));
  }
  keeper.Execute("reset role");
}

// A home being made: taken away with all that is in it unless it got its name.
class Staging {
 public:
  explicit Staging(const fs::path& home) : home_(home), cluster_({home.string() + ".restoring", {}, {}}) {
    if (std::error_code none; fs::exists(home, none) && !fs::is_empty(home, none))
      throw Bad("there is something in " + home.string() + "; expected a place where no book is: a backup is never given back over one");
    if (fs::exists(cluster_.home()))
      throw Bad(cluster_.home().string() +
                " is there: another is being given back, or was broken off; expected it gone (`heatkeep --home " +
                cluster_.home().string() + " book stop`, then remove the folder)");
  }
  ~Staging() {
    if (named_) return;
    try {
      cluster_.Stop();
    } catch (const std::exception&) {  // what stopped us is what is told
    }
    std::error_code ignored;
    fs::remove_all(cluster_.home(), ignored);
  }
  Staging(const Staging&) = delete;
  Staging& operator=(const Staging&) = delete;

  PrivateCluster& cluster() { return cluster_; }
  void GiveName() {
    cluster_.Stop();
    MarkReady(cluster_.home());
    fs::rename(cluster_.home(), home_);  // over an empty folder too
    named_ = true;
  }

 private:
  fs::path home_;
  PrivateCluster cluster_;
  bool named_ = false;
};

}  // namespace

void CheckBackup(BackupReader& backup, const RestoreProgress& progress) {
  backup.Rewind();
  while (!backup.Next().empty()) progress("reading", backup.Done(), backup.facts().dump_bytes);
}

RestoreReport RestoreOnServer(Connection& keeper, BackupReader& backup, const RestoreProgress& progress) {
  const SchemaFiles files = ReadSchemaFiles(SchemaFolder());
  RequireFits(keeper, backup.facts(), files);
  const fs::path programs = ProgramsFor(keeper.ServerVersion() / 10000);
  CheckBackup(backup, progress);
  MakeOwnerReady(keeper, files);
  backup.Rewind();
  Feed(keeper, programs, backup, progress);
  RequireSame(keeper, backup.facts());
  RestoreReport report;
  report.migrated = Migrate(keeper, files);
  for (const Person& person : backup.facts().persons) AddPerson(keeper, person.name, person.roles);
  keeper.ExecuteScript("set role heatkeep_book; analyze");
  progress("verifying", 0, 0);
  report.checks = VerifyBook(keeper, false);
  keeper.Execute("reset role");
  return report;
}

RestoreReport RestoreOwn(const fs::path& home, BackupReader& backup, const RestoreProgress& progress) {
  Staging staging(home);
  RequireVersions(backup.facts(), ReadSchemaFiles(SchemaFolder()), FindServerBinaries().major);
  CheckBackup(backup, progress);
  staging.cluster().Init();
  std::vector<std::string> names;
  for (const Person& person : backup.facts().persons) names.push_back(person.name);
  RestoreReport report;
  {
    Connection keeper = staging.cluster().Admin();
    report = RestoreOnServer(keeper, backup, progress);
  }
  staging.cluster().Admit(names);
  staging.GiveName();
  return report;
}

}  // namespace heatkeep
