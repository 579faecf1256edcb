#include "client/gateway/db_error.h"

#include <charconv>

namespace heatkeep {
namespace {

std::string Field(const PGresult* result, int code) {
  const char* text = result ? PQresultErrorField(result, code) : nullptr;
  return text ? text : "";
}

std::string Trimmed(std::string text) {
  while (!text.empty() && (text.back() == '\n' || text.back() == ' ')) text.pop_back();
  return text;
}

}  // namespace

DbError::Kind KindOfSqlstate(std::string_view s) {
  using Kind = DbError::Kind;
  if (s.starts_with("HK4") || s == "40001" || s == "40P01" || s == "55P03") return Kind::Stale;
  if (s.starts_with("HK") || s.starts_with("23") || s == "25006") return Kind::Refused;
  if (s == "42501") return Kind::Forbidden;
  if (s.starts_with("08") || s.starts_with("57P0") || s.starts_with("53")) return Kind::Unreachable;
  return Kind::Bug;
}

DbError MakeDbError(const PGconn* connection, const PGresult* result) {
  const std::string sqlstate = Field(result, PG_DIAG_SQLSTATE);
  std::string message = Field(result, PG_DIAG_MESSAGE_PRIMARY);
  if (message.empty() && result) message = Trimmed(PQresultErrorMessage(result));
  if (message.empty() && connection) message = Trimmed(PQerrorMessage(connection));
  if (message.empty()) message = "the database gave no answer";
  if (sqlstate == "53100")
    message = "the disk of the book is full, and nothing of this was booked: make room there and do it again (" + message + ")";
  if (sqlstate == "25006")
    message =
        "this server of the book only answers questions (a standby, or set so), and nothing of this was booked: do it at the server that takes deeds";
  const bool lost = !connection || PQstatus(connection) != CONNECTION_OK;
  DbError error(lost ? DbError::Kind::Unreachable : KindOfSqlstate(sqlstate), sqlstate, std::move(message));
  error.detail = Field(result, PG_DIAG_MESSAGE_DETAIL);
  error.hint = Field(result, PG_DIAG_MESSAGE_HINT);
  error.constraint = Field(result, PG_DIAG_CONSTRAINT_NAME);
  std::string position = Field(result, PG_DIAG_STATEMENT_POSITION);
  if (position.empty()) {
    position = Field(result, PG_DIAG_INTERNAL_POSITION);
    error.inner_query = Field(result, PG_DIAG_INTERNAL_QUERY);
  }
  std::from_chars(position.data(), position.data() + position.size(), error.position);
  return error;
}

}  // namespace heatkeep
