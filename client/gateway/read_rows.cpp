#include "client/gateway/read_rows.h"

#include <iterator>
#include <sstream>

namespace heatkeep {
namespace {

using Json = nlohmann::json;

struct Asked {
  std::string view, order, columns = {}, column = {}, value = {};
};

std::vector<std::string> Names(const std::string& text) {
  std::istringstream words(text);
  return {std::istream_iterator<std::string>(words), {}};
}

void EachAsked(Connection& connection, const Asked& asked, const std::function<void(Json&&)>& visit, const std::function<void()>& pause) {
  std::string row;
  for (const std::string& name : Names(asked.columns))
    row += (row.empty() ? "" : ", ") + connection.QuoteText(name) + ", v." + connection.QuoteName(name);
  std::string sql = "select " + (row.empty() ? "to_jsonb(v)" : "jsonb_build_object(" + row + ")") + "::text as row from api." +
      connection.QuoteName(asked.view) + " v";
  std::vector<Param> params;
  if (!asked.column.empty()) {
    sql += " where v." + connection.QuoteName(asked.column) + "::text = $1";
    params.emplace_back(asked.value);
  }
  const char* before = " order by v.";
  for (const std::string& name : Names(asked.order)) {
    sql += before + connection.QuoteName(name);
    before = ", v.";
  }
  connection.EachRow(
      sql, params, [&](const Row& one) { visit(Json::parse(one.Text("row"))); }, pause);
}

}  // namespace

void EachRowOf(Connection& connection, const std::string& view, const std::string& order, const std::string& columns,
               const std::function<void(Json&&)>& visit, const std::function<void()>& pause) {
  EachAsked(connection, {view, order, columns}, visit, pause);
}

std::int64_t AboutHowMany(Connection& connection, const std::string& view) {
  const Json plan =
      Json::parse(connection.Execute("explain (format json) select * from api." + connection.QuoteName(view)).Only().Text("QUERY PLAN"));
  return plan.at(0).at("Plan").at("Plan Rows").get<std::int64_t>();
}

Json ReadRows(Connection& connection, const std::string& view, const std::string& order, const std::string& column,
              const std::string& value) {
  Json rows = Json::array();
  EachAsked(connection, {view, order, {}, column, value}, [&](Json&& row) { rows.push_back(std::move(row)); }, {});
  return rows;
}

}  // namespace heatkeep
