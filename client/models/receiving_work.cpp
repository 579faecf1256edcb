#include "client/models/receiving_work.h"

#include <QFile>
#include <algorithm>
#include <set>
#include <tuple>

#include "client/gateway/deeds.h"
#include "client/gateway/readings.h"
#include "client/gateway/stock_deeds.h"
#include "client/models/qt_words.h"
#include "schema/terms/length_text.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

QString WordOf(const Json& json, const char* key) { return json.contains(key) && json[key].is_string() ? Q(json[key].get<std::string>()) : QString(); }

DoorFacts ReadFacts(Connection& book) {
  return {ReadExpected(book), ReadAtGate(book), ReadKnownHeats(book), ReadGradeDensities(book), ReadNames(book, "parties", "name"), ReadNames(book, "places", "place"),
          ReadSetting(book, "mass_mismatch_percent", "3")};
}

std::vector<GateGroup> GroupsOf(const std::vector<AtGateRow>& rows) {
  std::vector<GateGroup> groups;
  const auto alike = [](const AtGateRow& r) { return std::tie(r.bundle, r.mill, r.heat, r.grade, r.section, r.condition, r.owner, r.blocked, r.length, r.place); };
  for (const AtGateRow& row : rows) {
    auto at = std::find_if(groups.begin(), groups.end(), [&](const GateGroup& g) { return alike(g.first) == alike(row); });
    if (at == groups.end()) at = groups.insert(groups.end(), GateGroup{row, {}, {}});
    at->tags.push_back(row.tag);
    at->mass += row.mass;
  }
  return groups;
}

// In the reader's units where they say it exactly; else in millimetres: an order's length is not rounded.
QString ExactText(Length length, const ReadingUnits& units) {
  const QString text = units.Number(length);
  return units.Read(text) == length ? text : Q(WriteMmExact(length)) + " mm";
}

}  // namespace

ReceivingWork::ReceivingWork(BookLink& link, const DeskSettings& settings, QObject* parent) : QObject(parent), link_(link), settings_(settings), deed_(link) {
  connect(&deed_, &SureDeed::Lost, this, [this] {
    emit Refused(tr("the answer got lost: it is asked again when the book is back, and is done once"));
    emit Shown();
  });
}

void ReceivingWork::Read() {
  if (!link_.ready()) {
    emit Shown();
    return;
  }
  link_.Ask(this, [](Connection& book) { return ReadFacts(book); },
            [this](DoorFacts facts) {
              facts_ = std::move(facts);
              gate_ = GroupsOf(facts_.at_gate);
              emit Shown();
            },
            [this](const DbError& error) {
              if (error.kind != DbError::Kind::Unreachable) emit Refused(WordsOf(error));
            });
}

TypedLine ReceivingWork::Pick(const ExpectedRow& expected) const {
  TypedLine line;
  line.order = Q(expected.order);
  line.order_line = Q(expected.line);
  line.grade = Q(expected.grade);
  line.section = Q(expected.section);
  line.length = ExactText(expected.length, settings_.units);
  line.condition = Q(expected.condition);
  line.papers_awaited = expected.papers != "none";
  std::set<std::string> mills;
  for (const KnownHeatRow& known : facts_.heats)
    if (known.supplier == expected.supplier && !known.mill.empty()) mills.insert(known.mill);
  if (mills.size() == 1) line.mill = Q(*mills.begin());
  for (const ReadLine& before : lines_)
    if (before.typed.order_line == line.order_line) {
      for (QString TypedLine::* same : {&TypedLine::slip_count, &TypedLine::slip_heat, &TypedLine::mill, &TypedLine::owner, &TypedLine::owner_ref, &TypedLine::place, &TypedLine::length})
        line.*same = before.typed.*same;
      line.papers_awaited = before.typed.papers_awaited;
    }
  return line;
}

