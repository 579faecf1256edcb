#include "client/stations/piece_bar_view.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "client/stations/desk_look.h"

namespace heatkeep {
namespace {

constexpr int kNarrowest = 320;

}  // namespace

PieceBarView::PieceBarView(QWidget* parent) : QWidget(parent) {
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void PieceBarView::Show(const std::optional<PieceBar>& bar, ReadingUnits units, Length full, int lit_run) {
  bar_ = bar;
  units_ = units;
  full_ = bar ? std::max(full, bar->length) : full;
  lit_run_ = lit_run;
  setAccessibleName(bar ? tr("the piece, %1 long").arg(units.Words(bar->length, Rounding::Down)) : tr("no piece"));
  updateGeometry();
  update();
}

BarView PieceBarView::ViewOf(double width) const {
  BarView view = StationView(0, 0, width, full_);
  view.units = units_.Ruler();
  view.scheme = CurrentScheme();
  view.ruler = true;
  view.keep_word = tr("keep").toStdString();
  view.scrap_word = tr("scrap").toStdString();
  return view;
}

QSize PieceBarView::sizeHint() const { return {800, heightForWidth(800)}; }

QSize PieceBarView::minimumSizeHint() const { return {kNarrowest, bar_ ? heightForWidth(kNarrowest) : 0}; }

int PieceBarView::heightForWidth(int width) const {
  return bar_ ? static_cast<int>(std::ceil(PieceBarHeight(*bar_, ViewOf(std::max(width, kNarrowest))))) : 0;
}

void PieceBarView::paintEvent(QPaintEvent*) {
  if (!bar_) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  PaintPieceBar(painter, *bar_, ViewOf(width()), lit_run_);
}

}  // namespace heatkeep
