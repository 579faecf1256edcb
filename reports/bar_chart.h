// Level bars from one line, a group of them under each name: what a few sums come to. Each bar says its value in words; where
// there are several in a group also what it is. As wide as a line chart (curves.h), as high as its bars need.
#pragma once

#include <string>
#include <vector>

#include "reports/chart_drawing.h"

namespace heatkeep {

struct BarGroup {
  std::string name;
  std::vector<double> values;      // each >= 0 or it is drawn as 0; one a series
  std::vector<std::string> words;  // at the end of each bar: "412 kg"
};

struct BarChart {
  std::string title;
  std::vector<BarGroup> groups;
};

double BarChartHeight(const BarChart& chart);  // in pixels of kChartWidth
ChartDrawing DrawBars(const BarChart& chart);

}  // namespace heatkeep
