#include "client/models/saw_work.h"

#include <QFile>
#include <algorithm>

#include "client/gateway/saw_deeds.h"
#include "client/models/qt_words.h"
#include "client/queue/saw_queue.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

constexpr double kMendSeconds = 1;
constexpr int kKeepAgainSeconds = 60;  // sheets that did not change: their time is kept anew so often

QString Name(const Json& json, const char* key) { return Q(json.at(key).get<std::string>()); }
QString Words(const Json& json, const char* key) { return BookWords(json.at(key).get<std::string>()); }

}  // namespace

SawWork::SawWork(BookLink& link, const DeskSettings& settings, QObject* parent)
    : QObject(parent), link_(link), deed_(link, settings, "saw"), settings_(settings), saw_(settings.saw), device_(settings.measured_with) {
  connect(&deed_, &KeptDeed::Lost, this, &SawWork::GoOnWithout);
  connect(&deed_, &KeptDeed::Answered, this, [this](const AskedDeed& deed, const Json& answer, bool late) {
    After(deed, answer, late);
    KeepSheetsNow();
    emit Shown();
  });
  connect(&deed_, &KeptDeed::Refused, this, [this](const AskedDeed& deed, const DbError& error, bool late) {
    emit Shown();
    emit Refused(KeptDeed::RefusalOf(deed, error, late));
    Read();
  });
  connect(&link, &BookLink::Ready, this, &SawWork::SendKept);
}

const Sheet* SawWork::sheet() const {
  const SheetBlock* const in_hand = block();
  for (const Sheet& sheet : on_saw_.sheets)
    for (const SheetBlock& b : sheet.blocks)
      if (&b == in_hand) return &sheet;
  return nullptr;
}

