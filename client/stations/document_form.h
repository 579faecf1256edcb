// A certificate taken in: its file chosen or dropped, and what it says of a heat typed from it, in the order it stands on the paper.
#pragma once

#include <QComboBox>
#include <QLineEdit>
#include <QWidget>
#include <functional>

#include "client/models/document_work.h"
#include "client/stations/deed_button.h"
#include "client/stations/plain_words.h"
#include "client/stations/sign_line.h"

class QGridLayout;

namespace heatkeep {

class DocumentForm : public QWidget {
  Q_OBJECT

 public:
  DocumentForm(BookLink& link, DocumentWork& work, QWidget* parent = nullptr);

  void Show(const TypedDocument& document);  // and the focus is in the first field that is empty
  void SetFile(const QString& file);
  TypedDocument document() const;
  SignLine* sign() const { return sign_; }

  // Asks for the file of a document; empty: none. A file dialog unless it is set otherwise.
  std::function<QString()> choose_file;

 signals:
  void Left();

 private:
  QLineEdit* Field(QGridLayout* grid, int row, int column, int span, const QString& words, const QString& example);
  void Follow();

  DocumentWork& work_;
  PlainWords* file_words_;
  QLineEdit *file_, *issuer_, *number_, *issued_, *heat_, *section_, *grade_, *condition_, *analysis_, *tests_, *validated_;
  QComboBox* type_;
  SignLine* sign_;
  DeedButton *file_it_, *choose_, *leave_;
};

}  // namespace heatkeep
