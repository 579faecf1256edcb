// The small symbol of a section (round, square, hexagon, flat, tube, angle, box, channel, beam) as drawn left of a piece bar.
#pragma once

#include <QRectF>
#include <optional>
#include <string>
#include <string_view>

#include "reports/palette.h"
#include "schema/terms/section.h"

class QPainter;

namespace heatkeep {

// The shape a section's words name (schema/terms/section.h); nothing when they name none: a dashed square.
std::optional<Shape> ShapeOfWords(std::string_view section);

// Only the size of a section text: "round 80" -> "80", "flat 60 x 20" -> "60 x 20", "beam IPE 100" -> "IPE 100".
std::string SectionSize(std::string_view section);

// Painted inside `box` with lines `line` wide.
void PaintSectionSymbol(QPainter& painter, const QRectF& box, std::optional<Shape> shape, double line, Scheme scheme);

}  // namespace heatkeep
