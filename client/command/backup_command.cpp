#include "client/command/backup_command.h"

#include <nlohmann/json.hpp>
#include <ostream>

#include "client/book/backup.h"
#include "client/book/restore.h"
#include "client/command/book_command.h"
#include "client/command/work_watch.h"
#include "schema/terms/counted.h"
#include "schema/terms/number_text.h"

namespace heatkeep::command {
namespace {

using Json = nlohmann::ordered_json;

std::string Megabytes(std::int64_t bytes) { return WriteWhole(bytes / 1'000'000, true) + " MB"; }

Json FactsJson(const BackupOptions& options, const BackupFacts& facts) {
  Json persons = Json::array();
  for (const Person& person : facts.persons) persons.push_back({{"person", person.name}, {"roles", person.roles}});
  return {{"file", options.file},    {"made_at", facts.made_at},  {"program", facts.program},
          {"version", facts.schema}, {"server", facts.server},    {"happenings", facts.happenings},
          {"digest", facts.digest},  {"bytes", facts.dump_bytes}, {"sha256", facts.dump_sha256},
          {"persons", persons}};
}

void SayFacts(std::ostream& out, const BackupFacts& facts) {
  out << "the book as of " << facts.made_at << ", version " << facts.schema << ", " << WriteWhole(facts.happenings, true) << " happenings, "
      << Counted(facts.persons.size(), "person") << "\n"
      << "its digest  " << facts.digest << '\n';
}

int Explained(const BookCall& call, const std::function<int()>& work) {
  try {
    return work();
  } catch (const Stopped&) {
    call.err << "heatkeep: stopped; nothing was made\n";
    return 130;
  } catch (const std::exception& error) { return ExplainBookFailure(error, call.err); }
}

RestoreProgress Shown(WorkWatch& watch) {
  return [&watch](const std::string& what, std::int64_t done, std::int64_t all) {
    WorkWatch::Check();
    watch.Say([&](std::int64_t) { return all > 0 ? what + ": " + Megabytes(done) + " of " + Megabytes(all) : what; });
  };
}

// The book's place, said to a person who looks for it.
void SayWhere(const BookCall& call, const BookLocation& where, const BackupFacts& facts) {
  if (where.own) {
    call.out << "the book is in " << where.home.string() << '\n';
    bool known = false;
    for (const Person& person : facts.persons) known = known || person.name == where.person;
    if (!known)
      call.out << where.person << " is no person of it; expected --person with one of its persons (`heatkeep book person list`)\n";
    return;
  }
  call.out
      << "a backup holds no passwords; `heatkeep book person add NAME --role ROLE --password-stdin` gives one to each who had none on this server\n";
}

int Restored(const BookCall& call, const BackupOptions& options, const BackupFacts& facts, const BookLocation& where,
             const RestoreReport& report) {
  bool in_order = true;
  Json wrong = Json::array();
  for (const CheckRow& check : report.checks) {
    if (check.ok) continue;
    in_order = false;
    wrong.push_back({{"check", check.check}, {"detail", check.detail}});
    if (!options.json) call.out << "WRONG  " << check.check << ": " << check.detail << '\n';
  }
  if (options.json) {
    Json said = FactsJson(options, facts);
    said.update({{"given_back", true}, {"now_at_version", report.migrated.after}, {"in_order", in_order}, {"wrong", wrong}});
    call.out << said.dump(2) << '\n';
  } else {
    SayFacts(call.out, facts);
    for (const std::string& file : report.migrated.migrations) call.out << "ran " << file << '\n';
    call.out << (in_order ? "verified: the same digest, and the book is in order\n"
                          : "the same digest, and the book is NOT in order: nor was the one that was backed up\n");
    SayWhere(call, where, facts);
  }
  return in_order ? 0 : 1;
}

}  // namespace

int RunBackup(const BookCall& call, const BackupOptions& options) {
  return Explained(call, [&] {
    Connection keeper = OpenAsKeeper(FindBook(call.where));
    WorkWatch watch(call.err);
    const BackupFacts facts = MakeBackup(keeper, HEATKEEP_VERSION, options.file, [&](std::int64_t bytes) {
      WorkWatch::Check();
      watch.Say([&](std::int64_t) { return Megabytes(bytes) + " written"; });
    });
    if (options.json) {
      call.out << FactsJson(options, facts).dump(2) << '\n';
    } else {
      call.out << "wrote " << options.file << ", " << Megabytes(facts.dump_bytes) << '\n';
      SayFacts(call.out, facts);
    }
    return 0;
  });
}

int RunRestore(const BookCall& call, const BackupOptions& options) {
  return Explained(call, [&] {
    BackupReader backup(options.file);
    WorkWatch watch(call.err);
    if (options.check) {
      CheckBackup(backup, Shown(watch));
      if (options.json) call.out << FactsJson(options, backup.facts()).dump(2) << '\n';
      else {
        call.out << options.file << " is whole\n";
        SayFacts(call.out, backup.facts());
        for (const Person& person : backup.facts().persons) {
          call.out << "  " << person.name << ':';
          for (const std::string& role : person.roles) call.out << ' ' << role;
          call.out << '\n';
        }
      }
      return 0;
    }
    const BookLocation where = FindBook(call.where);
    if (where.own) return Restored(call, options, backup.facts(), where, RestoreOwn(where.home, backup, Shown(watch)));
    Connection keeper = OpenAsKeeper(where);
    return Restored(call, options, backup.facts(), where, RestoreOnServer(keeper, backup, Shown(watch)));
  });
}

}  // namespace heatkeep::command
