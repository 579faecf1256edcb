#include <algorithm>
#include <stdexcept>

#include "client/gateway/problem_rows.h"

namespace heatkeep {
namespace {

void ReadLines(Connection& connection, const PlanQuestion& question, BookProblem& asked) {
  for (const std::string& name : question.cut_lists) {
    const Result lines = connection.Execute("select * from api.cut_lines where cut_list = $1 order by order_no, line_no", {name});
    if (lines.empty()) throw std::invalid_argument("no cut list is called \"" + name + "\"; `heatkeep cutlist list` names them");
    for (const Row row : lines) {
      if (row.Int("open") == 0) continue;
      const Length wide{std::max(row.Int("dim1_nm"), row.Int("dim2_nm"))};
      if (wide <= question.wider_than) continue;
      if (wide > asked.widest)
        asked.too_large.push_back(row.Text("order_no") + "/" + row.Text("line_no") + " (" + row.Text("section") + ")");
      else asked.problem.lines.push_back(LineOf(row));
    }
  }
}

}  // namespace

BookProblem ReadProblem(Connection& connection, const PlanQuestion& question) {
  BookProblem asked;
  asked.problem.aim = question.aim;
  asked.problem.limits = question.limits;
  Transaction snapshot(connection);
  connection.Execute("set transaction isolation level repeatable read, read only");
  const ShopRules shop = ReadShopRules(connection, question.saw, question.bundled);
  AddShopRules(shop, asked);
  ReadLines(connection, question, asked);
  AddFreeMetal(connection, shop, asked);
  KeepToSettledHeats(
      connection, [](auto, auto) { return true; }, asked.problem);
  snapshot.Commit();
  return asked;
}

std::string AimWord(allocator::Aim aim) {
  switch (aim) {
    case allocator::Aim::LeastMoney: return "least-money";
    case allocator::Aim::FewestBars: return "fewest-bars";
    case allocator::Aim::LeastMetres: return "least-metres";
    case allocator::Aim::DropsFirst: break;
  }
  return "drops-first";
}

allocator::Aim AimNamed(const std::string& word) {
  for (const auto aim : {allocator::Aim::DropsFirst, allocator::Aim::LeastMoney, allocator::Aim::FewestBars, allocator::Aim::LeastMetres})
    if (AimWord(aim) == word) return aim;
  throw std::invalid_argument("aim \"" + word + "\" is not known; expected drops-first, least-money, fewest-bars or least-metres");
}

}  // namespace heatkeep
