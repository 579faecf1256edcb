#include "client/stations/deed_button.h"

#include <QShortcut>
#include <QStyleOptionButton>
#include <QStylePainter>

namespace heatkeep {

DeedButton::DeedButton(const BookLink& link, const QString& deed, const QString& words, const QKeySequence& key, Weight weight,
                       QWidget* parent)
    : QPushButton(parent), link_(link), deed_(deed), key_(key), weight_(weight) {
  setFont(FontOf(glove() ? Size::SawBody : Size::Body, primary()));
  setMinimumHeight(glove() ? kGlove : 32);
  setAutoDefault(false);
  SetWords(words);
  if (!key.isEmpty()) {
    auto* shortcut = new QShortcut(key, this);
    shortcut->setContext(Qt::WindowShortcut);
    connect(shortcut, &QShortcut::activated, this, [this] {
      if (isEnabled() && isVisible()) click();
    });
  }
  connect(&link, &BookLink::Ready, this, &DeedButton::Follow);
  Follow();
}

void DeedButton::SetWords(const QString& words) {
  setText(words);
  setAccessibleName(words);
  updateGeometry();
}

QSize DeedButton::sizeHint() const {
  const int key = key_.isEmpty() ? 0 : kInside + QFontMetrics(KeyFont()).horizontalAdvance(KeyWords());
  return {QFontMetrics(font()).horizontalAdvance(text()) + key + 2 * kInside, QPushButton::sizeHint().height()};
}

void DeedButton::SetWanted(bool wanted) {
  wanted_ = wanted;
  Follow();
}

void DeedButton::Follow() {
  const bool may = deed_.isEmpty() || link_.May(deed_);
  setEnabled(wanted_ && may);
  setToolTip(may ? QString() : tr("the login %1 may not do this").arg(link_.who()));
}

void DeedButton::paintEvent(QPaintEvent*) {
  QStylePainter painter(this);
  QStyleOptionButton option;
  initStyleOption(&option);
  option.text.clear();
  const bool first = primary() && isEnabled();
  if (first) option.palette.setColor(QPalette::Button, ColorOf(Use::Done));
  painter.drawControl(QStyle::CE_PushButton, option);
  const QFontMetrics words(font()), keys(KeyFont());
  const int key = key_.isEmpty() ? 0 : kInside + keys.horizontalAdvance(KeyWords());
  const int left = (width() - words.horizontalAdvance(text()) - key) / 2, foot = (height() + words.ascent() - words.descent()) / 2;
  painter.setFont(font());
  painter.setPen(ColorOf(first ? Use::Ground : isEnabled() ? Use::Text : Use::Quiet));
  painter.drawText(left, foot, text());
  if (key == 0) return;
  painter.setFont(KeyFont());
  painter.setPen(ColorOf(first ? Use::Ground : Use::Quiet));
  painter.drawText(left + words.horizontalAdvance(text()) + kInside, foot, KeyWords());
}

}  // namespace heatkeep
