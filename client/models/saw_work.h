// What is done at one saw: its sheets, the piece in hand, and its deeds, on the network and off it.
//
// A piece goes Pull (scanned: green, or refused with the reason) -> Cut (confirmed as planned or as it really went) -> Place (the drop's
// tag prints; its place is scanned). While the book cannot be reached, deeds are kept in the saw's queue (client/queue/saw_queue.h) in
// their order and sent when it is back. A deed whose answer was lost is asked again first, under its own request number, so that it is
// done once. What was read of the sheets stays in memory: a desk that is started while the book is away has none.
#pragma once

#include <QObject>
#include <QString>
#include <functional>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "client/gateway/cut_body.h"
#include "client/gateway/request_number.h"
#include "client/models/book_link.h"
#include "client/models/desk_settings.h"
#include "client/models/sure_deed.h"
#include "client/planning/mend_plan.h"
#include "schema/terms/rows.h"

namespace heatkeep {

class SawWork : public QObject {
  Q_OBJECT

 public:
  enum class Step { NoSaw, Nothing, Pull, Cut, Place };

  SawWork(BookLink& link, const DeskSettings& settings, QObject* parent = nullptr);

  void Read();  // the live sheets of this saw, earliest due first; Shown when they are here

  const std::vector<Sheet>& sheets() const { return sheets_; }
  const Sheet* sheet() const;       // of the piece in hand
  const SheetBlock* block() const;  // the piece in hand: at the saw, or the next to fetch
  Step step() const;
  const QString& drop() const { return drop_; }  // Place: the tag that waits for its place
  int run() const { return run_; }               // Cut: which kind of cut is next, from 0
  Length stop_stroke() const { return stop_stroke_; }
  bool may_keep() const;  // off the network a deed can be kept
  bool busy() const { return mending_ || deed_.asking(); }

  void Choose(const QString& tag);  // this piece next
  void Pull(const QString& tag, const QString& heat_read = {});
  void NextRun();
  void Cut(const CutTold& told);
  void PutAway(const QString& place);
  void LeaveDrop();  // it stays where the piece came from
  void Mend(const planning::Mishaps& mishaps);

 signals:
  void Shown();
  void Done(const QString& words, bool done_fully);          // a tick; or a warning: kept only, or something is to be heeded
  void Refused(const QString& words);
  void HeatWanted(const QString& tag, const QString& words);  // it is asked for: Pull again with the heat read
  void LabelWanted(const QString& tag);                       // a drop has a new tag

 private:
  using Json = nlohmann::json;
  void Do(const std::string& deed, const Json& body, std::function<void(const Json&)> then);
  void Keep(const std::string& deed, const Json& body, const std::function<void(const Json&)>& then);
  void SendKept();
  void AfterCut(const std::string& tag, const Json& answer, Length rest);
  SheetBlock* Find(const std::string& tag);
  void SetMending(bool mending);

  BookLink& link_;
  SureDeed deed_;  // before what is kept is sent: it is asked again first
  const DeskSettings& settings_;
  std::vector<Sheet> sheets_;
  std::string chosen_;
  QString drop_, drop_place_;
  int run_ = 0;
  Length stop_stroke_;
  bool mending_ = false;
};

}  // namespace heatkeep
