// A chart laid out: lines and texts in pixels from the top left corner. What curves.h writes and paints.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "reports/curves.h"

class QPainter;

namespace heatkeep {

inline constexpr int kChartWidth = 880, kChartHeight = 440;

struct ChartStroke {
  std::vector<std::pair<double, double>> points;
  Use tone = Use::Hairline;
  double width = 1;
  std::vector<double> dash;  // lengths drawn and left out; empty: solid
};

enum class ChartAnchor { Start, Middle, End };

struct ChartText {
  double x = 0, y = 0;  // of the base line
  std::string text;
  double size = 13;  // pixels
  Use tone = Use::Text;
  bool bold = false;
  ChartAnchor anchor = ChartAnchor::Start;
};

struct ChartDrawing {
  std::vector<ChartStroke> strokes;
  std::vector<ChartText> texts;
};

ChartDrawing DrawChart(const Chart& chart);

// From (x, y), `width` wide, whatever its height.
void PaintDrawing(QPainter& painter, const ChartDrawing& drawing, double x, double y, double width, Scheme scheme = Scheme::Light);

// "12 345.6"; a minus sign where needed.
std::string ChartNumber(double value, int decimals);

}  // namespace heatkeep
