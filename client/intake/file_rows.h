// What comes out of reading a file: rows, or a list of everything that is wrong with it.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "schema/terms/length_text.h"

namespace heatkeep::intake {

struct FileProblem {
  std::string file;
  int line = 0;                 // of the file, from 1; 0: the file as a whole
  std::string wrong, expected;  // expected may be empty in a warning
  std::string cell = {};        // of a spreadsheet: "Rack!C7", or "Rack!7" for the row

  // "stock.csv:7: what is wrong; expected what is right"; of a spreadsheet "stock.xlsx:Rack!C7: ..."
  std::string Text() const;
  bool operator==(const FileProblem&) const = default;
};

inline constexpr std::size_t kMostProblemsShown = 200;

// One problem a line, each with a line end; after 200 of them only how many more there are.
std::string ProblemsText(const std::vector<FileProblem>& problems);

enum class BadLines {
  RefuseFile,  // one bad line and there are no rows: nothing is half-applied
  LeaveOut,    // the good lines and the list of the bad ones (an opening balance, signed so)
};

struct ReadingOptions {
  BadLines bad_lines = BadLines::RefuseFile;
  char decimal_mark = 0;             // '.' or ',' when somebody says so; 0: found out from the file
  LengthUnit bare = LengthUnit::Mm;  // what a length without a unit is
  std::string sheet = {};            // of a spreadsheet; empty: the first that is shown
};

// A column of the file that was recognised.
struct MatchedColumn {
  std::string header;     // as the file writes it
  std::string name;       // what it is
  std::string unit;       // what its numbers are where they name no unit; empty: no quantity
  std::size_t place = 0;  // in the row, from 0
};

// How a file was read.
struct TableFacts {
  std::string format = "CSV";          // "CSV", "XLSX", "ODS"
  std::string encoding;                // of CSV: "UTF-8", "UTF-16", "Windows-1252"
  char delimiter = 0;                  // of CSV
  std::string sheet;                   // of a spreadsheet, the one that was read
  std::vector<std::string> sheets;     // all of them
  std::vector<MatchedColumn> columns;  // in the file's order
  std::vector<std::string> absent;     // columns there might have been
  std::size_t lines = 0;               // below the header, with something in them
};

template <class Row>
struct FileRows {
  std::vector<Row> rows;              // in the file's order; empty when the file is refused
  std::vector<FileProblem> problems;  // what keeps lines, or the whole file, out
  std::vector<FileProblem> warnings;  // what somebody should look at; keeps nothing out
  char decimal_mark = '.';            // how the file's numbers were read
  TableFacts facts;

  bool Good() const { return problems.empty(); }
};

}  // namespace heatkeep::intake
