// What comes out of reading a file: rows, or a list of everything that is wrong with it.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "schema/terms/length_text.h"

namespace heatkeep::intake {

struct FileProblem {
  std::string file;
  int line = 0;  // of the file, from 1; 0: the file as a whole
  std::string wrong, expected;  // expected may be empty in a warning

  std::string Text() const;  // "stock.csv:7: what is wrong; expected what is right"
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
  char decimal_mark = 0;                 // '.' or ',' when somebody says so; 0: found out from the file
  LengthUnit bare = LengthUnit::Mm;      // what a length without a unit is
};

template <class Row>
struct FileRows {
  std::vector<Row> rows;               // in the file's order; empty when the file is refused
  std::vector<FileProblem> problems;   // what keeps lines, or the whole file, out
  std::vector<FileProblem> warnings;   // what somebody should look at; keeps nothing out
  char decimal_mark = '.';             // how the file's numbers were read

  bool Good() const { return problems.empty(); }
};

}  // namespace heatkeep::intake
