// The gate: a clean bundle is five touches (the line scanned or picked, bars counted, heat as read, mass weighed, F1). What the metal says
// stands against what the note says, in words; what does not agree waits in quarantine, and is never lost. After it the labels print, as
// many as bars, and every piece gets its place: its tag and the place are scanned, or the place alone for all that are alike.
#pragma once

#include <QStackedWidget>
#include <functional>
#include <map>

#include "client/models/receiving_work.h"
#include "client/stations/deed_button.h"
#include "client/stations/delivery_form.h"
#include "client/stations/plain_words.h"
#include "client/stations/put_away_page.h"
#include "client/stations/sign_line.h"
#include "client/stations/station.h"
#include "client/stations/waiting_list.h"
#include "client/stations/words_pane.h"

namespace heatkeep {

class ReceivingStation : public Station {
  Q_OBJECT

 public:
  explicit ReceivingStation(Desk& desk, QWidget* parent = nullptr);

  QString Name() const override { return tr("Receiving"); }
  QStringList Deeds() const override { return {"receive_delivery"}; }
  void Refresh() override { work_.Read(); }
  void Changed(const QStringList& deeds) override;
  bool Take(const QString& scan) override;
  DeskPaper Paper() override;
  void Confirm() override;
  void Redress() override;

  const ReceivingWork& work() const { return work_; }
  const DeliveryForm& form() const { return *form_; }
  bool putting_away() const { return pages_->currentIndex() == 1; }

  // Asks for the file of a photo; empty: none. A file dialog unless it is set otherwise.
  std::function<QString()> choose_photo;

 private:
  QWidget* BuildRead();
  QWidget* BuildWhy();
  void Show();
  void ShowWaiting();
  void ShowLine();
  const GateGroup* InHand() const;  // the pieces at the gate that are chosen; nullptr: none
  void Choose(const QString& key);
  void Turn(const QString& key);  // Choose, and to its first empty field
  void KeepDraft();
  void SetNote();
  bool ReadIt();  // the line in the fields is of the note now
  void ReceiveNote();
  void TakeLineOut();
  void Photo();
  bool TakePlace(const QString& place);
  bool TakeTag(const std::string& tag);
  bool TakeDevice(const QString& name);
  const ExpectedRow* LineOf(const QString& scan) const;
  void PrintLabelsOf(const QStringList& tags);
  void Refuse(const QString& words);

  ReceivingWork work_;
  WaitingList* waiting_;
  QStackedWidget* pages_;
  DeliveryForm* form_;
  PutAwayPage* put_;
  PlainWords* head_;
  WordsPane* why_;
  std::vector<SignLine*> remarks_;
  DeedButton *receive_, *next_, *out_, *more_, *photo_;
  QString chosen_;                       // what the middle shows: a line of an order, of the note, or pieces at the gate
  std::map<QString, TypedLine> drafts_;  // typed and not read yet
  std::vector<OwedPapersRow> owed_;
  QString owed_of_, just_booked_;
};

}  // namespace heatkeep
