// The pieces of a plan as bars of one scale, in groups, each group with a ruler; one bar is chosen. Scrolls. Keys: up and down, page up
// and down, home and end; Enter confirms. A bar that a piece is dragged over is marked (piece_drag.h).
#pragma once

#include <QAbstractScrollArea>
#include <vector>

#include "client/models/reading_units.h"
#include "client/stations/sign.h"
#include "reports/piece_bar.h"

namespace heatkeep {

struct PlanBar {
  QString key;            // names it: its tag
  QString title, beside;  // the tag; place, heat, length
  QString right;          // what becomes of the rest, its state
  Sign sign = Sign::None;
  PieceBar bar;
};

struct PlanBarGroup {
  QString head;  // section, grade, and how many
  std::vector<PlanBar> bars;
};

class PlanBars : public QAbstractScrollArea {
  Q_OBJECT

 public:
  explicit PlanBars(QWidget* parent = nullptr);

  // `full`: the longest piece of all that is seen beside it. The chosen bar stays chosen where it is still there, else it is the first.
  void Show(std::vector<PlanBarGroup> groups, ReadingUnits units, Length full);
  QString chosen() const { return chosen_; }
  void Choose(const QString& key);
  QString KeyAt(const QPoint& at) const;  // at: of the viewport; empty: no bar is there
  // A piece is dragged over this place: its bar is marked, and answered. Not where it is the piece itself, or no bar.
  QString AimAt(const QPoint& global, const QString& dragged);
  void AimAtNothing();
  QRect BarRect(const QString& key) const;  // of the bar, in the viewport; null: not shown
  int count() const { return static_cast<int>(rows_.size()); }

 signals:
  void Chosen(const QString& key);
  void Confirmed();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;

 private:
  struct Placed {
    const PlanBar* bar = nullptr;
    const PlanBarGroup* heads = nullptr;  // the group whose head stands above it
    int top = 0, bar_top = 0, bottom = 0;
  };

  BarView ViewOf(double y, bool ruler) const;
  void Place();
  void Move(int rows);
  int Row() const;  // of the chosen bar; -1: none

  std::vector<PlanBarGroup> groups_;
  std::vector<Placed> rows_;
  ReadingUnits units_;
  Length full_;
  QString chosen_, aimed_at_;
};

}  // namespace heatkeep
