// Reading a table whose columns are known: header matched by name, every cell checked, every problem kept with its
// line. Used by the readers of the particular files; nothing here knows what the columns mean.
#pragma once

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "client/intake/table.h"
#include "schema/terms/bad_text.h"

namespace heatkeep::intake {

struct Column {
  std::string_view name;  // small letters; matched without case, blanks, '_' and '-'
  bool required = false;
  std::string_view says = {};  // what is in it, for people: the manual is made from it
  bool numbers = false;        // its cells tell which decimal mark the file uses
  std::string_view unit = {};  // what a number without a unit is: "kg", "mass %"; of a length kLengthUnit
  std::string_view code = {};  // another name: its field of EN 10168:2004, "A03"
};

inline constexpr std::string_view kLengthUnit = "length";

class CheckedRows {
 public:
  // Unknown, doubled and missing columns are problems, and there are no rows then.
  CheckedRows(std::string_view bytes, const std::string& name, const std::vector<Column>& columns, ReadingOptions how);

  // To the next row with as many cells as the header; rows with more or fewer become problems. False at the end.
  bool Next();

  bool Has(std::string_view column) const { return places_.count(column) != 0; }
  int Line() const { return table_.rows[row_].line; }
  // For reading a cell, inside Value: with the mark of that cell.
  LengthReading Lengths() const { return {how_.bare, cell_mark_}; }
  char CellMark() const { return cell_mark_; }

  char DecimalMark() const { return mark_; }  // of the file

  // The cell without blanks at its ends, numbers with the file's decimal mark; empty when the file has no such column.
  std::string Text(std::string_view column) const;

  // The whole row as it was typed; of a spreadsheet its cells with tabs between them.
  std::string Typed() const;

  CellKind Kind(std::string_view column) const;  // Text when the file has no such column

  // The same; empty is a problem.
  std::string Needed(std::string_view column, std::string_view expected);

  // read(cell); what it throws as BadText becomes a problem that names the column, and `otherwise` is the value.
  template <class T, class Read>
  T Value(std::string_view column, T otherwise, Read read) {
    const std::string cell = Text(column);
    if (cell.empty()) return otherwise;
    cell_mark_ = MarkFor(column, cell);
    try {
      return T(read(cell));
    } catch (const BadText& e) {
      Problem(std::string(column) + ": " + e.Wrong() + (Kind(column) == CellKind::Date ? " (the sheet holds a date)" : ""), e.Expected(),
              column);
      return otherwise;
    }
  }

  // As Value, and an empty cell is a problem.
  template <class T, class Read>
  T NeededValue(std::string_view column, std::string_view expected, Read read) {
    if (Needed(column, expected).empty()) return T{};
    return Value(column, T{}, read);
  }

  // One of the words (small letters); empty or wrong: the first, wrong is a problem as well.
  std::string Word(std::string_view column, const std::vector<std::string_view>& words);

  // A key that may stand once in the file: "tag \"I1\" stands in line 2 already".
  void Once(const std::string& what, const std::string& key);

  // `column`: of a spreadsheet the cell is named.
  void Problem(std::string wrong, std::string expected, std::string_view column = {});
  void Warn(std::string wrong, std::string_view column = {});

  bool LineGood() const { return good_; }    // no problem in this row so far
  bool Refused() const { return refused_; }  // the header is wrong: no rows at all
  std::vector<FileProblem> TakeProblems() { return std::move(problems_); }
  std::vector<FileProblem> TakeWarnings() { return std::move(warnings_); }
  TableFacts TakeFacts() { return std::move(table_.facts); }

 private:
  void MatchHeader(const std::vector<Column>& columns);
  void FindDecimalMark();
  // What this cell is read with: where nothing in the file says which mark it uses, the one that makes "6.012" two readings.
  char MarkFor(std::string_view column, std::string_view cell) const;
  void NoteColumns(const std::vector<Column>& columns);
  bool FitsHeader();
  std::string CellOf(std::string_view column) const;

  std::string name_;
  ReadingOptions how_;
  Table table_;
  std::map<std::string, std::size_t, std::less<>> places_;  // column name -> cell
  std::map<std::string, int> seen_;
  std::vector<FileProblem> problems_, warnings_;
  std::size_t row_ = 0;
  std::set<std::string_view> numbers_;  // the columns whose cells tell the decimal mark
  char mark_ = '.', cell_mark_ = '.';
  bool unsure_ = false;  // nothing says which mark the file uses, or some of both
  bool good_ = true, refused_ = false;
};

// All rows that read_row(CheckedRows&) gives without a problem, as ReadingOptions::bad_lines says.
template <class Row, class ReadRow>
FileRows<Row> ReadCheckedRows(std::string_view bytes, const std::string& name, const std::vector<Column>& columns,
                              const ReadingOptions& how, ReadRow read_row) {
  CheckedRows file(bytes, name, columns, how);
  FileRows<Row> out;
  while (file.Next()) {
    Row row = read_row(file);
    if (file.LineGood()) out.rows.push_back(std::move(row));
  }
  out.problems = file.TakeProblems();
  out.warnings = file.TakeWarnings();
  out.decimal_mark = file.DecimalMark();
  out.facts = file.TakeFacts();
  if (!out.problems.empty() && how.bad_lines == BadLines::RefuseFile) out.rows.clear();
  return out;
}

// "yes" or "no" as a column says it.
bool ReadYesNo(std::string_view text);

}  // namespace heatkeep::intake
