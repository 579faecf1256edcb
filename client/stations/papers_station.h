// The papers station: whatever is typed or scanned is traced both ways, with its metal balance, its papers and what stands against it;
// a heat is held after a look at what that stops; certificates are filed with their files; an order's certificate package is one key.
#pragma once

#include "client/models/papers_work.h"
#include "client/stations/asking_line.h"
#include "client/stations/balance_bar_view.h"
#include "client/stations/deed_button.h"
#include "client/stations/document_form.h"
#include "client/stations/family_tree_view.h"
#include "client/stations/sign_line.h"
#include "client/stations/station.h"
#include "client/stations/waiting_list.h"
#include "client/stations/words_pane.h"

class QStackedWidget;

namespace heatkeep {

class PapersStation : public Station {
  Q_OBJECT

 public:
  explicit PapersStation(Desk& desk, QWidget* parent = nullptr);

  QString Name() const override { return tr("Papers"); }
  QStringList Deeds() const override { return {"place_hold", "ship", "file_papers"}; }
  void Refresh() override;
  void Changed(const QStringList& deeds) override;
  bool Take(const QString& scan) override;
  DeskPaper Paper() override;
  bool TakeFile(const QString& file) override;
  bool Stop() override;
  void Redress() override;

  const PapersWork& work() const { return work_; }
  FamilyTreeView* tree() const { return tree_; }
  DocumentForm* form() const { return form_; }
  bool filing() const;

 private:
  QWidget* BuildWork();
  void ShowWaiting();
  void ShowAnswer();
  void ShowPapers();
  void ChosenWaiting(const QString& key);
  void AskHold(const QString& preview);
  void AskLift();
  void AskNote();
  void AskPackage();
  void OpenForm(const QString& file);
  void LeaveForm();
  TypedDocument OfWhatIsShown() const;  // heat, section, grade, condition, issuer: as the metal is in the book
  const HeatDocument* NotAccepted() const;
  void Filed(const QString& issuer, const QString& number, const QString& words, bool fully, bool reversible);

  PapersWork work_;
  DocumentWork documents_;
  TypedDocument filing_;
  WaitingList* waiting_;
  PlainWords *head_, *what_;
  WordsPane* papers_;
  SignLine* sign_;
  AskingLine* asking_;
  BalanceBarView* balance_;
  FamilyTreeView* tree_;
  DeedButton *hold_, *lift_, *ship_, *package_, *file_, *accept_;
  QStackedWidget* stack_;
  DocumentForm* form_;
};

}  // namespace heatkeep
