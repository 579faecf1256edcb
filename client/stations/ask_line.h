// One question in words with a field for its answer, where a station asks for a reason or a length. Hidden while nothing is asked. Enter
// answers; an empty answer is none.
#pragma once

#include <QLineEdit>
#include <QWidget>
#include <functional>

#include "client/stations/plain_words.h"

namespace heatkeep {

class AskLine : public QWidget {
  Q_OBJECT

 public:
  explicit AskLine(QWidget* parent = nullptr);

  // `take` says whether it understood; where it did not the field stays, with what was typed. `typed`: stands there already.
  void Ask(const QString& words, std::function<bool(const QString& answer)> take, const QString& typed = {});
  void End();
  bool asking() const { return bool(take_); }
  QString words() const { return words_->text(); }

 private:
  void Answer();

  PlainWords* words_;
  QLineEdit* field_;
  std::function<bool(const QString&)> take_;
};

}  // namespace heatkeep
