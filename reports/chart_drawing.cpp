#include "reports/chart_drawing.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <stdexcept>

namespace heatkeep {
namespace {

constexpr double kLeft = 64, kRight = 196, kTop = 88, kBottom = 56;  // around the plot
constexpr double kLabelGap = 17;

// 1, 2 or 5 times a power of ten, so that about five steps cover the span.
double NiceStep(double span) {
  const double rough = span / 5;
  const double ten = std::pow(10.0, std::floor(std::log10(rough)));
  for (const double times : {1.0, 2.0, 5.0})
    if (rough <= times * ten * 1.0000001) return times * ten;
  return 10 * ten;
}

struct Scale {
  double low = 0, high = 1, step = 1;
};

Scale ScaleOf(const Chart& chart) {
  if (chart.curves.empty()) throw std::invalid_argument("a chart needs at least one curve");
  double least = chart.from_zero ? 0 : HUGE_VAL, most = chart.from_zero ? 0 : -HUGE_VAL;
  for (const Curve& curve : chart.curves) {
    if (curve.values.empty()) throw std::invalid_argument("curve \"" + curve.name + "\" has no value; expected at least one");
    for (const double v : curve.values) {
      if (!std::isfinite(v)) throw std::invalid_argument("curve \"" + curve.name + "\" has a value that is not finite");
      least = std::min(least, v);
      most = std::max(most, v);
    }
  }
  Scale scale;
  scale.step = NiceStep(most > least ? most - least : std::max(1.0, std::abs(most)));
  scale.low = std::floor(least / scale.step + 1e-9) * scale.step;
  scale.high = std::max(std::ceil(most / scale.step - 1e-9) * scale.step, scale.low + scale.step);
  return scale;
}

const std::vector<double>& DashOf(std::size_t nth) {
  static const std::array<std::vector<double>, 6> dashes{std::vector<double>{7, 4}, {2, 3}, {11, 3, 2, 3}, {14, 4}, {4, 2}, {1, 2}};
  return dashes[nth % dashes.size()];
}

class Layout {
 public:
  explicit Layout(const Chart& chart) : chart_(chart), scale_(ScaleOf(chart)) {
    for (const Curve& c : chart.curves) steps_ = std::max(steps_, c.values.size());
  }

  ChartDrawing Draw() {
    Head();
    UprightAxis();
    LevelAxis();
    Curves();
    return std::move(drawing_);
  }

 private:
  static constexpr double Bottom() { return kChartHeight - kBottom; }
  double X(std::size_t i) const {
    const double width = kChartWidth - kLeft - kRight;
    return kLeft + (steps_ > 1 ? width * static_cast<double>(i) / static_cast<double>(steps_ - 1) : width);
  }
  double Y(double v) const { return Bottom() - (v - scale_.low) / (scale_.high - scale_.low) * (Bottom() - kTop); }

  void Head() {
    drawing_.texts.push_back({24, 34, chart_.title, 18, Use::Text, true, ChartAnchor::Start});
    drawing_.texts.push_back({24, 54, chart_.subtitle, 12, Use::Quiet, false, ChartAnchor::Start});
  }

  void UprightAxis() {
    const int decimals = scale_.step >= 1 ? 0 : static_cast<int>(std::ceil(-std::log10(scale_.step) - 1e-9));
    const auto count = static_cast<int>(std::lround((scale_.high - scale_.low) / scale_.step));
    for (int i = 0; i <= count; ++i) {
      const double v = scale_.low + i * scale_.step;
      drawing_.strokes.push_back(
          {{{kLeft, Y(v)}, {kChartWidth - kRight, Y(v)}}, i == 0 || std::abs(v) < scale_.step / 2 ? Use::Quiet : Use::Hairline, 1, {}});
      drawing_.texts.push_back({kLeft - 8, Y(v) + 4, ChartNumber(v, decimals), 12, Use::Quiet, false, ChartAnchor::End});
    }
    drawing_.texts.push_back({kLeft - 8, kTop - 14, chart_.unit, 12, Use::Quiet, false, ChartAnchor::End});
  }

