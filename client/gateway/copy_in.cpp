#include "client/gateway/copy_in.h"

#include <exception>

namespace heatkeep {
namespace {

constexpr std::size_t kSendFrom = std::size_t{64} * 1024;

void AppendEscaped(std::string& line, const std::string& text) {
  for (const char c : text) {
    switch (c) {
      case '\\': line += "\\\\"; break;
      case '\t': line += "\\t"; break;
      case '\n': line += "\\n"; break;
      case '\r': line += "\\r"; break;
      case '\0': throw DbError(DbError::Kind::Bug, "", "a text holds a zero byte, which the database cannot keep");
      default: line += c;
    }
  }
}

}  // namespace

CopyIn::CopyIn(Connection& connection, const std::string& statement) : connection_(connection) {
  connection_.ExecuteScript(statement);
  if (PQtransactionStatus(connection_.handle()) != PQTRANS_ACTIVE)
    throw DbError(DbError::Kind::Bug, "", "the statement takes no rows in: " + statement);
}

CopyIn::~CopyIn() {
  if (!open_) return;
  try {
    End("given up");
  } catch (const DbError&) {
    // that it was given up is the very error asked for
  }
}

void CopyIn::Add(const std::vector<Param>& row) {
  std::string line;
  for (const Param& value : row) {
    if (&value != row.data()) line += '\t';
    if (value.text()) AppendEscaped(line, *value.text());
    else line += "\\N";
  }
  buffer_ += line + '\n';
  if (buffer_.size() >= kSendFrom) Send();
}

void CopyIn::Send() {
  if (PQputCopyData(connection_.handle(), buffer_.data(), static_cast<int>(buffer_.size())) != 1)
    throw MakeDbError(connection_.handle(), nullptr);
  buffer_.clear();
}

std::int64_t CopyIn::Finish() {
  if (!buffer_.empty()) Send();
  return End(nullptr);
}

std::int64_t CopyIn::End(const char* give_up) {
  open_ = false;
  PGconn* raw = connection_.handle();
  if (PQputCopyEnd(raw, give_up) != 1) throw MakeDbError(raw, nullptr);
  std::exception_ptr error;
  std::int64_t rows = 0;
  while (PGresult* answer = PQgetResult(raw)) {
    const Result result(answer);
    if (PQresultStatus(answer) == PGRES_COMMAND_OK) rows = result.Affected();
    else if (!error) error = std::make_exception_ptr(MakeDbError(raw, answer));
  }
  if (error) std::rethrow_exception(error);
  return rows;
}

}  // namespace heatkeep
