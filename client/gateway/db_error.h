// What the database answered when it did not do what was asked. Made in one place, from libpq's own fields.
//
// Kinds, by SQLSTATE:
//   Refused      HK..., but not HK4..: a rule of the book said no; 23...: the data would not fit together
//   Stale        HK4..: what was looked at has changed since; 40001, 40P01, 55P03: somebody was in the way.
//                Read again and try again.
//   Forbidden    42501: this login may not do that
//   Unreachable  no connection, lost connection, 08..., 57P0., 53... (no room on disk, no connection left)
//   Bug          anything else: the program asked something senseless
#pragma once

#include <libpq-fe.h>

#include <stdexcept>
#include <string>
#include <string_view>

namespace heatkeep {

struct DbError : std::runtime_error {
  enum class Kind { Refused, Stale, Forbidden, Unreachable, Bug };

  DbError(Kind kind_, std::string sqlstate_, std::string message_)
      : std::runtime_error(message_), kind(kind_), sqlstate(std::move(sqlstate_)), message(std::move(message_)) {}

  Kind kind;
  std::string sqlstate;     // five characters; empty when the server never answered
  std::string message;      // one sentence, as the book says it
  std::string detail;       // may be empty
  std::string hint;         // may be empty
  std::string constraint;   // name of the constraint that refused, or empty
  int position = 0;         // where in the statement, in characters from 1; 0 = not known
  std::string inner_query;  // the statement `position` counts in, when the database made it itself; else empty
};

DbError::Kind KindOfSqlstate(std::string_view sqlstate);

// The error of `result`, which may be null (the server never answered); the state of `connection` decides
// whether it is Unreachable. Never holds a password. Changes neither.
DbError MakeDbError(const PGconn* connection, const PGresult* result);

}  // namespace heatkeep
