#include "client/gateway/read_package.h"

#include "client/gateway/json_values.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

PackageLine LineOf(const Json& j) {
  PackageLine l;
  l.order = JsonText(j, "order");
  l.line = JsonText(j, "line");
  l.grade = JsonText(j, "grade");
  l.section = JsonText(j, "section");
  l.condition = JsonText(j, "condition");
  l.mill = JsonText(j, "mill");
  l.heat = JsonText(j, "heat");
  l.note = JsonText(j, "note");
  l.tags = JsonTexts(j, "tags");
  l.length = {JsonInt(j, "length_nm")};
  l.mass = {JsonInt(j, "mass_g")};
  l.count = static_cast<int>(JsonInt(j, "count"));
  l.ordered = static_cast<int>(JsonInt(j, "ordered"));
  for (const Json& p : j.at("documents")) l.papers.push_back({JsonText(p, "issuer"), JsonText(p, "number"), JsonText(p, "type")});
  return l;
}

PackageDocument DocumentOf(const Json& j) {
  PackageDocument d;
  d.issuer = JsonText(j, "issuer");
  d.number = JsonText(j, "number");
  d.type = JsonText(j, "type");
  d.issued_on = JsonText(j, "issued_on");
  d.file_sha256 = JsonText(j, "file_sha256");
  d.media = JsonText(j, "media");
  d.version = static_cast<int>(JsonInt(j, "version"));
  d.heats = JsonTexts(j, "heats");
  for (const Json& p : j.at("passed"))
    d.passed.push_back({JsonText(p, "note"), JsonText(p, "rule"), JsonText(p, "additional"), JsonText(p, "words")});
  return d;
}

}  // namespace

Package ReadPackage(Connection& connection, const Json& asked) {
  Package p;
  p.said = connection.Execute("select api.package_of($1)::text as said", {asked.dump()}).Only().Text("said");
  const Json j = Json::parse(p.said);
  p.shop = JsonText(j, "shop");
  p.order = JsonText(j, "order");
  p.note = JsonText(j, "note");
  p.customer = JsonText(j, "customer");
  p.as_of = JsonText(j, "as_of");
  p.without_files = j.at("without_files").get<bool>();
  p.against = JsonTexts(j, "against");
  p.heats_statement = JsonText(j, "heats");
  for (const Json& line : j.at("lines")) p.lines.push_back(LineOf(line));
  for (const Json& document : j.at("documents")) p.documents.push_back(DocumentOf(document));
  return p;
}

}  // namespace heatkeep
