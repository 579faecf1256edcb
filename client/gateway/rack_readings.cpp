#include "client/gateway/rack_readings.h"

#include <algorithm>

namespace heatkeep {

std::vector<PlaceLoad> ReadPlaceLoads(Connection& connection) {
  std::vector<PlaceLoad> places;
  for (
      const Row row : connection.Execute(
          "select w.*, coalesce(s.pieces, 0) as pieces, coalesce(s.mass_g, 0) as load_g from api.places w"
          " left join (select place, count(*) as pieces, sum(mass_g)::bigint as mass_g from api.stock_on_hand group by place) s using (place) order by w.walk, w.place"))
    places.push_back({row.Text("place"), row.Text("site"), row.Text("kind"), row.TextOrNone("bay"), row.TextOrNone("level"),
                      row.OptionalInt("walk").value_or(0), row.Int("pieces"), Mass{row.Int("load_g")},
                      Mass{row.OptionalInt("max_mass_g").value_or(0)}});
  return places;
}

std::optional<Length> ReadKeepLength(Connection& connection, const std::string& grade, const std::string& section) {
  const Result rows = connection.Execute("select keep_nm from api.candidates where grade = $1 and section = $2 limit 1", {grade, section});
  if (rows.empty()) return std::nullopt;
  return Length{rows[0].Int("keep_nm")};
}

std::vector<nlohmann::json> ReadOwnPieces(Connection& connection) {
  std::vector<nlohmann::json> rows;
  for (
      const Row row : connection.Execute(
          "select to_jsonb(t) as piece from (select tag, kind, grade, section, condition, heat, papers, place, length_nm, mass_g, worked_on, days, scrap_cents, replacement_cents,"
          " null::text as blocked from api.own_pieces) t order by t.section, t.grade, t.length_nm, t.tag"))
    rows.push_back(nlohmann::json::parse(row.Text("piece")));
  return rows;
}

std::vector<UseMonth> ReadUseByMonth(Connection& connection, int months) {
  std::vector<UseMonth> all;
  for (
      const Row row : connection.Execute(
          "select month, sum(used_g)::bigint as used_g, sum(good_g)::bigint as good_g from api.yield_by_month group by month order by month desc limit $1",
          {months}))
    all.push_back({row.Text("month"), Mass{row.Int("used_g")}, Mass{row.Int("good_g")}});
  std::reverse(all.begin(), all.end());
  return all;
}

}  // namespace heatkeep
