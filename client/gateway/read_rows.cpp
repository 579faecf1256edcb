#include "client/gateway/read_rows.h"

#include <sstream>

namespace heatkeep {
namespace {

using Json = nlohmann::json;

void EachWhere(Connection& connection, const std::string& view, const std::string& order, const std::string& column, const std::string& value,
               const std::function<void(Json&&)>& visit, const std::function<void()>& pause) {
  std::string sql = "select to_jsonb(v)::text as row from api." + connection.QuoteName(view) + " v";
  std::vector<Param> params;
  if (!column.empty()) {
    sql += " where v." + connection.QuoteName(column) + "::text = $1";
    params.emplace_back(value);
  }
  std::istringstream words(order);
  const char* before = " order by v.";
  for (std::string name; words >> name; before = ", v.") sql += before + connection.QuoteName(name);
  connection.EachRow(sql, params, [&](const Row& row) { visit(Json::parse(row.Text("row"))); }, pause);
}

}  // namespace

void EachRowOf(Connection& connection, const std::string& view, const std::string& order, const std::function<void(Json&&)>& visit,
               const std::function<void()>& pause) {
  EachWhere(connection, view, order, {}, {}, visit, pause);
}

std::int64_t AboutHowMany(Connection& connection, const std::string& view) {
  const Json plan = Json::parse(connection.Execute("explain (format json) select * from api." + connection.QuoteName(view)).Only().Text("QUERY PLAN"));
  return plan.at(0).at("Plan").at("Plan Rows").get<std::int64_t>();
}

Json ReadRows(Connection& connection, const std::string& view, const std::string& order, const std::string& column, const std::string& value) {
  Json rows = Json::array();
  EachWhere(connection, view, order, column, value, [&](Json&& row) { rows.push_back(std::move(row)); }, {});
  return rows;
}

}  // namespace heatkeep
