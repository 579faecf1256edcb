#include <nlohmann/json.hpp>

#include "client/gateway/quality_readings.h"
#include "client/gateway/readings.h"
#include "client/gateway/records.h"

namespace heatkeep {
namespace {

TraceLine LineOf(const Row& row) {
  TraceLine t;
  t.depth = static_cast<int>(row.Int("depth"));
  t.what = row.Text("what");
  t.name = row.Text("name");
  t.parent = row.TextOrNone("parent");
  t.count = static_cast<int>(row.Int("count"));
  t.length = {row.Int("length_nm")};
  t.mass = {row.Int("mass_g")};
  t.mill = row.TextOrNone("mill");
  t.heat = row.TextOrNone("heat");
  t.grade = row.TextOrNone("grade");
  t.section = row.Text("section");
  t.condition = row.Text("condition");
  t.document = row.Text("document");
  t.receipt = row.TextOrNone("receipt");
  t.where_now = row.TextOrNone("where_now");
  t.at = row.TextOrNone("at");
  t.by = row.TextOrNone("by");
  t.held = row.Bool("held");
  t.now = {row.Int("now_nm")};
  t.kerf = {row.Int("kerf_nm")};
  return t;
}

}  // namespace

std::optional<OrderHeats> ReadOrderHeats(Connection& connection, const std::string& order) {
  const Result rows = connection.Execute("select api.order_heats($1)::text as answer", {order});
  const std::optional<std::string> text = rows.Only().OptionalText("answer");
  if (!text) return std::nullopt;
  using Json = nlohmann::json;
  const Json answer = Json::parse(*text);
  const auto word = [](const Json& of, const char* key) { return of.at(key).is_null() ? std::string() : of.at(key).get<std::string>(); };
  OrderHeats heats;
  heats.one_heat = answer.at("one_heat").get<bool>();
  heats.statement = word(answer, "statement");
  heats.looked_at = word(answer, "looked_at");
  for (const Json& h : answer.at("heats"))
    heats.heats.push_back({word(h, "mill"), word(h, "heat"), word(h, "identity"), h.at("cut_pieces").get<int>(),
                           h.at("pieces").get<std::vector<std::string>>()});
  for (const Json& b : answer.at("before"))
    heats.before.push_back(word(b, "tag") + ", " + (word(b, "heat").empty() ? "no heat" : "heat " + word(b, "heat")));
  heats.wrong = answer.at("wrong").get<std::vector<std::string>>();
  return heats;
}

std::vector<HeatBalance> ReadBalances(Connection& connection, const std::string& kind, const std::string& name, const std::string& mill) {
  std::vector<HeatBalance> balances;
  std::int64_t last = 0;
  const Result result = connection.Execute("select * from api.metal_balance($1, $2, $3)", {kind, name, ParamOrNull(mill)});
  for (const Row row : result) {
    HeatBalance lot;
    lot.mill = row.TextOrNone("mill");
    lot.heat = row.TextOrNone("heat");
    lot.grade = row.TextOrNone("grade");
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

std::optional<TraceRecord> ReadFamily(Connection& connection, const std::string& kind, const std::string& name, const std::string& mill) {
  TraceRecord record;
  record.kind = kind;
  record.subject = name;
  const Result lines = connection.Execute("select * from api.trace($1, $2, $3)", {kind, name, ParamOrNull(mill)});
  if (lines.empty()) return std::nullopt;
  for (const Row row : lines) record.lines.push_back(LineOf(row));
  record.balances = ReadBalances(connection, kind, name, mill);
  if (kind == "order") record.heats = ReadOrderHeats(connection, name);
  return record;
}

std::optional<TraceRecord> ReadTrace(Connection& connection, const std::string& kind, const std::string& name, const std::string& mill) {
  std::optional<TraceRecord> record = ReadFamily(connection, kind, name, mill);
  if (!record) return record;
  const BookDigest digest = ReadBookDigest(connection);
  record->digest = digest.digest;
  record->happenings = digest.happenings;
  StampAsked(connection, *record);
  return record;
}

}  // namespace heatkeep
