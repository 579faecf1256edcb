// Lines of a label made to fit a width and a height.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reports/label_face.h"
#include "reports/paper.h"

namespace heatkeep {

struct FittedLine {
  std::vector<std::string> rows;
  std::string caption;
  TextStyle style;
  double indent = 0;  // of the rows, behind the caption or sign
  double height = 0;
  bool band = false;
};

// The caption's style, and the room it takes before a line.
inline constexpr double kBandPad = 0.35;  // black above and below the words of a band, and white above it, mm
inline constexpr TextStyle kCaptionStyle{2.1, true};

// The lines one below the other in `width` x `height`: the largest common step of {1, 0.95, ...} at which they all fit, each still
// shrunk or broken further where it must be, none below its least size. Nothing where there is no such step.
enum class Wording { Full, Shorter };
std::optional<std::vector<FittedLine>> FitLines(const std::vector<LabelLine>& lines, double width, double height, Wording wording);

// Closer than running text: 1.08 em.
double RowHeight(const TextStyle& style);
double HeightOf(const std::vector<FittedLine>& lines);

}  // namespace heatkeep
