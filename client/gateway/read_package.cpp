#include "client/gateway/read_package.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

std::string TextOf(const Json& object, const char* key) {
  const auto found = object.find(key);
  return found == object.end() || found->is_null() ? std::string() : found->get<std::string>();
}

std::int64_t NumberOf(const Json& object, const char* key) {
  const auto found = object.find(key);
  return found == object.end() || found->is_null() ? 0 : found->get<std::int64_t>();
}

std::vector<std::string> TextsOf(const Json& object, const char* key) {
  std::vector<std::string> texts;
  const auto found = object.find(key);
  if (found == object.end() || found->is_null()) return texts;
  for (const Json& text : *found)
    if (!text.is_null()) texts.push_back(text.get<std::string>());
  return texts;
}

PackageLine LineOf(const Json& j) {
  PackageLine l;
  l.order = TextOf(j, "order");
  l.line = TextOf(j, "line");
  l.grade = TextOf(j, "grade");
  l.section = TextOf(j, "section");
  l.condition = TextOf(j, "condition");
  l.mill = TextOf(j, "mill");
  l.heat = TextOf(j, "heat");
  l.note = TextOf(j, "note");
  l.tags = TextsOf(j, "tags");
  l.length = {NumberOf(j, "length_nm")};
  l.mass = {NumberOf(j, "mass_g")};
  l.count = static_cast<int>(NumberOf(j, "count"));
  l.ordered = static_cast<int>(NumberOf(j, "ordered"));
  for (const Json& p : j.at("documents")) l.papers.push_back({TextOf(p, "issuer"), TextOf(p, "number"), TextOf(p, "type")});
  return l;
}

PackageDocument DocumentOf(const Json& j) {
  PackageDocument d;
  d.issuer = TextOf(j, "issuer");
  d.number = TextOf(j, "number");
  d.type = TextOf(j, "type");
  d.issued_on = TextOf(j, "issued_on");
  d.file_sha256 = TextOf(j, "file_sha256");
  d.media = TextOf(j, "media");
  d.version = static_cast<int>(NumberOf(j, "version"));
  d.heats = TextsOf(j, "heats");
  for (const Json& p : j.at("passed")) d.passed.push_back({TextOf(p, "note"), TextOf(p, "rule"), TextOf(p, "additional"), TextOf(p, "words")});
  return d;
}

}  // namespace

Package ReadPackage(Connection& connection, const Json& asked) {
  Package p;
  p.said = connection.Execute("select api.package_of($1)::text as said", {asked.dump()}).Only().Text("said");
  const Json j = Json::parse(p.said);
  p.shop = TextOf(j, "shop");
  p.order = TextOf(j, "order");
  p.note = TextOf(j, "note");
  p.customer = TextOf(j, "customer");
  p.as_of = TextOf(j, "as_of");
  p.without_files = j.at("without_files").get<bool>();
  p.against = TextsOf(j, "against");
  p.heats_statement = TextOf(j, "heats");
  for (const Json& line : j.at("lines")) p.lines.push_back(LineOf(line));
  for (const Json& document : j.at("documents")) p.documents.push_back(DocumentOf(document));
  return p;
}

}  // namespace heatkeep
