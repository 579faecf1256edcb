#include "client/gateway/door_readings.h"

namespace heatkeep {

std::vector<ExpectedRow> ReadExpected(Connection& connection) {
  std::vector<ExpectedRow> rows;
  for (const Row r : connection.Execute(
           "select *, due::text as due_on from api.expected where delivered < quantity order by due, purchase_order, length(line), line")) {
    ExpectedRow& e = rows.emplace_back();
    e.order = r.Text("purchase_order");
    e.line = r.Text("line");
    e.supplier = r.Text("supplier");
    e.section = r.Text("section");
    e.grade = r.Text("grade");
    e.condition = r.Text("condition");
    e.due = r.Text("due_on");
    e.papers = r.Text("papers");
    e.promised = r.TextOrNone("promised");
    e.length = {r.Int("length_nm")};
    e.ordered = r.Int("quantity");
    e.delivered = r.Int("delivered");
  }
  return rows;
}

std::vector<AtGateRow> ReadAtGate(Connection& connection) {
  std::vector<AtGateRow> rows;
  for (
      const Row r : connection.Execute(
          "select s.* from api.stock_on_hand s join api.places w using (place) where w.kind = 'gate' and s.state = 'on rack' order by s.tag")) {
    AtGateRow& g = rows.emplace_back();
    g.tag = r.Text("tag");
    g.grade = r.TextOrNone("grade");
    g.section = r.Text("section");
    g.condition = r.Text("condition");
    g.mill = r.TextOrNone("mill");
    g.heat = r.TextOrNone("heat");
    g.owner = r.Text("owner") == "ours" ? "" : r.Text("owner");
    g.place = r.Text("place");
    g.bundle = r.TextOrNone("bundle");
    g.blocked = r.TextOrNone("blocked");
    g.length = {r.Int("length_nm")};
    g.mass = {r.Int("mass_g")};
  }
  return rows;
}

std::vector<KnownHeatRow> ReadKnownHeats(Connection& connection) {
  std::vector<KnownHeatRow> rows;
  for (
      const Row r : connection.Execute(
          "select mill, heat, grade, section, condition, supplier, sum(counted)::bigint as bars, (array_agg(note order by received_at desc))[1] as note,"
          " max(received_at)::date::text as received_on from api.receipts where heat is not null and reversed_by is null"
          " group by mill, heat, grade, section, condition, supplier order by max(received_at) desc")) {
    KnownHeatRow& k = rows.emplace_back();
    k.mill = r.TextOrNone("mill");
    k.heat = r.Text("heat");
    k.grade = r.TextOrNone("grade");
    k.section = r.Text("section");
    k.condition = r.Text("condition");
    k.supplier = r.TextOrNone("supplier");
    k.note = r.Text("note");
    k.received_on = r.Text("received_on");
    k.bars = r.Int("bars");
  }
  return rows;
}

std::vector<OwedPapersRow> ReadOwedPapers(Connection& connection, const std::string& supplier) {
  std::vector<OwedPapersRow> rows;
  for (
      const Row r : connection.Execute(
          "select *, chase_on::text as chase from api.papers_awaited a where exists (select from api.receipts r where r.supplier = $1 and r.reversed_by is null"
          " and r.mill = a.mill and r.heat = a.heat and r.section = a.section and r.condition = a.condition) order by days_late desc nulls last, heat",
          {supplier}))
    rows.push_back({r.TextOrNone("mill"), r.TextOrNone("heat"), r.TextOrNone("grade"), r.Text("section"), r.TextOrNone("chase"),
                    r.Int("pieces"), r.OptionalInt("days_late").value_or(0)});
  return rows;
}

std::vector<GradeDensityRow> ReadGradeDensities(Connection& connection) {
  std::vector<GradeDensityRow> rows;
  for (const Row r : connection.Execute("select designation, number, density_kg_m3 from api.grades order by designation"))
    rows.push_back({r.Text("designation"), r.TextOrNone("number"), {r.Int("density_kg_m3")}});
  return rows;
}

}  // namespace heatkeep
