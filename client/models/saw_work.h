// What is done at one saw: its sheets, the piece in hand, and its deeds, on the network and off it.
//
// A piece goes Pull (scanned: green, or refused with the reason) -> Cut (confirmed as planned or as it really went) -> Place (the drop's
// tag prints; its place is scanned). While the book cannot be reached, deeds are kept in the saw's queue (client/queue/saw_queue.h) in
// their order and sent when it is back. A deed whose answer was lost is asked again first, under its own request number, so that it is
// done once; until then the saw goes on as if it were done. Beside the queue lie the sheets as they were read last
// (client/queue/kept_sheets.h): a desk that is started while the book is away goes on with them and with what the queue says was done
// since.
#pragma once

#include <QDateTime>
#include <QObject>
#include <QString>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "client/gateway/cut_body.h"
#include "client/gateway/device_readings.h"
#include "client/models/book_link.h"
#include "client/models/desk_settings.h"
#include "client/models/kept_deed.h"
#include "client/models/saw_sheets.h"
#include "client/planning/mend_plan.h"
#include "schema/terms/rows.h"

namespace heatkeep {

class SawWork : public QObject {
  Q_OBJECT

 public:
  enum class Step { NoSaw, Nothing, Pull, Cut, Place };

  SawWork(BookLink& link, const DeskSettings& settings, QObject* parent = nullptr);

  void Read();  // the live sheets of this saw, earliest due first; Shown when they are here
  // The book has not answered since this desk was started: the sheets that were kept. False: there are none to work with.
  bool StartAway();

  const std::vector<Sheet>& sheets() const { return on_saw_.sheets; }
  const QDateTime& as_of() const { return as_of_; }  // when they were read; invalid: never
  const Sheet* sheet() const;                        // of the piece in hand
  const SheetBlock* block() const;                   // the piece in hand: at the saw, or the next to fetch
  Step step() const;
  const QString& drop() const { return drop_; }  // Place: the tag that waits for its place
  int run() const { return run_; }               // Cut: which kind of cut is next, from 0
  Length stop_stroke() const { return on_saw_.stop_stroke; }
  const std::vector<DeviceRow>& devices() const { return on_saw_.devices; }
  const QString& device() const { return device_; }         // what lengths are read from; empty: not said
  Length tape_doubt() const { return on_saw_.tape_doubt; }  // where none is said
  bool IsPlace(const QString& name) const;
  // The saw was handed over at the end of a shift and nobody has taken it yet.
  const std::optional<HandoverRow>& handover() const { return on_saw_.handover; }
  bool may_keep() const;  // off the network a deed can be kept
  bool busy() const { return mending_ || deed_.asking(); }

  void Choose(const QString& tag);  // this piece next
  void Pull(const QString& tag, const QString& heat_read = {});
  void NextRun();
  void Cut(const CutTold& told);
  void PutAway(const QString& place);
  void LeaveDrop();  // it stays where the piece came from
  // Place: so many strokes fewer were made than was confirmed; what is left is that much longer.
  void TakeBack(int strokes, const QString& why);
  void Mend(planning::Mishaps mishaps);
  // The shift ends: what was cut of the piece in the saw so far is booked, its cut stays open; `words` say how things stand, and why the
  // rest is open.
  void HandOver(const DoneCounts& done, const QString& words);
  void TakeOver();
  bool MeasureWith(const QString& device);  // false: there is no such device
  void NextDevice();

 signals:
  void Shown();
  void Done(const QString& words, bool done_fully);  // a tick; or a warning: kept only, or something is to be heeded
  void Refused(const QString& words);
  void HeatWanted(const QString& tag, const QString& words);  // it is asked for: Pull again with the heat read
  void LabelWanted(const QString& tag);                       // a drop has a new tag

 private:
  using Json = nlohmann::json;
  void Do(const AskedDeed& deed);
  void Keep(const AskedDeed& deed);
  void SendKept();
  void After(const AskedDeed& deed, const Json& answer, bool late);
  void AfterPull(const Json& body, const Json& answer, bool late);
  void AfterCut(const AskedDeed& deed, const Json& answer, bool late);
  void TakeAsDone(const std::string& deed, const Json& body);
  void AfterOpenCut(const AskedDeed& deed, const Json& answer, bool late);
  void AskHandOver(const Json& body);
  void GoOnWithout(const AskedDeed& deed, const QString& words);
  void Tell(const QString& words, bool fully, bool late);
  void SayWhatIsUrgent(const SawSheets& read);
  SheetBlock* Find(const std::string& tag);
  void SetMending(bool mending);
  void KeepSheetsNow();

  BookLink& link_;
  KeptDeed deed_;  // before what is kept is sent: it is asked again first
  const DeskSettings& settings_;
  SawSheets on_saw_;
  QDateTime as_of_;
  std::string kept_;  // what is on the disk of them, but for the time
  QDateTime kept_at_;
  std::string chosen_;
  QString saw_, drop_, drop_place_, device_;
  int run_ = 0;
  bool mending_ = false;
};

}  // namespace heatkeep
