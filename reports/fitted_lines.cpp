#include "reports/fitted_lines.h"

#include <algorithm>

namespace heatkeep {
namespace {

constexpr double kStep = 0.95, kRow = 1.08, kCaptionGap = 1;

std::optional<FittedLine> Fit(const LabelLine& line, const std::string& text, double width, double step) {
  FittedLine fit;
  fit.caption = line.caption;
  fit.band = line.band;
  fit.style.bold = line.bold;
  fit.style.mono = fit.style.slashed = line.mono;
  fit.style.white = line.band;
  const auto at = [&](double em) {
    fit.style.height = em;
    fit.indent = line.caption.empty() ? (line.band ? 1.4 * em : 0) : TextWidthMm(line.caption, kCaptionStyle) + kCaptionGap;
    return width - fit.indent - (line.band ? kBandPad : 0);
  };
  const double first = std::max(line.least, line.height * step);
  // on one line as it is, blanks and all; then on several, larger ones first
  for (int rows = 1; rows <= line.lines; ++rows) {
    double em = first;
    while (true) {
      const double room = at(em);
      if (room <= 0) return std::nullopt;
      if (rows == 1 && TextWidthMm(text, fit.style) <= room) fit.rows = {text};
      else if (rows > 1) fit.rows = ParagraphLines(text, room, fit.style);
      else fit.rows.clear();
      if (!fit.rows.empty() && static_cast<int>(fit.rows.size()) <= rows) {
        fit.height = static_cast<double>(fit.rows.size()) * RowHeight(fit.style) + (line.band ? 3 * kBandPad : 0);
        return fit;
      }
      if (em <= line.least) break;
      em = std::max(line.least, em * kStep);
    }
  }
  return std::nullopt;
}

std::optional<std::vector<FittedLine>> At(const std::vector<LabelLine>& lines, double width, double step, bool shorter) {
  std::vector<FittedLine> all;
  for (const LabelLine& line : lines) {
    const std::string& text = shorter && !line.shorter.empty() ? line.shorter : line.text;
    std::optional<FittedLine> fit = Fit(line, text, width, step);
    if (!fit) return std::nullopt;
    all.push_back(std::move(*fit));
  }
  return all;
}

}  // namespace

double RowHeight(const TextStyle& style) { return style.height * kRow; }

double HeightOf(const std::vector<FittedLine>& lines) {
  double sum = 0;
  for (const FittedLine& line : lines) sum += line.height;
  return sum;
}

std::optional<std::vector<FittedLine>> FitLines(const std::vector<LabelLine>& lines, double width, double height, Wording wording) {
  double step = 1;
  while (step > 0.2) {
    auto all = At(lines, width, step, wording == Wording::Shorter);
    if (all && HeightOf(*all) <= height) return all;
    step *= kStep;
  }
  return std::nullopt;
}

}  // namespace heatkeep
