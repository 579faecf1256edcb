#include "client/allocator/explain.h"

#include <algorithm>
#include <limits>
#include <tuple>

#include "client/allocator/compare.h"
#include "client/allocator/cut_arithmetic.h"
#include "client/allocator/eligible.h"
#include "client/allocator/value.h"
#include "client/allocator/worth.h"
#include "schema/terms/length_text.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }

// Length cut off for each piece, one kerf each, and the longest.
std::pair<Length, Length> TakenOf(const Layout& layout, const GroupRules& rules) {
  Length taken, longest;
  for (const Cut& cut : layout.cuts) {
    taken += (cut.length + rules.kerf) * cut.count;
    longest = std::max(longest, cut.length);
  }
  return {taken, longest};
}

int CountOf(const Layout& layout) {
  int count = 0;
  for (const Cut& cut : layout.cuts) count += cut.count;
  return count;
}

Length LostOn(const Piece& piece, const GroupRules& rules, Length left) {
  return WorthOf(piece, rules) - (piece.owner.empty() ? WorthOfRest(left, rules.keep, rules.rests.get()) : Length{});
}

// What one repeat of a layout costs from one piece or another, set-ups and extra heats apart.
class CostElsewhere {
 public:
  CostElsewhere(const Problem& problem, const Layout& layout) {
    alone_.rules = problem.rules;
    alone_.exceptions = problem.exceptions;
    alone_.grades = problem.grades;
    alone_.sections = problem.sections;
    std::map<int, int> cuts;
    for (const Cut& cut : layout.cuts) cuts[cut.line] += cut.count;
    for (const auto& [line, count] : cuts) {
      cuts_.emplace_back(static_cast<int>(alone_.lines.size()), count);
      alone_.lines.push_back(problem.lines[At(line)]);
    }
  }
  FineMoney On(const Piece& piece) {
    alone_.pieces.assign(1, piece);
    return ValueOf(alone_, {MakeLayout(alone_, 0, 1, cuts_)}).money;
  }

 private:
  Problem alone_;
  std::vector<std::pair<int, int>> cuts_;
};

std::string Words(const Alternative& a, const Piece& piece) {
  std::string words;
  const bool theirs = !piece.owner.empty();  // not ours to scrap
  switch (a.left_kind) {
    case LeftKind::None: words = "leaves nothing"; break;
    case LeftKind::Scrap: words = "leaves " + WriteMm(a.left, Rounding::Down) + (theirs ? " mm" : " mm scrap"); break;
    case LeftKind::Drop: words = "leaves a drop of " + WriteMm(a.left, Rounding::Down) + " mm"; break;
  }
  if (a.opens_bar) words += ", opens a full bar of " + WriteMm(piece.length) + " mm";
  const auto plain = [](std::int64_t n) { return n < 0 ? -n : n; };
  if (a.dearer) {
    if (MoneyText(*a.dearer) == "0.00") return words + ", costs the same";
    return words + ", " + MoneyText({plain(a.dearer->micro)}) + (a.dearer->micro < 0 ? " cheaper" : " dearer");
  }
  if (a.lost_more.nm == 0) return words + ", as good in worth";
  return words + ", loses " + WriteMm({plain(a.lost_more.nm)}) + " mm " + (a.lost_more.nm < 0 ? "less" : "more") + " in worth";
}

}  // namespace

std::string SourceWords(const Piece& piece) {
  return piece.tag + (piece.place.empty() ? "" : " in " + piece.place) + ", " + WriteMm(piece.length, Rounding::Down) + " mm" +
      (piece.risk.empty() ? "" : ", " + piece.risk);
}

Explanation::Explanation(const Problem& problem, const Plan& plan)
    : problem_(problem), plan_(plan), may_(problem.lines.size()), by_line_(problem.lines.size()) {
  for (const Piece& piece : problem.pieces) free_.push_back(piece.count ? *piece.count : std::numeric_limits<std::int64_t>::max());
  for (std::size_t i = 0; i < plan.layouts.size(); ++i) {
    const Layout& layout = plan.layouts[i];
    if (problem.pieces[At(layout.piece)].count) free_[At(layout.piece)] -= layout.repeat;
    for (const Cut& cut : layout.cuts) {
      const Line& line = problem.lines[At(cut.line)];
      if (!line.one_heat.empty()) by_group_[line.one_heat].push_back(i);
      if (line.max_heats > 0) by_line_[At(cut.line)].push_back(i);
    }
  }
}

