#include <QBuffer>
#include <QFontMetricsF>
#include <QPainter>
#include <QPdfWriter>
#include <algorithm>

#include "reports/paint_session.h"
#include "reports/paper.h"

namespace heatkeep {
namespace {

constexpr double kMeasure = 100;  // font pixels a mm when measuring: the print's own resolution
constexpr double kLeast = 0.75;
constexpr double kLine = 1.22;  // line height in em

// Texts are measured as the PDF sets them; a screen's metrics differ by up to 0.5 %.
QPdfWriter* Measure() {
  PaintSession();
  static QBuffer nothing;
  static QPdfWriter writer(&nothing);
  writer.setResolution(2540);
  return &writer;
}

QFont FontOf(const TextStyle& style, double dots, double scale = 1) {
  return PaintFont(style.mono ? Face::Mono : Face::Sans, style.height * dots * scale, style.bold);
}

// How many letters of the word fit, at least one; halving, so that a word of any length costs little.
qsizetype LettersThatFit(const QString& word, const QFontMetricsF& metrics, double room) {
  qsizetype fits = 1, over = std::min<qsizetype>(word.size(), 1000) + 1;
  while (over - fits > 1) {
    const qsizetype middle = (fits + over) / 2;
    (metrics.horizontalAdvance(word.left(middle)) <= room ? fits : over) = middle;
  }
  return fits;
}

}  // namespace

// Greedy words; a word wider than the line is broken between letters.
std::vector<std::string> ParagraphLines(const std::string& text, double width, const TextStyle& style) {
  const QFontMetricsF metrics(FontOf(style, kMeasure), Measure());
  const double room = width * kMeasure;
  std::vector<std::string> lines;
  QString line;
  const QStringList words = QString::fromStdString(text).split(QLatin1Char(' '), Qt::SkipEmptyParts);
  for (QString word : words) {
    const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
    if (metrics.horizontalAdvance(longer) <= room) {
      line = longer;
      continue;
    }
    if (!line.isEmpty()) lines.push_back(line.toStdString());
    for (qsizetype fit; (fit = LettersThatFit(word, metrics, room)) < word.size();) {
      lines.push_back(word.left(fit).toStdString());
      word = word.mid(fit);
    }
    line = word;
  }
  if (!line.isEmpty()) lines.push_back(line.toStdString());
  return lines;
}

double LineHeight(const TextStyle& style) { return style.height * kLine; }

double TextWidthMm(const std::string& text, const TextStyle& style) {
  return QFontMetricsF(FontOf(style, kMeasure), Measure()).horizontalAdvance(QString::fromStdString(text)) / kMeasure;
}

double ParagraphHeight(const std::string& text, double width, const TextStyle& style) {
  return static_cast<double>(ParagraphLines(text, width, style).size()) * LineHeight(style);
}

void Pen::text(double x, double y, double width, const std::string& text, const TextStyle& style) {
  if (text.empty()) return;
  QString shown = QString::fromStdString(text);
  const double need = TextWidthMm(text, style);
  const double scale = need > width ? std::max(kLeast, width / need * 0.995) : 1;
  const QFont font = FontOf(style, dots_, scale);
  const QFontMetricsF metrics(font, painter_.device());
  if (metrics.horizontalAdvance(shown) > width * dots_ + 1) shown = metrics.elidedText(shown, Qt::ElideRight, width * dots_);
  painter_.setFont(font);
  painter_.setPen(style.white ? Qt::white : Qt::black);
  const double advance = metrics.horizontalAdvance(shown) / dots_;
  const double left = style.align == Align::Left ? x : style.align == Align::Right ? x + width - advance : x + (width - advance) / 2;
  // The baseline stays where the unshrunk text has it, so that a row of texts stands on one line.
  const double base = (y + style.height * 0.98) * dots_;
  painter_.drawText(QPointF(left * dots_, base), shown);
  if (!style.slashed) return;
  const double em = style.height * dots_ * scale;
  painter_.setPen(QPen(style.white ? Qt::white : Qt::black, em * (style.bold ? 0.062 : 0.05), Qt::SolidLine, Qt::FlatCap));
  for (qsizetype i = 0; i < shown.size(); ++i) {
    if (shown[i] != QLatin1Char('0')) continue;
    const double middle = left * dots_ + (metrics.horizontalAdvance(shown.left(i)) + metrics.horizontalAdvance(shown.left(i + 1))) / 2;
    painter_.drawLine(QPointF(middle - em * 0.15, base - em * 0.17), QPointF(middle + em * 0.15, base - em * 0.56));
  }
}

double Pen::paragraph(double x, double y, double width, const std::string& text, const TextStyle& style) {
  double at = y;
  for (const std::string& line : ParagraphLines(text, width, style)) {
    this->text(x, at, width, line, style);
    at += LineHeight(style);
  }
  return at - y;
}

void Pen::line(double x1, double y1, double x2, double y2, double thick) {
  painter_.setPen(QPen(Qt::black, thick * dots_, Qt::SolidLine, Qt::FlatCap));
  painter_.drawLine(QPointF(x1 * dots_, y1 * dots_), QPointF(x2 * dots_, y2 * dots_));
}

void Pen::box(double x, double y, double width, double height, double thick) {
  painter_.setPen(QPen(Qt::black, thick * dots_, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
  painter_.setBrush(Qt::NoBrush);
  painter_.drawRect(QRectF(x * dots_, y * dots_, width * dots_, height * dots_));
}

void Pen::fill(double x, double y, double width, double height, int grey) {
  painter_.fillRect(QRectF(x * dots_, y * dots_, width * dots_, height * dots_), QColor(grey, grey, grey));
}

}  // namespace heatkeep
