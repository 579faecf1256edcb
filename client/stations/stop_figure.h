// What the saw's stop is set to, as large as the room allows: figures up to 30 mm high, never below 12.8 mm on a screen of true size.
//
// Read from 2 m: a figure of height h is seen under 2 atan(h / 2d). 12.8 mm at 2 m are 22 minutes of arc and 30 mm are 52; ISO 9241-303
// asks for 16 and recommends 20 to 22 (from memory). The figures of the font are measured, not its size in points.
#pragma once

#include <QString>
#include <QWidget>

namespace heatkeep {

class StopFigure : public QWidget {
  Q_OBJECT

 public:
  explicit StopFigure(QWidget* parent = nullptr);

  // "240.0 mm": the unit in smaller type.
  void Show(const QString& setting);
  QString setting() const { return setting_; }
  // How high the figures are now, in millimetres of a screen of true size (96 dots an inch before scaling).
  double FigureHeightMm() const;

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QFont FontFor(int room_width, int room_height) const;
  int WidthIn(const QFont& font) const;

  QString setting_;
};

}  // namespace heatkeep
