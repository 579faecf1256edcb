// Drop lengths as a row of upright bars, a class of lengths each, with the keep length as a line and what was asked for of each class
// as a curve over them (scales of their own: both are counted). Every tall enough bar has its number.
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "client/models/reading_units.h"

namespace heatkeep {

class LengthBarsView : public QWidget {
  Q_OBJECT

 public:
  explicit LengthBarsView(QWidget* parent = nullptr) : QWidget(parent) {}

  void Show(const std::vector<int>& drops, const std::vector<int>& wanted, Length step, std::optional<Length> keep, ReadingUnits units);

  QSize sizeHint() const override { return {480, 200}; }
  QSize minimumSizeHint() const override { return {240, 140}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  std::vector<int> drops_, wanted_;
  Length step_;
  std::optional<Length> keep_;
  ReadingUnits units_;
};

}  // namespace heatkeep
