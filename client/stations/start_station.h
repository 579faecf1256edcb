// What a new book needs before the first cut, step by step: what is there already, and how to get what is not. In a private book that is
// empty it offers the demo shop in a book beside it, and takes in an opening balance from a spreadsheet. A shop that works looks here never
// again.
#pragma once

#include "client/models/start_work.h"
#include "client/stations/deed_button.h"
#include "client/stations/opening_page.h"
#include "client/stations/plain_words.h"
#include "client/stations/sign_line.h"
#include "client/stations/station.h"
#include "client/stations/waiting_list.h"

class QProgressBar;
class QStackedWidget;

namespace heatkeep {

class StartStation : public Station {
  Q_OBJECT

 public:
  explicit StartStation(Desk& desk, QWidget* parent = nullptr);

  QString Name() const override { return tr("Start"); }
  QStringList Deeds() const override { return {"define_shop"}; }
  void Refresh() override { work_.Read(); }
  void Changed(const QStringList& deeds) override;
  bool Take(const QString&) override { return false; }
  bool TakeFile(const QString& file) override;
  bool Stop() override;
  DeskPaper Paper() override;
  bool OpensEmptyBook() const override { return true; }
  void Redress() override;

  // Steps that are done, of all.
  int done() const;
  int steps() const { return static_cast<int>(work_.counts().size()); }
  StartWork& work() { return work_; }
  OpeningPage& opening() { return *opening_; }

 private:
  struct Step {
    QString title, how;
  };
  static std::vector<Step> Steps();
  QWidget* BuildSteps();
  void Show();
  void OpenImport();

  StartWork work_;
  WaitingList* list_;
  QStackedWidget* pages_;
  PlainWords *head_, *offer_, *commands_, *how_, *import_head_;
  SignLine* sign_;
  QProgressBar* progress_;
  DeedButton *demo_, *import_, *back_;
  OpeningPage* opening_;
};

}  // namespace heatkeep
