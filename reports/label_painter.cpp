#include "reports/label_painter.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

#include "reports/bar_code.h"
#include "reports/fitted_lines.h"
#include "reports/piece_bar.h"
#include "schema/terms/bad_text.h"
#include "schema/terms/scan.h"

namespace heatkeep {
namespace {

// Modules: 0.42 mm is five dots at 300 dpi and four at 203, 0.33 mm four and three, 0.24 mm three and two.
constexpr double kGoodModule = 0.42, kLeastModule = 0.33, kLeastLinear = 0.24, kMostModule = 1, kMostLinear = 0.6;

struct Layout {
  double margin, matrix, strip, gap, linear;  // mm: of the label, the code's square, the strip at the foot, room for the linear code
};
constexpr Layout kLarge{2, 24, 8, 1.5, 52}, kSmall{1.2, 15.5, 5.5, 1, 35};

// The message, without what is not needed where its modules would become small.
BarCode MatrixOf(const LabelFace& face, const LabelLook& look, double room, double dot, double& module) {
  BarCode code;
  for (const double least : {kGoodModule, kLeastModule})
    for (std::size_t count = face.fields.size(); count >= face.needed; --count) {
      const std::string message = WriteEnvelope({face.fields.begin(), face.fields.begin() + static_cast<std::ptrdiff_t>(count)});
      code = look.code == MatrixCode::Qr ? QrOf(message) : DataMatrixOf(message);
      module = ModuleWidth(code, room, dot, least, kMostModule);
      if (module > 0) return code;
    }
  throw std::invalid_argument("its code does not fit; expected a larger label");
}

// Filled, eight sides, with a stroke across.
void PaintStopSign(Pen& pen, double x, double y, double size) {
  const double d = pen.dots(), radius = size / 2;
  QPolygonF corners;
  for (int i = 0; i < 8; ++i) {
    const double angle = (i + 0.5) * std::numbers::pi / 4;
    corners << QPointF((x + radius + radius * std::cos(angle)) * d, (y + radius + radius * std::sin(angle)) * d);
  }
  QPainterPath path;
  path.addPolygon(corners);
  path.closeSubpath();
  pen.painter().fillPath(path, Qt::white);
  pen.fill(x + size * 0.22, y + size * 0.41, size * 0.56, size * 0.18);
}

void PaintLines(Pen& pen, const std::vector<FittedLine>& lines, double x, double y, double width, double spread) {
  for (const FittedLine& line : lines) {
    if (line.band) {
      pen.fill(x, y + kBandPad, width, line.height - kBandPad);
      PaintStopSign(pen, x + 0.4, y + 2 * kBandPad + line.style.height * 0.04, line.style.height);
    }
    double row = y + (line.band ? 2 * kBandPad : 0);
    if (!line.caption.empty())
      pen.text(x, row + line.style.height * 0.98 - kCaptionStyle.height * 0.98, line.indent, line.caption, kCaptionStyle);
    for (const std::string& text : line.rows) {
      pen.text(x + line.indent, row, width - line.indent, text, line.style);
      row += RowHeight(line.style);
    }
    y += line.height + spread;
  }
}

double SpreadOf(const std::vector<FittedLine>& lines, double height) {
  return lines.size() < 2 ? 0 : std::min(0.9, (height - HeightOf(lines)) / static_cast<double>(lines.size() - 1));
}

// The linear code, at the right; left of it the piece to scale.
void PaintStrip(Pen& pen, const LabelFace& face, const BarCode& code, const LabelBox& strip, double module, double dot) {
  const double across = code.Across() * module + dot, height = strip.height - 0.5, d = pen.dots();
  PaintBarCode(pen, code, strip.x + (strip.width - across) / (face.bar ? 1 : 2), strip.y + 0.5, module, dot, height);
  if (!face.bar) return;
  const double y = strip.y + 0.5 + (height - 4) / 2;
  PaintPieceBar(pen.painter(), *face.bar, TagView(strip.x * d, y * d, (strip.width - across) * d, face.bar->length, d));
}

const Layout& LayoutOf(const LabelBox& box) { return SizeFor(box) == LabelSize::Large ? kLarge : kSmall; }

// What goes on a label and how large, before a stroke is painted.
struct Fitted {
  BarCode matrix;
  std::optional<BarCode> linear;
  double module = 0, thin = 0;  // mm: of the two codes
  double above = 0;             // mm for the lines: less than the label's height where the strip is painted
  std::vector<FittedLine> lines, side;
};

Fitted FitOn(const LabelBox& box, const LabelFace& face, const LabelLook& look) {
  const Layout& l = LayoutOf(box);
  const double dot = 25.4 / look.dpi, width = box.width - 2 * l.margin, height = box.height - 2 * l.margin;
  Fitted f;
  f.matrix = MatrixOf(face, look, l.matrix, dot, f.module);
  if (!face.linear.empty()) f.linear = Code128Of(face.linear);
  if (f.linear) f.thin = ModuleWidth(*f.linear, face.bar ? l.linear : width, dot, kLeastLinear, kMostLinear);
  // the linear code gives way to words, and to its own length: the other code says what it says
  std::optional<std::vector<FittedLine>> lines;
  for (const Wording wording : {Wording::Full, Wording::Shorter})
    for (const bool strip : {true, false}) {
      if (lines || (strip && f.thin <= 0)) continue;
      f.above = height - (strip ? l.strip : 0);
      lines = FitLines(face.lines, width - l.matrix - l.gap, f.above, wording);
    }
  if (!lines) throw std::invalid_argument("what it must say has no room in legible type; expected a larger label");
  f.lines = std::move(*lines);
  auto side = FitLines(face.side, l.matrix, f.above - f.matrix.Across() * f.module - dot, Wording::Full);
  if (!side) throw std::invalid_argument("place and date have no room in legible type; expected a larger label");
  f.side = std::move(*side);
  return f;
}

// The same, and what is wrong names the label.
Fitted Fit(const LabelBox& box, const LabelFace& face, const LabelLook& look) {
  try {
    return FitOn(box, face, look);
  } catch (const BadText& bad) { throw std::invalid_argument(face.name + ": " + bad.what()); } catch (const std::invalid_argument& wrong) {
    throw std::invalid_argument(face.name + ": " + wrong.what());
  }
}

}  // namespace

LabelSize SizeFor(const LabelBox& box) {
  if (box.width < 58.9 || box.height < 27.9)
    throw std::invalid_argument("a label of " + std::to_string(std::lround(box.width)) + " x " + std::to_string(std::lround(box.height)) +
                                " mm is too small to be read; expected 59 x 28 mm or more");
  return box.width >= 89.9 && box.height >= 44.9 ? LabelSize::Large : LabelSize::Small;
}

void PaintLabel(Pen& pen, const LabelBox& box, const LabelFace& face, const LabelLook& look) {
  const Layout& l = LayoutOf(box);
  const double dot = 25.4 / look.dpi, width = box.width - 2 * l.margin, height = box.height - 2 * l.margin;
  const double left = box.x + l.margin, top = box.y + l.margin;
  Fitted f = Fit(box, face, look);
  if (f.above < height) PaintStrip(pen, face, *f.linear, {left, top + f.above, width, l.strip}, f.thin, dot);
  PaintLines(pen, f.lines, left, top, width - l.matrix - l.gap, SpreadOf(f.lines, f.above));
  const double across = f.matrix.Across() * f.module, x = left + width - l.matrix + (l.matrix - across) / 2;
  PaintBarCode(pen, f.matrix, x, top, f.module, dot);
  for (FittedLine& line : f.side) line.style.align = Align::Center;
  PaintLines(pen, f.side, left + width - l.matrix, top + across + dot, l.matrix, 0);
}

std::string WrongWithLabel(const LabelBox& box, const LabelFace& face, const LabelLook& look) {
  try {
    Fit(box, face, look);
    return "";
  } catch (const std::invalid_argument& wrong) { return wrong.what(); }
}

}  // namespace heatkeep
