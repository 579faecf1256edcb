#include "client/models/saw_work.h"

#include <QFile>
#include <algorithm>

#include "client/gateway/readings.h"
#include "client/gateway/saw_deeds.h"
#include "client/gateway/saw_readings.h"
#include "client/gateway/stock_deeds.h"
#include "client/models/qt_words.h"
#include "client/queue/saw_queue.h"
#include "schema/terms/length_text.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

constexpr double kMendSeconds = 1;

struct SawSheets {
  std::vector<Sheet> sheets;
  Length stop_stroke;
};

SawSheets ReadSheets(Connection& book, const std::string& saw) {
  SawSheets all;
  std::vector<PlanRow> plans;
  for (const PlanRow& plan : ReadPlans(book, Plans::Live))
    if (plan.saw == saw) plans.push_back(plan);
  std::stable_sort(plans.begin(), plans.end(), [](const PlanRow& a, const PlanRow& b) {
    return std::pair(a.due.empty(), std::tie(a.due, a.plan)) < std::pair(b.due.empty(), std::tie(b.due, b.plan));
  });
  for (const PlanRow& plan : plans) {
    std::optional<Sheet> sheet = ReadSheet(book, plan.plan);
    if (sheet && std::any_of(sheet->blocks.begin(), sheet->blocks.end(), [](const SheetBlock& b) { return b.state != "done"; })) all.sheets.push_back(std::move(*sheet));
  }
  for (const SawRow& row : ReadSaws(book))
    if (row.saw == saw) all.stop_stroke = row.stop_stroke;
  return all;
}

Json CallDeed(Connection& book, const std::string& deed, const RequestNumber& request, const Json& body) {
  if (deed == "pull") return SawDeeds(book).Pull(request, body);
  if (deed == "record_cut") return SawDeeds(book).RecordCut(request, body);
  return StockDeeds(book).PutAway(request, body);
}

QString Words(const Json& json, const char* key) { return BookWords(json.at(key).get<std::string>()); }

}  // namespace

SawWork::SawWork(BookLink& link, const DeskSettings& settings, QObject* parent) : QObject(parent), link_(link), deed_(link), settings_(settings) {
  connect(&deed_, &SureDeed::Lost, this, [this] {
    emit Shown();
    emit Refused(tr("the answer got lost: it is asked again when the book is back, and is done once"));
  });
  connect(&link, &BookLink::Ready, this, &SawWork::SendKept);
}

const Sheet* SawWork::sheet() const {
  const SheetBlock* const in_hand = block();
  for (const Sheet& sheet : sheets_)
    for (const SheetBlock& b : sheet.blocks)
      if (&b == in_hand) return &sheet;
  return nullptr;
}

const SheetBlock* SawWork::block() const {
  const SheetBlock *at_saw = nullptr, *chosen = nullptr, *next = nullptr;
  for (const Sheet& sheet : sheets_)
    for (const SheetBlock& b : sheet.blocks) {
      if (b.state == "at saw" && !at_saw) at_saw = &b;
      if (b.state != "promised") continue;
      if (b.tag == chosen_) chosen = &b;
      if (!next) next = &b;
    }
  return at_saw ? at_saw : chosen ? chosen : next;
}

SawWork::Step SawWork::step() const {
  if (settings_.saw.isEmpty()) return Step::NoSaw;
  if (!drop_.isEmpty()) return Step::Place;
  const SheetBlock* const b = block();
  return !b ? Step::Nothing : b->state == "at saw" ? Step::Cut : Step::Pull;
}

bool SawWork::may_keep() const { return !settings_.queue_file.isEmpty() && QFile::exists(settings_.queue_file); }

SheetBlock* SawWork::Find(const std::string& tag) {
  for (Sheet& sheet : sheets_)
    for (SheetBlock& b : sheet.blocks)
      if (b.tag == tag) return &b;
  return nullptr;
}

void SawWork::SetMending(bool mending) {
  mending_ = mending;
  emit Shown();
}

