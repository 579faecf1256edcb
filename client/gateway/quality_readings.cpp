#include "client/gateway/quality_readings.h"

namespace heatkeep {

std::vector<Found> LookUp(Connection& connection, const std::string& text) {
  std::vector<Found> all;
  for (const Row row : connection.Execute("select * from api.look_up($1)", {text}))
    all.push_back({row.Text("kind"), row.Text("name"), row.TextOrNone("mill"), row.TextOrNone("words")});
  return all;
}

std::vector<HoldRow> ReadLiveHolds(Connection& connection) {
  std::vector<HoldRow> rows;
  for (const Row row : connection.Execute("select * from api.holds where lifted_by is null and condemned_by is null order by hold_id"))
    rows.push_back(
        {row.Int("hold_id"), row.Text("scope"), row.TextOrNone("ref"), row.TextOrNone("mill"), row.Text("reason"), row.Text("held_by")});
  return rows;
}

std::vector<HeatDocument> ReadDocumentsOf(Connection& connection, const std::string& heat) {
  std::vector<HeatDocument> rows;
  for (const Row row : connection.Execute(
           "select *, issued_on::text as issued from api.documents where heat = $1 order by issuer, number, version", {heat}))
    rows.push_back({row.Text("issuer"), row.Text("number"), row.Text("type"), row.TextOrNone("issued"), row.TextOrNone("accepted_by"),
                    row.TextOrNone("grade"), row.Text("section"), row.TextOrNone("condition"), row.TextOrNone("file_sha256"),
                    row.Int("version"), row.Bool("replaced")});
  return rows;
}

std::vector<AwaitedRow> ReadPapersAwaited(Connection& connection) {
  std::vector<AwaitedRow> rows;
  for (const Row row :
       connection.Execute("select *, chase_on::text as chase from api.papers_awaited where pieces > 0 order by chase_on nulls last, heat"))
    rows.push_back({row.TextOrNone("chase"), row.TextOrNone("mill"), row.Text("heat"), row.TextOrNone("grade"), row.Text("section"),
                    row.TextOrNone("receipts"), row.TextOrNone("chase_words"), row.OptionalInt("days_late").value_or(0),
                    row.Int("pieces")});
  return rows;
}

std::vector<HistoryRow> ReadHistory(Connection& connection, const std::string& tag) {
  std::vector<HistoryRow> rows;
  for (
      const Row row : connection.Execute(
          "select to_char(true_at, 'YYYY-MM-DD HH24:MI') as at, who, deed, max(reason) as reason, max(entered) as entered, max(seq) as seq from api.piece_history where tag = $1"
          " group by 1, 2, 3 order by seq desc",
          {tag}))
    rows.push_back({row.Text("at"), row.Text("who"), row.Text("deed"), row.TextOrNone("reason"), row.TextOrNone("entered")});
  return rows;
}

}  // namespace heatkeep
