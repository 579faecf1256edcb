// A spreadsheet of bars on its way to become an opening balance: which columns it has, every row with what is wrong with it, all the words
// of the chosen one under the table, and then booked.
#pragma once

#include <QWidget>
#include <functional>

#include "client/models/reading_units.h"
#include "client/models/row_table.h"
#include "client/models/start_work.h"
#include "client/stations/deed_button.h"
#include "client/stations/plain_words.h"
#include "client/stations/row_view.h"
#include "client/stations/sign_line.h"

namespace heatkeep {

class OpeningPage : public QWidget {
  Q_OBJECT

 public:
  OpeningPage(BookLink& link, StartWork& work, const ReadingUnits& units, QWidget* parent = nullptr);

  void Follow();
  RowTable& table() { return table_; }
  QString words() const { return what_->text(); }
  QString row_words() const { return row_words_->words(); }  // of the chosen row

  // Asks for the file; empty: none. A file dialog unless it is set otherwise.
  std::function<QString()> choose_file;

 private:
  std::vector<TableColumn> Columns() const;
  void ShowRows();
  void ShowRow(const QString& key);

  StartWork& work_;
  const ReadingUnits& units_;
  PlainWords* what_;
  SignLine* sign_;
  RowTable table_;
  RowView* rows_;
  SignLine* row_words_;
  DeedButton *book_, *choose_, *names_;
};

}  // namespace heatkeep
