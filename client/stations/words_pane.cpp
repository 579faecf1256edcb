#include "client/stations/words_pane.h"

namespace heatkeep {

WordsPane::WordsPane(QWidget* parent) : QScrollArea(parent), words_(new PlainWords(FontOf(Size::Body))) {
  setFrameShape(QFrame::NoFrame);
  setWidgetResizable(true);
  setFocusPolicy(Qt::NoFocus);
  words_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  setWidget(words_);
}

}  // namespace heatkeep
