#include "client/stations/length_bars_view.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <numeric>

#include "client/stations/desk_look.h"

namespace heatkeep {
namespace {

int Most(const std::vector<int>& counts) { return counts.empty() ? 0 : *std::max_element(counts.begin(), counts.end()); }

}  // namespace

void LengthBarsView::Show(const std::vector<int>& drops, const std::vector<int>& wanted, Length step, std::optional<Length> keep,
                          ReadingUnits units) {
  drops_ = drops;
  wanted_ = wanted;
  step_ = step;
  keep_ = keep;
  units_ = units;
  setAccessibleName(tr("%1 drops by length; asked for: %2 pieces")
                        .arg(std::accumulate(drops.begin(), drops.end(), 0))
                        .arg(std::accumulate(wanted.begin(), wanted.end(), 0)));
  update();
}

void LengthBarsView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(FontOf(Size::Table));
  const QFontMetrics letters(painter.font());
  const int line = letters.height();
  if (Most(drops_) == 0) {
    painter.setPen(ColorOf(Use::Quiet));
    painter.drawText(rect(), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                     tr("No drops of it: what is left of a cut and long enough shows up here."));
    return;
  }
  const double above = keep_ ? 3.0 : 2.0;  // lines of words and of the bars' own figures
  const QRectF plot(0, above * line, width() - 1, height() - (above + 1.5) * line);
  const double wide = plot.width() / static_cast<double>(drops_.size());
  for (std::size_t i = 0; i < drops_.size(); ++i) {
    const double high = plot.height() * drops_[i] / Most(drops_);
    const QRectF bar(plot.left() + wide * static_cast<double>(i) + 1, plot.bottom() - high, wide - 2, high);
    painter.fillRect(bar, ColorOf(Use::Metal));
    painter.setPen(ColorOf(Use::Text));
    if (drops_[i] > 0 && letters.horizontalAdvance(QString::number(drops_[i])) < wide)
      painter.drawText(QRectF(bar.left(), bar.top() - line, bar.width(), line), Qt::AlignCenter, QString::number(drops_[i]));
  }
  painter.setPen(QPen(ColorOf(Use::Hairline), 1));
  painter.drawLine(plot.bottomLeft(), plot.bottomRight());
  painter.setPen(ColorOf(Use::Quiet));
  const std::size_t every = std::max<std::size_t>(1, static_cast<std::size_t>(letters.horizontalAdvance("00000 ") / wide) + 1);
  for (std::size_t i = 0; i <= drops_.size(); i += every) {
    const QString words = units_.Number(step_ * static_cast<std::int64_t>(i)) + (i == 0 ? ' ' + units_.LengthUnitWord() : QString());
    const double x = plot.left() + wide * static_cast<double>(i);
    const double half = letters.horizontalAdvance(words) / 2.0;
    if (i == 0 || x + half <= plot.right())
      painter.drawText(QRectF(i == 0 ? x : x - 40, plot.bottom() + 2, 80, line), i == 0 ? Qt::AlignLeft : Qt::AlignHCenter, words);
  }
  if (const int most = Most(wanted_); most > 0) {
    QPainterPath curve;
    for (std::size_t i = 0; i < wanted_.size(); ++i) {
      const QPointF at(plot.left() + wide * (static_cast<double>(i) + 0.5), plot.bottom() - plot.height() * wanted_[i] / most);
      i == 0 ? curve.moveTo(at) : curve.lineTo(at);
    }
    painter.setPen(QPen(ColorOf(Use::Done), 2, Qt::DashLine));
    painter.drawPath(curve);
    painter.drawText(QRectF(0, 0, plot.width(), line), Qt::AlignRight, tr("- - asked for in the past, at most %1 of a class").arg(most));
  }
  painter.setPen(ColorOf(Use::Quiet));
  painter.drawText(QRectF(0, 0, plot.width(), line), Qt::AlignLeft, tr("drops by length"));
  if (keep_ && step_.nm > 0) {
    const double x = plot.left() + wide * static_cast<double>(keep_->nm) / static_cast<double>(step_.nm);
    painter.setPen(QPen(ColorOf(Use::Warning), 2));
    painter.drawLine(QPointF(x, line * 1.2), QPointF(x, plot.bottom()));
    painter.drawText(QRectF(x + 4, line, plot.width(), line), Qt::AlignLeft | Qt::AlignVCenter,
                     tr("kept from %1").arg(units_.Words(*keep_)));
  }
}

}  // namespace heatkeep
