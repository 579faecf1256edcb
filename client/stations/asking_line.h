// A question under the work, answered by typing: what is asked in words, one field, Enter answers, an empty answer leaves it, and so does
// Esc, which the window gives to the station (Station::Stop).
#pragma once

#include <QLineEdit>
#include <QWidget>
#include <functional>

#include "client/stations/plain_words.h"

namespace heatkeep {

class AskingLine : public QWidget {
  Q_OBJECT

 public:
  // False: not understood (the caller has said why); it is asked again.
  using Take = std::function<bool(const QString& answer)>;

  explicit AskingLine(Size size = Size::Body, QWidget* parent = nullptr);

  // `typed`: stands there already.
  void Ask(const QString& words, Take take, const QString& typed = {});
  void Leave();
  bool asking() const { return static_cast<bool>(take_); }
  QString words() const { return words_->text(); }
  QLineEdit* field() const { return field_; }

 signals:
  void Left();  // answered or not

 private:
  void Answer();

  PlainWords* words_;
  QLineEdit* field_;
  Take take_;
};

}  // namespace heatkeep
