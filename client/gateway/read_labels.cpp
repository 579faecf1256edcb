#include "client/gateway/read_labels.h"

#include "client/gateway/json_values.h"

namespace heatkeep {

using Json = nlohmann::json;

WaitingLabels ReadWaitingLabels(Connection& connection, const std::vector<std::string>& tags) {
  WaitingLabels waiting;
  std::string wanted;
  for (const std::string& tag : tags) wanted += (wanted.empty() ? "" : " ") + tag;
  const Result result = connection.Execute("select job, reprint, asked_on, label::text as label from api.labels_to_print($1)", {wanted});
  for (const Row row : result) {
    const Json said = Json::parse(row.Text("label"));
    PieceLabel l;
    l.job = row.Int("job");
    l.tag = JsonText(said, "tag");
    l.kind = JsonText(said, "kind");
    l.mill = JsonText(said, "mill");
    l.heat = JsonText(said, "heat");
    l.grade = JsonText(said, "grade");
    l.number = JsonText(said, "number");
    l.condition = JsonText(said, "condition");
    l.section = JsonText(said, "section");
    l.document = JsonText(said, "document");
    l.owner = JsonText(said, "owner");
    l.limits = JsonText(said, "limits");
    l.from = JsonText(said, "from");
    l.blocked = JsonText(said, "blocked");
    l.parent = JsonText(said, "parent");
    l.place = JsonText(said, "place");
    l.reprint = static_cast<int>(row.Int("reprint"));
    if (l.reprint > 0) l.reprint_on = row.TextOrNone("asked_on");
    l.length = {JsonInt(said, "length_nm")};
    l.mass = {JsonInt(said, "mass_g")};
    waiting.jobs.push_back({l.job, l.tag});
    std::erase_if(waiting.labels, [&](const PieceLabel& earlier) { return earlier.tag == l.tag; });
    waiting.labels.push_back(std::move(l));
  }
  return waiting;
}

std::vector<PlaceLabel> ReadPlaceLabels(Connection& connection) {
  std::vector<PlaceLabel> labels;
  const Result result = connection.Execute("select * from api.places order by walk, place");
  for (const Row row : result)
    labels.push_back({row.Text("place"),
                      row.Text("site"),
                      row.Text("kind"),
                      {row.OptionalInt("max_length_nm").value_or(0)},
                      {row.OptionalInt("max_mass_g").value_or(0)}});
  return labels;
}

std::vector<BatchLabel> ReadBatchLabels(Connection& connection, const std::string& order) {
  std::vector<BatchLabel> labels;
  const Result result = connection.Execute("select * from api.cut_batches where \"order\" = $1 order by line, heat, mill", {order});
  for (const Row row : result) {
    BatchLabel l;
    l.order = row.Text("order");
    l.line = row.Text("line");
    l.customer = row.TextOrNone("customer");
    l.mill = row.TextOrNone("mill");
    l.heat = row.Text("heat");
    l.grade = row.TextOrNone("grade");
    l.section = row.Text("section");
    l.condition = row.Text("condition");
    l.document = row.TextOrNone("document");
    l.owner = row.TextOrNone("owner");
    l.blocked = row.TextOrNone("blocked");
    l.count = static_cast<int>(row.Int("count"));
    l.length = {row.Int("length_nm")};
    labels.push_back(std::move(l));
  }
  return labels;
}

}  // namespace heatkeep
