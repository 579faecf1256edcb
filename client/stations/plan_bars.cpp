#include "client/stations/plan_bars.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <algorithm>
#include <cmath>

#include "client/stations/desk_look.h"

namespace heatkeep {
namespace {

constexpr double kBarHeight = 30, kBarText = 14;
constexpr int kMark = 4;  // the stroke beside the chosen bar

int HeadHeight() { return QFontMetrics(FontOf(Size::Body, true)).height() + kBetween + kInside; }
int TitleHeight() { return QFontMetrics(MonoOf(Size::Body, true)).height() + kInside / 2; }

}  // namespace

PlanBars::PlanBars(QWidget* parent) : QAbstractScrollArea(parent) {
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::StrongFocus);
  viewport()->setAutoFillBackground(false);
  setMinimumSize(240, 120);
}

void PlanBars::Show(std::vector<PlanBarGroup> groups, ReadingUnits units, Length full) {
  groups_ = std::move(groups);
  units_ = units;
  full_ = full;
  Place();
  if (Row() < 0) {
    chosen_ = rows_.empty() ? QString() : rows_.front().bar->key;
    verticalScrollBar()->setValue(0);
  }
  setAccessibleName(tr("%n piece(s) of the plan", nullptr, count()));
  Choose(chosen_);
}

BarView PlanBars::ViewOf(double y, bool ruler) const {
  BarView view;
  view.x = kMark + kInside;
  view.y = y;
  view.width = std::max(160, viewport()->width() - kMark - 2 * kInside);
  view.bar_height = kBarHeight;
  view.text = kBarText;
  view.symbol = false;
  view.ruler = ruler;
  view.leader_rows = 1;
  view.full = full_;
  view.units = units_.Ruler();
  view.scheme = CurrentScheme();
  view.keep_word = tr("keep").toStdString();
  view.scrap_word = tr("scrap").toStdString();
  return view;
}

void PlanBars::Place() {
  rows_.clear();
  int y = 0;
  for (const PlanBarGroup& group : groups_) {
    const PlanBarGroup* heads = &group;
    for (const PlanBar& bar : group.bars) {
      Placed row{&bar, heads, y, 0, 0};
      row.bar_top = y + (heads ? HeadHeight() : 0) + TitleHeight() + kInside / 2;
      row.bottom = row.bar_top + static_cast<int>(std::ceil(PieceBarHeight(bar.bar, ViewOf(0, heads != nullptr)))) + kInside;
      y = row.bottom;
      heads = nullptr;
      rows_.push_back(row);
    }
  }
  verticalScrollBar()->setPageStep(viewport()->height());
  verticalScrollBar()->setSingleStep(TitleHeight());
  verticalScrollBar()->setRange(0, std::max(0, y - viewport()->height()));
  viewport()->update();
}

int PlanBars::Row() const {
  const auto it = std::ranges::find_if(rows_, [&](const Placed& row) { return row.bar->key == chosen_; });
  return it == rows_.end() ? -1 : static_cast<int>(it - rows_.begin());
}

void PlanBars::Choose(const QString& key) {
  chosen_ = key;
  if (const int at = Row(); at >= 0) {
    const Placed& row = rows_[static_cast<std::size_t>(at)];
    QScrollBar* const bar = verticalScrollBar();
    if (row.top < bar->value()) bar->setValue(row.top);
    else if (row.bottom > bar->value() + viewport()->height()) bar->setValue(row.bottom - viewport()->height());
    setAccessibleDescription(row.bar->title + ", " + row.bar->beside + ", " + row.bar->right);
  }
  viewport()->update();
  emit Chosen(chosen_);
}

void PlanBars::Move(int rows) {
  if (rows_.empty()) return;
  const int at = std::clamp(std::max(0, Row()) + rows, 0, count() - 1);
  Choose(rows_[static_cast<std::size_t>(at)].bar->key);
}

