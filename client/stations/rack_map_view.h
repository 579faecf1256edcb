// The rack as it stands: a column a bay, a row a level, each place with its load as a filled share of what it takes and the number of
// pieces; places without a bay in a row below. A place that is over its limit carries the stop sign. A click names the place.
#pragma once

#include <QWidget>
#include <vector>

#include "client/gateway/rack_readings.h"
#include "client/models/reading_units.h"

namespace heatkeep {

class RackMapView : public QWidget {
  Q_OBJECT

 public:
  explicit RackMapView(QWidget* parent = nullptr);

  void Show(const std::vector<PlaceLoad>& places, ReadingUnits units);

  QSize sizeHint() const override { return {480, 220}; }
  QSize minimumSizeHint() const override { return {240, 160}; }

 signals:
  void Chosen(const QString& place);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  bool event(QEvent* event) override;  // tool tips

 private:
  QRectF BoxOf(std::size_t place) const;
  QString WordsOf(const PlaceLoad& place) const;

  struct Cell {
    int column = 0, row = 0, of = 1;  // of so many beside each other
  };
  std::vector<PlaceLoad> places_;
  std::vector<Cell> cells_;
  int rows_ = 1;
  ReadingUnits units_;
};

}  // namespace heatkeep
