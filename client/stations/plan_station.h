// The planning station: cut lists that are due and live plans at the left; in the middle the plan with its proof, what it lacks and its
// bars, or two plans side by side; at the right why each piece and not another. Nothing is promised before it was looked at.
#pragma once

#include <functional>

#include "client/models/plan_work.h"
#include "client/models/row_table.h"
#include "client/stations/asking_line.h"
#include "client/stations/deed_button.h"
#include "client/stations/next_best.h"
#include "client/stations/piece_drag.h"
#include "client/stations/plan_pane.h"
#include "client/stations/row_view.h"
#include "client/stations/sign_line.h"
#include "client/stations/station.h"
#include "client/stations/waiting_list.h"
#include "client/stations/words_pane.h"

class QComboBox;
class QStackedWidget;

namespace heatkeep {

class PlanStation : public Station {
  Q_OBJECT

 public:
  explicit PlanStation(Desk& desk, QWidget* parent = nullptr);

  QString Name() const override { return tr("Plan"); }
  QStringList Deeds() const override { return {"commit_plan"}; }
  void Refresh() override { work_.Read(); }
  void Changed(const QStringList& deeds) override;
  bool Take(const QString& scan) override;
  DeskPaper Paper() override;
  void Confirm() override;
  bool Stop() override;
  void Redress() override;

  PlanWork& work() { return work_; }
  PlanPane* pane(std::size_t i) const { return panes_[i]; }  // two of them, side by side
  const SignLine* progress() const { return progress_; }
  const PlainWords* difference() const { return difference_; }
  QString why() const { return why_->words(); }
  NextBest* next_best() const { return next_; }

 private:
  QWidget* BuildWork();
  QWidget* BuildWhy();
  void BuildButtons(QLayout* into);
  void Show();
  void ShowWaiting();
  void ShowHead();
  void ShowLines();
  void ShowProposals();
  void ShowSheet();
  void ShowWhy();
  void ShowButtons();
  const planning::DraftPiece* PieceInHand() const;
  void FocusBars();
  void AskReason(const QString& words, std::function<void(const QString& reason)> then, const QString& typed = {});
  void LeaveOut();
  void TakeInstead();
  void LetDrag(QAbstractScrollArea* from, std::function<QString(const QPoint& at)> tag_at);
  void AskWhyInstead(const QString& tag, const QString& other);
  void Cancel();
  void Promised(const QString& words, const QList<qint64>& plans);

  PlanWork work_;
  WaitingList* waiting_;
  PlainWords *head_, *difference_;
  QComboBox* saw_;
  SignLine* progress_;
  QWidget* beside_all_;  // the pane at the right
  PlainWords* next_head_;
  NextBest* next_;
  WordsPane* why_;
  QStackedWidget* stack_;
  RowTable lines_;
  RowView* lines_view_;
  PlanPane* panes_[2];
  AskingLine* ask_;
  DeedButton *plan_, *again_, *promise_, *beside_, *other_, *not_this_, *instead_, *longer_, *cancel_, *discard_, *stop_;
};

}  // namespace heatkeep
