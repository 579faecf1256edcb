#include "client/stations/deed_button.h"

#include <QShortcut>
#include <QStyleOptionButton>
#include <QStylePainter>

namespace heatkeep {

DeedButton::DeedButton(const BookLink& link, const QString& deed, const QString& words, const QKeySequence& key, Weight weight,
                       QWidget* parent)
    : QPushButton(parent), link_(link), deed_(deed), key_(key), weight_(weight) {
  const bool glove = weight == Weight::Glove || weight == Weight::PrimaryGlove;
  setFont(FontOf(glove ? Size::SawBody : Size::Body, weight == Weight::Primary || weight == Weight::PrimaryGlove));
  setMinimumHeight(glove ? kGlove : 32);
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
  setText(key_.isEmpty() ? words : words + "  " + key_.toString(QKeySequence::NativeText));
  setAccessibleName(words);
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

void DeedButton::paintEvent(QPaintEvent* event) {
  if ((weight_ != Weight::Primary && weight_ != Weight::PrimaryGlove) || !isEnabled()) {
    QPushButton::paintEvent(event);
    return;
  }
  QStylePainter painter(this);
  QStyleOptionButton option;
  initStyleOption(&option);
  option.palette.setColor(QPalette::Button, ColorOf(Use::Done));
  option.palette.setColor(QPalette::ButtonText, ColorOf(Use::Ground));
  painter.drawControl(QStyle::CE_PushButton, option);
}

}  // namespace heatkeep
