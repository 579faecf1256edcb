// A table as every station shows one: rows of one height, hairlines, the head always there, sorted by any column, a field that filters,
// a line that counts, words where it is empty. Bars are drawn in their cells. Ctrl+E keeps it as CSV.
#pragma once

#include <QLineEdit>
#include <QTableView>
#include <QWidget>
#include <functional>

#include "client/models/row_table.h"
#include "client/stations/plain_words.h"

namespace heatkeep {

class RowView : public QWidget {
  Q_OBJECT

 public:
  // `table` belongs to the caller. `empty_words`: what would be here and how to get it there.
  RowView(RowTable* table, const QString& empty_words, QWidget* parent = nullptr);

  // "312 drops, 418.6 m, 6.21 t": of the rows shown; called when they change.
  void SetCount(std::function<QString()> words);
  // One scale for all bars.
  void SetFullLength(Length full) { full_ = full; }
  Length full_length() const { return full_; }

  QString chosen() const;  // the key of the current row
  void Choose(const QString& key);
  void FitColumns();  // after other columns were set
  QTableView* table() const { return view_; }
  QLineEdit* filter() const { return filter_; }

 signals:
  void Chosen(const QString& key);
  void Opened(const QString& key);  // Enter, or two clicks

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void Count();
  void KeepAsCsv();

  RowTable* rows_;
  QString empty_words_;
  QLineEdit* filter_;
  QTableView* view_;
  PlainWords* count_;
  std::function<QString()> count_words_;
  Length full_;
};

}  // namespace heatkeep