  void LevelAxis() {
    if (!chart_.labels.empty()) return NamedSteps();
    const auto step = static_cast<std::size_t>(std::max(1.0, NiceStep(static_cast<double>(steps_))));
    for (std::size_t at = step; at <= steps_; at += step) {
      drawing_.strokes.push_back({{{X(at - 1), Bottom()}, {X(at - 1), Bottom() + 5}}, Use::Quiet, 1, {}});
      drawing_.texts.push_back({X(at - 1), Bottom() + 20, std::to_string(at), 12, Use::Quiet, false, ChartAnchor::Middle});
    }
    drawing_.texts.push_back({kChartWidth - kRight, Bottom() + 38, chart_.step, 12, Use::Quiet, false, ChartAnchor::End});
  }

  // At most eight names, the last one among them.
  void NamedSteps() {
    const std::size_t step = (steps_ + 7) / 8;
    for (std::size_t i = 0; i < steps_; ++i) {
      if ((steps_ - 1 - i) % step != 0) continue;
      drawing_.strokes.push_back({{{X(i), Bottom()}, {X(i), Bottom() + 5}}, Use::Quiet, 1, {}});
      drawing_.texts.push_back({X(i), Bottom() + 20, chart_.labels.at(i), 12, Use::Quiet, false, ChartAnchor::Middle});
    }
  }

  void Curves() {
    std::vector<ChartText> ends;
    std::vector<double> wanted;
    std::size_t place = 0;
    for (const Curve& curve : chart_.curves) {
      ChartStroke stroke;
      const std::size_t nth = curve.style >= 0 ? static_cast<std::size_t>(curve.style) : place++;
      stroke.tone = curve.main ? Use::Drop : CutUse(static_cast<int>(nth));
      stroke.width = curve.main ? 3 : 1.6;
      if (!curve.main) stroke.dash = DashOf(nth);
      for (std::size_t i = 0; i < curve.values.size(); ++i) stroke.points.emplace_back(X(i), Y(curve.values[i]));
      const auto [x, y] = stroke.points.back();
      ends.push_back({x + 30, y + 4, curve.name + "  " + ChartNumber(curve.values.back(), chart_.decimals), 13,
                      curve.main ? Use::Drop : Use::Text, curve.main, ChartAnchor::Start});
      wanted.push_back(y);
      drawing_.strokes.push_back(std::move(stroke));
    }
    PlaceEnds(ends, wanted);
  }

  // Names keep their distance, in the order of the lines' ends; a thin leader ties each to its line.
  void PlaceEnds(std::vector<ChartText>& ends, const std::vector<double>& wanted) {
    std::vector<std::size_t> order(ends.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return wanted[a] < wanted[b]; });
    std::vector<double> at;
    for (const std::size_t i : order) at.push_back(at.empty() ? wanted[i] : std::max(wanted[i], at.back() + kLabelGap));
    double floor = std::max(Bottom(), kTop + kLabelGap * static_cast<double>(at.size()));
    for (std::size_t k = at.size(); k-- > 0;) {  // what was pushed below the axis goes up again
      at[k] = std::min(at[k], floor);
      floor = at[k] - kLabelGap;
    }
    for (std::size_t k = 0; k < at.size(); ++k) {
      ChartText& end = ends[order[k]];
      const double x = end.x - 30;
      drawing_.strokes.push_back(
          {{{x + 3, wanted[order[k]]}, {x + 11, wanted[order[k]]}, {x + 19, at[k]}, {x + 27, at[k]}}, Use::Quiet, 0.8, {}});
      end.y = at[k] + 4.5;
      drawing_.texts.push_back(end);
    }
  }

  const Chart& chart_;
  Scale scale_;
  std::size_t steps_ = 0;
  ChartDrawing drawing_;
};

}  // namespace

std::string ChartNumber(double value, int decimals) {
  double scaled = std::abs(value);
  for (int i = 0; i < decimals; ++i) scaled *= 10;
  std::string digits = std::to_string(std::llround(scaled));
  if (digits.size() <= static_cast<std::size_t>(decimals)) digits.insert(0, static_cast<std::size_t>(decimals) + 1 - digits.size(), '0');
  const std::string fraction = digits.substr(digits.size() - static_cast<std::size_t>(decimals));
  digits.resize(digits.size() - static_cast<std::size_t>(decimals));
  for (std::size_t i = digits.size(); i > 3;) digits.insert(i -= 3, " ");
  if (decimals > 0) digits += "." + fraction;
  return value < 0 && digits.find_first_of("123456789") != std::string::npos ? "\u2212" + digits : digits;
}

ChartDrawing DrawChart(const Chart& chart) { return Layout(chart).Draw(); }

}  // namespace heatkeep
