// Places counted blind: frozen, every tag that lies there told to the book as it is scanned, the differences looked at by another person.
// What the book expects at a place is not read before its count is over, so that nobody can be led by it.
#pragma once

#include <QObject>
#include <deque>
#include <functional>
#include <map>

#include "client/gateway/count_readings.h"
#include "client/models/book_link.h"
#include "client/models/desk_settings.h"
#include "client/models/kept_deed.h"

namespace heatkeep {

// What was counted at this desk.
struct CountedHere {
  QString tag;    // empty: without one
  QString what;   // section, grade, heat
  QString words;  // what is to be heeded; empty: nothing
  std::optional<Length> measured;
};

class CountingWork : public QObject {
  Q_OBJECT

 public:
  CountingWork(BookLink& link, const DeskSettings& settings, QObject* parent = nullptr);

  void Read();
  const std::vector<CountRow>& counts() const { return counts_; }
  const CountRow* count(const QString& place) const;
  const std::vector<std::string>& places() const { return places_; }
  const std::vector<CountDifferenceRow>& differences() const { return differences_; }
  const std::vector<CountedHere>& here(const QString& place) const;
  Money limit() const { return limit_; }  // differences above it are the owner's to approve
  const QString& currency() const { return currency_; }
  bool busy() const { return deed_.busy() || !waiting_.empty(); }

  void Freeze(const QString& place);
  // Told to the book one after the other, as fast as they are scanned.
  void See(const QString& place, const QString& tag, std::optional<Length> measured);
  void SeeUnmarked(const QString& place, const QString& section, Length measured, const QString& marks);
  void Finish(const QString& place);
  void Approve(const QString& place, const QString& words);
  void GiveUp(const QString& place, const QString& reason);

 signals:
  void Shown();
  void Ticked(const QString& words, bool as_it_should);  // one more is counted
  void Done(const QString& words, bool fully, const QString& undo_words, const std::function<void()>& undo);
  void Refused(const QString& words);

 private:
  using Json = nlohmann::json;
  void Ask(const AskedDeed& deed);
  void Next();
  void After(const AskedDeed& deed, const Json& answer, bool late);
  void AskSeen(const QString& place, const Json& one, const QString& words, const Json& memo = {});
  void TagSeen(const QString& place, const Json& one, std::int64_t lines, bool late);
  void UnmarkedSeen(const QString& place, const Json& one, const QString& section, bool late);

  BookLink& link_;
  KeptDeed deed_;
  std::deque<AskedDeed> waiting_;
  std::vector<CountRow> counts_;
  std::vector<CountDifferenceRow> differences_;
  std::vector<std::string> places_;
  std::map<QString, std::vector<CountedHere>> here_;
  Money limit_{10'000};
  QString currency_;
};

}  // namespace heatkeep
