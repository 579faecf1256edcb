#include "client/stations/sign.h"

#include <QPainter>
#include <QPolygonF>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "client/stations/desk_look.h"

namespace heatkeep {

Use UseOf(Sign sign) {
  switch (sign) {
    case Sign::Done: return Use::Done;
    case Sign::Warning: return Use::Warning;
    case Sign::Refusal: return Use::Refusal;
    default: return Use::Quiet;
  }
}

void PaintSign(QPainter& painter, const QRectF& box, Sign sign) {
  if (sign == Sign::None) return;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const QColor color = ColorOf(UseOf(sign)), ground = ColorOf(Use::Ground);
  const QPointF middle = box.center();
  const double radius = std::min(box.width(), box.height()) / 2;
  const double line = std::max(1.5, radius / 5);
  painter.setPen(QPen(color, line, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.setBrush(Qt::NoBrush);
  switch (sign) {
    case Sign::Done:
      painter.drawPolyline(
          QPolygonF{middle + QPointF(-0.7, 0.05) * radius, middle + QPointF(-0.2, 0.6) * radius, middle + QPointF(0.75, -0.6) * radius});
      break;
    case Sign::Warning:
      painter.drawPolygon(
          QPolygonF{middle + QPointF(0, -0.8) * radius, middle + QPointF(0.85, 0.7) * radius, middle + QPointF(-0.85, 0.7) * radius});
      painter.drawLine(middle + QPointF(0, -0.25) * radius, middle + QPointF(0, 0.2) * radius);
      painter.drawPoint(middle + QPointF(0, 0.45) * radius);
      break;
    case Sign::Refusal: {
      QPolygonF octagon;
      for (int i = 0; i < 8; ++i) {
        const double angle = (i + 0.5) * std::numbers::pi / 4;
        octagon << middle + QPointF(std::cos(angle), std::sin(angle)) * radius * 0.95;
      }
      painter.setBrush(color);
      painter.setPen(Qt::NoPen);
      painter.drawPolygon(octagon);
      painter.setPen(QPen(ground, line, Qt::SolidLine, Qt::FlatCap));
      painter.drawLine(middle + QPointF(-0.5, 0) * radius, middle + QPointF(0.5, 0) * radius);
      break;
    }
    default:
      painter.setBrush(color);
      painter.setPen(Qt::NoPen);
      painter.drawEllipse(middle, radius * 0.35, radius * 0.35);
  }
  painter.restore();
}

}  // namespace heatkeep
