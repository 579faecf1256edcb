#include "client/stations/yield_view.h"

#include <QPainter>

#include "client/stations/desk_look.h"
#include "reports/curves.h"

namespace heatkeep {

void YieldView::Show(const std::vector<UseMonth>& months) {
  months_.clear();
  for (const UseMonth& m : months)
    if (m.used.g > 0) months_.push_back(m);
  setAccessibleName(
      months_.empty()
          ? tr("no yield yet")
          : tr("yield, last month %1 %")
                .arg(100.0 * static_cast<double>(months_.back().good.g) / static_cast<double>(months_.back().used.g), 0, 'f', 1));
  update();
}

void YieldView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  if (months_.size() < 2) {
    painter.setPen(ColorOf(Use::Quiet));
    painter.setFont(FontOf(Size::Table));
    painter.drawText(rect(), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                     tr("Yield by month: shown from the second month of cutting on."));
    return;
  }
  Chart chart;
  chart.title = tr("Yield by month").toStdString();
  chart.unit = "%";
  chart.step = tr("month").toStdString();
  chart.decimals = 1;
  chart.from_zero = false;
  Curve curve{.name = tr("good of used").toStdString(), .values = {}, .main = true};
  for (const UseMonth& m : months_) curve.values.push_back(100.0 * static_cast<double>(m.good.g) / static_cast<double>(m.used.g));
  chart.curves.push_back(curve);
  PaintChart(painter, chart, 0, 0, std::min<double>(width(), height() / kChartShape), CurrentScheme());
}

}  // namespace heatkeep
