#include "client/models/counting_work.h"

#include "client/gateway/readings.h"
#include "client/gateway/section_json.h"
#include "client/models/qt_words.h"
#include "schema/terms/bad_text.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

struct Counts {
  std::vector<CountRow> counts;
  std::vector<CountDifferenceRow> differences;
  std::vector<std::string> places;
  std::int64_t limit_cents = 0;
  std::string currency;
};

Counts ReadAll(Connection& book, bool differences) {
  Counts all{ReadCounts(book),
             {},
             ReadNames(book, "places", "place"),
             std::stoll(ReadSetting(book, "count_limit_cents", "10000")),
             ReadCurrency(book)};
  if (differences) all.differences = ReadCountDifferences(book);
  return all;
}

}  // namespace

CountingWork::CountingWork(BookLink& link, const DeskSettings& settings, QObject* parent)
    : QObject(parent), link_(link), deed_(link, settings, "counting") {
  connect(&deed_, &KeptDeed::Lost, this, [this](const AskedDeed&, const QString& words) { emit Refused(words); });
  connect(&deed_, &KeptDeed::Answered, this, [this](const AskedDeed& deed, const Json& answer, bool late) {
    After(deed, answer, late);
    if (waiting_.empty()) Read();
    Next();
  });
  connect(&deed_, &KeptDeed::Refused, this, [this](const AskedDeed& deed, const DbError& error, bool late) {
    const QString words = KeptDeed::RefusalOf(deed, error, late);
    emit Refused(error.sqlstate == "HK024" ? tr("%1 - what carries it is counted as a piece without a tag").arg(words) : words);
    if (waiting_.empty()) Read();
    Next();
  });
}

const CountRow* CountingWork::count(const QString& place) const {
  for (const CountRow& row : counts_)
    if (row.place == place.toStdString()) return &row;
  return nullptr;
}

const std::vector<CountedHere>& CountingWork::here(const QString& place) const {
  static const std::vector<CountedHere> none;
  const auto found = here_.find(place);
  return found == here_.end() ? none : found->second;
}

void CountingWork::Read() {
  if (!link_.ready()) {
    emit Shown();
    return;
  }
  link_.Ask(
      this, [differences = link_.May("approve_count")](Connection& book) { return ReadAll(book, differences); },
      [this](Counts read) {
        counts_ = std::move(read.counts);
        differences_ = std::move(read.differences);
        places_ = std::move(read.places);
        limit_ = {read.limit_cents};
        currency_ = QString::fromStdString(read.currency);
        emit Shown();
      },
      [this](const DbError& error) {
        if (error.kind != DbError::Kind::Unreachable) emit Refused(WordsOf(error));
      });
}

void CountingWork::Ask(const AskedDeed& deed) {
  if (!link_.ready() && !deed_.busy()) return emit Refused(tr("the book cannot be reached: nothing is counted; go on when it is back"));
  waiting_.push_back(deed);
  Next();
}

void CountingWork::Next() {
  if (waiting_.empty() || deed_.busy()) return;
  if (deed_.Do(waiting_.front())) return waiting_.pop_front();
  waiting_.clear();
  emit Refused(tr("the book cannot be reached: nothing is counted; go on when it is back"));
}

void CountingWork::Freeze(const QString& place) {
  Ask({"freeze_place", {{{"place", place.toStdString()}}}, {}, tr("the freezing of %1").arg(place)});
}

void CountingWork::AskSeen(const QString& place, const Json& one, const QString& words, const Json& memo) {
  Ask({"count_seen", {{{"place", place.toStdString()}, {"seen", Json::array({one})}}}, memo, words});
}

void CountingWork::See(const QString& place, const QString& tag, std::optional<Length> measured) {
  Json one{{"tag", tag.toStdString()}};
  if (measured) one["length_nm"] = measured->nm;
  AskSeen(place, one, tr("the count of %1").arg(tag));
}

void CountingWork::SeeUnmarked(const QString& place, const QString& section, Length measured, const QString& marks) {
  Json one{{"length_nm", measured.nm}, {"marks", marks.trimmed().isEmpty() ? "none" : marks.trimmed().toStdString()}};
  try {
    one["section"] = SectionJson(ReadSection(section.trimmed().toStdString()));
  } catch (const BadText& error) { return emit Refused(BookWords(std::string(error.what()))); }
  AskSeen(place, one, tr("the count of %1 without a tag").arg(section.trimmed()), {{"section", section.trimmed().toStdString()}});
}

void CountingWork::Finish(const QString& place) {
  Ask({"count_seen",
       {{{"place", place.toStdString()}, {"seen", Json::array()}, {"done", true}}},
       {},
       tr("the end of the count of %1").arg(place)});
}

