#include "tests/load/journal.h"

#include <set>

namespace heatkeep {

std::vector<std::string> NotInTheBook(Connection& admin, const std::vector<Journal>& journals) {
  std::map<std::string, Json> answers;
  for (const Row row : admin.Execute("select request_id::text as id, answer::text as a from book.request where answer is not null"))
    answers.emplace(row.Text("id"), Json::parse(row.Text("a")));
  std::map<std::pair<std::string, std::string>, std::int64_t> made;  // request and table -> rows that began in it
  for (const Row row : admin.Execute(R"sql(
      select h.request_id::text as id, h.tbl, count(*)::bigint as n from book.happening h join guard.chronicled() c using (tbl)
        where h.sets ? c.key_column group by 1, 2)sql"))
    made[{row.Text("id"), row.Text("tbl")}] = row.Int("n");
  std::vector<std::string> wrong;
  for (const Journal& journal : journals)
    for (const Acknowledged& one : journal.done) {
      const std::string name = one.deed + " by " + one.who + ", request " + one.request.text;
      const auto kept = answers.find(one.request.text);
      if (kept == answers.end()) {
        wrong.push_back(name + " was acknowledged and is not in the book");
        continue;
      }
      if (kept->second != one.answer) wrong.push_back(name + " was answered otherwise than the book keeps: " + one.answer.dump());
      for (const auto& [table, count] : one.rows)
        if (const std::int64_t n = made[{one.request.text, table}]; n != count)
          wrong.push_back(name + " made " + std::to_string(n) + " rows of " + table + ", not " + std::to_string(count));
    }
  return wrong;
}

std::vector<std::string> PromisedTwice(Connection& admin) {
  std::map<std::int64_t, std::int64_t> piece_of;        // promise -> piece
  std::map<std::int64_t, std::set<std::int64_t>> live;  // piece -> its live promises
  std::vector<std::string> twice;
  for (
      const Row row : admin.Execute(
          "select row_id, (sets ->> 'piece_id')::bigint as piece, sets ->> 'state' as state from book.happening where tbl = 'promise' order by chain_id, seq")) {
    const std::int64_t promise = row.Int("row_id");
    if (const auto piece = row.OptionalInt("piece")) piece_of[promise] = *piece;
    const auto state = row.OptionalText("state");
    if (!state) continue;
    std::set<std::int64_t>& now = live[piece_of.at(promise)];
    if (*state == "live") now.insert(promise);
    else now.erase(promise);
    if (now.size() > 1)
      twice.push_back("piece " + std::to_string(piece_of.at(promise)) + " was promised " + std::to_string(now.size()) + " times at once");
  }
  return twice;
}

}  // namespace heatkeep
