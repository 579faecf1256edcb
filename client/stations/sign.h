// The signs that stand beside words, so that colour never means anything alone: a tick, a triangle, an octagon, a dot.
#pragma once

#include "reports/palette.h"

class QPainter;
class QRectF;

namespace heatkeep {

enum class Sign { None, Done, Warning, Refusal, Waiting };

Use UseOf(Sign sign);
// Painted inside the box, in the current scheme.
void PaintSign(QPainter& painter, const QRectF& box, Sign sign);

}  // namespace heatkeep
