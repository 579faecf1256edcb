#include "client/stations/balance_bar_view.h"

#include <QPainter>
#include <algorithm>

#include "client/models/qt_words.h"
#include "client/stations/desk_look.h"
#include "reports/balance_record.h"
#include "reports/record_words.h"

namespace heatkeep {
namespace {

constexpr int kBar = 28;

int WordHeight() { return QFontMetrics(FontOf(Size::Table)).height() + 2; }

}  // namespace

void BalanceBarView::Show(const std::optional<HeatBalance>& balance, ReadingUnits units) {
  balance_ = balance;
  units_ = units;
  setVisible(balance.has_value());
  if (balance) setAccessibleName(tr("metal balance: %1").arg(QString::fromStdString(BalanceCheckWords(*balance))));
  updateGeometry();
  update();
}

std::vector<BalanceBarView::Part> BalanceBarView::Parts() const {
  std::vector<Part> parts;
  if (!balance_) return parts;
  for (std::size_t i = 0; i < balance_->classes.size(); ++i) {
    const BalanceClass& c = balance_->classes[i];
    if (c.in || c.length.nm == 0) continue;
    const QString letter = QString::fromStdString(ClassLetter(*balance_, i));
    parts.push_back({letter,
                     QString("%1  %2  %3, %4")
                         .arg(letter, c.name == "kerf" ? tr("kerf") : BookWords(c.name), units_.Sum(c.length), units_.Words(c.mass)),
                     c.length});
  }
  return parts;
}

QSize BalanceBarView::sizeHint() const {
  const int rows = (static_cast<int>(Parts().size()) + 2) / 3;
  return {400, balance_ ? kBar + kInside + (rows + 1) * WordHeight() : 0};
}

void BalanceBarView::paintEvent(QPaintEvent*) {
  if (!balance_) return;
  QPainter painter(this);
  const std::vector<Part> parts = Parts();
  const BalanceSums sums = SumsOf(*balance_);
  Length all;
  for (const Part& p : parts) all += std::max(p.length, Length{});
  const double full = static_cast<double>(std::max(sums.in, all).nm);
  double x = 0;
  painter.setFont(FontOf(Size::Table, true));
  for (std::size_t i = 0; i < parts.size() && full > 0; ++i) {
    if (parts[i].length.nm <= 0) continue;
    const double wide = width() * static_cast<double>(parts[i].length.nm) / full;
    const QRectF box(x, 0, wide, kBar);
    painter.fillRect(box, ColorOf(CutUse(static_cast<int>(i))));
    painter.setPen(ColorOf(Use::Ground));
    painter.drawRect(box);
    painter.setPen(ColorOf(Use::CutText));
    if (wide > QFontMetrics(painter.font()).horizontalAdvance(parts[i].letter) + 2) painter.drawText(box, Qt::AlignCenter, parts[i].letter);
    x += wide;
  }
  painter.setFont(FontOf(Size::Table));
  const int column = width() / 3;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    painter.setPen(ColorOf(Use::Text));
    const int row = static_cast<int>(i) / 3;
    painter.drawText(QRect(static_cast<int>(i) % 3 * column, kBar + kInside + row * WordHeight(), column - kInside, WordHeight()),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetrics(painter.font()).elidedText(parts[i].words, Qt::ElideRight, column - kInside));
  }
  painter.setPen(ColorOf(sums.balanced() ? Use::Done : Use::Refusal));
  painter.drawText(QRect(0, height() - WordHeight(), width(), WordHeight()), Qt::AlignLeft | Qt::AlignVCenter,
                   BookWords(BalanceCheckWords(*balance_)));
}

}  // namespace heatkeep
