#include "client/gateway/readings.h"

namespace heatkeep {
namespace {

TraceLine LineOf(const Row& row) {
  TraceLine t;
  t.depth = static_cast<int>(row.Int("depth"));
  t.what = row.Text("what");
  t.name = row.Text("name");
  t.parent = row.OptionalText("parent").value_or("");
  t.count = static_cast<int>(row.Int("count"));
  t.length = {row.Int("length_nm")};
  t.mass = {row.Int("mass_g")};
  t.mill = row.OptionalText("mill").value_or("");
  t.heat = row.OptionalText("heat").value_or("");
  t.grade = row.OptionalText("grade").value_or("");
  t.section = row.Text("section");
  t.condition = row.Text("condition");
  t.document = row.Text("document");
  t.receipt = row.OptionalText("receipt").value_or("");
  t.where_now = row.OptionalText("where_now").value_or("");
  t.at = row.OptionalText("at").value_or("");
  t.by = row.OptionalText("by").value_or("");
  t.held = row.Bool("held");
  return t;
}

Param OrNull(const std::string& text) { return text.empty() ? Param(std::nullopt) : Param(text); }

}  // namespace

std::vector<HeatBalance> ReadBalances(Connection& connection, const std::string& kind, const std::string& name,
                                      const std::string& mill) {
  std::vector<HeatBalance> balances;
  std::int64_t last = 0;
  const Result result = connection.Execute("select * from api.metal_balance($1, $2, $3)", {kind, name, OrNull(mill)});
  for (const Row row : result) {
    HeatBalance lot;
    lot.mill = row.OptionalText("mill").value_or("");
    lot.heat = row.OptionalText("heat").value_or("");
    lot.grade = row.OptionalText("grade").value_or("");
    lot.section = row.Text("section");
    lot.condition = row.Text("condition");
    lot.papers = row.Text("papers");
    // the classes of one lot follow each other
    if (row.Int("lot_id") != last) balances.push_back(lot);
    last = row.Int("lot_id");
    balances.back().classes.push_back({row.Text("class"), row.Bool("is_in"), {row.Int("length_nm")}, {row.Int("mass_g")}});
  }
  return balances;
}

std::optional<TraceRecord> ReadTrace(Connection& connection, const std::string& kind, const std::string& name,
                                     const std::string& mill) {
  TraceRecord record;
  record.kind = kind;
  record.subject = name;
  Transaction snapshot(connection);
  connection.Execute("set transaction isolation level repeatable read, read only");
  const Result lines = connection.Execute("select * from api.trace($1, $2, $3)", {kind, name, OrNull(mill)});
  if (lines.empty()) return std::nullopt;
  for (const Row row : lines) record.lines.push_back(LineOf(row));
  record.balances = ReadBalances(connection, kind, name, mill);
  const Result digest_rows = connection.Execute(
      "select digest, happenings, to_char(now(), 'YYYY-MM-DD\"T\"HH24:MI:SSOF') as asked_at, api.whoami() as asked_by"
      " from api.book_digest()");
  const Row digest = digest_rows.Only();
  record.digest = digest.Text("digest");
  record.happenings = digest.Int("happenings");
  record.asked_at = digest.Text("asked_at");
  record.asked_by = digest.Text("asked_by");
  snapshot.Commit();
  return record;
}

}  // namespace heatkeep
