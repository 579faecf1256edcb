#include "client/models/rack_work.h"

#include <algorithm>
#include <map>

#include "client/gateway/read_rows.h"
#include "client/gateway/readings.h"
#include "client/planning/expected_worth.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

constexpr int kMonths = 24;

struct RackRead {
  std::vector<RackPiece> pieces;
  std::vector<PlaceLoad> places;
  std::vector<UseMonth> months;
  PastDemand past;
  std::string currency;
};

std::string Text(const Json& row, const char* key) { return row.at(key).is_null() ? std::string() : row.at(key).get<std::string>(); }

std::optional<std::int64_t> Number(const Json& row, const char* key) {
  const auto at = row.find(key);
  if (at == row.end() || at->is_null()) return std::nullopt;
  return at->get<std::int64_t>();
}

RackPiece PieceOf(const Json& row) {
  return {Text(row, "tag"),
          Text(row, "kind"),
          Text(row, "grade"),
          Text(row, "section"),
          Text(row, "condition"),
          Text(row, "heat"),
          Text(row, "papers"),
          Text(row, "place"),
          Text(row, "worked_on"),
          Text(row, "blocked"),
          Length{Number(row, "length_nm").value_or(0)},
          Mass{Number(row, "mass_g").value_or(0)},
          Number(row, "days").value_or(0),
          Number(row, "scrap_cents"),
          Number(row, "expected_cents"),
          Number(row, "replacement_cents")};
}

// All but the pieces and the months.
RackRead ReadAround(Connection& book) {
  RackRead rack;
  rack.places = ReadPlaceLoads(book);
  rack.past = ReadPastDemand(book);
  rack.currency = ReadCurrency(book);
  return rack;
}

// What lies there, quickly: without what stops a piece and what a drop is worth by its use.
RackRead ReadWhatLies(Connection& book) {
  RackRead rack = ReadAround(book);
  for (const Json& row : ReadOwnPieces(book)) rack.pieces.push_back(PieceOf(row));
  return rack;
}

// All of it, piece by piece.
RackRead ReadRack(Connection& book) {
  RackRead rack = ReadAround(book);
  Json rows = ReadRows(book, "own_pieces", "section grade length_nm tag");
  std::vector<Json> drops, bars;
  for (Json& row : rows) (row["kind"] == "drop" ? drops : bars).push_back(std::move(row));
  planning::AddExpectedWorth(book, drops);
  for (const std::vector<Json>* some : {&drops, &bars})
    for (const Json& row : *some) rack.pieces.push_back(PieceOf(row));
  rack.months = ReadUseByMonth(book, kMonths);
  return rack;
}

}  // namespace

RackSums SumsOf(const std::vector<const RackPiece*>& pieces) {
  RackSums sums;
  sums.pieces = pieces.size();
  for (const RackPiece* p : pieces) {
    sums.length += p->length;
    sums.mass += p->mass;
    if (p->scrap_cents && p->replacement_cents) {
      ++sums.priced;
      sums.scrap_cents += *p->scrap_cents;
      sums.replacement_cents += *p->replacement_cents;
    }
    if (p->expected_cents) {
      ++sums.expected;
      sums.expected_cents += *p->expected_cents;
    }
  }
  return sums;
}

RackWork::RackWork(BookLink& link, QObject* parent) : QObject(parent), link_(link) {}

void RackWork::Read() {
  if (!link_.ready()) return;
  const auto refused = [this](const DbError& error) {
    if (error.kind != DbError::Kind::Unreachable) emit Refused(QString::fromStdString(error.message));
  };
  const auto take = [this](RackRead rack, bool whole) {
    read_ = true;
    whole_ = whole;
    emit BeforeShown();  // who points into the pieces lets go
    pieces_ = std::move(rack.pieces);
    places_ = std::move(rack.places);
    if (whole) months_ = std::move(rack.months);
    past_ = std::move(rack.past);
    currency_ = std::move(rack.currency);
    emit Shown();
  };
  if (!whole_)
    link_.Ask(
        this, ReadWhatLies, [take](RackRead rack) { take(std::move(rack), false); }, refused, BookLink::Pace::Long);
  link_.Ask(
      this, ReadRack, [take](RackRead rack) { take(std::move(rack), true); }, refused, BookLink::Pace::Long);
}

void RackWork::Choose(const RackGroup& group) {
  group_ = group;
  keep_.reset();
  emit Shown();
  if (group.grade.empty() || !link_.ready()) return;
  link_.Ask(
      this, [group](Connection& book) { return ReadKeepLength(book, group.grade, group.section); },
      [this, group](std::optional<Length> keep) {
        if (!(group == group_)) return;
        keep_ = keep;
        emit Shown();
      });
}

std::vector<RackWork::GroupSum> RackWork::Groups() const {
  std::map<std::pair<std::string_view, std::string_view>, GroupSum> by_name;
  for (const RackPiece& p : pieces_) {
    if (p.kind != "drop") continue;
    GroupSum& sum = by_name[{p.grade, p.section}];
    if (sum.drops++ == 0) sum.group = {p.grade, p.section};
    sum.length += p.length;
  }
  std::vector<GroupSum> groups;
  for (auto& [name, sum] : by_name) groups.push_back(std::move(sum));
  std::stable_sort(groups.begin(), groups.end(), [](const GroupSum& a, const GroupSum& b) { return a.drops > b.drops; });
  return groups;
}

std::vector<const RackPiece*> RackWork::Drops() const {
  std::vector<const RackPiece*> drops;
  for (const RackPiece& p : pieces_)
    if (p.kind == "drop" && (group_.grade.empty() || (p.grade == group_.grade && p.section == group_.section))) drops.push_back(&p);
  return drops;
}

std::vector<const RackPiece*> RackWork::Unused(std::int64_t days) const {
  std::vector<const RackPiece*> unused;
  for (const RackPiece& p : pieces_)
    if (p.days >= days && (group_.grade.empty() || (p.grade == group_.grade && p.section == group_.section))) unused.push_back(&p);
  std::stable_sort(unused.begin(), unused.end(), [](const RackPiece* a, const RackPiece* b) { return a->days > b->days; });
  return unused;
}

std::vector<int> RackWork::Wanted(Length step, std::size_t classes) const {
  std::vector<int> wanted(classes, 0);
  for (const auto& [group, rows] : past_.by_group) {
    if (!group_.grade.empty() && group != std::pair(group_.section, group_.grade)) continue;
    for (const PastDemand::Row& row : rows) {
      const auto at = static_cast<std::size_t>(std::max<std::int64_t>(0, (row.cut.nm - 1) / step.nm));
      if (at < classes) wanted[at] += row.quantity;
    }
  }
  return wanted;
}

}  // namespace heatkeep
