#include "client/models/counting_work.h"

#include "client/gateway/readings.h"
#include "client/gateway/section_json.h"
#include "client/gateway/stock_deeds.h"
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

Json SeenBody(const QString& place, const Json& one) { return {{"place", place.toStdString()}, {"seen", Json::array({one})}}; }

}  // namespace

CountingWork::CountingWork(BookLink& link, const DeskSettings& settings, QObject* parent)
    : QObject(parent), link_(link), settings_(settings), deed_(link) {
  connect(&deed_, &SureDeed::Lost, this, &CountingWork::Refused);
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

void CountingWork::Ask(const SureDeed::Work& work, const SureDeed::Then& then) {
  if (!link_.ready() && !deed_.busy()) return emit Refused(tr("the book cannot be reached: nothing is counted; go on when it is back"));
  waiting_.push_back({work, then});
  Next();
}

void CountingWork::Next() {
  if (waiting_.empty() || deed_.busy()) return;
  const Waiting next = waiting_.front();
  const bool asked = deed_.Do(
      next.work,
      [this, then = next.then](const Json& answer) {
        then(answer);
        if (waiting_.empty()) Read();
        Next();
      },
      [this](const DbError& error) {
        emit Refused(error.sqlstate == "HK024" ? tr("%1 - what carries it is counted as a piece without a tag").arg(WordsOf(error))
                                               : WordsOf(error));
        if (waiting_.empty()) Read();
        Next();
      });
  if (asked) waiting_.pop_front();
  else waiting_.clear();
}

void CountingWork::Freeze(const QString& place) {
  Ask([body = Json{{"place", place.toStdString()}},
       request = NewRequest()](Connection& book) { return StockDeeds(book).FreezePlace(request, body); },
      [this, place](const Json&) {
        here_.erase(place);
        emit Done(tr("%1 is frozen: nothing is taken from it or put in it until its count is approved or given up").arg(place), true,
                  tr("free %1 again").arg(place), [this, place] { GiveUp(place, tr("taken back at once")); });
      });
}

void CountingWork::See(const QString& place, const QString& tag, std::optional<Length> measured) {
  Json one{{"tag", tag.toStdString()}};
  if (measured) one["length_nm"] = measured->nm;
  Ask(
      [body = SeenBody(place, one), tag = tag.toStdString(), request = NewRequest()](Connection& book) {
        Json answer = StockDeeds(book).CountSeen(request, body);
        if (const auto piece = ReadPieceHere(book, tag))
          answer["piece"] = {{"what", piece->section + "  " + piece->grade + (piece->heat.empty() ? "" : "  " + piece->heat)},
                             {"place", piece->place},
                             {"state", piece->state}};
        return answer;
      },
      [this, place, tag, measured](const Json& answer) { Seen(place, tag, measured, answer); });
}

void CountingWork::Seen(const QString& place, const QString& tag, std::optional<Length> measured, const Json& answer) {
  CountedHere one{tag, {}, {}, measured};
  if (!answer.contains("piece")) {
    one.words = tr("the book has no metal under this tag any more: quality looks at it");
  } else {
    one.what = QString::fromStdString(answer["piece"]["what"].get<std::string>());
    const QString at = QString::fromStdString(answer["piece"]["place"].get<std::string>());
    if (at.isEmpty())
      one.words =
          tr("in the book it is %1: leave it here, it is noted").arg(QString::fromStdString(answer["piece"]["state"].get<std::string>()));
    else if (at != place) one.words = tr("the book has it at %1; leave it here, it is noted").arg(at);
  }
  here_[place].push_back(one);
  const auto lines = answer["lines"].get<std::int64_t>();
  for (CountRow& row : counts_)
    if (row.place == place.toStdString()) row.tags = std::max(row.tags, lines);
  emit Ticked(one.words.isEmpty() ? tr("%1 counted").arg(tag) : tr("%1 counted; %2").arg(tag, one.words), one.words.isEmpty());
  emit Shown();
}

void CountingWork::SeeUnmarked(const QString& place, const QString& section, Length measured, const QString& marks) {
  Json one{{"length_nm", measured.nm}, {"marks", marks.trimmed().isEmpty() ? "none" : marks.trimmed().toStdString()}};
  try {
    one["section"] = SectionJson(ReadSection(section.trimmed().toStdString()));
  } catch (const BadText& error) { return emit Refused(BookWords(std::string(error.what()))); }
  Ask([body = SeenBody(place, one), request = NewRequest()](Connection& book) { return StockDeeds(book).CountSeen(request, body); },
      [this, place, section, measured, marks](const Json&) {
        here_[place].push_back({{},
                                section.trimmed(),
                                tr("without a tag; marks: %1").arg(marks.trimmed().isEmpty() ? tr("none") : marks.trimmed()),
                                measured});
        emit Ticked(tr("%1 without a tag is counted: it waits in quarantine once the count is approved").arg(section.trimmed()), true);
        emit Shown();
      });
}

void CountingWork::Finish(const QString& place) {
  Ask([body = Json{{"place", place.toStdString()}, {"seen", Json::array()}, {"done", true}},
       request = NewRequest()](Connection& book) { return StockDeeds(book).CountSeen(request, body); },
      [this, place](const Json& answer) {
        here_.erase(place);
        emit Done(
            tr("%1 is counted, %n piece(s): another person looks at the differences. To count it again, the planner gives this count up and freezes it anew",
               nullptr, static_cast<int>(answer["lines"].get<std::int64_t>()))
                .arg(place),
            true, {}, {});
      });
}

void CountingWork::Approve(const QString& place, const QString& words) {
  Ask([body = Json{{"place", place.toStdString()}, {"words", words.trimmed().toStdString()}},
       request = NewRequest()](Connection& book) { return StockDeeds(book).ApproveCount(request, body); },
      [this, place](const Json& answer) {
        QStringList said{tr("the count of %1 is approved and the place is free").arg(place)};
        for (const Json& tag : answer["missing"])
          said << tr("%1 is missing: its metal stays unexplained until it turns up").arg(QString::fromStdString(tag.get<std::string>()));
        for (const Json& found : answer["found"])
          said << tr("what had no tag is %1, unknown, in quarantine").arg(QString::fromStdString(found["tag"].get<std::string>()));
        emit Done(said.join("; "), said.size() == 1, {}, {});
      });
}

void CountingWork::GiveUp(const QString& place, const QString& reason) {
  Ask([body = Json{{"place", place.toStdString()}, {"reason", reason.trimmed().toStdString()}},
       request = NewRequest()](Connection& book) { return StockDeeds(book).UnfreezePlace(request, body); },
      [this, place](const Json&) {
        here_.erase(place);
        emit Done(tr("the count of %1 is given up: nothing was changed, and the place is free").arg(place), true, {}, {});
      });
}

}  // namespace heatkeep
