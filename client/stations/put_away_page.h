// Where what came lies: the pieces of one group at the gate, and the field for their place. The place alone puts all of them away; a tag,
// then the place, puts that one. A strapped bundle goes as one until its strap is cut.
#pragma once

#include <QLineEdit>

#include "client/models/receiving_work.h"
#include "client/stations/deed_button.h"
#include "client/stations/plain_words.h"
#include "client/stations/sign_line.h"
#include "client/stations/station.h"

namespace heatkeep {

class PutAwayPage : public QWidget {
  Q_OBJECT

 public:
  PutAwayPage(Desk& desk, ReceivingWork& work, QWidget* parent = nullptr);

  void Show(const GateGroup& group);
  void Forget();                         // the place typed and the one tag
  void TakeTag(const std::string& tag);  // of the group shown: the next place is this piece's
  void TakePlace(const QString& place);  // a deed of the book: what is in hand lies there
  void Say(Sign sign, const QString& words) { sign_->Say(sign, words); }
  void Unsay() { sign_->Clear(); }
  void Confirm() { put_->click(); }
  void FocusPlace() { place_->setFocus(); }
  std::string tag() const;  // the one in hand, or the first of the group

 signals:
  void LabelsWanted(const QStringList& tags);

 private:
  const ReadingUnits& units() const { return desk_.settings.units; }
  void Fill();
  void PutAway();

  Desk& desk_;
  ReceivingWork& work_;
  PlainWords *head_, *what_, *tags_, *strap_;
  QLineEdit* place_;
  SignLine* sign_;
  DeedButton *put_, *labels_, *open_;
  GateGroup group_;
  std::string one_;  // this piece only
};

}  // namespace heatkeep
