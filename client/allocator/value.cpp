#include "client/allocator/value.h"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <tuple>

#include "client/allocator/eligible.h"
#include "client/allocator/worth.h"

namespace heatkeep::allocator {

FineMoney Priced(FineMoney per_metre, Length length) {
  __extension__ using Wide = __int128;
  const Wide product = Wide{per_metre.micro} * length.nm;
  constexpr std::int64_t metre = 1'000'000'000;
  const Wide shifted = product + metre / 2;
  Wide quotient = shifted / metre;
  if (shifted % metre < 0) --quotient;
  return {static_cast<std::int64_t>(quotient)};
}

Length WorthOf(const Piece& piece, const GroupRules& rules) {
  if (!piece.owner.empty()) return {};
  if (piece.kind == PieceKind::Bar) return WorthOfBar(piece.length);
  return piece.worth && piece.length >= rules.keep ? *piece.worth : WorthOfRest(piece.length, rules.keep, rules.rests.get());
}

Layout MakeLayout(const Problem& problem, int piece_index, int repeat, const std::vector<std::pair<int, int>>& cuts) {
  const Piece& piece = problem.pieces[static_cast<std::size_t>(piece_index)];
  const GroupRules& rules = RulesFor(problem, piece);
  Layout layout;
  layout.piece = piece_index;
  layout.repeat = repeat;
  Length taken;
  int n = 0;
  for (const auto& [line, count] : cuts) {
    const Length length = problem.lines[static_cast<std::size_t>(line)].CutLength();
    taken += (length + rules.kerf) * count;
    n += count;
    layout.cuts.push_back({line, count, length});
  }
  std::sort(layout.cuts.begin(), layout.cuts.end(),
            [](const Cut& a, const Cut& b) { return std::make_tuple(-a.length.nm, a.line) < std::make_tuple(-b.length.nm, b.line); });
  const Room room = RoomOf(piece, rules);
  const Ending ending = EndingOf(room, taken, n);
  if (ending.last_uncut && n > 1 && room.grip.nm > 0 && layout.cuts.back().length < room.grip) {
    // The vice holds the longest piece while the others are cut off it: one of the longest comes last.
    Cut last = layout.cuts.front();
    if (--layout.cuts.front().count == 0) layout.cuts.erase(layout.cuts.begin());
    last.count = 1;
    layout.cuts.push_back(last);
  }
  layout.trim = room.trim;
  layout.kerf = ending.kerf;
  layout.left = ending.left;
  layout.left_kind = LeftKindOf(ending.left, rules.keep);
  return layout;
}

Value ValueOf(const Problem& problem, const std::vector<Layout>& layouts) {
  Value value;
  std::vector<int> placed(problem.lines.size(), 0);
  std::set<std::tuple<std::string, std::string, std::map<std::int64_t, int>>> setups;
  std::map<std::string, std::set<std::string>> heats_of_order;
  for (const Layout& layout : layouts) {
    const Piece& piece = problem.pieces[static_cast<std::size_t>(layout.piece)];
    const GroupRules& rules = RulesFor(problem, piece);
    const Room room = RoomOf(piece, rules);
    const bool own = piece.owner.empty();
    std::map<std::int64_t, int> lengths;
    int n = 0;
    Length taken;
    FineMoney extra;
    for (const Cut& cut : layout.cuts) {
      const Line& line = problem.lines[static_cast<std::size_t>(cut.line)];
      placed[static_cast<std::size_t>(cut.line)] += cut.count * layout.repeat;
      lengths[cut.length.nm] += cut.count;
      n += cut.count;
      taken += (cut.length + rules.kerf) * cut.count;
      extra.micro += Priced(SubstituteExtra(problem, piece, line), cut.length).micro * cut.count;
      heats_of_order[line.order].insert(piece.heat);
    }
    setups.insert({piece.section, piece.grade, lengths});
    const Length worth_left = own ? WorthOfRest(layout.left, rules.keep, rules.rests.get()) : Length{};
    const Length lost = WorthOf(piece, rules) - worth_left;
    const int cuts_made = n + (room.trim.nm > 0 ? 1 : 0) - (EndingOf(room, taken, n).last_uncut ? 1 : 0);
    FineMoney money = Priced(piece.costs.per_metre, lost);
    if (own && piece.kind == PieceKind::Drop && piece.length < rules.keep)
      money.micro += Priced(piece.costs.scrap_per_metre, piece.length).micro;
    if (own && layout.left_kind == LeftKind::Scrap) money.micro -= Priced(piece.costs.scrap_per_metre, layout.left).micro;
    money.micro += piece.costs.per_cut.micro * cuts_made + piece.costs.per_pull.micro + extra.micro;
    const std::int64_t times = layout.repeat;
    if (piece.kind == PieceKind::Bar) {
      value.bars_opened += layout.repeat;
      if (own) value.new_length += piece.length * times;
    }
    value.consumed_length += piece.length * times;
    if (layout.left_kind == LeftKind::Scrap) value.scrap_length += layout.left * times;
    value.lost_worth += lost * times;
    value.money.micro += money.micro * times;
    value.pieces_pulled += layout.repeat;
  }
  value.layouts = static_cast<int>(setups.size());
  value.money.micro += problem.per_setup.micro * value.layouts;
  for (const auto& [order, heats] : heats_of_order)
    value.money.micro += problem.per_extra_heat.micro * (static_cast<std::int64_t>(heats.size()) - 1);
  for (std::size_t i = 0; i < problem.lines.size(); ++i) {
    const int missing = problem.lines[i].quantity - placed[i];
    if (missing <= 0) continue;
    value.unmet_by_priority[problem.lines[i].priority] += missing;
    value.unmet_pieces += missing;
  }
  return value;
}

}  // namespace heatkeep::allocator
