// Gathers the cells of one sheet into rows, within the limits of table.h, and what somebody should look at.
#pragma once

#include <cstddef>
#include <string>
#include <utility>
#include <vector>

#include "client/intake/table.h"

namespace heatkeep::intake {

class SheetRows {
 public:
  SheetRows(std::string file, std::string sheet) : file_(std::move(file)), sheet_(std::move(sheet)) {}

  // Rows and columns count from 1 and 0; rows come in order. Empty texts are left out. Throws BadText beyond a limit.
  void Put(int row, std::size_t column, std::string text, CellKind kind);

  void NoteFormula(int row, std::size_t column) { Note(formulas_, Cell(row, column)); }
  void NoteMerged(const std::string& range) { Note(merged_, range); }
  // Hidden ones are worth a word only where something stands in them.
  void HideRow(int row) { hidden_row_ = row; }
  void HideColumn(std::size_t column) { columns_hidden_.push_back(column); }
  void Warn(std::string wrong) { warnings_.push_back({file_, 0, std::move(wrong), "", sheet_}); }

  // Rows without text left out; all as wide as the header, wider where there is something.
  void GiveTo(Table& table);

 private:
  struct Noted {
    std::size_t count = 0;
    std::string first;  // the first few, "C2, C3, C4"
  };
  static void Note(Noted& noted, const std::string& where);
  std::string Cell(int row, std::size_t column) const { return ColumnLetters(column) + std::to_string(row); }

  std::string file_, sheet_;
  std::vector<TableRow> rows_;
  std::vector<FileProblem> warnings_;
  int hidden_row_ = 0;  // the last one
  std::vector<std::size_t> columns_hidden_;
  Noted formulas_, merged_, hidden_rows_;
  std::size_t cells_ = 0, text_ = 0;
};

}  // namespace heatkeep::intake
