#include "client/stations/station.h"

#include <QHBoxLayout>
#include <QSplitter>
#include <algorithm>

#include "client/stations/desk_look.h"

namespace heatkeep {

void Station::LayOut(QWidget* waiting, QWidget* work, QWidget* why) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(kAround, kBetween, kAround, kInside);
  auto* panes = new QSplitter(Qt::Horizontal);
  panes->setHandleWidth(kBetween);
  panes->setChildrenCollapsible(false);
  for (QWidget* pane : {waiting, work, why})
    if (pane) panes->addWidget(pane);
  waiting->setMinimumWidth(240);
  const int middle = panes->indexOf(work);
  panes->setStretchFactor(middle, 1);
  QList<int> widths{260, 840};
  if (why) {
    why->setMinimumWidth(220);
    widths.append(280);
  }
  panes->setSizes(widths);
  row->addWidget(panes);
}

bool Station::Touch(const QStringList& deeds, const QStringList& of) {
  return std::any_of(deeds.begin(), deeds.end(), [&](const QString& deed) { return of.contains(deed); });
}

}  // namespace heatkeep
