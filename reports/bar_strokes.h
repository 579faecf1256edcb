// The strokes of a piece bar, for piece_bar.cpp only: everything here paints what the layout says.
#pragma once

#include <string>

#include "reports/piece_bar.h"

namespace heatkeep {

void PaintBarText(QPainter& painter, const BarRect& box, const std::string& text, Use use, Scheme scheme);
void PaintRuler(QPainter& painter, const BarLayout& layout, const BarView& view);
void PaintBar(QPainter& painter, const BarLayout& layout, const BarView& view, int lit_run);
void PaintLeaders(QPainter& painter, const BarLayout& layout, const BarView& view);

}  // namespace heatkeep
