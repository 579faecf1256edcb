#include "reports/bar_chart.h"

#include <algorithm>

namespace heatkeep {
namespace {

constexpr double kHead = 56, kFoot = 8, kLeft = 170, kRight = 250;  // around the bars
constexpr double kBar = 16, kStep = 20, kBetween = 8;
constexpr std::size_t kName = 22;  // letters

std::string Short(const std::string& name) { return name.size() <= kName ? name : name.substr(0, kName - 1) + "\u2026"; }

}  // namespace

double BarChartHeight(const BarChart& chart) {
  double height = kHead + kFoot;
  for (const BarGroup& group : chart.groups) height += kStep * static_cast<double>(group.values.size()) + kBetween;
  return height;
}

ChartDrawing DrawBars(const BarChart& chart) {
  ChartDrawing drawing;
  drawing.texts.push_back({24, 34, chart.title, 18, Use::Text, true, ChartAnchor::Start});
  double most = 0;
  for (const BarGroup& group : chart.groups)
    for (const double value : group.values) most = std::max(most, value);
  double y = kHead;
  for (const BarGroup& group : chart.groups) {
    drawing.texts.push_back({kLeft - 12, y + 13, Short(group.name), 13, Use::Text, false, ChartAnchor::End});
    for (std::size_t i = 0; i < group.values.size(); ++i) {
      const double wide = most > 0 ? std::max(0.0, group.values[i]) / most * (kChartWidth - kLeft - kRight) : 0;
      const double middle = y + kBar / 2;
      if (wide > 0)
        drawing.strokes.push_back({{{kLeft, middle}, {kLeft + wide, middle}}, i == 0 ? Use::Drop : CutUse(static_cast<int>(i)), kBar, {}});
      drawing.texts.push_back({kLeft + wide + 8, middle + 5, group.words.at(i), 13, Use::Text, false, ChartAnchor::Start});
      y += kStep;
    }
    y += kBetween;
  }
  drawing.strokes.push_back({{{kLeft, kHead - 4}, {kLeft, y - 4}}, Use::Quiet, 1, {}});
  return drawing;
}

}  // namespace heatkeep
