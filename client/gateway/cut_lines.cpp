#include "client/gateway/cut_lines.h"

#include <nlohmann/json.hpp>

namespace heatkeep {

std::vector<CutLineRow> ReadOpenLines(Connection& connection, const std::vector<std::string>& cut_lists) {
  std::vector<CutLineRow> rows;
  const Result result = connection.Execute(
      "select * from api.cut_lines where open > 0 and ($1::jsonb = '[]' or cut_list in (select jsonb_array_elements_text($1::jsonb)))"
      " order by due nulls last, priority, section, grade, order_no, line_no",
      {nlohmann::json(cut_lists).dump()});
  for (const Row row : result) {
    CutLineRow r;
    r.cut_list = row.Text("cut_list");
    r.order = row.Text("order_no");
    r.line = row.Text("line_no");
    r.customer = row.TextOrNone("customer");
    r.section = row.Text("section");
    r.grade = row.Text("grade");
    r.condition = row.Text("condition");
    r.papers = row.Text("papers");
    if (row.Text("owner") != "ours") r.owner = row.Text("owner");
    r.due = row.TextOrNone("due");
    r.length = {row.Int("length_nm") + row.Int("face_nm") + row.Int("aim_nm")};
    r.quantity = row.Int("quantity");
    r.cut = row.Int("cut");
    r.planned = row.Int("planned");
    r.open = row.Int("open");
    r.priority = static_cast<int>(row.Int("priority"));
    r.one_heat = !row.IsNull("one_heat");
    r.max_heats = static_cast<int>(row.OptionalInt("max_heats").value_or(0));
    rows.push_back(std::move(r));
  }
  return rows;
}

std::string ReadCutListCalled(Connection& connection, const std::string& name) {
  const Result found = connection.Execute(
      "select cut_list from api.cut_lines where cut_list = $1 or order_no = $1 order by (open > 0) desc, cut_list <> $1, due nulls last, cut_list limit 1",
      {name});
  return found.empty() ? std::string() : found.Only().Text("cut_list");
}

}  // namespace heatkeep
