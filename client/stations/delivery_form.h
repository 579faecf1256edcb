// The fields of one line of a delivery note, in the order of the hands: bars counted, heat as read, mass weighed; what the order says
// already stands in the others. Enter goes on to the next of the three, and from the last one the line is read. What few lines need is
// folded away: where it is laid, the owner, what the length was measured with, the ends, the mark; it unfolds itself where one of them says
// something.
#pragma once

#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

#include "client/models/delivery_line.h"

class QGridLayout;
class QHBoxLayout;
class QLabel;
class QStringListModel;

namespace heatkeep {

class DeliveryForm : public QWidget {
  Q_OBJECT

 public:
  explicit DeliveryForm(QWidget* parent = nullptr);

  void Show(const TypedLine& line);
  TypedLine line() const;
  void SetUnits(const ReadingUnits& units);  // the words of the heads
  void SetNames(const DoorFacts& facts);     // what the fields of names offer; a heat is never offered
  void Focus(LineField field);
  void Unfold(bool unfolded);  // and to its first field
  bool unfolded() const { return more_->isVisibleTo(this); }

  QLineEdit* note() const { return note_; }
  QLineEdit* supplier() const { return supplier_; }

 signals:
  void Edited();
  void LineRead();  // Enter in the last field

 private:
  QLineEdit* Field(QGridLayout* grid, int row, int column, const QString& words, const QString& example = {});
  QLabel* Under(const QString& words, QWidget* field, int stretch, QHBoxLayout* row);
  void Offer(QLineEdit* field, QStringListModel* names);
  QWidget* BuildMore();
  QComboBox* Choice(QGridLayout* grid, int row, int column, const QString& words, const std::vector<std::pair<QString, QVariant>>& choices);

  TypedLine shown_;  // what the fields do not hold
  QLineEdit *note_, *supplier_, *count_, *slip_count_, *heat_, *weighed_;
  QLineEdit *grade_, *section_, *length_, *condition_, *mill_, *owner_, *owner_ref_, *slip_heat_, *place_, *bundle_;
  QComboBox *read_from_, *papers_, *measured_with_, *ends_, *mark_;
  QWidget* more_;
  ReadingUnits units_;
  QLabel *weighed_words_ = nullptr, *length_words_ = nullptr;
  QStringListModel *parties_, *grades_, *places_;
};

}  // namespace heatkeep
