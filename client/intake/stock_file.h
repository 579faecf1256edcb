// The stock file: what pieces there are, for a plan made without a book.
// Header: tag,kind,section,grade,heat,length,count,ends and perhaps papers,owner,condition,held,price,place,doubt.
//   kind     bar or drop                       length   with unit, or millimetres; over 0
//   heat     may be empty: not known           count    whole, 1 or more; empty or "unlimited": as many as wanted
//   ends     square ends: 0, 1 or 2; empty: 0 for a bar, 1 for a drop
//   papers   2.1, 2.2, 3.1, 3.2 or none        owner    empty: the shop's own
//   held     yes or no, empty: no              price    money per kg, at most 2 decimals
//   place    text                              doubt    the piece may be this much shorter than written
// A tag names one row.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "client/intake/file_rows.h"
#include "client/intake/piece_cells.h"

namespace heatkeep::intake {

struct StockFileRow {
  int line = 0;  // of the file
  std::string tag;
  PieceKind kind = PieceKind::Bar;
  Section section;
  std::string grade, heat;
  Length length;             // > 0
  std::optional<int> count;  // >= 1; none: unlimited
  int ends = 0;
  Papers papers = Papers::None;
  std::string owner, condition;  // condition in its normal form
  bool held = false;
  std::optional<Money> price_per_kg;
  std::string place;
  Length doubt;  // >= 0, < length
};

// `name` is what the file is called in problems. Never throws for what is in the bytes.
FileRows<StockFileRow> ReadStockFile(std::string_view bytes, const std::string& name, ReadingOptions how = {});

}  // namespace heatkeep::intake
