#include "client/gateway/quality_readings.h"

namespace heatkeep {
namespace {

std::string TextOr(const Row& row, std::string_view column) { return row.OptionalText(column).value_or(""); }

}  // namespace

std::vector<Found> LookUp(Connection& connection, const std::string& text) {
  std::vector<Found> all;
  for (const Row row : connection.Execute("select * from api.look_up($1)", {text}))
    all.push_back({row.Text("kind"), row.Text("name"), TextOr(row, "mill"), TextOr(row, "words")});
  return all;
}

std::vector<HoldRow> ReadLiveHolds(Connection& connection) {
  std::vector<HoldRow> rows;
  for (const Row row : connection.Execute("select * from api.holds where lifted_by is null and condemned_by is null order by hold_id"))
    rows.push_back({row.Int("hold_id"), row.Text("scope"), TextOr(row, "ref"), TextOr(row, "mill"), row.Text("reason"), row.Text("held_by")});
  return rows;
}

std::vector<HeatDocument> ReadDocumentsOf(Connection& connection, const std::string& heat) {
  std::vector<HeatDocument> rows;
  for (const Row row : connection.Execute("select *, issued_on::text as issued from api.documents where heat = $1 order by issuer, number, version", {heat}))
    rows.push_back({row.Text("issuer"), row.Text("number"), row.Text("type"), TextOr(row, "issued"), TextOr(row, "accepted_by"), TextOr(row, "grade"), row.Text("section"),
                    TextOr(row, "condition"), TextOr(row, "file_sha256"), row.Int("version"), row.Bool("replaced")});
  return rows;
}

std::vector<AwaitedRow> ReadPapersAwaited(Connection& connection) {
  std::vector<AwaitedRow> rows;
  for (const Row row : connection.Execute("select *, chase_on::text as chase from api.papers_awaited where pieces > 0 order by chase_on nulls last, heat"))
    rows.push_back({TextOr(row, "chase"), TextOr(row, "mill"), row.Text("heat"), TextOr(row, "grade"), row.Text("section"), TextOr(row, "receipts"), TextOr(row, "chase_words"),
                    row.OptionalInt("days_late").value_or(0), row.Int("pieces")});
  return rows;
}

std::vector<HistoryRow> ReadHistory(Connection& connection, const std::string& tag) {
  std::vector<HistoryRow> rows;
  for (const Row row : connection.Execute(
           "select to_char(true_at, 'YYYY-MM-DD HH24:MI') as at, who, deed, max(reason) as reason, max(entered) as entered, max(seq) as seq from api.piece_history where tag = $1"
           " group by 1, 2, 3 order by seq desc", {tag}))
    rows.push_back({row.Text("at"), row.Text("who"), row.Text("deed"), TextOr(row, "reason"), TextOr(row, "entered")});
  return rows;
}

}  // namespace heatkeep
