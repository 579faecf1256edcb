// One session with the book. Belongs to one thread at a time, with its results; open another for another
// thread.
//
// Every call throws DbError when the database does not do what was asked. Values always travel apart from the
// text of the statement, as text; columns are read by name. Notices are dropped. Times and dates come back in
// ISO 8601 form.
#pragma once

#include <libpq-fe.h>

#include <concepts>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "client/gateway/db_error.h"
#include "client/gateway/result.h"

namespace heatkeep {

// A value bound to $1, $2, ...: made from a whole number, a bool, a text, std::nullopt (null), or an optional
// of those.
class Param {
 public:
  Param(std::nullopt_t) {}
  Param(bool value) : text_(value ? "t" : "f") {}
  Param(std::string text) : text_(std::move(text)) {}
  Param(std::string_view text) : text_(text) {}
  Param(const char* text) : text_(text) {}
  template <std::integral T>
  requires(!std::same_as<T, bool>) Param(T value) : text_(std::to_string(value)) {}
  template <typename T>
  Param(const std::optional<T>& value) {
    if (value) text_ = Param(*value).text_;
  }

  const std::optional<std::string>& text() const { return text_; }

 private:
  std::optional<std::string> text_;
};

class Connection {
 public:
  // Waits at most 10 s unless `conninfo` or PGCONNECT_TIMEOUT says otherwise. Throws DbError(Unreachable)
  // when there is no session to be had: no server, no such database, the login refused.
  static Connection Open(const std::string& conninfo);

  // One statement. A text with a zero byte in it is refused (Bug): the protocol would cut it short. Outside a transaction, one that the
  // database gave up so that others could go on (a deadlock, 40P01 or 40001) has done nothing and is tried again, five times at most.
  Result Execute(const std::string& sql, const std::vector<Param>& params = {});

  // One statement whose rows are shown one after the other, as they come: none is kept. `pause` is called about ten times a
  // second while nothing comes. What either throws ends the statement, and comes out here.
  void EachRow(const std::string& sql, const std::vector<Param>& params, const std::function<void(const Row&)>& visit,
               const std::function<void()>& pause = {});

  // Several statements in one text, no values; the answer of the last. Without a Transaction they are one of
  // their own.
  Result ExecuteScript(const std::string& sql);

  // Quoted so that it is one name, or one text, whatever is in it: for the few statements that take no
  // values.
  std::string QuoteName(const std::string& name) const;
  std::string QuoteText(const std::string& text) const;

  // A deed was done: those who listen are told by a notice of its own (channel "heatkeep"), at once, or when the transaction that is open
  // was committed. PostgreSQL lets those that send a notice with what they write commit only one after the other, so no deed sends it
  // itself. Never throws: a notice that got lost is made up for by asking (listener.h).
  void TellOfDeed();

  std::string User() const;  // the login
  std::string Database() const;
  int ServerVersion() const;  // e.g. 150020
  bool Alive() const;         // false once a call has found the connection lost
  bool InTransaction() const;

  PGconn* handle() const { return connection_.get(); }

 private:
  friend class Transaction;
  explicit Connection(PGconn* owned) : connection_(owned) {}
  void TellNow();

  struct Finish {
    void operator()(PGconn* connection) const { PQfinish(connection); }
  };
  std::unique_ptr<PGconn, Finish> connection_;
  bool to_tell_ = false;  // when the transaction is committed
};

// Everything between construction and Commit happens, or nothing does. Rolls back unless committed; never
// throws from the destructor. Not nested: a second one on the same connection is a Bug.
class Transaction {
 public:
  explicit Transaction(Connection& connection);
  ~Transaction();
  Transaction(const Transaction&) = delete;
  Transaction& operator=(const Transaction&) = delete;
  void Commit();  // throws if the database rolled back instead

 private:
  Connection& connection_;
  bool open_ = true;
};

}  // namespace heatkeep
