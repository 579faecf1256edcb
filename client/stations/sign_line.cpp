#include "client/stations/sign_line.h"

#include <QHBoxLayout>
#include <QPainter>

namespace heatkeep {

SignLine::SignLine(Size size, QWidget* parent) : QWidget(parent), words_(new QLabel) {
  auto* row = new QHBoxLayout(this);
  words_->setFont(FontOf(size));
  words_->setWordWrap(true);
  words_->setTextFormat(Qt::PlainText);
  row->setContentsMargins(QFontMetrics(words_->font()).height() + kInside, 0, 0, 0);
  row->addWidget(words_);
  setVisible(false);
}

void SignLine::Say(Sign sign, const QString& words) {
  sign_ = sign;
  words_->setText(words);
  setAccessibleName(words);
  setVisible(!words.isEmpty());
  QPalette colors = palette();
  colors.setColor(QPalette::WindowText, ColorOf(sign == Sign::None || sign == Sign::Waiting ? Use::Text : UseOf(sign)));
  words_->setPalette(colors);
  update();
}

void SignLine::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const int side = QFontMetrics(words_->font()).height();
  const double top = words_->height() > 2 * side ? words_->y() : words_->y() + (words_->height() - side) / 2.0;
  PaintSign(painter, QRectF(0, top, side, side), sign_);
}

}  // namespace heatkeep
