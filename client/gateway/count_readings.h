// What people look at when places are counted. While a count is open the book tells nobody what it expects there. Throws DbError.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "client/gateway/connection.h"
#include "schema/terms/length.h"
#include "schema/terms/money.h"

namespace heatkeep {

struct CountRow {
  std::string place, state, started_by, counted_by;  // state: open, counted
  std::int64_t tags = 0;
  Length counted, missing, difference;  // zero while open; difference: counted less book
  Money worth;                          // of the difference
};
// Counts that are open or wait for approval, the oldest first.
std::vector<CountRow> ReadCounts(Connection& connection);

struct CountDifferenceRow {
  std::string place, what, tag;  // tag: of metal without one, its section and marks
  Length book, counted, difference;
  Money worth;
};
// Of all counts that wait for approval; not for every login.
std::vector<CountDifferenceRow> ReadCountDifferences(Connection& connection);

struct PieceHereRow {
  std::string tag, section, grade, heat, place, state;  // place empty: at none
};
// What the book knows of a tag; nothing where there is no metal under it (any more).
std::optional<PieceHereRow> ReadPieceHere(Connection& connection, const std::string& tag);

}  // namespace heatkeep