void PlanBars::paintEvent(QPaintEvent*) {
  QPainter painter(viewport());
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(viewport()->rect(), ColorOf(Use::Ground));
  painter.translate(0, -verticalScrollBar()->value());
  const int from = verticalScrollBar()->value(), to = from + viewport()->height(), right = viewport()->width() - kInside;
  const QFontMetrics mono(MonoOf(Size::Body, true)), plain(FontOf(Size::Table));
  for (const Placed& row : rows_) {
    if (row.bottom < from || row.top > to) continue;
    const int title = row.bar_top - TitleHeight() - kInside / 2;
    if (row.heads) {
      painter.setFont(FontOf(Size::Body, true));
      painter.setPen(ColorOf(Use::Text));
      painter.drawText(QRect(0, row.top + kInside, right, HeadHeight() - kInside), Qt::AlignLeft | Qt::AlignVCenter, row.heads->head);
    }
    int left = kMark + kInside;
    if (row.bar->sign != Sign::None) {
      PaintSign(painter, QRectF(left, title + 2, mono.height() - 4, mono.height() - 4), row.bar->sign);
      left += mono.height() + kInside / 2;
    }
    painter.setFont(MonoOf(Size::Body, true));
    painter.setPen(ColorOf(Use::Text));
    painter.drawText(QRect(left, title, right - left, TitleHeight()), Qt::AlignLeft | Qt::AlignVCenter, row.bar->title);
    left += mono.horizontalAdvance(row.bar->title) + kBetween;
    painter.setFont(FontOf(Size::Table));
    painter.setPen(ColorOf(Use::Quiet));
    const int rest = plain.horizontalAdvance(row.bar->right) + kInside;
    painter.drawText(QRect(left, title, right - left, TitleHeight()), Qt::AlignRight | Qt::AlignVCenter, row.bar->right);
    painter.drawText(QRect(left, title, right - left - rest, TitleHeight()), Qt::AlignLeft | Qt::AlignVCenter,
                     plain.elidedText(row.bar->beside, Qt::ElideRight, right - left - rest));
    PaintPieceBar(painter, row.bar->bar, ViewOf(row.bar_top, row.heads != nullptr));
    if (row.bar->key == aimed_at_) {
      painter.setPen(QPen(ColorOf(Use::Done), 2, Qt::DashLine));
      painter.setBrush(Qt::NoBrush);
      painter.drawRect(QRect(kMark + 2, title - 2, right - kMark, row.bottom - title));
    }
    if (row.bar->key == chosen_)
      painter.fillRect(QRect(0, title, kMark, row.bottom - title - kInside / 2), ColorOf(hasFocus() ? Use::Done : Use::Quiet));
  }
}

void PlanBars::resizeEvent(QResizeEvent* event) {
  QAbstractScrollArea::resizeEvent(event);
  Place();
}

void PlanBars::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Up: Move(-1); break;
    case Qt::Key_Down: Move(1); break;
    case Qt::Key_PageUp: Move(-5); break;
    case Qt::Key_PageDown: Move(5); break;
    case Qt::Key_Home: Move(-count()); break;
    case Qt::Key_End: Move(count()); break;
    case Qt::Key_Return:
    case Qt::Key_Enter: emit Confirmed(); break;
    default: QAbstractScrollArea::keyPressEvent(event);
  }
}

QString PlanBars::KeyAt(const QPoint& at) const {
  const int y = at.y() + verticalScrollBar()->value();
  for (const Placed& row : rows_)
    if (y >= row.top && y < row.bottom) return row.bar->key;
  return {};
}

QRect PlanBars::BarRect(const QString& key) const {
  for (const Placed& row : rows_)
    if (row.bar->key == key)
      return {kMark + kInside, row.bar_top - verticalScrollBar()->value(), viewport()->width() - kMark - 2 * kInside,
              static_cast<int>(kBarHeight)};
  return {};
}

QString PlanBars::AimAt(const QPoint& global, const QString& dragged) {
  const QPoint at = viewport()->mapFromGlobal(global);
  QString key = isVisible() && viewport()->rect().contains(at) ? KeyAt(at) : QString();
  if (key == dragged) key.clear();
  if (key != aimed_at_) viewport()->update();
  return aimed_at_ = key;
}

void PlanBars::AimAtNothing() {
  aimed_at_.clear();
  viewport()->update();
}

void PlanBars::mousePressEvent(QMouseEvent* event) {
  if (const QString key = KeyAt(event->position().toPoint()); !key.isEmpty()) Choose(key);
  setFocus();
}

}  // namespace heatkeep
