// A label of plain words in one of the stations' fonts and colours; wraps, but never between a figure and its unit.
#pragma once

#include <QLabel>

#include "client/stations/desk_look.h"

namespace heatkeep {

// The same words with spaces that do not break where a figure is followed by its fraction or unit.
QString Unbroken(const QString& words);

class PlainWords : public QLabel {
  Q_OBJECT

 public:
  explicit PlainWords(const QFont& font, Use use = Use::Text, const QString& words = {}, QWidget* parent = nullptr);

  void setText(const QString& words);
  QString text() const { return said_; }  // as it was set
  // From now on a line that is all in capitals is a head and stands out.
  void HeadLines();

 protected:
  void changeEvent(QEvent* event) override;  // another scheme: the colour follows

 private:
  void Color();

  Use use_;
  QString said_;
  bool heads_ = false;
  bool coloring_ = false;
};

}  // namespace heatkeep
