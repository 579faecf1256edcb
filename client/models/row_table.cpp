#include "client/models/row_table.h"

#include <algorithm>

namespace heatkeep {

RowTable::RowTable(std::vector<TableColumn> columns, QObject* parent) : QAbstractTableModel(parent), columns_(std::move(columns)) {}

void RowTable::SetColumns(std::vector<TableColumn> columns) {
  beginResetModel();
  columns_ = std::move(columns);
  rows_.clear();
  shown_.clear();
  endResetModel();
}

void RowTable::SetRows(std::vector<TableRow> rows) {
  beginResetModel();
  rows_ = std::move(rows);
  Arrange();
  endResetModel();
}

void RowTable::Append(std::vector<TableRow> rows) {
  if (rows.empty()) return;
  const bool plain = words_.isEmpty() && (sorted_ < 0 || sorted_ >= columnCount());
  const int before = static_cast<int>(rows_.size());
  const int more = static_cast<int>(rows.size());
  if (plain) beginInsertRows({}, before, before + more - 1);
  rows_.insert(rows_.end(), std::make_move_iterator(rows.begin()), std::make_move_iterator(rows.end()));
  if (!plain) {
    Relayout();
    return;
  }
  for (int i = 0; i < more; ++i) shown_.push_back(before + i);
  endInsertRows();
}

void RowTable::SetFilter(const QString& words) {
  const QStringList asked = words.split(' ', Qt::SkipEmptyParts);
  if (asked == words_) return;
  words_ = asked;
  Relayout();
}

int RowTable::RowOf(const QString& key) const {
  const auto at = std::find_if(shown_.begin(), shown_.end(), [&](int row) { return rows_[static_cast<std::size_t>(row)].key == key; });
  return at == shown_.end() ? -1 : static_cast<int>(at - shown_.begin());
}

int RowTable::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(shown_.size()); }

int RowTable::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(columns_.size()); }

QVariant RowTable::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
  const TableRow& row = At(index.row());
  const TableColumn& column = columns_[static_cast<std::size_t>(index.column())];
  const auto cell = static_cast<std::size_t>(index.column());
  switch (role) {
    case Qt::DisplayRole: return cell < row.cells.size() ? row.cells[cell].text : QString();
    case Qt::TextAlignmentRole: return static_cast<int>((column.number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    case kKey: return row.key;
    case kBar: return column.bar && row.bar ? QVariant::fromValue(static_cast<const void*>(&*row.bar)) : QVariant();
    default: return {};
  }
}

QVariant RowTable::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) return {};
  const TableColumn& column = columns_[static_cast<std::size_t>(section)];
  if (role == Qt::DisplayRole) return column.head;
  if (role == Qt::TextAlignmentRole) return static_cast<int>((column.number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  return {};
}

void RowTable::sort(int column, Qt::SortOrder order) {
  sorted_ = column;
  order_ = order;
  Relayout();
}

bool RowTable::Kept(const TableRow& row) const {
  return std::all_of(words_.begin(), words_.end(), [&](const QString& word) {
    return std::any_of(row.cells.begin(), row.cells.end(),
                       [&](const TableCell& cell) { return cell.text.contains(word, Qt::CaseInsensitive); });
  });
}

void RowTable::Arrange() {
  shown_.clear();
  for (std::size_t i = 0; i < rows_.size(); ++i)
    if (words_.isEmpty() || Kept(rows_[i])) shown_.push_back(static_cast<int>(i));
  if (sorted_ < 0 || sorted_ >= columnCount()) return;
  const auto cell = [&](int row) -> const TableCell& {
    return rows_[static_cast<std::size_t>(row)].cells[static_cast<std::size_t>(sorted_)];
  };
  const auto less = [&](int a, int b) {
    const TableCell &left = cell(a), &right = cell(b);
    if (left.order || right.order) return left.order < right.order;
    return QString::compare(left.text, right.text, Qt::CaseInsensitive) < 0;
  };
  if (order_ == Qt::AscendingOrder) std::stable_sort(shown_.begin(), shown_.end(), less);
  else std::stable_sort(shown_.begin(), shown_.end(), [&](int a, int b) { return less(b, a); });
}

void RowTable::Relayout() {
  emit layoutAboutToBeChanged();
  const QModelIndexList before = persistentIndexList();
  std::vector<int> rows;
  for (const QModelIndex& index : before) rows.push_back(shown_[static_cast<std::size_t>(index.row())]);
  Arrange();
  QModelIndexList after;
  for (int i = 0; i < before.size(); ++i) {
    const auto at = std::find(shown_.begin(), shown_.end(), rows[static_cast<std::size_t>(i)]);
    after.append(at == shown_.end() ? QModelIndex() : index(static_cast<int>(at - shown_.begin()), before[i].column()));
  }
  changePersistentIndexList(before, after);
  emit layoutChanged();
}

}  // namespace heatkeep
