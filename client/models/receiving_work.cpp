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

QString WordOf(const Json& json, const char* key) {
  return json.contains(key) && json[key].is_string() ? Q(json[key].get<std::string>()) : QString();
}

DoorFacts ReadFacts(Connection& book) {
  return {ReadExpected(book),
          ReadAtGate(book),
          ReadKnownHeats(book),
          ReadGradeDensities(book),
          ReadNames(book, "parties", "name"),
          ReadNames(book, "places", "place"),
          ReadLengthDevices(book),
          ReadTapeDoubt(book),
          ReadSetting(book, "mass_mismatch_percent", "3")};
}

std::vector<GateGroup> GroupsOf(const std::vector<AtGateRow>& rows) {
  std::vector<GateGroup> groups;
  const auto alike = [](const AtGateRow& r) {
    return std::tie(r.bundle, r.mill, r.heat, r.grade, r.section, r.condition, r.owner, r.blocked, r.length, r.place);
  };
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

ReceivingWork::ReceivingWork(BookLink& link, const DeskSettings& settings, QObject* parent)
    : QObject(parent), link_(link), settings_(settings), deed_(link, settings, "receiving") {
  connect(&deed_, &KeptDeed::Lost, this, [this](const AskedDeed&, const QString& words) {
    emit Refused(words);
    emit Shown();
  });
  connect(&deed_, &KeptDeed::Answered, this, &ReceivingWork::After);
  connect(&deed_, &KeptDeed::Refused, this, [this](const AskedDeed& deed, const DbError& error, bool late) {
    emit Refused(KeptDeed::RefusalOf(deed, error, late));
    Read();
  });
}

void ReceivingWork::Read() {
  if (!link_.ready()) {
    emit Shown();
    return;
  }
  link_.Ask(
      this, [](Connection& book) { return ReadFacts(book); },
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
  for (const DeviceRow& device : facts_.devices)
    if (Q(device.device) == settings_.measured_with) line.measured_with = settings_.measured_with;
  std::set<std::string> mills;
  for (const KnownHeatRow& known : facts_.heats)
    if (known.supplier == expected.supplier && !known.mill.empty()) mills.insert(known.mill);
  if (mills.size() == 1) line.mill = Q(*mills.begin());
  for (const ReadLine& before : lines_)
    if (before.typed.order_line == line.order_line) {
      for (QString TypedLine::*same :
           {&TypedLine::slip_count, &TypedLine::slip_heat, &TypedLine::mill, &TypedLine::owner, &TypedLine::owner_ref, &TypedLine::place,
            &TypedLine::length, &TypedLine::measured_with, &TypedLine::mark})
        line.*same = before.typed.*same;
      line.papers_awaited = before.typed.papers_awaited;
      line.square_ends = before.typed.square_ends;
    }
  return line;
}

std::int64_t ReceivingWork::CountedBefore(const TypedLine& typed) const {
  std::int64_t counted = 0;
  for (const ReadLine& line : lines_)
    if (!typed.order_line.isEmpty() && line.typed.order_line == typed.order_line) counted += line.judged.count;
  return counted;
}

JudgedLine ReceivingWork::Judge(const TypedLine& typed) const {
  return LineJudge::Judge(typed, facts_, CountedBefore(typed), settings_.units);
}

QString ReceivingWork::NotOfThisNote(const ExpectedRow& expected) const {
  if (lines_.empty() || ((note.order.isEmpty() || note.order == Q(expected.order)) && note.supplier == Q(expected.supplier))) return {};
  return tr("the note under way is of %1, order %2: receive it first, then read order %3")
      .arg(note.supplier, note.order.isEmpty() ? tr("none") : note.order, Q(expected.order));
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

void ReceivingWork::Do(const AskedDeed& deed) {
  if (!deed_.Do(deed))
    emit Refused(deed_.asking() ? tr("the book is still at the deed before; press again")
                                : tr("the book cannot be reached: what was typed stays here, do it when the book is back"));
  emit Shown();
}

void ReceivingWork::After(const AskedDeed& deed, const Json& answer, bool late) {
  const auto done = [&](const QString& words) { emit Done(KeptDeed::Told(words, late), true, {}, {}); };
  if (deed.deed == "receive_delivery") Booked(deed, answer, late);
  else if (deed.deed == "reverse_receipt") done(tr("the receipt of note %1 is reversed: it may be read anew").arg(Q(deed.memo["note"])));
  else if (deed.deed == "open_bundle")
    done(tr("bundle %1 is open: every bar is put away by itself or all to one place").arg(Q(deed.memo["bundle"])));
  else LaidAway(deed, late);
  Read();
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
  Json photos = Json::array();
  for (const ReadLine& line : lines_) {
    photos.push_back(Json::array());
    for (const QString& photo : line.typed.photos) photos.back().push_back(photo.toStdString());
  }
  Do({"receive_delivery",
      {body},
      {{"note", body["note"]}, {"supplier", body["supplier"]}, {"photos", photos}},
      tr("the receipt of note %1").arg(note.number.trimmed())});
}

void ReceivingWork::Booked(const AskedDeed& deed, const Json& answer, bool late) {
  QStringList tags, mismatches;
  Mass theory;
  for (std::size_t i = 0; i < answer["lines"].size(); ++i) {
    const Json& line = answer["lines"][i];
    theory += Mass{line["theoretical_g"].get<std::int64_t>()};
    for (const Json& tag : line["tags"]) tags.append(Q(tag.get<std::string>()));
    if (!line["mismatch"].is_null())
      mismatches.append(tr("line %1: %2%3")
                            .arg(WordOf(line, "line"), BookWords(WordOf(line, "mismatch")),
                                 line["quarantined"].is_null() ? QString() : tr(" - in quarantine")));
    if (const QString warning = WordOf(line, "warning"); !warning.isEmpty())
      mismatches.append(tr("line %1: %2").arg(WordOf(line, "line"), BookWords(warning)));
    if (i < deed.memo["photos"].size())
      for (const Json& photo : deed.memo["photos"][i]) AddPhoto(line["tags"][0].get<std::string>(), Q(photo), false);
  }
  QString words = tr("Note %1: %n bar(s) received, %2 by theory", nullptr, static_cast<int>(tags.size()))
                      .arg(WordOf(answer, "note"), settings_.units.Words(theory));
  if (!mismatches.isEmpty()) words += ". " + mismatches.join(". ");
  words = KeptDeed::Told(words, late);
  const DeliveryNote booked{Q(deed.memo["note"]), Q(deed.memo["supplier"]), {}};
  if (link_.May("reverse_receipt"))
    emit Done(words, mismatches.isEmpty() && !late, tr("reverse the receipt of note %1").arg(booked.number),
              [this, booked] { Reverse(booked); });
  else emit Done(tr("%1. Wrong? Quality reverses a receipt").arg(words), mismatches.isEmpty() && !late, {}, {});
  if (!late || note.number.trimmed() == booked.number) {  // after a restart another note may be under way
    lines_.clear();
    note = {};
    emit NoteBooked(tags, mismatches);
  }
  emit LabelsWanted(tags);
}

void ReceivingWork::Reverse(const DeliveryNote& booked) {
  Do({"reverse_receipt",
      {{{"note", booked.number.toStdString()},
        {"supplier", booked.supplier.toStdString()},
        {"reason", tr("taken back at the gate at once").toStdString()}}},
      {{"note", booked.number.toStdString()}},
      tr("the reversing of note %1").arg(booked.number)});
}

void ReceivingWork::PutAway(const std::vector<std::string>& tags, const std::string& place) {
  if (tags.empty()) return;
  std::string bundle, from;
  for (const AtGateRow& row : facts_.at_gate)
    if (row.tag == tags[0]) {
      bundle = row.bundle;
      from = row.place;
    }
  AskedDeed deed{bundle.empty() ? "put_away" : "move_bundle",
                 {},
                 {{"tags", tags}, {"place", place}, {"from", from}, {"bundle", bundle}},
                 tr("the putting away of %n piece(s) at %1", nullptr, static_cast<int>(tags.size())).arg(Q(place))};
  if (bundle.empty())
    for (const std::string& tag : tags) deed.bodies.push_back({{"tag", tag}, {"place", place}});
  else deed.bodies.push_back({{"bundle", bundle}, {"place", place}});
  Do(deed);
}

void ReceivingWork::LaidAway(const AskedDeed& deed, bool late) {
  const auto tags = deed.memo["tags"].get<std::vector<std::string>>();
  const std::string place = deed.memo["place"], from = deed.memo["from"], bundle = deed.memo["bundle"];
  QString words = !bundle.empty() ? tr("bundle %1, %n bar(s), lies at %2", nullptr, static_cast<int>(tags.size())).arg(Q(bundle), Q(place))
      : tags.size() == 1          ? tr("%1 lies at %2").arg(Q(tags[0]), Q(place))
                                  : tr("%1 lie at %2").arg(tr("%n bars", nullptr, static_cast<int>(tags.size())), Q(place));
  words = KeptDeed::Told(words, late);
  if (from.empty()) emit Done(words, true, {}, {});
  else
    emit Done(words, true, tr("back to %1").arg(Q(from)), [this, deed, from] {
      AskedDeed back = deed;
      back.memo["place"] = from;
      back.memo["from"] = "";
      for (Json& body : back.bodies) body["place"] = from;
      Do(back);
    });
}

void ReceivingWork::OpenBundle(const std::string& bundle) {
  Do({"open_bundle", {{{"bundle", bundle}}}, {{"bundle", bundle}}, tr("the opening of bundle %1").arg(Q(bundle))});
}

void ReceivingWork::AddPhoto(const std::string& tag, const QString& file, bool tell) {
  QFile from(file);
  if (!from.open(QIODevice::ReadOnly)) return emit Refused(tr("the photo %1 cannot be read: %2").arg(file, from.errorString()));
  const Json body{{"tag", tag}, {"kind", "mark"}, {"file_base64", from.readAll().toBase64().toStdString()}};
  link_.Ask(
      this, [body, request = NewRequest()](Connection& book) { return StockDeeds(book).AddPhoto(request, body); },
      [this, tag, tell](const Json&) {
        if (tell) emit Done(tr("the photo is kept with %1").arg(Q(tag)), true, {}, {});
      },
      [this, tag](const DbError& error) { emit Refused(tr("the photo of %1 is not kept: %2").arg(Q(tag), WordsOf(error))); });
}

void ReceivingWork::AskOwedPapers(const QString& supplier) {
  if (!link_.ready()) return;
  link_.Ask(
      this, [name = supplier.trimmed().toStdString()](Connection& book) { return ReadOwedPapers(book, name); },
      [this](const std::vector<OwedPapersRow>& rows) { emit OwedPapers(rows); });
}

}  // namespace heatkeep
