#include "client/intake/sheet_rows.h"

#include "schema/terms/bad_text.h"

namespace heatkeep::intake {
namespace {

constexpr std::size_t kFewNamed = 5;

}  // namespace

void SheetRows::Note(Noted& noted, const std::string& where) {
  if (++noted.count <= kFewNamed) noted.first += (noted.count == 1 ? "" : ", ") + where;
  if (noted.count == kFewNamed + 1) noted.first += " ...";
}

void SheetRows::Put(int row, std::size_t column, std::string text, CellKind kind) {
  if (text.find_first_not_of(" \t\r\n") == std::string::npos) return;
  if (column >= static_cast<std::size_t>(kMostColumns)) {
    throw BadText("sheet " + Quoted(sheet_) + " has something in cell " + Cell(row, column),
                  "at most " + std::to_string(kMostColumns) + " columns");
  }
  if (rows_.empty() || rows_.back().line != row) {
    if (!rows_.empty() && rows_.back().line > row)
      throw BadText("the rows of sheet " + Quoted(sheet_) + " are out of order", "a whole spreadsheet");
    rows_.push_back({row, {}, {}});
    if (row == hidden_row_) Note(hidden_rows_, std::to_string(row));
  }
  TableRow& last = rows_.back();
  if (column < last.cells.size()) throw BadText("cell " + Cell(row, column) + " is there twice or out of order", "a whole spreadsheet");
  cells_ += column + 1 - last.cells.size();
  text_ += text.size();
  if (cells_ > kMostCells || text_ > kMostText) {
    throw BadText("sheet " + Quoted(sheet_) + " holds more than " + (cells_ > kMostCells ? "4 000 000 cells" : "64 MiB of text"),
                  "a spreadsheet of ordinary size");
  }
  last.cells.resize(column);
  last.kinds.resize(column, CellKind::Text);
  last.cells.push_back(std::move(text));
  last.kinds.push_back(kind);
}

void SheetRows::GiveTo(Table& table) {
  if (rows_.empty()) throw BadText("nothing is in sheet " + Quoted(sheet_), "a header line and rows");
  const std::size_t width = rows_.front().cells.size();
  if (width * rows_.size() > kMostCells)
    throw BadText("sheet " + Quoted(sheet_) + " holds more than 4 000 000 cells", "a spreadsheet of ordinary size");
  for (TableRow& row : rows_) {
    if (row.cells.size() >= width) continue;
    row.cells.resize(width);
    row.kinds.resize(width, CellKind::Text);
  }
  Noted hidden;
  for (std::size_t c : columns_hidden_) {
    if (c < width) Note(hidden, ColumnLetters(c));
  }
  if (formulas_.count > 0)
    Warn(std::to_string(formulas_.count) + (formulas_.count == 1 ? " formula (" : " formulas (") + formulas_.first +
         "): the values computed when the file was last saved are taken");
  if (merged_.count > 0) Warn("merged cells (" + merged_.first + "): only the first of them holds the value");
  if (hidden_rows_.count > 0) Warn("hidden rows (" + hidden_rows_.first + ") are read like all others");
  if (hidden.count > 0) Warn("hidden columns (" + hidden.first + ") are read like all others");
  table.facts.sheet = sheet_;
  table.rows = std::move(rows_);
  table.warnings = std::move(warnings_);
}

}  // namespace heatkeep::intake
