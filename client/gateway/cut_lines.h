// The lines of the cut lists, read from the book's view. Throws DbError.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "client/gateway/connection.h"
#include "schema/terms/length.h"

namespace heatkeep {

struct CutLineRow {
  std::string cut_list, order, line, customer, section, grade, condition, papers, owner, due;  // owner empty: the shop's own
  Length length;                                                                               // as cut: with facing allowance and aim
  std::int64_t quantity = 0, cut = 0, planned = 0, open = 0;
  int priority = 5;  // 1 is highest
  bool one_heat = false;
  int max_heats = 0;  // 0: any number
};

// Of these cut lists (none named: of all) what is still open, earliest due first.
std::vector<CutLineRow> ReadOpenLines(Connection& connection, const std::vector<std::string>& cut_lists);

// The cut list with open lines of this name, or that has lines of an order of this name; empty: none.
std::string ReadCutListCalled(Connection& connection, const std::string& name);

}  // namespace heatkeep
