// The rack as its owner looks at it: what lies where, our drops with their age and worths, what was asked for, what metal became.
#pragma once

#include <QObject>
#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "client/gateway/plan_door.h"
#include "client/gateway/rack_readings.h"
#include "client/models/book_link.h"

namespace heatkeep {

struct RackPiece {
  std::string tag, kind, grade, section, condition, heat, papers, place, worked_on, blocked;
  Length length;
  Mass mass;
  std::int64_t days = 0;  // since it was sawn last, or came
  std::optional<std::int64_t> scrap_cents, expected_cents, replacement_cents;
};

// Sums of some pieces; the worths only of those that have one.
struct RackSums {
  std::size_t pieces = 0, priced = 0, expected = 0;
  Length length;
  Mass mass;
  std::int64_t scrap_cents = 0, expected_cents = 0, replacement_cents = 0;
};
RackSums SumsOf(const std::vector<const RackPiece*>& pieces);

// A grade and section; both empty: the whole rack.
struct RackGroup {
  std::string grade, section;
  bool operator==(const RackGroup&) const = default;
};

class RackWork : public QObject {
  Q_OBJECT

 public:
  explicit RackWork(BookLink& link, QObject* parent = nullptr);

  // What lies there comes first; what stops a piece, what a drop is worth by use and the months follow when they are worked out.
  void Read();
  void Choose(const RackGroup& group);

  bool read() const { return read_; }
  bool whole() const { return whole_; }  // all that Read promises is there
  const std::vector<RackPiece>& pieces() const { return pieces_; }
  const std::vector<PlaceLoad>& places() const { return places_; }
  const std::vector<UseMonth>& months() const { return months_; }
  const std::string& currency() const { return currency_; }
  const RackGroup& group() const { return group_; }
  std::optional<Length> keep() const { return keep_; }  // of the group

  struct GroupSum {
    RackGroup group;
    int drops = 0;
    Length length;
  };
  std::vector<GroupSum> Groups() const;                           // those with drops, most drops first
  std::vector<const RackPiece*> Drops() const;                    // of the group
  std::vector<const RackPiece*> Unused(std::int64_t days) const;  // of the group, bars too, oldest first
  // How many pieces were asked for of each length class of `step` in the group's past; class i is (i step, (i + 1) step].
  std::vector<int> Wanted(Length step, std::size_t classes) const;

 signals:
  void BeforeShown();  // pointers to pieces are good until now
  void Shown();
  void Refused(const QString& words);

 private:
  BookLink& link_;
  bool read_ = false, whole_ = false;
  std::vector<RackPiece> pieces_;
  std::vector<PlaceLoad> places_;
  std::vector<UseMonth> months_;
  PastDemand past_;
  std::string currency_;
  RackGroup group_;
  std::optional<Length> keep_;
};

}  // namespace heatkeep
