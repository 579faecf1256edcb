#include "reports/section_symbol.h"

#include <QPainter>
#include <QPolygonF>
#include <cmath>
#include <numbers>

#include "reports/tone_color.h"

namespace heatkeep {

namespace {

// Corners given in parts of the box.
QPolygonF Outline(const QRectF& box, std::initializer_list<QPointF> corners) {
  QPolygonF outline;
  for (const QPointF& c : corners) outline << box.topLeft() + QPointF(c.x() * box.width(), c.y() * box.height());
  return outline;
}

}  // namespace

std::optional<Shape> ShapeOfWords(std::string_view section) {
  try {
    return ReadSection(section).shape;
  } catch (const BadText&) { return std::nullopt; }
}

std::string SectionSize(std::string_view section) {
  for (const Shape shape : {Shape::Channel, Shape::Beam}) {  // their names begin with letters
    const std::string word = std::string(ShapeText(shape)) + " ";
    if (section.starts_with(word)) return std::string(section.substr(word.size()));
  }
  const std::size_t first = section.find_first_of("0123456789");
  return first == std::string_view::npos ? std::string(section) : std::string(section.substr(first));
}

void PaintSectionSymbol(QPainter& painter, const QRectF& box, std::optional<Shape> shape, double line, Scheme scheme) {
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
    case Shape::Round: painter.drawEllipse(square); break;
    case Shape::Square: painter.drawRect(square.adjusted(side * .07, side * .07, -side * .07, -side * .07)); break;
    case Shape::Flat: painter.drawRect(square.adjusted(0, side * 0.28, 0, -side * 0.28)); break;
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
    case Shape::Box: {
      const QRectF outside = square.adjusted(side * .07, side * .07, -side * .07, -side * .07);
      painter.drawRoundedRect(outside, side * .14, side * .14);
      painter.setBrush(ColorOf(Use::Ground, scheme));
      painter.drawRect(outside.adjusted(side * .16, side * .16, -side * .16, -side * .16));
      break;
    }
    case Shape::Angle: painter.drawPolygon(Outline(square, {{.1, .05}, {.32, .05}, {.32, .7}, {.95, .7}, {.95, .92}, {.1, .92}})); break;
    case Shape::Channel:
      painter.drawPolygon(Outline(square, {{.2, .05}, {.85, .05}, {.85, .25}, {.42, .25}, {.42, .75}, {.85, .75}, {.85, .95}, {.2, .95}}));
      break;
    case Shape::Beam:
      painter.drawPolygon(Outline(square,
                                  {{.08, .05},
                                   {.92, .05},
                                   {.92, .25},
                                   {.6, .25},
                                   {.6, .75},
                                   {.92, .75},
                                   {.92, .95},
                                   {.08, .95},
                                   {.08, .75},
                                   {.4, .75},
                                   {.4, .25},
                                   {.08, .25}}));
      break;
  }
  painter.restore();
}

}  // namespace heatkeep
