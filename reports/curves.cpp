#include "reports/curves.h"

#include <QImage>
#include <QPainter>
#include <QPainterPath>
#include <array>
#include <cmath>
#include <stdexcept>

#include "reports/chart_drawing.h"
#include "reports/paint_session.h"
#include "reports/tone_color.h"
#include "reports/whole_file.h"

namespace heatkeep {
static_assert(kChartHeight == kChartShape * kChartWidth);
namespace {

constexpr int kDotsAPixel = 2;

std::string Hex(Use use, Scheme scheme) {
  const Tone tone = ToneOf(use, scheme);
  constexpr std::string_view digits = "0123456789ABCDEF";
  std::string text = "#";
  for (const int channel : {tone.red, tone.green, tone.blue}) {
    text += digits[static_cast<std::size_t>(channel / 16)];
    text += digits[static_cast<std::size_t>(channel % 16)];
  }
  return text;
}

// Tenths of a pixel; enough, and the same text everywhere.
std::string Px(double v) {
  const auto tenths = static_cast<long long>(std::llround(v * 10));
  std::string text = std::to_string(tenths / 10);
  if (tenths % 10 != 0) text += "." + std::to_string(std::abs(tenths % 10));
  return tenths < 0 && tenths > -10 ? "-" + text : text;
}

std::string Escaped(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '&') out += "&amp;";
    else if (c == '<') out += "&lt;";
    else if (c == '>') out += "&gt;";
    else if (c == '"') out += "&quot;";
    else out += c;
  }
  return out;
}

std::string StrokeSvg(const ChartStroke& stroke, Scheme scheme) {
  std::string points, dash;
  for (const auto& [x, y] : stroke.points) points += (points.empty() ? "" : " ") + Px(x) + "," + Px(y);
  for (const double d : stroke.dash) dash += (dash.empty() ? "" : " ") + Px(d);
  return "<polyline points=\"" + points + "\" fill=\"none\" stroke=\"" + Hex(stroke.tone, scheme) + "\" stroke-width=\"" +
      Px(stroke.width) + "\"" + (dash.empty() ? "" : " stroke-dasharray=\"" + dash + "\"") + " stroke-linejoin=\"round\"/>\n";
}

std::string TextSvg(const ChartText& text, Scheme scheme) {
  constexpr std::array anchors{"start", "middle", "end"};
  return "<text x=\"" + Px(text.x) + "\" y=\"" + Px(text.y) + "\" font-size=\"" + Px(text.size) + "\" fill=\"" + Hex(text.tone, scheme) +
      "\" text-anchor=\"" + anchors[static_cast<std::size_t>(text.anchor)] + "\"" + (text.bold ? " font-weight=\"bold\"" : "") + ">" +
      Escaped(text.text) + "</text>\n";
}

// Texts are set at their own size, not scaled: a small font's letters stand too far apart. So all is painted at `dots` a pixel.
void Paint(QPainter& painter, const ChartStroke& stroke, double dots, Scheme scheme) {
  QPen pen(ColorOf(stroke.tone, scheme), stroke.width * dots);
  pen.setCapStyle(Qt::FlatCap);
  pen.setJoinStyle(Qt::RoundJoin);
  if (!stroke.dash.empty()) {
    QList<qreal> pattern;
    for (const double d : stroke.dash) pattern.push_back(d / stroke.width);
    pen.setDashPattern(pattern);
  }
  painter.setPen(pen);
  QPainterPath path;
  for (const auto& [x, y] : stroke.points) path.elementCount() == 0 ? path.moveTo(x * dots, y * dots) : path.lineTo(x * dots, y * dots);
  painter.drawPath(path);
}

void Paint(QPainter& painter, const ChartText& text, double dots, Scheme scheme) {
  const QString words = QString::fromStdString(text.text);
  painter.setFont(PaintFont(Face::Sans, text.size * dots, text.bold));
  painter.setPen(ColorOf(text.tone, scheme));
  const double width = QFontMetricsF(painter.font(), painter.device()).horizontalAdvance(words);
  const double back = text.anchor == ChartAnchor::Start ? 0 : text.anchor == ChartAnchor::Middle ? width / 2 : width;
  painter.drawText(QPointF(text.x * dots - back, text.y * dots), words);
}

}  // namespace

std::string ChartSvg(const Chart& chart, Scheme scheme) {
  const ChartDrawing drawing = DrawChart(chart);
  const std::string width = std::to_string(kChartWidth), height = std::to_string(kChartHeight);
  std::string svg = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width +
      "\" height=\"" + height + "\" viewBox=\"0 0 " + width + " " + height + "\" font-family=\"DejaVu Sans, sans-serif\">\n<title>" +
      Escaped(chart.title) + "</title>\n<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"" + Hex(Use::Ground, scheme) +
      "\"/>\n";
  for (const ChartStroke& stroke : drawing.strokes) svg += StrokeSvg(stroke, scheme);
  for (const ChartText& text : drawing.texts) svg += TextSvg(text, scheme);
  return svg + "</svg>\n";
}

void PaintChart(QPainter& painter, const Chart& chart, double x, double y, double width, Scheme scheme) {
  PaintDrawing(painter, DrawChart(chart), x, y, width, scheme);
}

void PaintDrawing(QPainter& painter, const ChartDrawing& drawing, double x, double y, double width, Scheme scheme) {
  painter.save();
  painter.translate(x, y);
  const double dots = width / kChartWidth;
  for (const ChartStroke& stroke : drawing.strokes) Paint(painter, stroke, dots, scheme);
  for (const ChartText& text : drawing.texts) Paint(painter, text, dots, scheme);
  painter.restore();
}

void WriteChartPng(const std::string& path, const Chart& chart, Scheme scheme) {
  PaintSession();
  QImage image(kChartWidth * kDotsAPixel, kChartHeight * kDotsAPixel, QImage::Format_RGB32);
  image.fill(ColorOf(Use::Ground, scheme));
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  PaintChart(painter, chart, 0, 0, image.width(), scheme);
  painter.end();
  WriteWholeFile(path, [&](const std::string& temporary) {
    if (!image.save(QString::fromStdString(temporary), "PNG")) throw std::runtime_error("the picture cannot be written");
  });
}

}  // namespace heatkeep
