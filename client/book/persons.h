// The people of a book: one login each, with the roles of their work.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "client/gateway/connection.h"

namespace heatkeep {

inline const std::vector<std::string>& RoleNames() {
  static const std::vector<std::string> names{"clerk", "planner", "saw", "quality", "owner"};
  return names;
}

struct Person {
  std::string name;
  std::vector<std::string> roles;  // in the order of RoleNames()
};

// Empty when `name` may be a person's: 1 to 40 of a-z 0-9 - _ . beginning with a letter or digit, and not one
// the database keeps for itself; else what is wrong and what is expected.
std::string WrongWithName(const std::string& name);

// Makes the login if there is none and gives it the roles; roles it has already stay. `password` is turned
// into a SCRAM verifier before it leaves this program. All or nothing. Throws BookError(BadInput) for a name
// or role that cannot be, DbError(Forbidden) when the session may not make logins.
void AddPerson(Connection& admin, const std::string& name, const std::vector<std::string>& roles,
               const std::optional<std::string>& password = std::nullopt);

// Everybody with at least one role, by name.
std::vector<Person> ListPersons(Connection& connection);

}  // namespace heatkeep
