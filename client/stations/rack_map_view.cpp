#include "client/stations/rack_map_view.h"

#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <map>
#include <set>

#include "client/stations/desk_look.h"
#include "client/stations/sign.h"

namespace heatkeep {
namespace {

int LevelOf(const PlaceLoad& place) { return QString::fromStdString(place.level).toInt(); }  // 0 where it is no number

}  // namespace

RackMapView::RackMapView(QWidget* parent) : QWidget(parent) { setAccessibleName(tr("rack map")); }

void RackMapView::Show(const std::vector<PlaceLoad>& places, ReadingUnits units) {
  places_ = places;
  units_ = units;
  cells_.assign(places.size(), {});
  std::set<std::string> bays;
  std::set<int> levels;
  for (const PlaceLoad& p : places)
    if (!p.bay.empty()) {
      bays.insert(p.bay);
      levels.insert(LevelOf(p));
    }
  const int columns = std::max(1, static_cast<int>(bays.size())), rack_rows = static_cast<int>(levels.size());
  const int beside = std::clamp(columns / 3 + 1, 2, 6);  // places that are no rack have longer names
  int loose = 0;
  for (std::size_t i = 0; i < places.size(); ++i) {
    const PlaceLoad& p = places[i];
    if (p.bay.empty()) {
      cells_[i] = {loose % beside, rack_rows + loose / beside, beside};
      ++loose;
    } else {
      // the highest level is drawn on top, as it stands
      const int level = static_cast<int>(std::distance(levels.begin(), levels.find(LevelOf(p))));
      cells_[i] = {static_cast<int>(std::distance(bays.begin(), bays.find(p.bay))), rack_rows - 1 - level, columns};
    }
  }
  rows_ = 1;
  for (const Cell& c : cells_) rows_ = std::max(rows_, c.row + 1);
  QStringList words;
  for (const PlaceLoad& p : places) words << WordsOf(p);
  setAccessibleDescription(words.join("; "));
  update();
}

QString RackMapView::WordsOf(const PlaceLoad& p) const {
  QString words = tr("%1: %n piece(s), %2", nullptr, static_cast<int>(p.pieces)).arg(QString::fromStdString(p.place), units_.Words(p.load));
  if (p.most.g > 0) words += tr(" of %1").arg(units_.Words(p.most));
  return words;
}

QRectF RackMapView::BoxOf(std::size_t place) const {
  const double wide = static_cast<double>(width()) / cells_[place].of, high = static_cast<double>(height()) / rows_;
  return {cells_[place].column * wide + 1, cells_[place].row * high + 1, wide - 3, high - 3};
}

void RackMapView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(FontOf(Size::Table));
  const QFontMetrics letters(painter.font());
  for (std::size_t i = 0; i < places_.size(); ++i) {
    const PlaceLoad& p = places_[i];
    const QRectF box = BoxOf(i);
    const bool over = p.most.g > 0 && p.load > p.most;
    const double share = p.most.g > 0 ? std::min(1.0, static_cast<double>(p.load.g) / static_cast<double>(p.most.g)) : 0;
    QRectF filled = box;
    filled.setTop(box.bottom() - box.height() * share);
    QColor metal = ColorOf(over ? Use::Refusal : Use::Metal);
    metal.setAlphaF(0.45F);
    painter.fillRect(filled, metal);
    painter.setPen(QPen(ColorOf(Use::Hairline), 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(box);
    painter.setPen(ColorOf(Use::Text));
    const QRectF text = box.adjusted(3, 1, -3, -1);
    const QString name = QString::fromStdString(p.place);
    const bool two = box.height() > 2 * letters.height();
    painter.drawText(text, static_cast<int>((two ? Qt::AlignTop : Qt::AlignVCenter) | Qt::AlignLeft),
                     letters.elidedText(name, Qt::ElideRight, static_cast<int>(text.width())));
    const QString count = p.pieces > 0 ? QString::number(p.pieces) : QString();
    if (two) painter.drawText(text, Qt::AlignBottom | Qt::AlignRight, count);
    else if (letters.horizontalAdvance(name + "  " + count) < text.width())
      painter.drawText(text, Qt::AlignVCenter | Qt::AlignRight, count);
    if (over) PaintSign(painter, QRectF(box.right() - 16, box.top() + 2, 14, 14), Sign::Refusal);
  }
}

void RackMapView::mousePressEvent(QMouseEvent* event) {
  for (std::size_t i = 0; i < places_.size(); ++i)
    if (BoxOf(i).contains(event->position())) emit Chosen(QString::fromStdString(places_[i].place));
}

bool RackMapView::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    auto* help = static_cast<QHelpEvent*>(event);
    for (std::size_t i = 0; i < places_.size(); ++i)
      if (BoxOf(i).contains(help->pos())) QToolTip::showText(help->globalPos(), WordsOf(places_[i]), this);
    return true;
  }
  return QWidget::event(event);
}

}  // namespace heatkeep
