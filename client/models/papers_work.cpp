#include "client/models/papers_work.h"

#include <map>

#include "client/gateway/read_labels.h"
#include "client/gateway/snapshot.h"
#include "client/models/qt_words.h"
#include "client/records/proved_record.h"
#include "reports/trace_report.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

RecordSubject SubjectOf(const Found& what) { return {what.kind, what.name, what.mill}; }

PapersAnswer ReadAnswer(Connection& book, const Found& what) {
  PapersAnswer answer{.what = what, .record = {}, .documents = {}, .history = {}, .holds = {}};
  Snapshot snapshot(book);
  if (what.kind == "piece" || what.kind == "heat" || what.kind == "order")
    answer.record = ReadFamily(book, what.kind, what.name, what.mill);
  std::string heat = what.kind == "heat" ? what.name : "";
  if (heat.empty() && answer.record)
    for (const TraceLine& line : answer.record->lines)
      if (heat.empty()) heat = line.heat;
  if (!heat.empty()) answer.documents = ReadDocumentsOf(book, heat);
  if (what.kind == "piece") answer.history = ReadHistory(book, what.name);
  for (const HoldRow& hold : ReadLiveHolds(book))
    if (hold.ref == what.name || hold.ref == heat) answer.holds.push_back(hold);
  snapshot.End();
  return answer;
}

}  // namespace

PapersWork::PapersWork(BookLink& link, const DeskSettings& settings, QObject* parent)
    : QObject(parent), link_(link), deed_(link, settings, "papers") {
  connect(&deed_, &KeptDeed::Lost, this, [this](const AskedDeed&, const QString& words) {
    emit Refused(words);
    emit Shown();
  });
  connect(&deed_, &KeptDeed::Answered, this, &PapersWork::After);
  connect(&deed_, &KeptDeed::Refused, this, [this](const AskedDeed& deed, const DbError& error, bool late) {
    emit Refused(KeptDeed::RefusalOf(deed, error, late));
    emit Shown();
  });
}

void PapersWork::SetBusy(bool busy) {
  busy_ = busy;
  emit Shown();
}

std::function<void(const DbError&)> PapersWork::Refuser() {
  return [this](const DbError& error) {
    SetBusy(false);
    emit Refused(WordsOf(error));
  };
}

void PapersWork::ReadWaiting() {
  link_.Ask(
      this,
      [decides = link_.May("close_conflict") || link_.May("cancel_plan")](Connection& book) {
        PapersWaiting waiting;
        if (decides)  // who does not may not read them either
          for (ConflictRow& row : ReadConflicts(book))
            if (row.closed_by.empty()) waiting.conflicts.push_back(std::move(row));
        waiting.awaited = ReadPapersAwaited(book);
        waiting.holds = ReadLiveHolds(book);
        return waiting;
      },
      [this](PapersWaiting waiting) {
        waiting_ = std::move(waiting);
        emit WaitingShown();
      },
      Refuser(), BookLink::Pace::Long);
}

void PapersWork::Ask(const QString& text) {
  link_.Ask(
      this, [word = text.toStdString()](Connection& book) { return LookUp(book, word); },
      [this, text](const std::vector<Found>& found) {
        if (found.empty()) {
          emit Unknown(text);
          return;
        }
        others_.assign(found.begin() + 1, found.end());
        Show(found.front());
      },
      Refuser());
}

void PapersWork::Show(const Found& what) {
  SetBusy(true);
  link_.Ask(
      this, [what](Connection& book) { return ReadAnswer(book, what); },
      [this](PapersAnswer answer) {
        answer_ = std::move(answer);
        SetBusy(false);
      },
      Refuser());
}

void PapersWork::ReadAgain() {
  if (answer_ && link_.ready()) Show(answer_->what);
}

QString PapersWork::hold_scope() const {
  if (!answer_) return {};
  const std::string& kind = answer_->what.kind;
  return kind == "document" ? QString("certificate") : kind == "piece" || kind == "heat" ? Q(kind) : QString();
}

void PapersWork::Preview() {
  if (hold_scope().isEmpty()) return;
  link_.Ask(
      this,
      [scope = hold_scope().toStdString(), what = answer_->what](Connection& book) {
        return PreviewHold(book, scope, what.name, what.mill);
      },
      [this](const Json& preview) { emit Previewed(BookWords(preview.at("words").get<std::string>())); }, Refuser());
}

void PapersWork::Do(const AskedDeed& deed) {
  if (!deed_.Do(deed) && !deed_.busy()) emit Refused(tr("the book cannot be reached: do it when it is back"));
  emit Shown();
}

void PapersWork::Hold(const QString& reason) {
  const Found what = answer_->what;
  Do(HoldOn(hold_scope().toStdString(), what.name, what.mill, reason.toStdString(), what.kind));
}

void PapersWork::HoldAgain(const HoldRow& lifted) { Do(HoldOn(lifted.scope, lifted.ref, lifted.mill, lifted.reason, lifted.scope)); }

