#include "client/gateway/connection.h"

#include <poll.h>

#include <array>
#include <cstdlib>

namespace heatkeep {
namespace {

constexpr int kTriesAgain = 5;

void DropNotice(void*, const PGresult*) {}

bool GivenUp(const DbError& error) { return error.sqlstate == "40P01" || error.sqlstate == "40001"; }

void RequireNoZero(const std::string& text) {
  if (text.find('\0') != std::string::npos)
    throw DbError(DbError::Kind::Bug, "", "a text holds a zero byte, which the database cannot keep");
}

Result Checked(PGconn* connection, PGresult* raw) {
  Result result(raw);
  switch (raw ? PQresultStatus(raw) : PGRES_FATAL_ERROR) {
    case PGRES_COMMAND_OK:
    case PGRES_TUPLES_OK:
    case PGRES_EMPTY_QUERY:
    case PGRES_COPY_IN: return result;
    default: throw MakeDbError(connection, raw);
  }
}

// Null for none; as long as `params`.
std::vector<const char*> ValuesOf(const std::vector<Param>& params) {
  std::vector<const char*> values;
  values.reserve(params.size());
  for (const Param& param : params) {
    if (param.text()) RequireNoZero(*param.text());
    values.push_back(param.text() ? param.text()->c_str() : nullptr);
  }
  return values;
}

// The next answer of what was sent; null when there is no more.
PGresult* Next(PGconn* connection, const std::function<void()>& pause) {
  while (PQisBusy(connection) == 1) {
    pollfd socket{PQsocket(connection), POLLIN, 0};
    if (poll(&socket, 1, 100) <= 0 && pause) pause();
    if (PQconsumeInput(connection) == 0) throw MakeDbError(connection, nullptr);
  }
  return PQgetResult(connection);
}

// Ends what runs, so that the connection can be used again.
void GiveUp(PGconn* connection) {
  char words[256];
  if (PGcancel* cancel = PQgetCancel(connection)) {
    PQcancel(cancel, words, sizeof words);
    PQfreeCancel(cancel);
  }
  while (PGresult* rest = PQgetResult(connection)) PQclear(rest);
}

std::string Taken(const PGconn* connection, char* quoted) {
  if (!quoted) throw MakeDbError(connection, nullptr);
  std::string text = quoted;
  PQfreemem(quoted);
  return text;
}

}  // namespace

Connection Connection::Open(const std::string& conninfo) {
  RequireNoZero(conninfo);
  // Later entries win, and `dbname` is spread out where it stands: what comes before it is only a default.
  const char* timeout = std::getenv("PGCONNECT_TIMEOUT") ? nullptr : "10";
  const std::array<const char*, 5> keys{"fallback_application_name", "connect_timeout", "dbname", "client_encoding", nullptr};
  const std::array<const char*, 5> values{"heatkeep", timeout, conninfo.c_str(), "UTF8", nullptr};
  Connection connection(PQconnectdbParams(keys.data(), values.data(), 1));
  PGconn* raw = connection.handle();
  if (PQstatus(raw) != CONNECTION_OK) throw MakeDbError(raw, nullptr);
  PQsetNoticeReceiver(raw, DropNotice, nullptr);
  connection.ExecuteScript("set datestyle to 'ISO, YMD'; set intervalstyle to 'iso_8601'; set bytea_output to 'hex'; set jit to off");
  return connection;
}

Result Connection::Execute(const std::string& sql, const std::vector<Param>& params) {
  RequireNoZero(sql);
  const std::vector<const char*> values = ValuesOf(params);
  for (int again = 0;; ++again) {
    try {
      return Checked(handle(),
                     PQexecParams(handle(), sql.c_str(), static_cast<int>(values.size()), nullptr, values.data(), nullptr, nullptr, 0));
    } catch (const DbError& error) {
      if (again == kTriesAgain || InTransaction() || !GivenUp(error)) throw;
    }
  }
}

void Connection::EachRow(const std::string& sql, const std::vector<Param>& params, const std::function<void(const Row&)>& visit,
                         const std::function<void()>& pause) {
  RequireNoZero(sql);
  const std::vector<const char*> values = ValuesOf(params);
  if (PQsendQueryParams(handle(), sql.c_str(), static_cast<int>(values.size()), nullptr, values.data(), nullptr, nullptr, 0) == 0)
    throw MakeDbError(handle(), nullptr);
  try {
    PQsetSingleRowMode(handle());
    while (PGresult* raw = Next(handle(), pause)) {
      Result one(raw);
      const ExecStatusType status = PQresultStatus(raw);
      if (status != PGRES_SINGLE_TUPLE && status != PGRES_TUPLES_OK) throw MakeDbError(handle(), raw);
      for (const Row row : one) visit(row);
    }
  } catch (...) {
    GiveUp(handle());
    throw;
  }
}

Result Connection::ExecuteScript(const std::string& sql) {
  RequireNoZero(sql);
  return Checked(handle(), PQexec(handle(), sql.c_str()));
}

std::string Connection::QuoteName(const std::string& name) const {
  RequireNoZero(name);
  return Taken(handle(), PQescapeIdentifier(handle(), name.c_str(), name.size()));
}

std::string Connection::QuoteText(const std::string& text) const {
  RequireNoZero(text);
  return Taken(handle(), PQescapeLiteral(handle(), text.c_str(), text.size()));
}

std::string Connection::User() const { return PQuser(handle()); }
std::string Connection::Database() const { return PQdb(handle()); }
int Connection::ServerVersion() const { return PQserverVersion(handle()); }
bool Connection::Alive() const { return PQstatus(handle()) == CONNECTION_OK; }
void Connection::TellOfDeed() {
  if (InTransaction()) to_tell_ = true;
  else TellNow();
}

void Connection::TellNow() {
  to_tell_ = false;
  PQclear(PQexec(handle(), "notify heatkeep"));
}

bool Connection::InTransaction() const { return PQtransactionStatus(handle()) != PQTRANS_IDLE; }

Transaction::Transaction(Connection& connection) : connection_(connection) {
  if (connection.Alive() && connection.InTransaction())
    throw DbError(DbError::Kind::Bug, "", "a transaction is already open on this connection");
  connection.ExecuteScript("begin");
}

Transaction::~Transaction() {
  if (!open_) return;
  connection_.to_tell_ = false;
  PQclear(PQexec(connection_.handle(), "rollback"));
}

void Transaction::Commit() {
  if (!open_) throw DbError(DbError::Kind::Bug, "", "this transaction is already committed");
  // A failed transaction answers a commit with a rollback and no error: ask before.
  if (connection_.Alive() && PQtransactionStatus(connection_.handle()) == PQTRANS_INERROR)
    throw DbError(DbError::Kind::Bug, "25P02", "the transaction has failed and cannot be committed");
  open_ = false;
  connection_.ExecuteScript("commit");
  if (connection_.to_tell_) connection_.TellNow();
}

}  // namespace heatkeep
