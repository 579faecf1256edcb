// Many rows into one table in one go. Lives inside a transaction; nothing is kept unless Finish returned.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "client/gateway/connection.h"

namespace heatkeep {

class CopyIn {
 public:
  // `statement` is "copy <table> (<columns>) from stdin", in the text format.
  CopyIn(Connection& connection, const std::string& statement);
  ~CopyIn();  // gives up what was sent unless Finish was called
  CopyIn(const CopyIn&) = delete;
  CopyIn& operator=(const CopyIn&) = delete;

  void Add(const std::vector<Param>& row);  // one value a column, in the order of the statement
  std::int64_t Finish();                    // rows taken in; throws DbError naming what was wrong, then none are

 private:
  void Send();
  std::int64_t End(const char* give_up);

  Connection& connection_;
  std::string buffer_;
  bool open_ = true;
};

}  // namespace heatkeep
