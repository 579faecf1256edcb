#include "client/stations/piece_drag.h"

#include <QApplication>
#include <QMouseEvent>
#include <QPainter>
#include <QPixmap>
#include <utility>

#include "client/stations/desk_look.h"

namespace heatkeep {
namespace {

QCursor CursorWith(const QString& tag) {
  const QFontMetrics letters(MonoOf(Size::Body, true));
  QPixmap words(letters.horizontalAdvance(tag) + 2 * kInside, letters.height() + kInside);
  words.fill(ColorOf(Use::Done));
  QPainter painter(&words);
  painter.setFont(MonoOf(Size::Body, true));
  painter.setPen(ColorOf(Use::Ground));
  painter.drawText(words.rect(), Qt::AlignCenter, tag);
  painter.end();
  return QCursor(words, 0, 0);
}

}  // namespace

PieceDrag::PieceDrag(QAbstractScrollArea* from, std::function<QString(const QPoint& at)> tag_at)
    : QObject(from), viewport_(from->viewport()), tag_at_(std::move(tag_at)) {
  viewport_->installEventFilter(this);
}

bool PieceDrag::eventFilter(QObject* watched, QEvent* event) {
  if (watched != viewport_) return false;
  if (event->type() == QEvent::MouseButtonPress) {
    pressed_at_ = static_cast<QMouseEvent*>(event)->position().toPoint();
    pressed_ = tag_at_(pressed_at_);
    return false;
  }
  if (event->type() == QEvent::MouseMove && !pressed_.isEmpty()) {
    const auto* mouse = static_cast<QMouseEvent*>(event);
    if (!mouse->buttons().testFlag(Qt::LeftButton)) return false;
    if (dragged_.isEmpty()) {
      if ((mouse->position().toPoint() - pressed_at_).manhattanLength() < QApplication::startDragDistance()) return true;
      dragged_ = pressed_;
      viewport_->setCursor(CursorWith(dragged_));
    }
    emit Over(dragged_, mouse->globalPosition().toPoint());
    return true;
  }
  if (event->type() == QEvent::MouseButtonRelease) {
    pressed_.clear();
    if (dragged_.isEmpty()) return false;
    viewport_->unsetCursor();
    emit LetGo(std::exchange(dragged_, {}), static_cast<QMouseEvent*>(event)->globalPosition().toPoint());
    return true;
  }
  return false;
}

}  // namespace heatkeep
