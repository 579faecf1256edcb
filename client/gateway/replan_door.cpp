#include "client/gateway/replan_door.h"

#include <algorithm>
#include <set>
#include <stdexcept>

#include "client/gateway/plan_body.h"
#include "client/gateway/problem_rows.h"

namespace heatkeep {
namespace {

using allocator::LeftKind;
using allocator::Mishap;

constexpr const char* kMetal =
    "select m.*, l.length_nm as planned_nm, l.trim_nm, l.kerf_nm, l.left_nm, l.left_fate from api.plan_metal m"
    " join api.plan_layouts l using (plan_id, layout_no) where m.plan_id = $1 order by m.layout_no";

std::optional<int> LineCalled(const allocator::Problem& problem, const std::string& order, const std::string& line) {
  for (std::size_t i = 0; i < problem.lines.size(); ++i)
    if (problem.lines[i].order == order && problem.lines[i].line == line) return static_cast<int>(i);
  return std::nullopt;
}

std::map<int, int> CutsOf(const allocator::Layout& layout) {
  std::map<int, int> cuts;
  for (const allocator::Cut& cut : layout.cuts) cuts[cut.line] += cut.count;
  return cuts;
}

}  // namespace

PlanUnderWay ReadUnderWay(Connection& connection, std::int64_t plan, const allocator::Limits& limits) {
  const Result head = connection.Execute("select * from api.plans where plan_id = $1", {plan});
  if (head.empty()) throw std::invalid_argument("there is no plan " + std::to_string(plan) + "; `heatkeep plan list` names them");
  const Row row = head.Only();
  if (row.Text("state") == "cancelled")
    throw std::invalid_argument("plan " + std::to_string(plan) + " is cancelled; plan its cut list again");
  PlanUnderWay under_way;
  under_way.number = plan;
  under_way.saw = row.Text("saw");
  const ShopRules shop = ReadShopRules(connection, under_way.saw, row.Bool("bundled"));
  AddShopRules(shop, under_way.asked);
  under_way.asked.problem.aim = AimNamed(row.Text("aim"));
  under_way.asked.problem.limits = limits;
  std::map<std::int64_t, std::size_t> at;
  const Result metal = connection.Execute(kMetal, {plan});
  for (const Row m : metal) {
    if (m.Bool("cutting")) continue;
    const int piece = AddPiece(m, shop, under_way.asked);
    under_way.asked.problem.pieces.back().length = {m.Int("planned_nm")};
    at[m.Int("layout_no")] = under_way.layouts.size();
    under_way.numbers.push_back(m.Int("layout_no"));
    under_way.at_saw.push_back(m.Text("layout_state") == "at saw");
    allocator::Layout layout;
    layout.piece = piece;
    layout.trim = {m.Int("trim_nm")};
    layout.kerf = {m.Int("kerf_nm")};
    layout.left = {m.Int("left_nm")};
    const std::string fate = m.Text("left_fate");
    layout.left_kind = fate == "drop" ? LeftKind::Drop : fate == "scrap" ? LeftKind::Scrap : LeftKind::None;
    under_way.layouts.push_back(layout);
  }
  under_way.cuts.resize(under_way.layouts.size());
  const Result cuts = connection.Execute("select * from api.plan_cuts where plan_id = $1 order by layout_no, seq", {plan});
  for (const Row c : cuts)
    if (const auto it = at.find(c.Int("layout_no")); it != at.end())
      under_way.cuts[it->second].push_back({c.Text("order_no"), c.Text("line_no"), static_cast<int>(c.Int("count")), {c.Int("set_nm")}});
  return under_way;
}

ToMend ReadToMend(Connection& connection, const PlanUnderWay& before) {
  ToMend now{before.asked, {}, before.at_saw, {}};
  allocator::Problem& problem = now.asked.problem;
  const Result lines = connection.Execute(
      "select c.* from (select order_no, line_no from api.plan_cuts where plan_id = $1 union select order_no, line_no from api.plan_shorts where plan_id = $1) p"
      " join api.cut_lines c using (order_no, line_no) order by order_no, line_no",
      {before.number});
  for (const Row row : lines) problem.lines.push_back(LineOf(row));

  const Result metal = connection.Execute(kMetal, {before.number});
  std::set<std::int64_t> live;
  for (const Row m : metal) {
    const auto it = std::find(before.numbers.begin(), before.numbers.end(), m.Int("layout_no"));
    if (it == before.numbers.end() || m.Bool("cutting")) continue;
    const auto i = static_cast<std::size_t>(it - before.numbers.begin());
    const int piece = before.layouts[i].piece;
    const allocator::Piece& taken = problem.pieces[static_cast<std::size_t>(piece)];
    live.insert(*it);
    now.asked.versions[taken.tag] = m.Int("version");
    for (const PlanUnderWay::Want& want : before.cuts[i])
      if (const auto line = LineCalled(problem, want.order, want.line))
        problem.lines[static_cast<std::size_t>(*line)].quantity += want.count;
    allocator::Change change;
    change.piece = piece;
    if (!m.IsNull("blocked") || (m.Text("state") != "on rack" && m.Text("state") != "at saw")) {
      now.changes.push_back(change);
    } else if (m.Int("length_nm") != taken.length.nm || m.Int("doubt_nm") != taken.doubt.nm) {
      change.what = Mishap::Shorter;
      change.measured = {m.Int("length_nm")};
      change.doubt = {m.Int("doubt_nm")};
      now.changes.push_back(change);
    }
  }
  for (std::size_t i = 0; i < before.layouts.size(); ++i) {
    if (live.contains(before.numbers[i])) continue;
    allocator::Change gone;
    gone.piece = before.layouts[i].piece;
    now.changes.push_back(gone);
  }
  for (std::size_t i = 0; i < before.layouts.size(); ++i) {
    allocator::Layout layout = before.layouts[i];
    for (const PlanUnderWay::Want& want : before.cuts[i])
      if (const auto line = LineCalled(problem, want.order, want.line)) layout.cuts.push_back({*line, want.count, want.length});
    now.plan.layouts.push_back(std::move(layout));
  }
  AddFreeMetal(connection, ReadShopRules(connection, before.saw, before.asked.bundled), now.asked);
  KeepToSettledHeats(
      connection,
      [&](std::optional<std::int64_t> plan, std::optional<std::int64_t> layout_no) {
        return plan != before.number || !live.contains(layout_no.value_or(0));
      },
      problem);
  return now;
}

MendAnswer CommitMended(Connection& connection, const RequestNumber& request, const PlanUnderWay& before, const ToMend& to_mend,
                        const allocator::Replanned& mended, const std::string& proof, const std::string& reason) {
  const auto same = [&](const allocator::Layout& a, const allocator::Layout& b) {
    return a.piece == b.piece && a.left == b.left && CutsOf(a) == CutsOf(b) &&
        mended.problem.pieces[static_cast<std::size_t>(a.piece)].length ==
        to_mend.asked.problem.pieces[static_cast<std::size_t>(a.piece)].length;
  };
  std::vector<bool> kept(mended.plan.layouts.size());
  Json drop = Json::array();
  for (std::size_t i = 0; i < before.layouts.size(); ++i) {
    const auto& all = mended.plan.layouts;
    const auto it = std::find_if(all.begin(), all.end(), [&](const allocator::Layout& l) { return same(l, to_mend.plan.layouts[i]); });
    if (it == all.end()) drop.push_back(before.numbers[i]);
    else kept[static_cast<std::size_t>(it - all.begin())] = true;
  }
  std::vector<std::size_t> fresh;
  for (std::size_t i = 0; i < kept.size(); ++i)
    if (!kept[i]) fresh.push_back(i);
  BookProblem asked = to_mend.asked;
  asked.problem = mended.problem;
  Json body = PlanBody(asked, mended.plan, proof, fresh);
  body["plan"] = before.number;
  body["saw"] = before.saw;
  body["bundled"] = before.asked.bundled;
  body["reason"] = reason;
  body["drop"] = std::move(drop);
  const Json answer = Deeds(connection).Replan(request, body);
  MendAnswer done;
  done.taken = TakenOf(answer);
  if (!done.taken.empty()) return done;
  done.let_go = answer["let_go"];
  done.promised = answer["layouts"];
  return done;
}

}  // namespace heatkeep