std::int64_t ReceivingWork::CountedBefore(const TypedLine& typed) const {
  std::int64_t counted = 0;
  for (const ReadLine& line : lines_)
    if (!typed.order_line.isEmpty() && line.typed.order_line == typed.order_line) counted += line.judged.count;
  return counted;
}

JudgedLine ReceivingWork::Judge(const TypedLine& typed) const { return LineJudge::Judge(typed, facts_, CountedBefore(typed), settings_.units); }

QString ReceivingWork::NotOfThisNote(const ExpectedRow& expected) const {
  if (lines_.empty() || ((note.order.isEmpty() || note.order == Q(expected.order)) && note.supplier == Q(expected.supplier))) return {};
  return tr("the note under way is of %1, order %2: receive it first, then read order %3").arg(note.supplier, note.order.isEmpty() ? tr("none") : note.order, Q(expected.order));
}

bool ReceivingWork::AddLine(const TypedLine& typed) {
  JudgedLine judged = Judge(typed);
  if (!judged.body) return false;
  lines_.push_back({typed, std::move(judged)});
  emit Shown();
  return true;
}

void ReceivingWork::TakeOut(std::size_t line) {
  if (line >= lines_.size() || busy()) return;
  lines_.erase(lines_.begin() + static_cast<std::ptrdiff_t>(line));
  emit Shown();
}

void ReceivingWork::Ask(const SureDeed::Work& work, const SureDeed::Then& then) {
  const bool asked = deed_.Do(work, [this, then](const Json& answer) {
    then(answer);
    Read();
  }, [this](const DbError& error) {
    emit Refused(WordsOf(error));
    Read();
  });
  if (!asked && !busy()) emit Refused(tr("the book cannot be reached: what was typed stays here, do it when the book is back"));
  emit Shown();
}

void ReceivingWork::Receive() {
  if (lines_.empty()) return emit Refused(tr("no line of the note is read yet: pick a line, count the bars, read the heat"));
  if (note.number.trimmed().isEmpty()) return emit Refused(tr("which delivery note is it? Type its number"));
  if (note.supplier.trimmed().isEmpty()) return emit Refused(tr("who delivered? Type the supplier"));
  Json body{{"note", note.number.trimmed().toStdString()}, {"supplier", note.supplier.trimmed().toStdString()}, {"lines", Json::array()}};
  if (!note.order.isEmpty()) body["purchase_order"] = note.order.toStdString();
  for (const ReadLine& line : lines_) {
    body["lines"].push_back(*line.judged.body);
    body["lines"].back()["line"] = std::to_string(body["lines"].size());
  }
  Ask([body, request = NewRequest()](Connection& book) { return Deeds(book).ReceiveDelivery(request, body); }, [this](const Json& answer) { Booked(answer); });
}

void ReceivingWork::Booked(const Json& answer) {
  QStringList tags, quarantined;
  for (std::size_t i = 0; i < answer["lines"].size(); ++i) {
    const Json& line = answer["lines"][i];
    for (const Json& tag : line["tags"]) tags.append(Q(tag.get<std::string>()));
    if (!line["mismatch"].is_null()) quarantined.append(tr("line %1: %2%3").arg(WordOf(line, "line"), WordOf(line, "mismatch"), line["quarantined"].is_null() ? QString() : tr(" - in quarantine")));
    if (i < lines_.size())
      for (const QString& photo : lines_[i].typed.photos) AddPhoto(line["tags"][0].get<std::string>(), photo, false);
  }
  SayBooked(answer, tags, quarantined);
  lines_.clear();
  note = {};
  emit LabelsWanted(tags);
  emit NoteBooked(tags, quarantined);
}

