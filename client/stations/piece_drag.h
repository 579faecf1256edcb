// A piece taken hold of by the mouse in one place of the window and let go in another: within this window only, so it needs nothing of the
// desktop. While it is dragged the pointer carries its tag.
#pragma once

#include <QAbstractScrollArea>
#include <QObject>
#include <QPoint>
#include <QString>
#include <functional>

namespace heatkeep {

class PieceDrag : public QObject {
  Q_OBJECT

 public:
  // `tag_at`: of the piece at a point of the viewport; empty: none can be taken hold of there.
  PieceDrag(QAbstractScrollArea* from, std::function<QString(const QPoint& at)> tag_at);

 signals:
  void Over(const QString& tag, const QPoint& at);  // at: global
  void LetGo(const QString& tag, const QPoint& at);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QWidget* viewport_;  // of what it was made for: while that is taken down its viewport outlives the rest of it
  std::function<QString(const QPoint&)> tag_at_;
  QPoint pressed_at_;
  QString pressed_, dragged_;
};

}  // namespace heatkeep