void SawWork::Read() {
  if (settings_.saw.isEmpty() || !link_.ready()) {
    emit Shown();
    return;
  }
  link_.Ask(this, [saw = settings_.saw.toStdString()](Connection& book) { return ReadSheets(book, saw); },
            [this](SawSheets read) {
              sheets_ = std::move(read.sheets);
              stop_stroke_ = read.stop_stroke;
              emit Shown();
            },
            [this](const DbError& error) { if (error.kind != DbError::Kind::Unreachable) emit Refused(WordsOf(error)); });
}

void SawWork::Choose(const QString& tag) {
  chosen_ = tag.toStdString();
  run_ = 0;
  emit Shown();
}

void SawWork::NextRun() {
  if (const SheetBlock* b = block(); b && !b->cuts.empty()) run_ = (run_ + 1) % static_cast<int>(b->cuts.size());
  emit Shown();
}

void SawWork::Pull(const QString& tag, const QString& heat_read) {
  const std::string piece = tag.toStdString();
  const SheetBlock* const planned = Find(piece);
  if (!link_.ready() && (!planned || planned->state != "promised")) {
    emit Refused(tr("%1 is not on the sheets that were read before the book went away: take %2").arg(tag, block() ? QString::fromStdString(block()->tag) : tr("none")));
    return;
  }
  Json body{{"tag", piece}, {"saw", settings_.saw.toStdString()}};
  for (const Sheet& sheet : sheets_)
    for (const SheetBlock& b : sheet.blocks)
      if (&b == planned) body["plan"] = sheet.number;
  if (!heat_read.isEmpty()) body["heat_read"] = heat_read.toStdString();
  Do("pull", body, [this, tag, piece, asked_heat = !heat_read.isEmpty()](const Json& answer) {
    if (answer.contains("refused")) {
      if (answer["refused"] == "HK044" && !asked_heat) emit HeatWanted(tag, Words(answer, "words"));
      else emit Refused(Words(answer, "words"));
      return;
    }
    if (SheetBlock* b = Find(piece)) b->state = "at saw";
    drop_.clear();
    run_ = 0;
    emit Done(answer.contains("kept") ? tr("%1 is in the saw; kept here until the book is back").arg(tag) : tr("%1 is the right one: clamp it").arg(tag), !answer.contains("kept"));
  });
}

void SawWork::Cut(const CutTold& told) {
  const SheetBlock* const b = block();
  if (!b || b->state != "at saw") return;
  CutBody cut = CutBodyOf(*b, told, settings_.saw.toStdString());
  Do("record_cut", cut.body, [this, tag = b->tag, rest = cut.rest, place = QString::fromStdString(cut.body["left"].value("place", ""))](const Json& answer) {
    drop_place_ = place;
    AfterCut(tag, answer, rest);
  });
}

void SawWork::AfterCut(const std::string& tag, const Json& answer, Length rest) {
  if (SheetBlock* b = Find(tag)) b->state = "done";
  run_ = 0;
  const bool kept = answer.contains("kept");
  QString words = tr("%1 is cut").arg(QString::fromStdString(tag));
  const Json drop = answer.value("drop_tag", Json());
  if (drop.is_string()) {
    drop_ = QString::fromStdString(drop.get<std::string>());
    words += tr("; what is left is %1, %2").arg(drop_, settings_.units.Words(rest, Rounding::Down));
    if (!kept) emit LabelWanted(drop_);
  }
  if (answer.contains("stop") && answer["stop"].is_string()) words += ". " + Words(answer, "stop");
  if (kept) words += tr("; kept here until the book is back");
  emit Done(words, !kept);
  Read();
}

void SawWork::PutAway(const QString& place) {
  const QString tag = drop_;
  if (tag.isEmpty()) return;
  Do("put_away", {{"tag", tag.toStdString()}, {"place", place.toStdString()}}, [this, tag, place](const Json& answer) {
    drop_.clear();
    emit Done(tr("%1 lies at %2").arg(tag, place), !answer.contains("kept"));
  });
}

void SawWork::LeaveDrop() {
  const QString tag = drop_;
  drop_.clear();
  emit Done(tr("%1 lies at %2").arg(tag, drop_place_), true);
  emit Shown();
}

