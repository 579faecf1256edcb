// One sentence with its sign in front: what happened, what is refused and why, what to do next. Wraps; hidden while it says nothing.
// More words than are read at a glance are smaller, so that what stands below keeps its room.
#pragma once

#include <QLabel>
#include <QWidget>

#include "client/stations/desk_look.h"
#include "client/stations/sign.h"

namespace heatkeep {

class SignLine : public QWidget {
  Q_OBJECT

 public:
  // `sign_height`: of the sign in dots; 0: as high as a line of the words.
  explicit SignLine(Size size = Size::Body, int sign_height = 0, QWidget* parent = nullptr);

  void Say(Sign sign, const QString& words);
  void Clear() { Say(Sign::None, {}); }
  QString words() const { return said_; }
  Sign sign() const { return sign_; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QLabel* words_;
  QString said_;
  Size size_;
  int side_;  // of the sign
  Sign sign_ = Sign::None;
};

}  // namespace heatkeep
