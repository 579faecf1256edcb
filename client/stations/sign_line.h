// One sentence with its sign in front: what happened, what is refused and why, what to do next. Wraps; hidden while it says nothing.
#pragma once

#include <QLabel>
#include <QWidget>

#include "client/stations/desk_look.h"
#include "client/stations/sign.h"

namespace heatkeep {

class SignLine : public QWidget {
  Q_OBJECT

 public:
  explicit SignLine(Size size = Size::Body, QWidget* parent = nullptr);

  void Say(Sign sign, const QString& words);
  void Clear() { Say(Sign::None, {}); }
  QString words() const { return words_->text(); }
  Sign sign() const { return sign_; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QLabel* words_;
  Sign sign_ = Sign::None;
};

}  // namespace heatkeep