bool Explanation::May(int line, std::size_t piece) {
  std::vector<char>& may = may_[At(line)];
  if (may.empty())
    for (const Piece& p : problem_.pieces) may.push_back(WhyNot(problem_, p, problem_.lines[At(line)]) ? 0 : 1);
  return may[piece] != 0;
}

// Would the heats still be as asked if one repeat of this layout came from `heat`?
bool Explanation::HeatsHold(const Layout& layout, std::size_t without, const std::string& heat) const {
  const auto heats = [&](const std::vector<std::size_t>& layouts) {
    std::set<std::string> all{heat};
    for (const std::size_t i : layouts)
      if (i != without || layout.repeat > 1) all.insert(problem_.pieces[At(plan_.layouts[i].piece)].heat);
    return static_cast<int>(all.size());
  };
  return std::all_of(layout.cuts.begin(), layout.cuts.end(), [&](const Cut& cut) {
    const Line& line = problem_.lines[At(cut.line)];
    return (line.one_heat.empty() || heats(by_group_.at(line.one_heat)) == 1) &&
        (line.max_heats == 0 || heats(by_line_[At(cut.line)]) <= line.max_heats);
  });
}

std::vector<Alternative> Explanation::Why(std::size_t index, std::size_t most) {
  const Layout& layout = plan_.layouts.at(index);
  const Piece& chosen = problem_.pieces[At(layout.piece)];
  const GroupRules& own_rules = RulesFor(problem_, chosen);
  const Length lost = LostOn(chosen, own_rules, layout.left);
  const int count = CountOf(layout);
  const bool money_leads = problem_.aim == Aim::LeastMoney;
  CostElsewhere cost(problem_, layout);
  const auto bar = [](const Piece& p) { return p.kind == PieceKind::Bar && p.owner.empty(); };
  using Rank = std::tuple<std::int64_t, std::int64_t, Length, std::string, std::size_t>;
  std::vector<std::pair<Rank, Alternative>> found;
  for (std::size_t i = 0; i < problem_.pieces.size(); ++i) {
    const Piece& piece = problem_.pieces[i];
    if (free_[i] <= 0 || static_cast<int>(i) == layout.piece) continue;
    const GroupRules& rules = RulesFor(problem_, piece);
    const Room room = RoomOf(piece, rules);
    const auto [taken, longest] = TakenOf(layout, rules);
    if (!Fits(room, taken, longest)) continue;
    if (!std::all_of(layout.cuts.begin(), layout.cuts.end(), [&](const Cut& cut) { return May(cut.line, i); })) continue;
    if (!HeatsHold(layout, index, piece.heat)) continue;
    Alternative a;
    a.piece = static_cast<int>(i);
    a.left = EndingOf(room, taken, count).left;
    a.left_kind = LeftKindOf(a.left, rules.keep);
    a.opens_bar = bar(piece) && !bar(chosen);
    a.lost_more = LostOn(piece, rules, a.left) - lost;
    std::int64_t first = bar(piece) ? piece.length.nm : 0, second = a.lost_more.nm;
    if (problem_.aim == Aim::LeastMetres) first = piece.length.nm;
    if (money_leads) first = cost.On(piece).micro;
    found.emplace_back(Rank{first, second, piece.length, piece.tag, i}, a);
  }
  const std::size_t shown = std::min(most, found.size());
  std::partial_sort(found.begin(), found.begin() + static_cast<std::ptrdiff_t>(shown), found.end(),
                    [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<Alternative> best;
  for (std::size_t n = 0; n < shown; ++n) {
    Alternative a = found[n].second;
    const Piece& piece = problem_.pieces[At(a.piece)];
    const auto priced = [](const Piece& p) { return !p.owner.empty() || p.costs.per_metre.micro > 0; };
    if (priced(chosen) && priced(piece)) a.dearer = FineMoney{cost.On(piece).micro - cost.On(chosen).micro};
    a.words = Words(a, piece);
    best.push_back(std::move(a));
  }
  return best;
}

}  // namespace heatkeep::allocator
