#include "client/gateway/saw_readings.h"

namespace heatkeep {
namespace {

std::optional<Money> MoneyOf(const Row& row, const char* column) {
  const auto cents = row.OptionalInt(column);
  return cents ? std::optional<Money>(Money{*cents}) : std::nullopt;
}

}  // namespace

std::int64_t ReadLastKept(Connection& connection, const std::string& device) {
  return connection.Execute("select coalesce(max(seq), 0)::bigint as seq from api.offline_deeds where device = $1", {device})
      .Only()
      .Int("seq");
}

std::vector<SawRow> ReadSaws(Connection& connection) {
  std::vector<SawRow> rows;
  for (
      const Row r : connection.Execute(
          "select s.saw, s.kerf_nm, s.grip_nm, s.grip_bundled_nm, s.trim_nm, s.max_section_nm, w.stop_stroke_nm, w.bundle_bars, w.cents_per_hour, b.band, "
          "b.fitted_from::text as fitted_from, b.cuts, trunc(b.area_um2 / 1000000)::bigint as area_mm2, b.out_of_square, b.lately "
          "from api.saws s join api.saw_rules w using (saw) join api.saw_bands b using (saw) order by s.saw")) {
    SawRow& s = rows.emplace_back();
    s.saw = r.Text("saw");
    s.band = r.Text("band");
    s.fitted_from = r.Text("fitted_from");
    s.kerf = {r.Int("kerf_nm")};
    s.grip = {r.Int("grip_nm")};
    s.grip_bundled = {r.Int("grip_bundled_nm")};
    s.trim = {r.Int("trim_nm")};
    s.widest = {r.Int("max_section_nm")};
    s.stop_stroke = {r.OptionalInt("stop_stroke_nm").value_or(0)};
    s.bundle_bars = static_cast<int>(r.OptionalInt("bundle_bars").value_or(0));
    s.per_hour = MoneyOf(r, "cents_per_hour");
    s.cuts = r.Int("cuts");
    s.area_mm2 = r.Int("area_mm2");
    s.out_of_square = r.Int("out_of_square");
    s.lately = r.Int("lately");
  }
  return rows;
}

std::optional<HandoverRow> ReadOpenHandover(Connection& connection, const std::string& saw) {
  const Result rows = connection.Execute("select * from api.handovers where saw = $1 and taken_by is null", {saw});
  if (rows.empty()) return std::nullopt;
  const Row r = rows.Only();
  return HandoverRow{r.TextOrNone("tag"), r.Text("words"), r.Text("given_by")};
}

std::vector<SawingRow> ReadSawing(Connection& connection, std::int64_t plan) {
  std::vector<SawingRow> rows;
  const std::string which = plan == 0 ? "where state = 'live' and $1::bigint = 0 " : "where plan_id = $1 ";
  for (const Row r : connection.Execute(
           "select * from api.plan_sawing " + which + "order by saw, plan_id, layout_no, what desc, order_no, line_no", {plan})) {
    SawingRow& s = rows.emplace_back();
    s.plan = r.Int("plan_id");
    s.state = r.Text("state");
    s.saw = r.Text("saw");
    s.what = r.Text("what");
    s.order = r.TextOrNone("order_no");
    s.line = r.TextOrNone("line_no");
    s.due = r.TextOrNone("due");
    s.section = r.Text("section");
    s.family = r.TextOrNone("family");
    s.rate_source = r.TextOrNone("rate_source");
    s.open = r.Text("layout_state") == "promised" || r.Text("layout_state") == "at saw";
    s.count = r.Int("count");
    s.bars = static_cast<int>(r.Int("bars"));
    s.bundle_no = static_cast<int>(r.OptionalInt("bundle_no").value_or(0));
    s.leads = r.Bool("leads");
    s.set = {r.Int("set_nm")};
    s.kerf = {r.Int("kerf_nm")};
    s.stop_stroke = {r.OptionalInt("stop_stroke_nm").value_or(0)};
    s.area = {r.Int("area_um2")};
    s.density = {r.OptionalInt("density_kg_m3").value_or(kSteel.kg_m3)};
    if (const auto rate = r.OptionalInt("mm2_per_min")) s.rate = CuttingRate{*rate};
    s.per_hour = MoneyOf(r, "cents_per_hour");
  }
  return rows;
}

std::vector<RateRow> ReadRates(Connection& connection) {
  std::vector<RateRow> rows;
  for (const Row r : connection.Execute(
           "select saw, family, mm2_per_min, source, 0 as low, 0 as high from api.cutting_rates union all "
           "select null, family, middle_cm2 * 100, source, low_cm2, high_cm2 from api.shipped_rates order by family, saw nulls last, low"))
    rows.push_back({r.TextOrNone("saw"), r.Text("family"), r.Text("source"), {r.Int("mm2_per_min")}, r.Int("low"), r.Int("high")});
  return rows;
}

}  // namespace heatkeep
