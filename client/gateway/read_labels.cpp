#include "client/gateway/read_labels.h"

#include <nlohmann/json.hpp>

namespace heatkeep {
namespace {

using Json = nlohmann::json;

// A word of a label; what the book does not say is empty.
std::string Word(const Json& label, const char* key) {
  const auto at = label.find(key);
  return at == label.end() || at->is_null() ? "" : at->get<std::string>();
}

std::int64_t Amount(const Json& label, const char* key) {
  const auto at = label.find(key);
  return at == label.end() || at->is_null() ? 0 : at->get<std::int64_t>();
}

std::string TextOr(const Row& row, const char* column) { return row.OptionalText(column).value_or(""); }

}  // namespace

std::vector<PieceLabel> ReadWaitingLabels(Connection& connection, const std::vector<std::string>& tags) {
  std::vector<PieceLabel> labels;
  std::string wanted;
  for (const std::string& tag : tags) wanted += (wanted.empty() ? "" : " ") + tag;
  const Result result = connection.Execute("select job, reprint, asked_on, label::text as label from api.labels_to_print($1)", {wanted});
  for (const Row row : result) {
    const Json said = Json::parse(row.Text("label"));
    PieceLabel l;
    l.job = row.Int("job");
    l.tag = Word(said, "tag");
    l.kind = Word(said, "kind");
    l.mill = Word(said, "mill");
    l.heat = Word(said, "heat");
    l.grade = Word(said, "grade");
    l.number = Word(said, "number");
    l.condition = Word(said, "condition");
    l.section = Word(said, "section");
    l.document = Word(said, "document");
    l.owner = Word(said, "owner");
    l.limits = Word(said, "limits");
    l.from = Word(said, "from");
    l.blocked = Word(said, "blocked");
    l.parent = Word(said, "parent");
    l.place = Word(said, "place");
    l.reprint = static_cast<int>(row.Int("reprint"));
    if (l.reprint > 0) l.reprint_on = TextOr(row, "asked_on");
    l.length = {Amount(said, "length_nm")};
    l.mass = {Amount(said, "mass_g")};
    labels.push_back(std::move(l));
  }
  return labels;
}

std::vector<PlaceLabel> ReadPlaceLabels(Connection& connection) {
  std::vector<PlaceLabel> labels;
  const Result result = connection.Execute("select * from api.places order by walk, place");
  for (const Row row : result)
    labels.push_back({row.Text("place"), row.Text("site"), row.Text("kind"), {row.OptionalInt("max_length_nm").value_or(0)}, {row.OptionalInt("max_mass_g").value_or(0)}});
  return labels;
}

std::vector<BatchLabel> ReadBatchLabels(Connection& connection, const std::string& order) {
  std::vector<BatchLabel> labels;
  const Result result = connection.Execute("select * from api.cut_batches where \"order\" = $1 order by line, heat, mill", {order});
  for (const Row row : result) {
    BatchLabel l;
    l.order = row.Text("order");
    l.line = row.Text("line");
    l.customer = TextOr(row, "customer");
    l.mill = TextOr(row, "mill");
    l.heat = row.Text("heat");
    l.grade = TextOr(row, "grade");
    l.section = row.Text("section");
    l.condition = row.Text("condition");
    l.document = TextOr(row, "document");
    l.owner = TextOr(row, "owner");
    l.blocked = TextOr(row, "blocked");
    l.count = static_cast<int>(row.Int("count"));
    l.length = {row.Int("length_nm")};
    labels.push_back(std::move(l));
  }
  return labels;
}

}  // namespace heatkeep
