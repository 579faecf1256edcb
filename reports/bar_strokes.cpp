#include "reports/bar_strokes.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "reports/tone_color.h"

namespace heatkeep {
namespace {

QRectF RectOf(const BarRect& r) { return {r.x, r.y, r.width, r.height}; }

QPen PenOf(Use use, const BarView& view, double times = 1) {
  return QPen(ColorOf(use, view.scheme), view.line * times, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
}

// The bar's outline: square or slanted ends, a notch in each marked end.
QPainterPath OutlinePath(const BarLayout& layout) {
  const QRectF r = RectOf(layout.outline);
  const PieceBar& bar = layout.bar;
  const double slant = std::min(r.height() * 0.22, r.width() * 0.2);
  const double notch = std::min(r.height() * 0.26, r.width() * 0.2);
  const double half = r.height() * 0.17;
  const double mid = r.center().y();
  const double first_lean = bar.sawn_first ? slant : 0;
  const double last_lean = bar.sawn_last ? slant : 0;
  const auto first_x = [&](double y) { return r.left() + first_lean * (r.bottom() - y) / r.height(); };
  const auto last_x = [&](double y) { return r.right() - last_lean * (y - r.top()) / r.height(); };
  QPainterPath path;
  path.moveTo(first_x(r.top()), r.top());
  path.lineTo(last_x(r.top()), r.top());
  if (bar.marked_last) {
    path.lineTo(last_x(mid - half), mid - half);
    path.lineTo(last_x(mid) - notch, mid);
    path.lineTo(last_x(mid + half), mid + half);
  }
  path.lineTo(last_x(r.bottom()), r.bottom());
  path.lineTo(first_x(r.bottom()), r.bottom());
  if (bar.marked_first) {
    path.lineTo(first_x(mid + half), mid + half);
    path.lineTo(first_x(mid) + notch, mid);
    path.lineTo(first_x(mid - half), mid - half);
  }
  path.closeSubpath();
  return path;
}

void Hatch(QPainter& painter, const QRectF& r, Use use, bool crossed, const BarView& view) {
  painter.save();
  painter.setClipRect(r, Qt::IntersectClip);
  painter.setPen(PenOf(use, view, 0.9));
  const double step = std::max(view.bar_height * 0.22, view.line * 4);
  const int lines = static_cast<int>(std::ceil((r.width() + r.height()) / step));
  for (int i = 0; i < lines; ++i) {
    const double x = r.left() - r.height() + step * i;
    painter.drawLine(QPointF(x, r.bottom()), QPointF(x + r.height(), r.top()));
    if (crossed) painter.drawLine(QPointF(x, r.top()), QPointF(x + r.height(), r.bottom()));
  }
  painter.restore();
}

// A solid stretch, to scale but at least one line wide.
void Solid(QPainter& painter, QRectF r, const BarView& view) {
  if (r.width() < view.line) r = QRectF(r.center().x() - view.line / 2, r.top(), view.line, r.height());
  painter.fillRect(r, ColorOf(Use::Grip, view.scheme));
}

void FillLeft(QPainter& painter, const BarLayout& layout, const QRectF& r, const BarView& view) {
  if (layout.bar.fate == LeftFate::None) return;
  painter.fillRect(r, ColorOf(Use::Ground, view.scheme));
  Hatch(painter, r, layout.bar.fate == LeftFate::Drop ? Use::Drop : Use::Scrap, layout.bar.fate == LeftFate::Scrap, view);
}

// Two lines, or one, in the middle of the part; what is left keeps clear of the grip and clears its hatch.
void PartText(QPainter& painter, const PlacedPart& placed, const BarLayout& layout, const BarView& view) {
  if (placed.upper.empty()) return;
  const BarRect r = placed.text;
  const bool left = placed.part.kind == PartKind::Left;
  const Use use = left ? Use::LeftText : Use::CutText;
  const double lines = placed.lower.empty() ? 1 : 2;
  const double top = r.y + (r.height - lines * view.text) / 2;
  if (left && layout.bar.fate != LeftFate::None) {
    const QFontMetricsF metrics(painter.font());
    const double width = std::max(metrics.horizontalAdvance(QString::fromStdString(placed.upper)),
                                  metrics.horizontalAdvance(QString::fromStdString(placed.lower))) +
        view.text * 0.4;
    painter.fillRect(QRectF(r.x + (r.width - width) / 2, top, width, lines * view.text), ColorOf(Use::Ground, view.scheme));
  }
  PaintBarText(painter, {r.x, top, r.width, view.text}, placed.upper, use, view.scheme);
  if (lines > 1) PaintBarText(painter, {r.x, top + view.text, r.width, view.text}, placed.lower, use, view.scheme);
}

}  // namespace

void PaintBarText(QPainter& painter, const BarRect& box, const std::string& text, Use use, Scheme scheme) {
  painter.setPen(ColorOf(use, scheme));
  painter.drawText(RectOf(box), Qt::AlignCenter | Qt::TextSingleLine | Qt::TextDontClip, QString::fromStdString(text));
}

void PaintRuler(QPainter& painter, const BarLayout& layout, const BarView& view) {
  const BarBox& box = layout.box;
  const double base = box.y - view.text * 0.2;
  painter.setPen(PenOf(Use::Quiet, view));
  const double end = box.x + box.width;
  painter.drawLine(QPointF(box.x, base), QPointF(end, base));
  const QFontMetricsF metrics(painter.font());
  for (const RulerTick& tick : RulerTicks(box.full, box.width, view.text * 5.5, view.units)) {
    const double x = box.x + box.width * static_cast<double>(tick.at.nm) / static_cast<double>(box.full.nm);
    const bool major = !tick.label.empty();
    painter.setPen(PenOf(Use::Quiet, view));
    painter.drawLine(QPointF(x, base - view.text * (major ? 0.3 : 0.14)), QPointF(x, base));
    if (!major) continue;
    const double width = metrics.horizontalAdvance(QString::fromStdString(tick.label));
    const double left = std::clamp(x - width / 2, box.x, std::max(box.x, end - width));
    PaintBarText(painter, {left, view.y, width, view.text * 1.05}, tick.label, Use::Quiet, view.scheme);
  }
}

void PaintBar(QPainter& painter, const BarLayout& layout, const BarView& view, int lit_run) {
  const QPainterPath path = OutlinePath(layout);
  painter.save();
  painter.setClipPath(path, Qt::IntersectClip);
  painter.fillRect(RectOf(layout.outline), ColorOf(Use::Metal, view.scheme));
  for (const PlacedPart& placed : layout.parts) {
    const QRectF r = RectOf(placed.rect);
    if (placed.part.kind == PartKind::Cut) {
      const BarRun& run = layout.bar.runs[static_cast<std::size_t>(placed.part.run)];
      painter.fillRect(r, ColorOf(CutUse(run.order), view.scheme));
      painter.setPen(PenOf(Use::Ground, view, 0.8));
      painter.drawLine(r.topRight(), r.bottomRight());
    } else if (placed.part.kind == PartKind::Left) {
      FillLeft(painter, layout, r, view);
    }
  }
  for (const PlacedPart& placed : layout.parts)
    if (placed.part.kind == PartKind::Kerf || placed.part.kind == PartKind::Trim) Solid(painter, RectOf(placed.rect), view);
  if (layout.grip.width > 0) {  // the two jaws of the vice, and where they begin
    const QRectF g = RectOf(layout.grip);
    Solid(painter, {g.left(), g.top(), g.width(), g.height() * 0.24}, view);
    Solid(painter, {g.left(), g.bottom() - g.height() * 0.24, g.width(), g.height() * 0.24}, view);
    Solid(painter, {g.left() - view.line / 2, g.top(), view.line, g.height()}, view);
  }
  painter.restore();
  painter.setPen(PenOf(Use::Outline, view, 1.4));
  painter.setBrush(Qt::NoBrush);
  painter.drawPath(path);
  for (const PlacedPart& placed : layout.parts) {
    PartText(painter, placed, layout, view);
    if (placed.part.kind != PartKind::Cut || placed.part.run != lit_run) continue;
    painter.setPen(PenOf(Use::Text, view, 3));
    painter.drawRect(RectOf(placed.rect).adjusted(view.line, view.line, -view.line, -view.line));
  }
}

void PaintLeaders(QPainter& painter, const BarLayout& layout, const BarView& view) {
  const double floor = layout.box.y + layout.box.height;
  const double bracket = floor + view.text * 0.22;
  const double zone = floor + view.text * 0.78;
  for (const Leader& leader : layout.leaders) {
    painter.setPen(PenOf(Use::Text, view, 0.8));
    const double middle = (leader.from + leader.to) / 2;
    if (leader.to - leader.from > view.line * 3) {
      painter.drawLine(QPointF(leader.from, bracket), QPointF(leader.to, bracket));
      painter.drawLine(QPointF(leader.from, floor + view.line), QPointF(leader.from, bracket));
      painter.drawLine(QPointF(leader.to, floor + view.line), QPointF(leader.to, bracket));
    } else {
      painter.drawLine(QPointF(middle, floor), QPointF(middle, bracket));
    }
    const bool one_row = layout.rows == 1;
    const double x = one_row ? leader.label.x + leader.label.width / 2 : leader.label.x - view.text * 0.12;
    painter.drawLine(QPointF(middle, bracket), QPointF(x, zone));
    painter.drawLine(QPointF(x, zone), QPointF(x, leader.label.y + (one_row ? 0 : view.text * 0.8)));
    PaintBarText(painter, leader.label, leader.text, Use::Text, view.scheme);
  }
}

}  // namespace heatkeep
