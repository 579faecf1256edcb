// The opening balance: what lies on the rack on the first day, as the old list has it.
// Nothing is guessed: a grade stays as written, a heat is never matched to another. A heat that an eye may take for
// another one (of this file, or known) is warned of. With BadLines::LeaveOut the good lines come without the bad ones.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "client/intake/file_rows.h"
#include "client/intake/piece_cells.h"

namespace heatkeep::intake {

struct OpeningFileRow {
  int line_in_file = 0;
  std::string raw;  // the row as it was typed
  std::string old_tag;
  PieceKind kind = PieceKind::Bar;
  std::string mill, heat;
  std::optional<ReadFrom> read_from;  // none: the list does not say
  std::string grade;
  Section section;
  std::string condition;  // normal form
  Length length;
  int count = 1;
  std::string place;
  Papers papers = Papers::None;
  std::string owner;
  int ends = 0;
  Length doubt;
  std::optional<Money> price_per_kg;
};

// What its header may be, and what each column says.
const std::vector<Column>& OpeningColumns();

FileRows<OpeningFileRow> ReadOpeningFile(std::string_view bytes, const std::string& name, const ReadingOptions& how = {},
                                         const std::vector<std::string>& known_heats = {});

}  // namespace heatkeep::intake