void SawWork::Mend(const planning::Mishaps& mishaps) {
  const Sheet* const now = sheet();
  if (!now) return;
  if (!link_.ready()) {
    emit Refused(tr("the book cannot be reached, so nothing can be planned anew: go on with another piece of the sheet"));
    return;
  }
  SetMending(true);
  link_.Ask(this, [mishaps, plan = std::stoll(now->number)](Connection& book) { return planning::MendPlan(book, plan, mishaps, kMendSeconds); },
            [this](const planning::MendedPlan& mended) {
              SetMending(false);
              QStringList words;
              for (const std::string& w : mended.mended.words) words.append(BookWords(w));
              for (const std::string& w : mended.put_back) words.append(tr("nothing is cut from %1: take it from the saw").arg(QString::fromStdString(w)));
              const int unmet = mended.mended.plan.value.unmet_pieces;
              if (unmet > 0) words.append(tr("%n piece(s) are short; the planner sees it", nullptr, unmet));
              emit Done(tr("Planned anew: %1").arg(words.isEmpty() ? tr("nothing else changes") : words.join("; ")), unmet == 0);
              Read();
            },
            [this](const DbError& error) {
              SetMending(false);
              emit Refused(WordsOf(error));
              Read();
            }, BookLink::Pace::Long);
}

void SawWork::Do(const std::string& deed, const Json& body, std::function<void(const Json&)> then) {
  if (busy()) return;
  if (!link_.ready()) {
    Keep(deed, body, then);
    return;
  }
  deed_.Do([deed, body, request = NewRequest()](Connection& book) { return CallDeed(book, deed, request, body); },
           [this, then = std::move(then)](const Json& answer) {
             then(answer);
             emit Shown();
           },
           [this](const DbError& error) {
             emit Shown();
             emit Refused(WordsOf(error));
             Read();
           });
  emit Shown();
}

void SawWork::Keep(const std::string& deed, const Json& body, const std::function<void(const Json&)>& then) {
  try {
    if (!may_keep()) throw QueueError(tr("the book cannot be reached, and this desk keeps no deeds: note it down; the settings name a file for them").toStdString());
    SawQueue queue(settings_.queue_file.toStdString());
    const SawQueue::Kept kept = queue.Keep(deed, body, link_.who().toStdString(), {NewRequest().text, NewRequest().text});
    then({{"kept", kept.seq}, {"drop_tag", kept.tags.empty() ? Json() : Json(kept.tags.back())}});
  } catch (const std::exception& error) {
    emit Refused(BookWords(std::string(error.what())));
  }
  emit Shown();
}

void SawWork::SendKept() {
  if (!may_keep()) {
    Read();
    return;
  }
  struct Sent {
    int done = 0;
    QStringList conflicts;
    QString others, wrong;
  };
  link_.Ask(this, [file = settings_.queue_file.toStdString()](Connection& book) {
    Sent sent;
    try {
      SawQueue queue(file);
      const auto other = queue.Send(book.User(), ReadLastKept(book, queue.device()), [&](const Json& deed) { return SawDeeds(book).SendKept(deed); }, [&](const SawQueue::Sent& one) {
        if (one.outcome == "conflict") sent.conflicts.append(QString::fromStdString(one.words));
        else ++sent.done;
      });
      if (other) sent.others = QString::fromStdString(other->deed["login"].get<std::string>());
    } catch (const QueueError& error) {
      sent.wrong = error.what();
    }
    return sent;
  }, [this](const Sent& sent) {
    if (!sent.wrong.isEmpty()) emit Refused(sent.wrong);
    else if (!sent.others.isEmpty()) emit Refused(tr("deeds that %1 did are still kept here: %1 logs in and sends them").arg(sent.others));
    else if (sent.done > 0 || !sent.conflicts.isEmpty())
      emit Done(tr("the book is back: %n deed(s) kept here are booked", nullptr, sent.done)
                    + (sent.conflicts.isEmpty() ? QString() : tr("; for the lead: %1").arg(sent.conflicts.join("; "))), sent.conflicts.isEmpty());
    Read();
  }, [this](const DbError& error) { if (error.kind != DbError::Kind::Unreachable) emit Refused(WordsOf(error)); });
}

}  // namespace heatkeep
