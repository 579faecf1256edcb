// One plan of a planning station: its aim, its proof, what it amounts to, what it lacks and what to buy, and its bars.
#pragma once

#include <QScrollArea>
#include <QWidget>

#include "client/stations/plain_words.h"
#include "client/stations/plan_bars.h"
#include "client/stations/sign_line.h"

namespace heatkeep {

class PlanPane : public QWidget {
  Q_OBJECT

 public:
  explicit PlanPane(QWidget* parent = nullptr);

  // `aim` empty: the plan is not one of two. `in_hand`: the one that is promised and overruled.
  void Show(const QString& aim, bool in_hand, const QString& proof, const QString& figures, const QString& lacks);
  PlanBars* bars() const { return bars_; }
  const SignLine* shortage() const { return short_; }
  QString proof() const { return proof_->text(); }

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void FitShortage();

  PlainWords *aim_, *proof_, *figures_;
  QScrollArea* short_all_;  // what it lacks scrolls where it would leave the bars no room
  SignLine* short_;
  PlanBars* bars_;
};

}  // namespace heatkeep
