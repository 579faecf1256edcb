#include "client/stations/words_pane.h"

#include <QScrollBar>

namespace heatkeep {

WordsPane::WordsPane(QWidget* parent) : QScrollArea(parent), words_(new PlainWords(FontOf(Size::Body))) {
  setFrameShape(QFrame::NoFrame);
  setWidgetResizable(true);
  setFocusPolicy(Qt::NoFocus);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  connect(verticalScrollBar(), &QScrollBar::rangeChanged, this,
          [this](int, int most) { setFocusPolicy(most > 0 ? Qt::TabFocus : Qt::NoFocus); });
  words_->HeadLines();
  words_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  setWidget(words_);
}

}  // namespace heatkeep
