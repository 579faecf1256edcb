// `heatkeep book ...`: making, running, bringing up to date and checking a book, and its people.
//
// RunBook does one of them and returns what the program exits with:
//   0 done   1 the book refused, or verify found something   2 bad input   3 the SQL files and the book do
//   not fit 4 the book cannot be reached or started
// What went wrong is one message on `err`, and nothing is half-done then.
#pragma once

#include <iosfwd>
#include <string>
#include <vector>

#include "client/book/book_location.h"

namespace heatkeep {

enum class BookDeed {
  Init,       // make a book of one's own, bring it up to date, and enter the account as a person with all five
              // roles
  Start,      // start one's own server
  Stop,       // stop it
  Status,     // where the book is, whether it runs, its version
  Migrate,    // bring it up to date; with `check` only say what would be done
  Verify,     // replay the ledger and check every rule; 1 when something is wrong
  PersonAdd,  // `name` with `roles`
  PersonList,
  Watch  // hidden: the idle watcher beside a private server
};

struct BookCommand {
  BookChoice where;                // --book, --person, --home
  bool json = false;               // status, verify, migrate, person list
  bool check = false;              // migrate --check
  bool only_new = false;           // verify --new: what was written since the last seal
  std::string record;              // verify --record, which is record_check.h's
  std::string name;                // person add NAME
  std::vector<std::string> roles;  // person add --role ...
  bool password_stdin = false;     // person add --password-stdin: the first line of `in`
};

int RunBook(BookDeed deed, const BookCommand& command, std::istream& in, std::ostream& out, std::ostream& err);

// The exit status and the message for whatever a deed on a book threw; for the other commands too.
int ExplainBookFailure(const std::exception& error, std::ostream& err);

// What was closed to this person: the last word of what the server says.
std::string DoorOf(const DbError& error);

// The same for what this person may not do, with the roles that may (none: not known). Returns 1.
int ExplainForbidden(const DbError& error, const std::vector<std::string>& roles, std::ostream& err);

}  // namespace heatkeep
