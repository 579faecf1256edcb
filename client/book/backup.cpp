#include "client/book/backup.h"

#include <array>

#include "client/book/book_error.h"
#include "client/book/piped_child.h"
#include "client/book/server_binaries.h"
#include "client/gateway/conninfo.h"
#include "client/gateway/readings.h"
#include "client/gateway/records.h"

namespace heatkeep {
namespace {

// From here to the end of the transaction this session sees one moment, and acts as the owner of the book.
std::string OneMoment(Connection& keeper) {
  keeper.ExecuteScript("set transaction isolation level repeatable read read only; set local idle_in_transaction_session_timeout to 0");
  const Result may = keeper.Execute(
      "select exists (select from pg_class c join pg_namespace n on n.oid = c.relnamespace where n.nspname = 'book' and c.relname = 'migration') as book,"
      " coalesce((select pg_has_role(current_user, oid, 'member') from pg_roles where rolname = 'heatkeep_book'), false) as may");
  if (!may.Only().Bool("book")) throw BookError(BookError::Kind::NoBook, "the database " + keeper.Database() + " holds no book");
  if (!may.Only().Bool("may"))
    throw DbError(DbError::Kind::Refused, "42501",
                  "a backup holds all of the book, and " + keeper.User() +
                      " may not read all of it; expected the login that keeps it, its owner or a superuser");
  keeper.Execute("set local role heatkeep_book");
  return keeper.Execute("select pg_export_snapshot() as s").Only().Text("s");
}

}  // namespace

BackupFacts MakeBackup(Connection& keeper, const std::string& program, const std::filesystem::path& file,
                       const std::function<void(std::int64_t bytes)>& progress) {
  const ServerBinaries programs = FindClientPrograms(keeper.ServerVersion() / 10000);
  Transaction moment(keeper);
  const std::string snapshot = OneMoment(keeper);
  BackupWriter writer(file);
  PipedChild dump({(programs.folder / "pg_dump").string(), "--format=custom", "--no-password", "--lock-wait-timeout=60s",
                   "--role=heatkeep_book", "--schema=book", "--schema=guard", "--schema=api", "--snapshot=" + snapshot},
                  EnvironmentOf(keeper.handle()), PipedChild::Stream::FromIt);
  BackupFacts facts;
  facts.program = program;
  facts.server = keeper.ServerVersion();
  facts.dumped_by = programs.major;
  facts.schema = static_cast<int>(ReadSchemaVersion(keeper));
  const BookDigest digest = ReadBookDigest(keeper);
  facts.digest = digest.digest;
  facts.happenings = digest.happenings;
  facts.persons = ListPersons(keeper);
  facts.made_at = keeper.Execute("select to_char(now() at time zone 'UTC', 'YYYY-MM-DD\"T\"HH24:MI:SS\"Z\"') as at").Only().Text("at");
  std::array<char, std::size_t{256} * 1024> buffer{};
  while (const std::size_t got = dump.Read(buffer.data(), buffer.size())) {
    writer.Append({buffer.data(), got});
    progress(writer.Bytes());
  }
  if (dump.End() != 0) throw BookError(BookError::Kind::Broken, "the backup could not be made, and there is no file: " + dump.Complaint());
  moment.Commit();
  return writer.Finish(std::move(facts));
}

}  // namespace heatkeep
