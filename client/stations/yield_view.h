// Good metal of all that was used up, month by month, as the reports' own line chart draws it.
#pragma once

#include <QWidget>
#include <vector>

#include "client/gateway/rack_readings.h"

namespace heatkeep {

class YieldView : public QWidget {
  Q_OBJECT

 public:
  explicit YieldView(QWidget* parent = nullptr) : QWidget(parent) {}
  void Show(const std::vector<UseMonth>& months);
  QSize sizeHint() const override { return {280, 150}; }
  QSize minimumSizeHint() const override { return {200, 110}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  std::vector<UseMonth> months_;
};

}  // namespace heatkeep
