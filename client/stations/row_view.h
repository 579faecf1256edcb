// A table as every station shows one: rows of one height, hairlines, the head always there, sorted by any column, a field that filters,
// a line that counts, words where it is empty. Bars are drawn in their cells. Ctrl+E keeps it as CSV.
#pragma once

#include <QLineEdit>
#include <QTableView>
#include <QWidget>
#include <functional>
#include <vector>

#include "client/models/row_table.h"
#include "client/stations/plain_words.h"

namespace heatkeep {

class RowView : public QWidget {
  Q_OBJECT

 public:
  // `table` belongs to the caller. `empty_words`: what would be here and how to get it there.
  RowView(RowTable* table, const QString& empty_words, QWidget* parent = nullptr);

  void SetEmptyWords(const QString& words) { empty_words_ = words; }
  // "312 drops, 418.6 m, 6.21 t": of the rows shown; called when they change.
  void SetCount(std::function<QString()> words);
  // One scale for all bars.
  void SetFullLength(Length full) { full_ = full; }
  Length full_length() const { return full_; }
  // How far a number is moved to the left so that its point stands under the others' of its column.
  int PointShift(int column, const QString& number) const;

  QString chosen() const;  // the key of the current row
  void Choose(const QString& key);
  // Each column as wide as its content where there is room, else as its head says. After other columns were set; a person's own widths
  // stay.
  void FitColumns();
  QTableView* table() const { return view_; }
  QLineEdit* filter() const { return filter_; }

 signals:
  void Chosen(const QString& key);
  void Opened(const QString& key);  // Enter, or two clicks

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void Count();
  void WidenColumns();
  void KeepAsCsv();

  RowTable* rows_;
  QString empty_words_;
  QLineEdit* filter_;
  QTableView* view_;
  PlainWords* count_;
  std::function<QString()> count_words_;
  Length full_;
  std::vector<int> decimals_;  // the most of a column of plain numbers; 0: whole numbers or words
  bool fitting_ = false, own_widths_ = false;
};

}  // namespace heatkeep
