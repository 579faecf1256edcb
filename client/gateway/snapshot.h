// One state of the book for everything that is read while it lives: others go on writing, and nothing can be written here.
// Not inside a Transaction.
#pragma once

#include "client/gateway/connection.h"

namespace heatkeep {

class Snapshot {
 public:
  explicit Snapshot(Connection& connection) : transaction_(connection) {
    connection.Execute("set transaction isolation level repeatable read, read only");
  }
  void End() { transaction_.Commit(); }

 private:
  Transaction transaction_;
};

}  // namespace heatkeep
