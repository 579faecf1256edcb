// A small line chart: how a few figures went over equal steps. Each line is named at its end, with its last value;
// no legend. Lines differ by dash as well as by tone. The one drawing is written as SVG text or painted as PNG, so
// both look alike. Same chart, same bytes of SVG.
#pragma once

#include <string>
#include <vector>

#include "reports/palette.h"

class QPainter;

namespace heatkeep {

struct Curve {
  std::string name;
  std::vector<double> values;  // one a step; at least one, all finite
  bool main = false;           // the one that is looked for: thicker, in the drop's tone, undashed
  int style = -1;              // dash and tone, 0..5, so that it looks alike in several charts; -1: by its place
};

struct Chart {
  std::string title, subtitle;
  std::string unit;  // of the values, said at the upright axis: "drops", "t"
  std::string step;  // what a step is, said at the level axis: "working day"
  int decimals = 0;  // of the values named at the ends
  std::vector<Curve> curves;
  bool from_zero = true;                 // the upright axis begins at 0
  std::vector<std::string> labels = {};  // of the steps; none: they are counted
};

// Throw std::invalid_argument when the chart has no curve, or a curve no value or one that is not finite.
std::string ChartSvg(const Chart& chart, Scheme scheme = Scheme::Light);
// Throws std::runtime_error when it cannot be written; whole or not at all.
void WriteChartPng(const std::string& path, const Chart& chart, Scheme scheme = Scheme::Light);

// Into a picture of somebody else's: from (x, y), `width` wide and kChartShape times that high, without a ground.
inline constexpr double kChartShape = 0.5;
void PaintChart(QPainter& painter, const Chart& chart, double x, double y, double width, Scheme scheme = Scheme::Light);

}  // namespace heatkeep
