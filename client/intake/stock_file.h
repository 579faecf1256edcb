// The stock file: what pieces there are, for a plan made without a book.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

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

// What its header may be, and what each column says.
const std::vector<Column>& StockColumns();

// `name` is what the file is called in problems. Never throws for what is in the bytes.
FileRows<StockFileRow> ReadStockFile(std::string_view bytes, const std::string& name, const ReadingOptions& how = {});

}  // namespace heatkeep::intake
