#include "client/book/persons.h"

#include <algorithm>
#include <array>
#include <memory>

#include "client/book/book_error.h"

namespace heatkeep {
namespace {

constexpr std::size_t kLongestName = 40;

bool MayBegin(char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'); }
bool MayFollow(char c) { return MayBegin(c) || c == '-' || c == '_' || c == '.'; }

void RequireRoles(const std::vector<std::string>& roles) {
  for (const std::string& role : roles)
    if (std::find(RoleNames().begin(), RoleNames().end(), role) == RoleNames().end())
      throw BookError(BookError::Kind::BadInput, "'" + role + "' is no role; expected clerk, planner, saw, quality or owner");
}

std::string Verifier(Connection& admin, const std::string& password, const std::string& name) {
  const std::unique_ptr<char, decltype(&PQfreemem)> text(
      PQencryptPasswordConn(admin.handle(), password.c_str(), name.c_str(), "scram-sha-256"), &PQfreemem);
  if (!text) throw MakeDbError(admin.handle(), nullptr);
  return text.get();
}

}  // namespace

std::string WrongWithName(const std::string& name) {
  const bool shape =
      !name.empty() && name.size() <= kLongestName && MayBegin(name.front()) && std::all_of(name.begin(), name.end(), MayFollow);
  if (!shape)
    return "'" + name +
        "' cannot be a person's name; expected 1 to 40 of a-z, 0-9, - _ . beginning with a letter or "
        "digit";
  const std::array kept{"postgres", "public", "none", "all", "user", "session_user", "current_user", "current_role"};
  if (name.starts_with("heatkeep_") || name.starts_with("pg_") || std::find(kept.begin(), kept.end(), name) != kept.end())
    return "'" + name + "' is kept for the database itself; expected another name";
  return "";
}

void AddPerson(Connection& admin, const std::string& name, const std::vector<std::string>& roles,
               const std::optional<std::string>& password) {
  if (const std::string wrong = WrongWithName(name); !wrong.empty()) throw BookError(BookError::Kind::BadInput, wrong);
  RequireRoles(roles);
  if (password && (password->empty() || password->find('\0') != std::string::npos))
    throw BookError(BookError::Kind::BadInput, "the password is empty or holds a zero byte; expected at least one character");
  const std::string login = admin.QuoteName(name);
  Transaction transaction(admin);
  if (admin.Execute("select 1 from pg_roles where rolname = $1", {name}).empty()) admin.ExecuteScript("create role " + login + " login");
  else if (admin.Execute("select 1 from pg_roles where rolname = $1 and rolcanlogin and not rolsuper", {name}).empty())
    throw BookError(BookError::Kind::BadInput, "'" + name + "' is already there but is no person's login; expected another name");
  if (password) {
    // Who reads the server's log could try passwords against the verifier. A keeper who is no superuser cannot keep it out of there.
    admin.Execute(
        "select set_config(s, v, true) from (values ('log_statement', 'none'), ('log_min_duration_statement', '-1'), ('log_min_error_statement', 'panic'),"
        " ('log_duration', 'off')) x (s, v) where (select rolsuper from pg_roles where rolname = current_user)");
    admin.ExecuteScript("alter role " + login + " password " + admin.QuoteText(Verifier(admin, *password, name)));
  }
  for (const std::string& role : roles) {
    const bool has = admin.Execute("select pg_has_role($1, 'heatkeep_' || $2, 'member') as has", {name, role}).Only().Bool("has");
    if (!has) admin.ExecuteScript("grant heatkeep_" + role + " to " + login);
  }
  transaction.Commit();
}

std::vector<Person> ListPersons(Connection& connection) {
  std::vector<Person> persons;
  const Result rows = connection.Execute(
      "select m.rolname as person, g.rolname as role from pg_auth_members a"
      " join pg_roles g on g.oid = a.roleid join pg_roles m on m.oid = a.member"
      " where m.rolcanlogin and not m.rolsuper and g.rolname = any ($1::text[])"
      " group by m.rolname, g.rolname order by m.rolname collate \"C\", array_position($1::text[], "
      "g.rolname::text)",
      {"{heatkeep_clerk,heatkeep_planner,heatkeep_saw,heatkeep_quality,heatkeep_owner}"});
  for (const Row row : rows) {
    const std::string name = row.Text("person");
    if (persons.empty() || persons.back().name != name) persons.push_back({name, {}});
    persons.back().roles.push_back(row.Text("role").substr(std::string_view("heatkeep_").size()));
  }
  return persons;
}

}  // namespace heatkeep
