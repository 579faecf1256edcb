// The right pane: words under their heads, which scroll where they are longer than the window. Takes the focus by Tab only,
// and only while there is something to scroll.
#pragma once

#include <QScrollArea>

#include "client/stations/plain_words.h"

namespace heatkeep {

class WordsPane : public QScrollArea {
  Q_OBJECT

 public:
  explicit WordsPane(QWidget* parent = nullptr);

  void Say(const QString& words) { words_->setText(words); }
  QString words() const { return words_->text(); }

 private:
  PlainWords* words_;
};

}  // namespace heatkeep
