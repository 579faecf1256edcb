#include "client/stations/plain_words.h"

#include <QEvent>

namespace heatkeep {

PlainWords::PlainWords(const QFont& font, Use use, const QString& words, QWidget* parent) : QLabel(words, parent), use_(use) {
  setFont(font);
  setTextFormat(Qt::PlainText);
  setWordWrap(true);
  Color();
}

void PlainWords::Color() {
  coloring_ = true;
  QPalette colors = palette();
  colors.setColor(QPalette::WindowText, ColorOf(use_));
  setPalette(colors);
  coloring_ = false;
}

void PlainWords::changeEvent(QEvent* event) {
  QLabel::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && !coloring_) Color();
}

}  // namespace heatkeep
