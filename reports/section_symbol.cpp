#include "reports/section_symbol.h"

#include <QPainter>
#include <QPolygonF>
#include <cmath>
#include <numbers>

#include "reports/tone_color.h"

namespace heatkeep {

std::optional<Shape> ShapeOfWords(std::string_view section) {
  try {
    return ReadSection(section).shape;
  } catch (const BadText&) {
    return std::nullopt;
  }
}

std::string SectionSize(std::string_view section) {
  const std::size_t first = section.find_first_of("0123456789");
  return first == std::string_view::npos ? std::string(section) : std::string(section.substr(first));
}

void PaintSectionSymbol(QPainter& painter, const QRectF& box, std::optional<Shape> shape, double line,
                        Scheme scheme) {
  painter.save();
  painter.setPen(QPen(ColorOf(Use::Outline, scheme), line * 1.4));
  painter.setBrush(ColorOf(Use::Metal, scheme));
  const double side = std::min(box.width(), box.height()) - line * 2;
  const QRectF square(box.center().x() - side / 2, box.center().y() - side / 2, side, side);
  if (!shape) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ColorOf(Use::Outline, scheme), line, Qt::DashLine));
    painter.drawRect(square);
    painter.restore();
    return;
  }
  switch (*shape) {
    case Shape::Round:
      painter.drawEllipse(square);
      break;
    case Shape::Square:
      painter.drawRect(square.adjusted(side * .07, side * .07, -side * .07, -side * .07));
      break;
    case Shape::Flat:
      painter.drawRect(square.adjusted(0, side * 0.28, 0, -side * 0.28));
      break;
    case Shape::Tube:
      painter.drawEllipse(square);
      painter.setBrush(ColorOf(Use::Ground, scheme));
      painter.drawEllipse(square.adjusted(side * 0.2, side * 0.2, -side * 0.2, -side * 0.2));
      break;
    case Shape::Hex: {
      QPolygonF corners;
      for (int i = 0; i < 6; ++i) {
        const double angle = std::numbers::pi / 3 * i;
        corners << square.center() + QPointF(std::cos(angle), std::sin(angle)) * (side / 2);
      }
      painter.drawPolygon(corners);
      break;
    }
  }
  painter.restore();
}

}  // namespace heatkeep
