// A table as it stands in a file, before anybody knows what its columns mean: from the bytes of a CSV, XLSX or ODS
// file to rows of UTF-8 cells. The format is recognised by what is in the file, never by its name.
//
//   XLSX  ISO/IEC 29500-1: the first sheet that is shown, or the named one. Numbers as the sheet shows a plain number
//         (15 significant digits), dates as ISO 8601, booleans as yes and no, a formula's last computed value.
//   ODS   OASIS OpenDocument 1.3: the same.
//   CSV   csv.h.
//
// A number is not always what was typed: one that its format shows as 1.23E+05, with zeros in front, as a percentage or
// with a unit behind it comes as it is shown, so that whoever reads the column can refuse it.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "client/intake/file_rows.h"

namespace heatkeep::intake {

enum class CellKind : std::uint8_t {
  Text,
  Number,
  PaddedNumber,  // its format sets zeros in front that are not in the value
  Date,
  Boolean,
  Error,  // #N/A and its like; the text says which
};

struct TableRow {
  int line = 0;  // of the file or the sheet, from 1; of a CSV row where it begins
  std::vector<std::string> cells;
  std::vector<CellKind> kinds;  // empty: all text; else as many as cells
  std::string raw = {};         // of a CSV the row as it was typed, without its line end
};

struct Table {
  TableFacts facts;
  std::vector<TableRow> rows;         // the first is the header; lines without text are left out
  std::vector<FileProblem> problems;  // not empty: no rows
  std::vector<FileProblem> warnings;  // formulas, merged cells, hidden rows and columns, other sheets
};

inline constexpr std::size_t kMostCells = 4'000'000;  // of a spreadsheet
inline constexpr int kMostColumns = 256;              // with something in them
inline constexpr std::size_t kMostText = std::size_t{64} * 1024 * 1024;

// `sheet`: which one of a spreadsheet; empty: the first that is shown. Never throws for what is in the bytes: every
// other format, a locked or a damaged file, one that would grow beyond the limits, is a problem in words.
Table ReadTable(std::string_view bytes, const std::string& name, const std::string& sheet = {});

// "A", "Z", "AA": the letters of a column, counted from 0.
std::string ColumnLetters(std::size_t column);

}  // namespace heatkeep::intake
