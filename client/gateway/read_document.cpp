#include "client/gateway/read_document.h"

namespace heatkeep {
namespace {

std::optional<Bound> BoundOf(const Row& row, const char* value, const char* places) {
  if (row.IsNull(value)) return std::nullopt;
  return Bound{row.Int(value), row.IsNull(places) ? 6 : static_cast<int>(row.Int(places))};
}

SizeRange SizesOf(const Row& row) {
  SizeRange sizes{Length{row.Int("over_nm")}, {}};
  if (!row.IsNull("upto_nm")) sizes.upto = Length{row.Int("upto_nm")};
  return sizes;
}

}  // namespace

std::vector<DocumentRecord> ReadDocument(Connection& connection, const std::string& number, const std::string& issuer,
                                         std::int64_t version) {
  const Result result = connection.Execute(
      "select issuer, number, version, type, accepted_by, file_sha256, validated_by::text as validated_by, heat, grade, section, size_nm, condition, kind, what, "
      "value, unit from api.document_values d where number = $1 and ($2 = '' or issuer = $2) and version = case when $3 > 0 then $3 else (select max(version) from api.documents n "
      "where n.issuer = d.issuer and n.number = d.number) end order by issuer, heat, section, condition, kind, what",
      {number, issuer, version});
  std::vector<DocumentRecord> documents;
  for (const auto& row : result) {
    if (documents.empty() || documents.back().issuer != row.Text("issuer")) {
      documents.push_back({row.Text("issuer"),
                           row.Text("number"),
                           row.Text("type"),
                           row.TextOrNone("accepted_by"),
                           row.TextOrNone("file_sha256"),
                           row.TextOrNone("validated_by"),
                           row.Int("version"),
                           {}});
    }
    auto& lots = documents.back().lots;
    DocumentLot lot{row.TextOrNone("heat"), row.TextOrNone("grade"), row.Text("section"), row.Text("condition"), {}, {}, {}, {}};
    if (lots.empty() || lots.back().heat != lot.heat || lots.back().section != lot.section || lots.back().condition != lot.condition) {
      if (!row.IsNull("size_nm")) lot.size = Length{row.Int("size_nm")};
      lots.push_back(std::move(lot));
    }
    if (row.IsNull("kind")) continue;
    const std::string kind = row.Text("kind");
    if (kind == "test") {
      lots.back().tests.push_back({row.Text("what"), row.Text("unit"), row.Int("value")});
    } else {
      (kind == "heat" ? lots.back().heat_analysis : lots.back().product_analysis).push_back({row.Text("what"), row.Int("value")});
    }
  }
  return documents;
}

std::vector<DocumentVersion> ReadVersions(Connection& connection, const std::string& number, const std::string& issuer) {
  std::vector<DocumentVersion> versions;
  for (const auto& row :
       connection.Execute("select * from api.document_versions where number = $1 and issuer = $2 order by version", {number, issuer}))
    versions.push_back({row.Text("type"), row.Text("issued_on"), row.TextOrNone("filed_by"), row.TextOrNone("accepted_by"),
                        row.TextOrNone("reason"), row.TextOrNone("file_sha256"), row.TextOrNone("media"), row.Int("version"),
                        row.OptionalInt("bytes").value_or(0), row.OptionalInt("replaced_by").value_or(0)});
  return versions;
}

std::string ReadFileBytes(Connection& connection, const std::string& sha256) {
  const std::string hex = connection.Execute("select coalesce(encode(api.file_bytes($1), 'hex'), '') as hex", {sha256}).Only().Text("hex");
  const auto digit = [](char c) { return c <= '9' ? c - '0' : c - 'a' + 10; };
  std::string bytes(hex.size() / 2, '\0');
  for (std::size_t i = 0; i < bytes.size(); ++i) bytes[i] = static_cast<char>(digit(hex[2 * i]) * 16 + digit(hex[2 * i + 1]));
  return bytes;
}

std::vector<GradeLimit> ReadLimits(Connection& connection, const std::string& grade) {
  std::vector<GradeLimit> limits;
  for (const auto& row : connection.Execute("select * from api.grade_limits where grade = $1 order by element, over_nm", {grade}))
    limits.push_back({row.Text("grade"), SizesOf(row), row.Text("element"), BoundOf(row, "least_ppm_x100", "least_places"),
                      BoundOf(row, "most_ppm_x100", "most_places"), row.Text("source"), row.TextOrNone("note"),
                      row.TextOrNone("evidence")});
  return limits;
}

std::vector<MechanicalLimit> ReadMechanicalLimits(Connection& connection, const std::string& grade) {
  std::vector<MechanicalLimit> limits;
  for (const auto& row :
       connection.Execute("select * from api.mechanical_limits where grade = $1 order by property desc, condition, over_nm", {grade}))
    limits.push_back({row.Text("grade"), row.Text("condition"), SizesOf(row), row.Text("property"),
                      BoundOf(row, "least_millionths", "least_places"), BoundOf(row, "most_millionths", "most_places"), row.Text("source"),
                      row.TextOrNone("note"), row.TextOrNone("evidence")});
  return limits;
}

std::vector<ProductDeviation> ReadDeviations(Connection& connection) {
  std::vector<ProductDeviation> deviations;
  for (const auto& row : connection.Execute("select * from api.product_deviations order by product_deviation_id"))
    deviations.push_back({row.Text("standard"), row.TextOrNone("grade"), row.Text("element"), Bound{row.Int("over_ppm_x100"), 6},
                          BoundOf(row, "upto_ppm_x100", "above_places"), BoundOf(row, "above_ppm_x100", "above_places"),
                          BoundOf(row, "below_ppm_x100", "below_places"), row.Text("source"), row.TextOrNone("note"),
                          row.TextOrNone("evidence")});
  return deviations;
}

}  // namespace heatkeep
