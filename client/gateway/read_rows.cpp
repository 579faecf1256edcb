#include "client/gateway/read_rows.h"

#include <sstream>

namespace heatkeep {

nlohmann::json ReadRows(Connection& connection, const std::string& view, const std::string& order, const std::string& column,
                        const std::string& value) {
  std::string sort;
  std::istringstream words(order);
  for (std::string name; words >> name;) sort += (sort.empty() ? " order by v." : ", v.") + connection.QuoteName(name);
  std::vector<Param> params;
  std::string only;
  if (!column.empty()) {
    only = " where v." + connection.QuoteName(column) + "::text = $1";
    params.emplace_back(value);
  }
  return nlohmann::json::parse(connection.Execute("select coalesce(jsonb_agg(to_jsonb(v)" + sort + "), '[]')::text as rows from api." +
                                                      connection.QuoteName(view) + " v" + only, params).Only().Text("rows"));
}

}  // namespace heatkeep