const SheetBlock* SawWork::block() const {
  const SheetBlock *at_saw = nullptr, *chosen = nullptr, *next = nullptr;
  for (const Sheet& sheet : on_saw_.sheets)
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

bool SawWork::IsPlace(const QString& name) const {
  return std::find(on_saw_.places.begin(), on_saw_.places.end(), name.toStdString()) != on_saw_.places.end();
}

SheetBlock* SawWork::Find(const std::string& tag) {
  for (Sheet& sheet : on_saw_.sheets)
    for (SheetBlock& b : sheet.blocks)
      if (b.tag == tag) return &b;
  return nullptr;
}

void SawWork::SetMending(bool mending) {
  mending_ = mending;
  emit Shown();
}

void SawWork::Tell(const QString& words, bool fully, bool late) { emit Done(KeptDeed::Told(words, late), fully); }

void SawWork::Read() {
  if (settings_.saw != saw_) {  // the desk was put at another saw
    on_saw_ = {};
    as_of_ = {};
    chosen_.clear();
    run_ = 0;
    saw_ = settings_.saw;
  }
  if (settings_.saw.isEmpty() || !link_.ready()) {
    emit Shown();
    return;
  }
  const QDateTime now = QDateTime::currentDateTime();
  link_.Ask(
      this, [saw = settings_.saw.toStdString()](Connection& book) { return std::pair(saw, ReadSawSheets(book, saw)); },
      [this, now](std::pair<std::string, SawSheets> read) {
        if (Q(read.first) != settings_.saw) return;  // the desk stands at another saw now
        SayWhatIsUrgent(read.second);
        on_saw_ = std::move(read.second);
        as_of_ = now;
        KeepSheetsNow();
        emit Shown();
      },
      [this](const DbError& error) {
        if (error.kind != DbError::Kind::Unreachable) emit Refused(WordsOf(error));
      });
}

// A plan that came in and is due before the one in hand goes first by itself; nobody is to find that out by chance.
void SawWork::SayWhatIsUrgent(const SawSheets& read) {
  const Sheet* const now = sheet();
  if (!now) return;
  for (const Sheet& other : read.sheets) {
    if (other.number == now->number) return;
    const bool known = std::any_of(on_saw_.sheets.begin(), on_saw_.sheets.end(), [&](const Sheet& s) { return s.number == other.number; });
    if (known || other.blocks.empty()) continue;
    const SheetBlock& first = other.blocks.front();
    emit Done(
        block()->state == "at saw"
            ? tr("Plan %1 came in and goes first, due %2: after the piece in the saw, %3 at %4")
                  .arg(Q(other.number), Q(other.due), Q(first.tag), Q(first.place))
            : tr("Plan %1 came in and goes first, due %2: now %3 at %4").arg(Q(other.number), Q(other.due), Q(first.tag), Q(first.place)),
        false);
    return;
  }
}

void SawWork::KeepSheetsNow() {
  if (!may_keep() || !as_of_.isValid() || link_.book().empty()) return;
  KeptSheets kept{.book = link_.book(),
                  .login = link_.who().toStdString(),
                  .actions = {},
                  .saw = settings_.saw.toStdString(),
                  .read_at_ms = 0,
                  .stop_stroke = on_saw_.stop_stroke,
                  .tape_doubt = on_saw_.tape_doubt,
                  .devices = {},
                  .places = on_saw_.places,
                  .sheets = on_saw_.sheets};
  for (const char* deed : {"pull", "record_cut", "put_away", "report_missing", "measure_at_saw", "quarantine", "hand_over", "take_over"})
    if (link_.May(deed)) kept.actions.emplace_back(deed);
  for (const DeviceRow& row : on_saw_.devices) kept.devices.push_back({row.device, row.kind, row.doubt, row.overdue});
  std::string text = TextOf(kept);
  if (text == kept_ && kept_at_.secsTo(as_of_) < kKeepAgainSeconds) return;
  kept.read_at_ms = as_of_.toMSecsSinceEpoch();
  try {
    KeepSheets(SheetsFileOf(settings_.queue_file.toStdString()), kept);
    kept_ = std::move(text);
    kept_at_ = as_of_;
  } catch (const QueueError& error) { emit Refused(tr("the sheets cannot be kept for a start without the book: %1").arg(Q(error.what()))); }
}

bool SawWork::StartAway() {
  if (!may_keep()) return false;
  try {
    std::optional<KeptSheets> kept = ReadKeptSheets(SheetsFileOf(settings_.queue_file.toStdString()));
    if (!kept) return false;
    if (Q(kept->saw) != settings_.saw) {
      emit Refused(
          tr("the sheets kept here are of saw %1, and this desk stands at saw %2: they are not used").arg(Q(kept->saw), settings_.saw));
      return false;
    }
    QSet<QString> actions;
    for (const std::string& action : kept->actions) actions.insert(Q(action));
    link_.Presume(Q(kept->login), actions);
    on_saw_ = {std::move(kept->sheets), kept->stop_stroke, {}, kept->tape_doubt, std::move(kept->places), std::nullopt};
    for (const KeptDevice& d : kept->devices) on_saw_.devices.push_back({d.device, d.kind, d.doubt, d.overdue});
    as_of_ = QDateTime::fromMSecsSinceEpoch(kept->read_at_ms);
    for (const AskedDeed* deed : deed_.Missing())
      for (const Json& body : deed->bodies) TakeAsDone(deed->deed, body);
    EachKeptSince(settings_.queue_file.toStdString(), kept->read_at_ms,
                  [this](const std::string& deed, const Json& body) { TakeAsDone(deed, body); });
  } catch (const std::exception& error) {
    on_saw_ = {};
    as_of_ = {};
    emit Refused(tr("the sheets kept here are not used: %1").arg(Q(error.what())));
    return false;
  }
  emit Shown();
  return true;
}

// What this deed did to the sheets, its answer unseen.
void SawWork::TakeAsDone(const std::string& deed, const Json& body) {
  const std::string tag = body.value("tag", "");
  SheetBlock* const b = Find(tag);
  if (deed == "pull") {
    if (b && b->state == "promised") b->state = "at saw";
  } else if (deed == "record_cut" && !body.value("finish", false)) {
    if (b) AddDone(*b, body.at("strokes"));
  } else if (deed == "hand_over") {
    on_saw_.handover = HandoverRow{tag, body.value("words", ""), link_.who().toStdString()};
  } else if (deed == "take_over") {
    on_saw_.handover.reset();
  } else if (deed == "record_cut") {
    if (b) b->state = "done";
    const Json left = body.value("left", Json::object());
    if (left.contains("tag")) {
      drop_ = Name(left, "tag");
      drop_place_ = Q(left.value("place", ""));
    }
  } else if (deed == "put_away" && Q(tag) == drop_) {
    drop_.clear();
  }
}

void SawWork::GoOnWithout(const AskedDeed& deed, const QString& words) {
  QString more;
  if (may_keep()) {
    for (const Json& body : deed.bodies) TakeAsDone(deed.deed, body);
    if (deed.deed == "record_cut" && deed.bodies[0].value("left", Json::object()).value("fate", "") == "drop")
      more = tr(". Write %1 and its heat on what is left: it gets its own tag when the book is back").arg(Name(deed.bodies[0], "tag"));
    KeepSheetsNow();
  }
  emit Shown();
  emit Refused(words + more);
}

void SawWork::Choose(const QString& tag) {
  chosen_ = tag.toStdString();
  run_ = 0;
  emit Shown();
}

void SawWork::NextRun() {
  if (const SheetBlock* b = block()) run_ = (run_ + 1) % std::max(1, static_cast<int>(RemainingOf(*b).cuts.size()));
  emit Shown();
}

bool SawWork::MeasureWith(const QString& device) {
  for (const DeviceRow& row : on_saw_.devices)
    if (Q(row.device) == device) {
      device_ = device;
      emit Shown();
      return true;
    }
  return false;
}

void SawWork::NextDevice() {
  const auto& all = on_saw_.devices;
  const auto at = std::find_if(all.begin(), all.end(), [this](const DeviceRow& row) { return Q(row.device) == device_; });
  const auto next = at == all.end() ? all.begin() : at + 1;
  device_ = next == all.end() ? QString() : Q(next->device);
  emit Shown();
}

void SawWork::Pull(const QString& tag, const QString& heat_read) {
  const std::string piece = tag.toStdString();
  const SheetBlock* const planned = Find(piece);
  if (!link_.ready() && (!planned || planned->state != "promised")) {
    emit Refused(tr("%1 is not on the sheets that were read before the book went away: take %2")
                     .arg(tag, block() ? tr("%1 at %2").arg(Q(block()->tag), Q(block()->place)) : tr("none")));
    return;
  }
  if (on_saw_.sheets.empty()) {
    emit Refused(as_of_.isValid() ? tr("%1 is on no sheet of saw %2: nothing is planned for it here").arg(tag, settings_.saw)
                                  : tr("the sheets are not read yet; scan again"));
    return;
  }
  // what is on no sheet here is asked for by the plan in hand, so that another saw's piece is refused
  Json body{{"tag", piece}, {"saw", settings_.saw.toStdString()}, {"plan", (sheet() ? *sheet() : on_saw_.sheets.front()).number}};
  for (const Sheet& sheet : on_saw_.sheets)
    for (const SheetBlock& b : sheet.blocks)
      if (&b == planned) body["plan"] = sheet.number;
  if (!heat_read.isEmpty()) body["heat_read"] = heat_read.toStdString();
  Do({"pull", {body}, {}, tr("the fetching of %1").arg(tag)});
}

void SawWork::AfterPull(const Json& body, const Json& answer, bool late) {
  const QString tag = Name(body, "tag");
  if (answer.contains("refused")) {
    QString words = Words(answer, "words");
    if (answer["refused"] == "HK044" && !body.contains("heat_read") && !late) {
      emit HeatWanted(tag, words);
      return;
    }
    if (SheetBlock* b = Find(tag.toStdString()); b && late) b->state = "promised";  // it was taken as done
    const SheetBlock* const next = block();
    if (next && Q(next->tag) != tag && !words.contains(Q(next->tag)))
      words += next->state == "at saw" ? tr(". In the saw is %1").arg(Q(next->tag))
                                       : tr(". On this sheet it is %1 at %2").arg(Q(next->tag), Q(next->place));
    emit Refused(late ? tr("%1, whose answer was missing, is refused: %2").arg(tag, words) : words);
    return;
  }
  if (SheetBlock* b = Find(tag.toStdString()); b && b->state == "promised") b->state = "at saw";
  if (!late) {
    drop_.clear();
    run_ = 0;
  }
  const bool kept = answer.contains("kept");
  Tell(kept ? tr("%1 is in the saw; kept here until the book is back").arg(tag) : tr("%1 is the right one: clamp it").arg(tag), !kept,
       late);
}

void SawWork::Cut(const CutTold& told) {
  const SheetBlock* const b = block();
  if (!b || b->state != "at saw") return;
  CutTold all = told;
  if ((all.rest || all.measured) && all.measured_with.empty()) all.measured_with = device_.toStdString();
  const CutBody cut = CutBodyOf(*b, all, settings_.saw.toStdString());
  Do({"record_cut", {cut.body}, {{"rest_nm", cut.rest.nm}}, tr("the cut of %1").arg(Q(b->tag))});
}

void SawWork::AfterCut(const AskedDeed& deed, const Json& answer, bool late) {
  const Json& body = deed.bodies[0];
  const QString tag = Name(body, "tag");
  if (SheetBlock* b = Find(tag.toStdString())) b->state = "done";
  if (!late) run_ = 0;
  const bool kept = answer.contains("kept");
  QString words = tr("%1 is cut").arg(tag);
  const Json drop = answer.value("drop_tag", Json());
  if (drop.is_string()) {
    const QString fresh = Q(drop.get<std::string>());
    if (drop_.isEmpty()) {
      drop_ = fresh;
      drop_place_ = Q(body["left"].value("place", ""));
    }
    words += tr("; what is left is %1, %2")
                 .arg(fresh, settings_.units.Words(Length{deed.memo.value("rest_nm", std::int64_t{0})}, Rounding::Down));
    if (kept) words += tr(": write that and the heat on it, its label prints when the book is back");
    else emit LabelWanted(fresh);
  }
  if (answer.contains("stop") && answer["stop"].is_string()) words += ". " + Words(answer, "stop");
  if (kept) words += tr("; kept here until the book is back");
  Tell(words, !kept, late);
  Read();
}

void SawWork::PutAway(const QString& place) {
  if (drop_.isEmpty()) return;
  Do({"put_away", {{{"tag", drop_.toStdString()}, {"place", place.toStdString()}}}, {}, tr("the putting away of %1").arg(drop_)});
}

void SawWork::TakeBack(int strokes, const QString& why) {
  if (!link_.ready()) {
    emit Refused(tr("the book cannot be reached: write on %1 how long it is, and take back later what was not cut").arg(drop_));
    return;
  }
  const Json body{{"tag", drop_.toStdString()}, {"count", strokes}, {"reason", why.toStdString()}};
  Do({"not_cut", {body}, {}, tr("what was not cut of %1").arg(drop_)});
}

void SawWork::After(const AskedDeed& deed, const Json& answer, bool late) {
  const Json& body = deed.bodies[0];
  if (deed.deed == "pull") return AfterPull(body, answer, late);
  if (deed.deed == "record_cut") return body.value("finish", false) ? AfterCut(deed, answer, late) : AfterOpenCut(deed, answer, late);
  if (deed.deed == "hand_over" || deed.deed == "take_over") {
    TakeAsDone(deed.deed, body);
    if (deed.deed == "hand_over")
      Tell(tr("saw %1 is handed over: who comes takes it over here").arg(settings_.saw), !answer.contains("kept"), late);
    else
      Tell(tr("saw %1 is yours: %2 wrote \"%3\"").arg(settings_.saw, Q(answer.value("given_by", "")), Q(answer.value("words", ""))), true,
           late);
    Read();
    return;
  }
  if (deed.deed == "not_cut") {
    const Length now{answer.at("length_nm").get<std::int64_t>()};
    Tell(tr("taken back: %1 is %2 long, and gets a label that says so").arg(Name(body, "tag"), settings_.units.Words(now, Rounding::Down)),
         true, late);
    emit LabelWanted(Name(body, "tag"));
    return Read();
  }
  if (Name(body, "tag") == drop_) drop_.clear();
  Tell(tr("%1 lies at %2").arg(Name(body, "tag"), Name(body, "place")), !answer.contains("kept"), late);
}

void SawWork::HandOver(const DoneCounts& done, const QString& words) {
  Json hand{{"saw", settings_.saw.toStdString()}, {"words", words.toStdString()}};
  const SheetBlock* const b = block();
  if (!b || b->state != "at saw") return AskHandOver(hand);
  hand["tag"] = b->tag;
  hand["open"] = Json::array();
  for (const SheetCut& cut : b->cuts) hand["open"].push_back({{"order", cut.order}, {"line", cut.line}, {"why", words.toStdString()}});
  const Json cut = OpenCutBodyOf(*b, done, settings_.saw.toStdString());
  if (cut["strokes"].empty()) return AskHandOver(hand);
  Do({"record_cut", {cut}, {{"hand_over", hand}}, tr("what was cut of %1").arg(Q(b->tag))});
}

void SawWork::AskHandOver(const Json& body) { Do({"hand_over", {body}, {}, tr("the handing over of saw %1").arg(settings_.saw)}); }

// The first half of a hand-over.
void SawWork::AfterOpenCut(const AskedDeed& deed, const Json& answer, bool late) {
  if (SheetBlock* b = Find(deed.bodies[0].at("tag").get<std::string>()); b && !late) AddDone(*b, deed.bodies[0].at("strokes"));
  if (answer.contains("stop") && answer["stop"].is_string()) emit Refused(Words(answer, "stop"));
  AskHandOver(deed.memo.at("hand_over"));
}

void SawWork::TakeOver() {
  if (link_.ready()) Do({"take_over", {{{"saw", settings_.saw.toStdString()}}}, {}, tr("the taking over of saw %1").arg(settings_.saw)});
  else emit Refused(tr("the book cannot be reached: go on cutting, the saw is taken over when it is back"));
}

void SawWork::LeaveDrop() {
  const QString tag = drop_;
  drop_.clear();
  emit Done(tr("%1 lies at %2").arg(tag, drop_place_), true);
  emit Shown();
}

void SawWork::Mend(planning::Mishaps mishaps) {
  const Sheet* const now = sheet();
  if (!now) return;
  if (!link_.ready()) {
    emit Refused(tr("the book cannot be reached, so nothing can be planned anew: go on with another piece of the sheet"));
    return;
  }
  if (!mishaps.measured.empty()) mishaps.measured_with = device_.toStdString();
  SetMending(true);
  link_.Ask(
      this, [mishaps, plan = std::stoll(now->number)](Connection& book) { return planning::MendPlan(book, plan, mishaps, kMendSeconds); },
      [this](const planning::MendedPlan& mended) {
        SetMending(false);
        QStringList words;
        for (const std::string& w : mended.mended.words) words.append(BookWords(w));
        for (const std::string& w : mended.put_back) words.append(tr("nothing is cut from %1: take it from the saw").arg(Q(w)));
        const int unmet = mended.mended.plan.value.unmet_pieces;
        if (unmet > 0) words.append(tr("%n piece(s) are short; the planner sees it", nullptr, unmet));
        emit Done(tr("Planned anew: %1").arg(words.isEmpty() ? tr("nothing else changes") : words.join("; ")), unmet == 0);
        Read();
      },
      [this](const DbError& error) {
        SetMending(false);
        emit Refused(WordsOf(error));
        Read();
      },
      BookLink::Pace::Long);
}

void SawWork::Do(const AskedDeed& deed) {
  if (busy()) return;
  if (!link_.ready() || !deed_.Do(deed)) Keep(deed);
  emit Shown();
}

void SawWork::Keep(const AskedDeed& deed) {
  try {
    if (!may_keep())
      throw QueueError(
          tr("the book cannot be reached, and this desk keeps no deeds: note it down; the settings name a file for them").toStdString());
    SawQueue queue(settings_.queue_file.toStdString());
    const SawQueue::Kept kept = queue.Keep(deed.deed, deed.bodies[0], link_.who().toStdString(), {NewRequest().text, NewRequest().text});
    After(deed, {{"kept", kept.seq}, {"drop_tag", kept.tags.empty() ? Json() : Json(kept.tags.back())}}, false);
  } catch (const std::exception& error) { emit Refused(BookWords(std::string(error.what()))); }
}

void SawWork::SendKept() {
  if (!may_keep()) {
    Read();
    return;
  }
  struct Sent {
    int done = 0;
    QStringList conflicts, drops;
    QString others, wrong;
  };
  link_.Ask(
      this,
      [file = settings_.queue_file.toStdString()](Connection& book) {
        Sent sent;
        try {
          SawQueue queue(file);
          const std::vector<SawQueue::Entry> entries = queue.Entries();
          const auto other = queue.Send(
              book.User(), ReadLastKept(book, queue.device()), [&](const Json& deed) { return SawDeeds(book).SendKept(deed); },
              [&](const SawQueue::Sent& one) {
                const Json left = entries.at(static_cast<std::size_t>(one.seq - 1)).deed.at("body").value("left", Json::object());
                if (one.outcome == "conflict") sent.conflicts.append(Q(one.words));
                else ++sent.done;
                if (one.outcome != "conflict" && left.contains("tag")) sent.drops.append(Name(left, "tag"));
              });
          if (other) sent.others = Q(other->deed["login"].get<std::string>());
        } catch (const QueueError& error) { sent.wrong = error.what(); }
        return sent;
      },
      [this](const Sent& sent) {
        if (!sent.wrong.isEmpty()) emit Refused(sent.wrong);
        else if (!sent.others.isEmpty())
          emit Refused(tr("deeds that %1 did are still kept here: %1 logs in and sends them").arg(sent.others));
        else if (sent.done > 0 || !sent.conflicts.isEmpty())
          emit Done(tr("the book is back: %n deed(s) kept here are booked", nullptr, sent.done) +
                        (sent.conflicts.isEmpty() ? QString() : tr("; for the lead: %1").arg(sent.conflicts.join("; "))),
                    sent.conflicts.isEmpty());
        for (const QString& drop : sent.drops) emit LabelWanted(drop);
        Read();
      },
      [this](const DbError& error) {
        if (error.kind != DbError::Kind::Unreachable) emit Refused(WordsOf(error));
      });
}

}  // namespace heatkeep