void PapersWork::Lift(std::int64_t hold, const QString& evidence) {
  Json memo;  // the hold as it was, to be placed again
  if (answer_)
    for (const HoldRow& row : answer_->holds)
      if (row.hold == hold) memo = {{"scope", row.scope}, {"ref", row.ref}, {"mill", row.mill}, {"reason", row.reason}};
  Do({"lift_hold", {{{"hold", std::to_string(hold)}, {"evidence", evidence.toStdString()}}}, memo, tr("the lifting of hold %1").arg(hold)});
}

void PapersWork::CloseConflict(std::int64_t conflict, const QString& words, bool free) {
  Do({"close_conflict",
      {{{"conflict", conflict}, {"words", words.toStdString()}, {"free", free}}},
      {},
      tr("the closing of conflict %1").arg(conflict)});
}

void PapersWork::Ship(const QString& note) {
  SetBusy(true);
  link_.Ask(
      this,
      [order = answer_->what.name, note = note.toStdString()](Connection& book) {
        Json shipment{{"note", note}, {"lines", Json::array()}};
        std::map<std::string, Json> lines;
        for (const BatchLabel& batch : ReadBatchLabels(book, order)) {
          shipment["customer"] = batch.customer;
          Json& line = lines.try_emplace(batch.line, Json{{"order", order}, {"line", batch.line}, {"count", 0}, {"heats", Json::array()}})
                           .first->second;
          line["count"] = line["count"].get<int>() + batch.count;
          line["heats"].push_back(batch.heat);
        }
        for (auto& [name, line] : lines) {
          if (line["heats"].size() < 2) line.erase("heats");
          shipment["lines"].push_back(std::move(line));
        }
        if (shipment["lines"].empty()) throw DbError(DbError::Kind::Refused, "", "no cut piece of order " + order + " is on site");
        return shipment;
      },
      [this, note](const Json& shipment) {
        SetBusy(false);
        Do({"ship", {shipment}, {{"note", note.toStdString()}}, tr("the shipment under note %1").arg(note)});
      },
      Refuser());
}

void PapersWork::After(const AskedDeed& deed, const Json& answer, bool late) {
  const auto done = [&](const QString& words) { emit Done(KeptDeed::Told(words, late)); };
  if (deed.deed == "place_hold") {
    const QString words = tr("%1 %2 is held: nothing of it is promised, pulled or shipped from now on")
                              .arg(BookWords(Q(deed.memo["kind"])), Q(deed.memo["name"]));
    emit Held(answer.at("hold_id").get<std::int64_t>(), KeptDeed::Told(words, late));
  } else if (deed.deed == "lift_hold") {
    const QString words = KeptDeed::Told(tr("the hold is lifted"), late);
    if (deed.memo.is_null()) emit Done(words);
    else emit Lifted({0, deed.memo["scope"], deed.memo["ref"], deed.memo["mill"], deed.memo["reason"], {}}, words);
  } else if (deed.deed == "close_conflict") {
    done(tr("the conflict is closed"));
  } else {
    int pieces = 0;
    for (const Json& line : answer.at("lines")) pieces += line.at("count").get<int>();
    done(tr("%n piece(s) left with note %1; Certificate package makes their papers", nullptr, pieces).arg(Q(deed.memo["note"])));
  }
  emit Shown();
  ReadWaiting();
  ReadAgain();
}

void PapersWork::WritePackageTo(const QString& file) {
  const Found what = answer_->what;
  SetBusy(true);
  link_.Ask(
      this,
      [what, to = file.toStdString()](Connection& book) {
        return WritePackage(book, {{"without_files", false}, {what.kind, what.name}}, to);
      },
      [this, file](const PackageFile& made) {
        SetBusy(false);
        QStringList against;
        for (const std::string& words : made.against) against.append(BookWords(words));
        if (!against.isEmpty()) emit Refused(tr("no package of %1: %2").arg(Q(made.subject), against.join("; ")));
        else emit Done(tr("the package of %1 is in %2: %n page(s)", nullptr, made.pages).arg(Q(made.subject), file));
      },
      Refuser(), BookLink::Pace::Long);
}

AskedDeed HoldOn(const std::string& scope, const std::string& ref, const std::string& mill, const std::string& reason,
                 const std::string& kind) {
  Json body{{"scope", scope}, {"ref", ref}, {"reason", reason}};
  if (!mill.empty()) body["mill"] = mill;
  return {"place_hold", {body}, {{"kind", kind}, {"name", ref}}, PapersWork::tr("the hold on %1 %2").arg(Q(kind), Q(ref))};
}

DeskPaper TracePaper(const Found& what) {
  return {"trace", [what](Connection& book, const std::string& file, const PrintOptions& print) {
            const std::optional<TraceRecord> record = ReadProvedTrace(book, SubjectOf(what));
            if (!record) throw std::invalid_argument("nothing was cut for " + what.name + ", so there is no record of it");
            WriteTracePdf(file, *record, print);
          }};
}

}  // namespace heatkeep
