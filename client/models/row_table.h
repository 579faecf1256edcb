// A table of rows for any view: cells made once, sorted and filtered in place, so that tens of thousands of rows answer at once.
//
// Sorting is stable and by the cell's `order` where it has one (numbers, dates), else by its text without case. Filtering keeps the
// rows of which some cell contains every word typed, without case. Rows may come in parts (Append); what is sorted and filtered stays
// so. `key` names a row and stays selected through a refresh.
#pragma once

#include <QAbstractTableModel>
#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "reports/piece_bar_layout.h"

namespace heatkeep {

struct TableCell {
  QString text;
  std::optional<qint64> order = std::nullopt;
};

struct TableRow {
  QString key;
  std::vector<TableCell> cells;  // one a column
  std::optional<PieceBar> bar = std::nullopt;
};

struct TableColumn {
  QString head;         // with the unit: "Length mm"
  bool number = false;  // right-aligned
  int width = 12;       // in characters of the table's font
  bool bar = false;     // draws the row's piece bar
};

class RowTable : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Role { kKey = Qt::UserRole + 1, kBar };

  explicit RowTable(std::vector<TableColumn> columns, QObject* parent = nullptr);

  void SetColumns(std::vector<TableColumn> columns);  // other units, other language; the rows go
  void SetRows(std::vector<TableRow> rows);
  void Append(std::vector<TableRow> rows);
  void SetFilter(const QString& words);

  const std::vector<TableColumn>& columns() const { return columns_; }
  int all() const { return static_cast<int>(rows_.size()); }  // filtered out or not
  const TableRow& At(int shown) const { return rows_[static_cast<std::size_t>(shown_[static_cast<std::size_t>(shown)])]; }
  int RowOf(const QString& key) const;  // as shown; -1: not there

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  void sort(int column, Qt::SortOrder order) override;

 private:
  bool Kept(const TableRow& row) const;
  void Arrange();  // makes shown_ anew; between begin and end of a layout change or a reset
  void Relayout();

  std::vector<TableColumn> columns_;
  std::vector<TableRow> rows_;
  std::vector<int> shown_;
  QStringList words_;
  int sorted_ = -1;
  Qt::SortOrder order_ = Qt::AscendingOrder;
};

}  // namespace heatkeep
