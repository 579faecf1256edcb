#include "client/stations/stop_figure.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "client/stations/desk_look.h"

namespace heatkeep {
namespace {

constexpr double kDotMm = 25.4 / 96, kLeastMm = 12.8, kMostMm = 30;
constexpr double kUnitPart = 0.4;  // of the figures' size

// The height of the figure 0 itself.
double FigureOf(const QFont& font) { return QFontMetricsF(font).tightBoundingRect("0").height(); }

QFont Figures(double dots) {
  QFont font = FontOf(Size::Stop, true);
  font.setPixelSize(100);
  font.setPixelSize(std::max(1, static_cast<int>(std::ceil(dots * 100 / FigureOf(font)))));
  return font;
}

QFont UnitOf(QFont font) {
  font.setPixelSize(static_cast<int>(font.pixelSize() * kUnitPart));
  font.setBold(false);
  return font;
}

}  // namespace

StopFigure::StopFigure(QWidget* parent) : QWidget(parent) { setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding); }

void StopFigure::Show(const QString& setting) {
  setting_ = setting;
  setAccessibleName(tr("stop at %1").arg(setting));
  updateGeometry();
  update();
}

int StopFigure::WidthIn(const QFont& font) const {
  return QFontMetrics(font).horizontalAdvance(setting_.section(' ', 0, -2)) + kInside +
      QFontMetrics(UnitOf(font)).horizontalAdvance(setting_.section(' ', -1));
}

QFont StopFigure::FontFor(int room_width, int room_height) const {
  QFont font = Figures(std::clamp<double>(room_height, kLeastMm / kDotMm, kMostMm / kDotMm));
  while (WidthIn(font) > room_width && FigureOf(font) > kLeastMm / kDotMm + 1) font.setPixelSize(font.pixelSize() - 1);
  return font;
}

double StopFigure::FigureHeightMm() const { return FigureOf(FontFor(width(), height())) * kDotMm; }

QSize StopFigure::sizeHint() const {
  const QFont font = Figures(kMostMm / kDotMm);
  return {WidthIn(font), static_cast<int>(FigureOf(font)) + kInside};
}

QSize StopFigure::minimumSizeHint() const {
  const QFont font = Figures(kLeastMm / kDotMm);
  return {WidthIn(font), static_cast<int>(FigureOf(font)) + kInside};
}

void StopFigure::paintEvent(QPaintEvent*) {
  const QFont font = FontFor(width(), height());
  const QString number = setting_.section(' ', 0, -2);
  const int foot = static_cast<int>((height() + FigureOf(font)) / 2);
  QPainter painter(this);
  painter.setPen(ColorOf(Use::Text));
  painter.setFont(font);
  painter.drawText(0, foot, number);
  const int behind = QFontMetrics(font).horizontalAdvance(number) + kInside;
  painter.setFont(UnitOf(font));
  painter.drawText(behind, foot, setting_.section(' ', -1));
}

}  // namespace heatkeep