void CountingWork::Approve(const QString& place, const QString& words) {
  Ask({"approve_count",
       {{{"place", place.toStdString()}, {"words", words.trimmed().toStdString()}}},
       {},
       tr("the approval of the count of %1").arg(place)});
}

void CountingWork::GiveUp(const QString& place, const QString& reason) {
  Ask({"unfreeze_place",
       {{{"place", place.toStdString()}, {"reason", reason.trimmed().toStdString()}}},
       {},
       tr("the giving up of the count of %1").arg(place)});
}

void CountingWork::After(const AskedDeed& deed, const Json& answer, bool late) {
  const Json& body = deed.bodies.front();
  const QString place = Q(body.at("place"));
  const auto done = [&](const QString& words, bool fully = true) { emit Done(KeptDeed::Told(words, late), fully, {}, {}); };
  if (deed.deed == "freeze_place") {
    here_.erase(place);
    emit Done(
        KeptDeed::Told(tr("%1 is frozen: nothing is taken from it or put in it until its count is approved or given up").arg(place), late),
        true, tr("free %1 again").arg(place), [this, place] { GiveUp(place, tr("taken back at once")); });
  } else if (deed.deed == "unfreeze_place") {
    here_.erase(place);
    done(tr("the count of %1 is given up: nothing was changed, and the place is free").arg(place));
  } else if (deed.deed == "approve_count") {
    QStringList said{tr("the count of %1 is approved and the place is free").arg(place)};
    for (const Json& tag : answer["missing"]) said << tr("%1 is missing: its metal stays unexplained until it turns up").arg(Q(tag));
    for (const Json& tag : answer["left"]) said << tr("%1 has changed since it was counted and is left as it is: look at it").arg(Q(tag));
    for (const Json& found : answer["found"]) said << tr("what had no tag is %1, unknown, in quarantine").arg(Q(found["tag"]));
    done(said.join("; "), said.size() == 1);
  } else if (body.contains("done")) {
    here_.erase(place);
    done(
        tr("%1 is counted, %n piece(s): another person looks at the differences. To count it again, the planner gives this count up and freezes it anew",
           nullptr, answer["lines"].get<int>())
            .arg(place));
  } else if (const Json& one = body["seen"][0]; one.contains("tag")) {
    TagSeen(place, one, answer["lines"], late);
  } else {
    UnmarkedSeen(place, one, Q(deed.memo["section"]), late);
  }
}

void CountingWork::TagSeen(const QString& place, const Json& one, std::int64_t lines, bool late) {
  for (CountRow& row : counts_)
    if (row.place == place.toStdString()) row.tags = std::max(row.tags, lines);
  CountedHere counted{Q(one["tag"]), {}, {}, {}};
  if (one.contains("length_nm")) counted.measured = Length{one["length_nm"].get<std::int64_t>()};
  const auto shown = [this, place, late](const CountedHere& one_more) {
    here_[place].push_back(one_more);
    const QString words =
        one_more.words.isEmpty() ? tr("%1 counted").arg(one_more.tag) : tr("%1 counted; %2").arg(one_more.tag, one_more.words);
    emit Ticked(KeptDeed::Told(words, late), one_more.words.isEmpty());
    emit Shown();
  };
  link_.Ask(
      this, [tag = one["tag"].get<std::string>()](Connection& book) { return ReadPieceHere(book, tag); },
      [place, counted, shown](const std::optional<PieceHereRow>& piece) mutable {
        if (!piece) {
          counted.words = tr("the book has no metal under this tag any more: quality looks at it");
        } else {
          counted.what = Q(piece->section + "  " + piece->grade + (piece->heat.empty() ? "" : "  " + piece->heat));
          const QString at = Q(piece->place);
          if (at.isEmpty()) counted.words = tr("in the book it is %1: leave it here, it is noted").arg(Q(piece->state));
          else if (at != place) counted.words = tr("the book has it at %1; leave it here, it is noted").arg(at);
        }
        shown(counted);
      },
      [counted, shown](const DbError&) { shown(counted); });
}

void CountingWork::UnmarkedSeen(const QString& place, const Json& one, const QString& section, bool late) {
  const QString marks = one["marks"] == "none" ? tr("none") : Q(one["marks"]);
  here_[place].push_back({{}, section, tr("without a tag; marks: %1").arg(marks), Length{one["length_nm"].get<std::int64_t>()}});
  emit Ticked(KeptDeed::Told(tr("%1 without a tag is counted: it waits in quarantine once the count is approved").arg(section), late),
              true);
  emit Shown();
}

}  // namespace heatkeep
