#include "client/gateway/records.h"

#include "client/gateway/request_number.h"

namespace heatkeep {
namespace {

RecallLine LineOf(const Row& row) {
  const auto text = [&row](const char* column) { return row.TextOrNone(column); };
  RecallLine l;
  l.whereabouts = row.Text("whereabouts");
  l.what = row.Text("what");
  l.tag = row.Text("tag");
  l.count = static_cast<int>(row.Int("count"));
  l.length = {row.Int("length_nm")};
  l.mass = {row.Int("mass_g")};
  l.mill = text("mill");
  l.heat = text("heat");
  l.grade = text("grade");
  l.section = text("section");
  l.condition = text("condition");
  l.owner = text("owner");
  l.site = text("site");
  l.place = text("place");
  l.walk = static_cast<int>(row.Int("walk"));
  l.order = text("order_no");
  l.line = text("line_no");
  l.customer = text("customer");
  l.note = text("note");
  l.gone_at = text("gone_at");
  l.words = text("words");
  l.held = row.Bool("held");
  return l;
}

}  // namespace

RecordProof ProveRecord(Connection& connection, const RecordSubject& subject, const std::string& content) {
  const Result result =
      connection.Execute("select * from api.record_of($1, $2, $3, $4)", {subject.kind, subject.name, ParamOrNull(subject.mill), content});
  const Row row = result.Only();
  return {row.Text("digest"), content, row.Text("ends"), row.Int("happenings")};
}

void KeepRecord(Connection& connection, const RecordSubject& subject, const RecordProof& proof) {
  nlohmann::json body{
      {"kind", subject.kind}, {"subject", subject.name}, {"content", proof.content}, {"ends", nlohmann::json::parse(proof.ends)}};
  if (!subject.mill.empty()) body["mill"] = subject.mill;
  connection.Execute("select api.keep_record($1, $2)", {NewRequest().text, body.dump()});
}

nlohmann::json CheckRecord(Connection& connection, const std::string& digest, const std::optional<std::string>& content,
                           const std::optional<std::string>& ends) {
  return nlohmann::json::parse(
      connection.Execute("select api.check_record($1, $2, $3)::text as answer", {digest, content, ends}).Only().Text("answer"));
}

RecallRecord ReadRecall(Connection& connection, const std::string& scope, const std::string& ref, const std::string& mill) {
  RecallRecord record;
  record.scope = scope;
  record.ref = ref;
  record.mill = mill;
  const Result lines = connection.Execute("select * from api.recall_list($1, $2, $3)", {scope, ref, ParamOrNull(mill)});
  for (const Row row : lines) record.lines.push_back(LineOf(row));
  StampAsked(connection, record);
  return record;
}

nlohmann::json PreviewHold(Connection& connection, const std::string& scope, const std::string& ref, const std::string& mill) {
  return nlohmann::json::parse(
      connection.Execute("select api.preview_hold($1, $2, $3)::text as answer", {scope, ref, ParamOrNull(mill)}).Only().Text("answer"));
}

BookDigest ReadBookDigest(Connection& connection) {
  const Result rows = connection.Execute("select digest, happenings from api.book_digest()");
  return {rows.Only().Text("digest"), rows.Only().Int("happenings")};
}

}  // namespace heatkeep
