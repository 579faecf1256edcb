#include "client/stations/sign_line.h"

#include <QHBoxLayout>
#include <QPainter>
#include <algorithm>

#include "client/stations/plain_words.h"

namespace heatkeep {

namespace {

constexpr qsizetype kAtAGlance = 120;  // characters

}  // namespace

SignLine::SignLine(Size size, int sign_height, QWidget* parent) : QWidget(parent), words_(new QLabel), size_(size) {
  auto* row = new QHBoxLayout(this);
  words_->setFont(FontOf(size));
  side_ = std::max(sign_height, QFontMetrics(words_->font()).height());
  setMinimumHeight(side_);
  words_->setWordWrap(true);
  words_->setTextFormat(Qt::PlainText);
  row->setContentsMargins(side_ + kInside, 0, 0, 0);
  row->addWidget(words_);
  setVisible(false);
}

void SignLine::Say(Sign sign, const QString& words) {
  sign_ = sign;
  words_->setFont(FontOf(words.size() > kAtAGlance ? std::min(size_, Size::SectionHead) : size_));
  said_ = words;
  words_->setText(Unbroken(words));
  setAccessibleName(words);
  setVisible(!words.isEmpty());
  QPalette colors = palette();
  colors.setColor(QPalette::WindowText, ColorOf(sign == Sign::None || sign == Sign::Waiting ? Use::Text : UseOf(sign)));
  words_->setPalette(colors);
  update();
}

void SignLine::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const int words = words_->heightForWidth(words_->width());
  const double head = words_->y() + (words_->height() - words) / 2.0;
  const double top = words > 2 * side_ ? head : head + (words - side_) / 2.0;
  PaintSign(painter, QRectF(0, top, side_, side_), sign_);
}

}  // namespace heatkeep
