#include "client/gateway/count_readings.h"

namespace heatkeep {

std::vector<CountRow> ReadCounts(Connection& connection) {
  std::vector<CountRow> rows;
  for (const Row r : connection.Execute("select * from api.counts where state in ('open', 'counted') order by count_id")) {
    CountRow& c = rows.emplace_back();
    c.place = r.Text("place");
    c.state = r.Text("state");
    c.started_by = r.Text("started_by");
    c.counted_by = r.TextOrNone("counted_by");
    c.tags = r.Int("tags");
    c.counted = {r.Int("counted_nm")};
    c.missing = {r.OptionalInt("missing_nm").value_or(0)};
    c.difference = {r.OptionalInt("difference_nm").value_or(0)};
    c.worth = {r.OptionalInt("difference_cents").value_or(0)};
  }
  return rows;
}

std::vector<CountDifferenceRow> ReadCountDifferences(Connection& connection) {
  std::vector<CountDifferenceRow> rows;
  for (const Row r : connection.Execute("select * from api.count_differences order by place, what, tag")) {
    CountDifferenceRow& d = rows.emplace_back();
    d.place = r.Text("place");
    d.what = r.Text("what");
    d.tag = r.Text("tag");
    d.book = {r.Int("length_nm")};
    d.counted = {r.OptionalInt("counted_nm").value_or(r.Int("length_nm"))};  // seen, and not measured
    d.difference = {r.Int("difference_nm")};
    d.worth = {r.OptionalInt("cents").value_or(0)};
  }
  return rows;
}

std::optional<PieceHereRow> ReadPieceHere(Connection& connection, const std::string& tag) {
  for (const Row r : connection.Execute("select tag, section, grade, heat, place, state from api.stock_on_hand where tag = $1", {tag}))
    return PieceHereRow{r.Text("tag"),        r.Text("section"),     r.TextOrNone("grade"),
                        r.TextOrNone("heat"), r.TextOrNone("place"), r.Text("state")};
  return std::nullopt;
}

}  // namespace heatkeep
