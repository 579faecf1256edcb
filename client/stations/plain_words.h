// A label of plain words in one of the stations' fonts and colours; wraps.
#pragma once

#include <QLabel>

#include "client/stations/desk_look.h"

namespace heatkeep {

class PlainWords : public QLabel {
  Q_OBJECT

 public:
  explicit PlainWords(const QFont& font, Use use = Use::Text, const QString& words = {}, QWidget* parent = nullptr);

 protected:
  void changeEvent(QEvent* event) override;  // another scheme: the colour follows

 private:
  void Color();

  Use use_;
  bool coloring_ = false;
};

}  // namespace heatkeep
