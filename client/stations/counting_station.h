// Counting: a place is frozen, counted blind by the scanner, and its differences are looked at by another person. What should lie there is
// not shown while it is counted; every tag ticks in as it is scanned, and one that belongs elsewhere is said in words.
#pragma once

#include <QLineEdit>
#include <QStackedWidget>

#include "client/models/counting_work.h"
#include "client/models/row_table.h"
#include "client/stations/deed_button.h"
#include "client/stations/plain_words.h"
#include "client/stations/row_view.h"
#include "client/stations/sign_line.h"
#include "client/stations/station.h"
#include "client/stations/waiting_list.h"
#include "client/stations/words_pane.h"

class QBoxLayout;

namespace heatkeep {

class CountingStation : public Station {
  Q_OBJECT

 public:
  explicit CountingStation(Desk& desk, QWidget* parent = nullptr);

  bool NowAndThen() const override { return true; }
  QString Name() const override { return tr("Counting"); }
  QStringList Deeds() const override { return {"count_seen", "freeze_place", "approve_count"}; }
  void Refresh() override { work_.Read(); }
  void Changed(const QStringList& deeds) override;
  bool Take(const QString& scan) override;
  DeskPaper Paper() override;
  void Confirm() override;
  void Redress() override;

  const CountingWork& work() const { return work_; }
  const QString& place() const { return place_; }

 private:
  enum Page { kFreeze, kCount, kApprove };

  QWidget* BuildFreeze();
  QWidget* BuildCount();
  QWidget* BuildApprove();
  QLineEdit* Field(QBoxLayout* row, const QString& words, const QString& example, int stretch);
  void Show();
  void ShowWaiting();
  void ShowCount(const CountRow& count);
  void ShowApprove(const CountRow& count);
  void ShowWhy(const CountRow* count);
  void SetColumns();
  void Choose(const QString& place);
  void CountUnmarked();
  std::optional<Length> LengthIn(QLineEdit* field);
  QString MoneyWords(Money money) const;
  void Refuse(const QString& words);

  CountingWork work_;
  WaitingList* waiting_;
  QStackedWidget* pages_;
  QWidget* signing_;  // for who may approve
  PlainWords *freeze_head_, *freeze_what_, *count_head_, *counted_, *approve_head_, *approve_what_;
  WordsPane* why_;
  SignLine *ticked_, *approve_sign_;
  QLineEdit *measured_, *section_, *length_, *marks_, *words_;
  RowTable *here_, *differences_;
  RowView *here_view_, *differences_view_;
  DeedButton *freeze_, *finish_, *unmarked_, *approve_, *give_up_;
  QString place_;
};

}  // namespace heatkeep
