// What quality asks and decides: anything that was scanned or typed, traced both ways with its papers; holds with what they stop;
// certificate packages; what waits for papers or a decision.
#pragma once

#include <QObject>
#include <QString>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "client/gateway/quality_readings.h"
#include "client/gateway/readings.h"
#include "client/gateway/records.h"
#include "client/models/book_link.h"
#include "client/models/kept_deed.h"
#include "client/models/paper_output.h"
#include "client/records/package_file.h"

namespace heatkeep {

struct PapersWaiting {
  std::vector<ConflictRow> conflicts;  // open ones
  std::vector<AwaitedRow> awaited;
  std::vector<HoldRow> holds;
};

// What is known of one thing.
struct PapersAnswer {
  Found what;
  std::optional<TraceRecord> record;
  std::vector<HeatDocument> documents;  // of the heat, or of the first heat that went in
  std::vector<HistoryRow> history;      // of a piece
  std::vector<HoldRow> holds;           // that name it
};

// A hold as it is asked of the book. `scope` as a hold takes it; `kind`: what that is to people.
AskedDeed HoldOn(const std::string& scope, const std::string& ref, const std::string& mill, const std::string& reason,
                 const std::string& kind);

// The record of a trace, proved and kept when it is written.
DeskPaper TracePaper(const Found& what);

class PapersWork : public QObject {
  Q_OBJECT

 public:
  PapersWork(BookLink& link, const DeskSettings& settings, QObject* parent = nullptr);

  void ReadWaiting();
  void Ask(const QString& text);  // shows the likeliest; the others are in others()
  void Show(const Found& what);
  void ReadAgain();

  const PapersWaiting& waiting() const { return waiting_; }
  const std::optional<PapersAnswer>& answer() const { return answer_; }
  const std::vector<Found>& others() const { return others_; }
  bool busy() const { return busy_ || deed_.busy(); }
  // "piece", "heat", "lot" or "document" as a hold takes it; empty: what is shown cannot be held.
  QString hold_scope() const;

  void Preview();  // what a hold on what is shown would stop: Previewed
  void Hold(const QString& reason);
  void HoldAgain(const HoldRow& lifted);
  void Lift(std::int64_t hold, const QString& evidence);
  void CloseConflict(std::int64_t conflict, const QString& words, bool free);
  void Ship(const QString& note);            // all good pieces of the order that are on site, under this delivery note
  void WritePackageTo(const QString& file);  // of the order or note that is shown

 signals:
  void WaitingShown();
  void Shown();
  void Unknown(const QString& text);
  void Previewed(const QString& words);
  void Held(std::int64_t hold, const QString& words);
  void Lifted(const HoldRow& hold, const QString& words);
  void Done(const QString& words);
  void Refused(const QString& words);

 private:
  std::function<void(const DbError&)> Refuser();
  void SetBusy(bool busy);
  void Do(const AskedDeed& deed);
  void After(const AskedDeed& deed, const nlohmann::json& answer, bool late);

  BookLink& link_;
  KeptDeed deed_;
  PapersWaiting waiting_;
  std::optional<PapersAnswer> answer_;
  std::vector<Found> others_;
  bool busy_ = false;
};

}  // namespace heatkeep