void ReceivingWork::SayBooked(const Json& answer, const QStringList& tags, const QStringList& mismatches) {
  Mass theory;
  for (const Json& line : answer["lines"]) theory += Mass{line["theoretical_g"].get<std::int64_t>()};
  QString words = tr("Note %1: %n bar(s) received, %2 by theory", nullptr, static_cast<int>(tags.size())).arg(WordOf(answer, "note"), settings_.units.Words(theory));
  if (!mismatches.isEmpty()) words += ". " + mismatches.join(". ");
  const DeliveryNote booked = note;
  if (link_.May("reverse_receipt")) {
    emit Done(words, mismatches.isEmpty(), tr("reverse the receipt of note %1").arg(booked.number), [this, booked] { Reverse(booked); });
  } else {
    emit Done(tr("%1. Wrong? Quality reverses a receipt").arg(words), mismatches.isEmpty(), {}, {});
  }
}

void ReceivingWork::Reverse(const DeliveryNote& booked) {
  const Json body{{"note", booked.number.trimmed().toStdString()}, {"supplier", booked.supplier.trimmed().toStdString()}, {"reason", tr("taken back at the gate at once").toStdString()}};
  Ask([body, request = NewRequest()](Connection& book) { return StockDeeds(book).ReverseReceipt(request, body); },
      [this, booked](const Json&) { emit Done(tr("the receipt of note %1 is reversed: it may be read anew").arg(booked.number), true, {}, {}); });
}

void ReceivingWork::PutAway(const std::vector<std::string>& tags, const std::string& place) {
  if (tags.empty()) return;
  std::string bundle, from;
  for (const AtGateRow& row : facts_.at_gate)
    if (row.tag == tags[0]) {
      bundle = row.bundle;
      from = row.place;
    }
  const auto told = [this, tags, place, from](const Json&) {
    const QString what = tags.size() == 1 ? Q(tags[0]) : tr("%n bars", nullptr, static_cast<int>(tags.size()));
    const QString words = tags.size() == 1 ? tr("%1 lies at %2").arg(what, Q(place)) : tr("%1 lie at %2").arg(what, Q(place));
    if (from.empty()) emit Done(words, true, {}, {});
    else emit Done(words, true, tr("back to %1").arg(Q(from)), [this, tags, from] { PutAway(tags, from); });
  };
  if (!bundle.empty()) {
    Ask([bundle, place, request = NewRequest()](Connection& book) { return StockDeeds(book).MoveBundle(request, {{"bundle", bundle}, {"place", place}}); }, told);
    return;
  }
  std::vector<std::pair<std::string, RequestNumber>> each;
  for (const std::string& tag : tags) each.emplace_back(tag, NewRequest());
  Ask([each, place](Connection& book) {
    Transaction whole(book);
    Json answers = Json::array();
    for (const auto& [tag, request] : each) answers.push_back(StockDeeds(book).PutAway(request, {{"tag", tag}, {"place", place}}));
    whole.Commit();
    return answers;
  }, told);
}

void ReceivingWork::AddPhoto(const std::string& tag, const QString& file, bool tell) {
  QFile from(file);
  if (!from.open(QIODevice::ReadOnly)) return emit Refused(tr("the photo %1 cannot be read: %2").arg(file, from.errorString()));
  const Json body{{"tag", tag}, {"kind", "mark"}, {"file_base64", from.readAll().toBase64().toStdString()}};
  link_.Ask(this, [body, request = NewRequest()](Connection& book) { return StockDeeds(book).AddPhoto(request, body); },
            [this, tag, tell](const Json&) { if (tell) emit Done(tr("the photo is kept with %1").arg(Q(tag)), true, {}, {}); },
            [this, tag](const DbError& error) { emit Refused(tr("the photo of %1 is not kept: %2").arg(Q(tag), WordsOf(error))); });
}

void ReceivingWork::AskOwedPapers(const QString& supplier) {
  if (!link_.ready()) return;
  link_.Ask(this, [name = supplier.trimmed().toStdString()](Connection& book) { return ReadOwedPapers(book, name); }, [this](const std::vector<OwedPapersRow>& rows) { emit OwedPapers(rows); });
}

}  // namespace heatkeep
