#include "client/command/book_command.h"

#include <functional>
#include <istream>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <ostream>
#include <system_error>

#include "client/book/book_error.h"
#include "client/book/book_home.h"
#include "client/book/idle_watcher.h"
#include "client/book/migrate.h"
#include "client/book/migrate_error.h"
#include "client/book/own_book.h"
#include "client/book/persons.h"
#include "client/gateway/readings.h"

namespace heatkeep {
namespace {

struct Call {
  const BookCommand& command;
  BookLocation where;
  std::istream& in;
  std::ostream& out;
  std::ostream& err;
};

PrivateCluster RequireOwn(const Call& call) {
  if (!call.where.own)
    throw BookError(BookError::Kind::BadInput,
                    "this is the book of a server, which its keeper makes, starts and stops; expected a book "
                    "of one's own");
  return OwnCluster(call.where);
}

void SayMigrated(std::ostream& out, const MigrateReport& report, bool only_checked) {
  for (const std::string& file : report.migrations) out << (only_checked ? "would run " : "ran ") << file << '\n';
  out << "the book is at version " << report.before;
  if (report.after != report.before) out << (only_checked ? ", would come to " : ", now at ") << report.after;
  out << (report.migrations.empty() ? ": nothing new\n" : "\n");
}

int Init(Call& call) {
  const MigrateReport report = MakeOwnBook(call.where);
  call.out << "the book is in " << call.where.home.string() << '\n';
  SayMigrated(call.out, report, false);
  call.out << call.where.person << " may do everything in it\n";
  return 0;
}

int Start(Call& call) {
  PrivateCluster cluster = RequireOwn(call);
  const bool ran = cluster.Running();
  cluster.EnsureRunning();
  call.out << (ran ? "the book was running\n" : "the book is running\n");
  return 0;
}

int Stop(Call& call) {
  call.out << (RequireOwn(call).Stop() ? "the book is stopped\n" : "the book was not running\n");
  return 0;
}

// What only a session can tell; that there is none to be had for this person is told instead.
void AddSession(nlohmann::ordered_json& status, const std::string& conninfo) {
  try {
    Connection session = Connection::Open(conninfo);
    status["running"] = true;
    status["database"] = session.Database();
    status["person"] = session.User();
    status["server"] = session.Execute("show server_version").Only().Text("server_version");
    status["version"] = ReadSchemaVersion(session);
  } catch (const DbError& error) { status["trouble"] = error.message; }
}

std::string Plain(const nlohmann::ordered_json& value) {
  if (value.is_boolean()) return value.get<bool>() ? "yes" : "no";
  return value.is_string() ? value.get<std::string>() : value.dump();
}

int Status(Call& call) {
  nlohmann::ordered_json status;
  status["kind"] = call.where.own ? "own" : "server";
  status["running"] = false;
  if (call.where.own) {
    const PrivateCluster cluster = OwnCluster(call.where);
    status["home"] = cluster.home().string();
    status["made"] = cluster.Exists();
    // Looking must not start it.
    status["running"] = cluster.Running();
    if (cluster.Running()) AddSession(status, cluster.Conninfo(call.where.person));
  } else {
    AddSession(status, call.where.conninfo);
  }
  if (call.command.json) call.out << status.dump(2) << '\n';
  else
    for (const auto& [key, value] : status.items()) call.out << key << std::string(10 - key.size(), ' ') << Plain(value) << '\n';
  return call.where.own || status["running"] ? 0 : 4;
}

int MigrateDeed(Call& call) {
  const SchemaFiles files = ReadSchemaFiles(SchemaFolder());
  Connection keeper = OpenAsKeeper(call.where);
  const MigrateReport report = call.command.check ? CheckMigrations(keeper, files) : Migrate(keeper, files);
  if (call.command.json)
    call.out << nlohmann::ordered_json{{"before", report.before}, {"after", report.after}, {"files", report.migrations}}.dump(2) << '\n';
  else SayMigrated(call.out, report, call.command.check);
  return 0;
}

int Verify(Call& call) {
  Connection session = OpenBook(call.where);
  nlohmann::ordered_json checks = nlohmann::ordered_json::array();
  bool all_well = true;
  std::vector<CheckRow> rows;
  try {
    rows = VerifyBook(session, call.command.only_new);
  } catch (const DbError& error) {
    if (error.kind != DbError::Kind::Forbidden) throw;
    return ExplainForbidden(error, RolesThatMay(session, DoorOf(error)), call.err);
  }
  for (const CheckRow& c : rows) {
    all_well = all_well && c.ok;
    if (call.command.json) checks.push_back({{"check", c.check}, {"ok", c.ok}, {"detail", c.detail}});
    else call.out << (c.ok ? "ok     " : "WRONG  ") << c.check << (c.detail.empty() ? "" : ": " + c.detail) << '\n';
  }
  if (call.command.json) call.out << nlohmann::ordered_json{{"ok", all_well}, {"checks", checks}}.dump(2) << '\n';
  else call.out << (all_well ? "the book is in order\n" : "the book is NOT in order\n");
  return all_well ? 0 : 1;
}

int PersonAdd(Call& call) {
  std::optional<std::string> password;
  if (call.command.password_stdin) {
    if (call.where.own) throw BookError(BookError::Kind::BadInput, "in a book of one's own the account is the login; expected no password");
    password.emplace();
    std::getline(call.in, *password);
    if (!password->empty() && password->back() == '\r') password->pop_back();
  }
  {
    Connection keeper = OpenAsKeeper(call.where);
    AddPerson(keeper, call.command.name, call.command.roles, password);
  }
  if (call.where.own) OwnCluster(call.where).Admit({call.command.name});
  call.out << call.command.name << " is a person of this book\n";
  return 0;
}

int PersonList(Call& call) {
  Connection session = OpenBook(call.where);
  const std::vector<Person> persons = ListPersons(session);
  if (call.command.json) {
    nlohmann::ordered_json list = nlohmann::ordered_json::array();
    for (const Person& person : persons) list.push_back({{"name", person.name}, {"roles", person.roles}});
    call.out << list.dump(2) << '\n';
    return 0;
  }
  for (const Person& person : persons) {
    call.out << person.name << ':';
    for (const std::string& role : person.roles) call.out << ' ' << role;
    call.out << '\n';
  }
  return 0;
}

int Watch(Call& call) {
  RunWatcher(RequireOwn(call).home());
  return 0;
}

using Deed = std::function<int(Call&)>;

const Deed& DeedOf(BookDeed deed) {
  static const std::map<BookDeed, Deed> deeds{
      {BookDeed::Init, Init},           {BookDeed::Start, Start},           {BookDeed::Stop, Stop},
      {BookDeed::Status, Status},       {BookDeed::Migrate, MigrateDeed},   {BookDeed::Verify, Verify},
      {BookDeed::PersonAdd, PersonAdd}, {BookDeed::PersonList, PersonList}, {BookDeed::Watch, Watch}};
  return deeds.at(deed);
}

}  // namespace

std::string DoorOf(const DbError& error) { return error.message.substr(error.message.rfind(' ') + 1); }

int ExplainForbidden(const DbError& error, const std::vector<std::string>& roles, std::ostream& err) {
  const bool closed = error.message.starts_with("permission denied for ");
  std::string whose;
  for (std::size_t i = 0; i < roles.size(); ++i) whose += (i == 0 ? "" : i + 1 < roles.size() ? ", " : " or ") + roles[i];
  err << "heatkeep: you may not do this: " << (closed ? DoorOf(error) : error.message) << '\n'
      << "  it is the work of " << (whose.empty() ? "another role" : whose)
      << "; whoever keeps the book gives roles with `heatkeep book person add`\n";
  return 1;
}

int ExplainBookFailure(const std::exception& error, std::ostream& err) {
  const auto* db = dynamic_cast<const DbError*>(&error);
  if (db && db->kind == DbError::Kind::Forbidden) return ExplainForbidden(*db, {}, err);
  err << "heatkeep: " << error.what() << '\n';
  if (const auto* migrating = dynamic_cast<const MigrateError*>(&error)) {
    using Kind = MigrateError::Kind;
    return migrating->kind == Kind::NotAllowed || migrating->kind == Kind::Failed ? 1 : 3;
  }
  if (const auto* book = dynamic_cast<const BookError*>(&error)) return book->kind == BookError::Kind::BadInput ? 2 : 4;
  if (db) {
    if (!db->detail.empty()) err << "  " << db->detail << '\n';
    if (!db->hint.empty()) err << "  " << db->hint << '\n';
    if (db->message.find("authentication failed") != std::string::npos)
      err << "  this login is no person of the book, or belongs to another account; `heatkeep book person list` names them, --person is another\n";
    return db->kind == DbError::Kind::Unreachable ? 4 : 1;
  }
  // the system's own failures are the server's; anything else is a file that cannot be read or written
  return dynamic_cast<const std::system_error*>(&error) ? 4 : 2;
}

int RunBook(BookDeed deed, const BookCommand& command, std::istream& in, std::ostream& out, std::ostream& err) {
  try {
    BookChoice where = command.where;
    // The watcher is told its home by the environment, and must not be led to a server by the rest of it.
    if (deed == BookDeed::Watch && where.home.empty()) where.home = HomeFolder().string();
    Call call{command, FindBook(where), in, out, err};
    return DeedOf(deed)(call);
  } catch (const std::exception& error) { return ExplainBookFailure(error, err); }
}

}  // namespace heatkeep
