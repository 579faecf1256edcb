// What else would do, best first: at most three pieces, each with its number. One is taken instead by Enter, two clicks, or by dragging it
// onto the bar whose cuts it is to take.
#pragma once

#include "client/models/plan_work.h"
#include "client/models/reading_units.h"
#include "client/stations/waiting_list.h"

namespace heatkeep {

class NextBest : public WaitingList {
  Q_OBJECT

 public:
  explicit NextBest(QWidget* parent = nullptr);

  void ShowOf(const planning::DraftPiece& piece, ReadingUnits units);
  QString TagAt(const QPoint& at) const;  // at: of the viewport

 signals:
  void Wanted(const QString& tag);
};

}  // namespace heatkeep
